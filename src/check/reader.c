/* check/reader.c: where somebody who cooks from the text would stumble: a soak that is told too
 * late, a part that was never made, a lid with nothing after it, pieces that do not go round, two
 * systems of units. All of it is taste or a question, never more.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* ---- told too late */

/* Whether a step before the word cooks: what is soaked after that is told too late. */
static const struct step *cooked_before(const struct checker *c, size_t word)
{
    const uint64_t heat =
        MARK_OF(ovens) | MARK_OF(boils) | MARK_OF(fries) | MARK_OF(grills) | MARK_OF(deep);
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (s->words.last < word && step_marks(c, s) & heat)
            return s;
    }
    return NULL;
}

/* Whether the food was named before the step ended: the soak is of what is in the pot already. */
static bool named_before(const struct checker *c, const struct word *food, const struct step *s)
{
    for (size_t i = c->dish->words.first; i <= s->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_FOOD && w->entry
            && text_share_part(entry_value(w->entry), entry_value(food->entry), ' '))
            return true;
    }
    return false;
}

static const struct word *food_of_words(const struct checker *c, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (c->r->words.at[i].tag == TAG_FOOD && c->r->words.at[i].entry)
            return &c->r->words.at[i];
    return NULL;
}

/* "Simmer the beans for an hour ... oh, and soak those beans overnight first". */
static void find_told_late(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        struct span where, rest = c->parts.at[i];
        while (rest.first <= rest.last && said_find(&c->sayings, c->r, "told_late", rest, &where)) {
            const struct word *food = food_of_words(c, where);
            const struct step *cooks = food ? cooked_before(c, where.first) : NULL;
            rest.first = where.last + 1;
            if (cooks && named_before(c, food, cooks)
                && !(c->r->words.at[where.first].scope & SCOPE_NOT_DONE))
                REPORT_PLAIN(c, told_late, subject_words(c, where));
        }
    }
}

/* ---- never made */

#define MADE_OF_FOODS 2 /* a sauce can be made of so many things in a pan, unnamed */

/* Whether the part was spoken of before the word, anywhere, or as a food: "tomato sauce". */
static bool part_before(const struct checker *c, const struct entry *part, size_t word)
{
    size_t foods = 0;
    for (size_t i = word; i-- > 0 && foods < MADE_OF_FOODS;) {
        const struct word *w = &c->r->words.at[i];
        if (!w->entry || w->tag == TAG_INSIDE)
            continue;
        if (text_share_part(entry_value(w->entry), entry_value(part), ' '))
            return true;
        foods += w->tag == TAG_FOOD && in_dish(c, i);
    }
    return foods >= MADE_OF_FOODS;
}

/* "Spread the filling over", and nothing that a filling could be made of was heard before. */
static void find_never_made(struct checker *c)
{
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (!(step_marks(c, s) & (MARK_OF(puts) | MARK_OF(finishes))))
            continue;
        for (size_t n = s->words.first + 1; n <= s->words.last; n++) {
            const struct word *w = &c->r->words.at[n];
            if (w->tag == TAG_PART && w->entry && w[-1].tag == TAG_THE
                && !(w->scope & SCOPE_NOT_DONE) && !part_before(c, w->entry, n)) {
                REPORT_PLAIN(c, never_made,
                             ((struct subject_of){w->start, {n, n}, entry_shown(w->entry)}));
                return;
            }
        }
    }
}

/* ---- a lid, and nothing after it */

/* "Turn it down and put the lid on", where neither this step nor a later one says how long. Where
 * the talk goes on to another dish right then, it may come back. */
static void find_no_state(struct checker *c)
{
    const struct step *last = NULL;
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        struct span where;
        if (s->durations.count || s->until.length)
            last = NULL;
        else if (said_find(&c->sayings, c->r, "lids", s->words, &where)
                 && !(c->r->words.at[where.first].scope & SCOPE_NOT_DONE))
            last = s;
    }
    if (last && last != &c->dish->steps.at[c->dish->steps.count - 1])
        REPORT(c, no_state, subject_step(c->r, last), said_words(c->r, last->words));
}

/* ---- pieces that do not go round */

/* "Cut it in eight, and it serves three". */
static void find_odd_portions(struct checker *c)
{
    struct span where;
    struct amount count = {0};
    const struct yield *y = &c->dish->yield;
    if (!y->known || !text_is(y->of, "serving") || !ratio_equal(y->min, y->max) || y->min.under != 1
        || y->min.over < 2)
        return;
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        if (!said_in(c, "cuts_pieces", s, &where) || !number_in(c, s, where, &count)
            || count.min.under != 1 || count.min.over < y->min.over
            || count.min.over % y->min.over == 0)
            continue;
        struct text serves = arena_format(c->r->arena, "%.0f", ratio_double(y->min));
        REPORT(c, odd_portions, subject_words(c, where), serves);
        return;
    }
}

/* ---- two systems of units */

/* So many lines of each: fewer are a habit of speech, "a pint of milk", "a cup of flour". */
#define SYSTEM_LINES 3

/* Whether the unit is a metric one (1), an American or British one (-1), or both use it (0):
 * spoons, pinches, counts. */
static int system_of(const struct checker *c, const struct ingredient *line)
{
    const struct table *t = line->amount.known ? pack_table(c->k, "units") : NULL;
    size_t row = t ? table_find(t, line->amount.unit) : 0;
    if (!t || row >= t->rows)
        return 0;
    struct text system = table_cell(t, row, table_column(t, "system"));
    if (text_is(system, "metric"))
        return 1;
    return text_is(system, "avoirdupois")
                   || (text_starts(system, "US customary")
                       && !text_ends(line->amount.unit, "spoon"))
               ? -1
               : 0;
}

/* Two cups and half a pound of this, two hundred grams and half a liter of that. */
static void find_mixed_units(struct checker *c)
{
    size_t us = 0, metric = 0;
    const struct ingredient *first = NULL, *other = NULL;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        int system = system_of(c, line);
        us += system < 0;
        metric += system > 0;
        if (!first && system)
            first = line;
        else if (!other && system && system != system_of(c, first))
            other = line;
    }
    if (other && us >= SYSTEM_LINES && metric >= SYSTEM_LINES)
        REPORT(c, mixed_units, subject_line(other), said_words(c->r, other->words),
               said_words(c->r, first->words));
}

void find_stumbles(struct checker *c)
{
    find_told_late(c);
    find_never_made(c);
    find_no_state(c);
    find_odd_portions(c);
    find_mixed_units(c);
}
