/* check/editor.c: what an editor compares in a recipe: the title with the foods, portions with
 * their total, what was set aside with what follows, heats and times with each other.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* ---- the title's foods */

/* Whether a line has the food, or a kind of it, or is made of it ("lemon juice"). */
static bool has_food(const struct dish *d, const struct entry *food)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *line = &d->ingredients.at[i];
        if (text_share_part(line->kind, entry_value(food), ' ')
            || text_share_part(line->food, entry_value(food), ' '))
            return true;
    }
    return false;
}

/* Whether the dish's talk has the food in other words than its title's. */
static bool food_said(const struct checker *c, const struct entry *food)
{
    struct span around = talk_around(c);
    for (size_t i = around.first; i <= around.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->entry && w->tag == TAG_FOOD && !(w->scope & SCOPE_TITLE)
            && text_share_part(entry_value(w->entry), entry_value(food), ' '))
            return true;
    }
    return false;
}

/* "Egg muffins with spinach": what is made is no food that goes in. */
static bool names_dish(const struct entry *e)
{
    return entry_as(e, TAG_DISH) || e->marks & MARK_OF(aside);
}

/* "That's our lemon and thyme chicken", and no thyme was heard. The last word names the dish. */
/* Where a border is not sure, another dish may have it: then nothing can be told. */
static bool in_another(const struct checker *c, const struct entry *food)
{
    for (size_t i = 0; i < c->r->dishes.count; i++)
        if (i != c->number && has_food(&c->r->dishes.at[i], food))
            return true;
    return false;
}

static bool misheard(const struct checker *c, struct text key)
{
    for (size_t i = c->dish->words.first; i <= c->dish->words.last; i++)
        if (c->r->words.at[i].rare->heard_as && text_equal(c->r->words.at[i].key, key))
            return true;
    return false;
}

/* Whether another food of the title is there: "rye loaf" and "Swiss roll" are names, and where no
 * food of the title is in it, the border is likelier wrong than the cook. */
static bool title_held(const struct checker *c)
{
    struct text rest = c->dish->title, word;
    char folded[64];
    while (rest.length && text_part(&rest, ' ', &word)) {
        if (word.length * 3 > sizeof folded)
            continue;
        const size_t length = fold_word(word, folded, sizeof folded);
        const struct entry *e = pack_find(c->k, (struct text){folded, length}, NULL);
        if (e && e->tag == TAG_FOOD && has_food(c->dish, e))
            return true;
    }
    return false;
}

static void find_title_foods(struct checker *c)
{
    struct text rest = c->dish->title, word;
    char folded[64];
    while (c->dish->title_said && title_held(c) && rest.length && text_part(&rest, ' ', &word)) {
        if (word.length * 3 > sizeof folded || !rest.length)
            continue;
        size_t length = fold_word(word, folded, sizeof folded);
        struct text key = {folded, length};
        const struct entry *first = pack_find(c->k, key, NULL);
        if (!first || first->tag != TAG_FOOD || first->marks & MARK_OF(generic) || names_dish(first)
            || has_food(c->dish, first) || food_said(c, first) || misheard(c, key)
            || in_another(c, first))
            continue;
        REPORT(c, title_food, ((struct subject_of){c->dish->start, NO_WORDS, entry_shown(first)}),
               c->dish->title);
    }
}

/* ---- what was set aside */

/* The food or the part that words [first, last] are about; NULL where it is "it", or nothing. */
static const struct word *thing_in(const struct checker *c, size_t first, size_t last)
{
    const struct word *found = NULL;
    for (size_t i = first; i <= last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_IT)
            return NULL;
        if (w->entry && (w->tag == TAG_FOOD || w->tag == TAG_PART))
            found = w;
    }
    return found;
}

/* Whether the thing, or something that is "back" in, is spoken of from word `from` on. */
static bool comes_back(const struct checker *c, const struct word *thing, size_t from)
{
    struct span where, rest = {from, c->dish->words.last};
    if (from > c->dish->words.last || said_find(&c->sayings, c->r, "comes_back", rest, &where))
        return true;
    for (size_t i = from; i <= c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->entry && w->tag != TAG_INSIDE
            && text_share_part(entry_value(w->entry), entry_value(thing->entry), ' '))
            return true;
    }
    return false;
}

/* "Save a cup of the pasta water", which is never heard of again. */
static void find_set_aside(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        struct span where;
        if (s->flags & SENTENCE_STORY || !said_in(c, "set_aside", s, &where)
            || c->r->words.at[where.first].scope & SCOPE_NOT_DONE)
            continue;
        const struct word *thing = thing_in(c, where.first, where.last);
        if (said_with(c, "kept_for", where))
            continue; /* "for the top": it is told when */
        if (thing && !comes_back(c, thing, s->last + 1))
            REPORT(c, not_back,
                   ((struct subject_of){c->r->words.at[where.first].start, where,
                                        entry_shown(thing->entry)}),
                   said_words(c->r, where));
    }
}

/* ---- heats */

/* What waits between heating an oven and using it; longer is a waste (common practice, no source).
 */
#define PREHEAT_SECONDS_MOST (30 * 60)

static bool preheats(const struct step *s)
{
    for (size_t i = 0; i < s->actions.count; i++)
        if (text_is(s->actions.at[i], "preheat"))
            return true;
    return false;
}

/* Where another dish is cooked between, what it waits for, and whose oven it is, cannot be told. */
static bool interleaved(const struct checker *c)
{
    for (size_t i = 0; i < c->r->dishes.count; i++) {
        struct span other = c->r->dishes.at[i].words;
        if (i != c->number && other.first <= c->dish->words.last
            && other.last >= c->dish->words.first)
            return true;
    }
    return false;
}

/* An oven that is heated after it was needed ("the oven is at 220" tells how hot it is already), or
 * long before. */
static void find_preheat(struct checker *c)
{
    const struct step *bakes = NULL, *heats = NULL;
    double waits = 0;
    for (size_t i = 0; i < c->dish->steps.count && !interleaved(c); i++) {
        const struct step *s = &c->dish->steps.at[i];
        uint64_t marks = step_marks(c, s);
        if (preheats(s) && bakes && !heats && said_with(c, "heats_oven", s->words))
            REPORT_PLAIN(c, preheat_late, subject_step(c->r, s));
        if (preheats(s))
            heats = s;
        if (marks & MARK_OF(waits) && heats && !bakes)
            for (size_t n = 0; n < s->durations.count; n++)
                waits += s->durations.at[n].min;
        if (marks & MARK_OF(ovens) && !preheats(s)) {
            if (heats && !bakes && waits > PREHEAT_SECONDS_MOST)
                REPORT_PLAIN(c, preheat_early, subject_step(c->r, heats));
            bakes = s;
        }
    }
}

/* ---- times */

/* The least time of the steps, without the one that the builder took the whole for. */
static double steps_least(const struct dish *d, const struct match *whole)
{
    double least = d->total.min;
    for (size_t i = 0; i < d->steps.count; i++)
        for (size_t n = 0; n < d->steps.at[i].durations.count; n++)
            if (d->steps.at[i].durations.at[n].words.first == whole->words.first)
                least -= d->steps.at[i].durations.at[n].min;
    return least;
}

/* "Forty minutes from start to finish", and the steps take longer. */
static void check_whole_time(struct checker *c, const struct sentence *s)
{
    struct span where;
    if (s->flags & SENTENCE_STORY || !said_in(c, "whole_time", s, &where))
        return;
    struct matches times = matches_of(c->r, s, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times));) {
        double least = steps_least(c->dish, m);
        if (!ratio_finite(m->high) || ratio_double(m->high) * 1.1 >= least)
            continue;
        REPORT(c, whole_time, subject_words(c, m->words),
               arena_format(c->r->arena, "%.0f", least / 60));
        return;
    }
}

static void find_whole_time(struct checker *c)
{
    for (const struct sentence *s = NULL; c->dish->total.known && (s = next_sentence(c, s));)
        check_whole_time(c, s);
}

/* ---- names */

/* One food under two names: a reader buys it twice. "A lump of bicarb tastes of soap" buys none. */
static void find_two_names(struct checker *c)
{
    for (size_t i = 1; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        for (size_t n = 0; n < i; n++) {
            const struct ingredient *other = &c->dish->ingredients.at[n];
            if (!text_equal(line->kind, other->kind) || !line->amount.known || !other->amount.known
                || line->vague || text_share_part(line->food, other->food, ' '))
                continue;
            REPORT(c, two_names, subject_line(line), other->food);
            break;
        }
    }
}

void find_editorial(struct checker *c)
{
    find_title_foods(c);
    find_set_aside(c);
    find_preheat(c);
    find_whole_time(c);
    find_two_names(c);
}
