/* check/unused.c: foods that were laid out or promised, and were not heard to go in.
 * SPDX-License-Identifier: MIT */
#include "check/taken.h"
#include "match/clause.h"

/* A food is laid out within so many words of the words that say so. */
#define NEAR_WORDS 9
/* A story of buying it is none that it goes in, so SCOPE_UNREAL tells nothing here. */
#define NOT_HERE (SCOPE_NEGATED | SCOPE_INSTEAD)

/* What a dish is made of is "it" from then on: "two pounds of ground beef here"; "there's also a
 * salami" comes on top. */
static bool is_main(const struct checker *c, size_t food, size_t first)
{
    const uint64_t meats =
        MARK_OF(meat) | MARK_OF(ground) | MARK_OF(poultry) | MARK_OF(fish) | MARK_OF(shellfish);
    struct span where;
    return c->r->words.at[food].entry->marks & meats
           && !said_find(&c->sayings, c->r, "on_top", (struct span){first, food}, &where);
}

/* "You've got twelve eggs in here": it is in already. */
static bool is_in(const struct checker *c, struct span said)
{
    struct span where;
    return said_find(&c->sayings, c->r, "in_already", said, &where);
}

/* "I've put out chives. No, they're for the other one": laid out as the dish ends, and the next one
 * has it. */
#define LEAVING_WORDS 60
static bool of_next(const struct checker *c, size_t word, const struct entry *food)
{
    if (c->number + 1 >= c->r->dishes.count || word + LEAVING_WORDS < c->dish->words.last)
        return false;
    const struct dish *next = &c->r->dishes.at[c->number + 1];
    for (size_t i = 0; i < next->ingredients.count; i++)
        if (text_share_part(next->ingredients.at[i].kind, entry_value(food), ' '))
            return true;
    return false;
}

static size_t count_foods(const struct checker *c, size_t first, size_t last)
{
    size_t count = 0;
    for (size_t i = first; i <= last; i++)
        count += c->r->words.at[i].tag == TAG_FOOD;
    return count;
}

/* "Chop all the vegetables", "the dry ingredients": several things that were laid out go in soon
 * after; "now they go in": one, too. */
#define SOON_WORDS 40
static bool all_taken(const struct checker *c, const struct sentence *s, size_t first, size_t last)
{
    struct span where, soon = {s->last + 1, s->last + SOON_WORDS};
    if (soon.last > c->dish->words.last)
        soon.last = c->dish->words.last;
    return soon.first <= soon.last
           && ((count_foods(c, first, last) > 1
                && said_find(&c->sayings, c->r, "takes_all", soon, &where))
               || said_find(&c->sayings, c->r, "they_go", soon, &where));
}

/* "We have rice here all the time", "I've got stock here keeping warm", "I've put out chives. No,
 * those are for the other one": not laid out for this. */
#define OTHER_WORDS 10
static bool on_its_way(const struct checker *c, const struct sentence *s)
{
    struct span where, behind = {s->first, s->last + OTHER_WORDS};
    if (behind.last >= c->r->words.count)
        behind.last = c->r->words.count - 1;
    return said_in(c, "on_its_way", s, &where)
           || said_find(&c->sayings, c->r, "for_other", behind, &where);
}

/* "Four sprigs of rosemary here | tuck them down the side": captions without stops divide where
 * nobody paused. Not where more is said between: "rye here too, I'll see if I want it | turn it".
 */
#define BETWEEN_WORDS 8
static bool taken_next(const struct checker *c, const struct sentence *s, size_t food)
{
    const size_t begin = s->last + 1;
    struct span where;
    if (s->last > food + BETWEEN_WORDS || begin + 2 >= c->r->words.count)
        return false;
    if (word_acts(&c->r->words.at[begin]) && c->r->words.at[begin + 1].tag == TAG_IT)
        return true;
    return said_find(&c->sayings, c->r, "takes_part", (struct span){begin, begin + 2}, &where)
           && where.first == begin; /* "In they go" */
}

/* Whether it was told of the food before: what is missed is laid out, and "still sat there". */
static bool told(const struct checker *c, struct text food)
{
    for (size_t i = 0; i < c->r->findings.count; i++) {
        const struct finding *f = &c->r->findings.at[i];
        if (f->dish == c->number && text_equal(f->kind, c->rows[CASE_never_used].kind)
            && text_equal(f->about, food))
            return true;
    }
    return false;
}

/* The same of any dish: where a thing lay is said in the middle of another. */
static bool told_of_any(const struct checker *c, struct text food)
{
    for (size_t i = 0; i < c->r->findings.count; i++)
        if (text_equal(c->r->findings.at[i].kind, c->rows[CASE_never_used].kind)
            && text_equal(c->r->findings.at[i].about, food))
            return true;
    return false;
}

/* The foods of words [first, last] of the sentence are laid out, up to a "but". */
static void check_foods(struct checker *c, const struct sentence *s, size_t first, size_t last)
{
    struct span but;
    if (all_taken(c, s, first, last) || on_its_way(c, s))
        return;
    if (said_find(&c->sayings, c->r, "but", (struct span){first, last}, &but))
        last = but.first;
    for (size_t i = first; i <= last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag != TAG_FOOD || !w->entry || w->entry->marks & MARK_OF(water)
            || is_main(c, i, first) || w->scope & NOT_HERE || taken_up(c, i, s->last)
            || taken_next(c, s, i) || told(c, entry_shown(w->entry)) || of_next(c, i, w->entry)
            || spoken_elsewhere(c, w->entry, (struct span){first, last}))
            continue;
        struct span words = {w->entry_first, i};
        REPORT_PLAIN(c, never_used, ((struct subject_of){w->start, words, entry_shown(w->entry)}));
    }
}

/* "When I've got the flour out of my keyboard", "I bought it peeled": not what is said of a food
 * that lies here. */
static bool goes_on(const struct checker *c, struct span said)
{
    struct span where, on = {said.last, said.last + 1};
    return on.last < c->r->words.count && said_find(&c->sayings, c->r, "goes_on", on, &where)
           && where.first == on.first;
}

/* "I've a bay leaf here" names its food; "put out here" is about one that stands before it. */
static void check_laid_out(struct checker *c, const struct sentence *s, struct span said)
{
    bool named = span_has_tag(c->r, said, TAG_FOOD);
    size_t before = named ? 0 : NEAR_WORDS, begin = s->first;
    /* Captions without stops divide where nobody paused: "some pecans | I was going to put in". */
    size_t last = said.last + NEAR_WORDS < s->last ? said.last + NEAR_WORDS : s->last;
    bool here = span_has_tag(c->r, (struct span){s->first, last}, TAG_FOOD);
    while (!here && begin && said.first - begin < before
           && c->r->words.at[begin - 1].after < AFTER_COMMA)
        here = c->r->words.at[--begin].tag == TAG_FOOD;
    size_t first = said.first > begin + before ? said.first - before : begin;
    check_foods(c, s, named ? said.first : first, last);
}

/* "What have I got out?": the next sentence lists it. */
static void check_list(struct checker *c, const struct sentence *s)
{
    const struct sentence *next = s + 1;
    struct span where;
    if (next < &c->r->sentences.at[c->r->sentences.count] && said_in(c, "lists_out", s, &where)
        && where.last + 1 >= s->last)
        check_foods(c, next, next->first, next->last);
}

/* The last word of the talk behind the dish that is nearest to it. */
static size_t last_word(const struct checker *c)
{
    size_t last = c->dish->words.last;
    for (size_t i = 0; i < c->beside_count; i++)
        last = c->beside[i].last > last ? c->beside[i].last : last;
    return last;
}

/* Things are laid out before a dish is begun, too, and missed when it is done: "I had pecans for
 * that". */
static bool belongs(const struct checker *c, size_t word)
{
    return in_dish(c, word) || word < c->dish->words.first || word > c->dish->words.last;
}

/* "The butter is still there on the table, that goes in melted". */
static bool goes_now(const struct checker *c, size_t word)
{
    struct span where, behind = {word + 1, word + OTHER_WORDS};
    if (behind.last >= c->r->words.count)
        behind.last = c->r->words.count - 1;
    return behind.first <= behind.last && said_find(&c->sayings, c->r, "goes_now", behind, &where);
}

/* "The semolina's still by the kettle": missed where it is heard of for the last time. */
#define STILL_WORDS 5
static void check_still_out(struct checker *c, struct span said)
{
    for (size_t i = said.first > STILL_WORDS ? said.first - STILL_WORDS : 0; i < said.first; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag != TAG_FOOD || !w->entry || w->entry->marks & MARK_OF(water)
            || told_of_any(c, entry_shown(w->entry)) || taken_up(c, i, c->dish->words.last)
            || used_behind(c, w->entry, said.last) || goes_now(c, said.last))
            continue;
        struct span words = {w->entry_first, i};
        REPORT_PLAIN(c, never_used, ((struct subject_of){w->start, words, entry_shown(w->entry)}));
    }
}

static void listen_still_out(struct checker *c, struct span rest)
{
    struct span where;
    for (; rest.first <= rest.last && said_find(&c->sayings, c->r, "left_still", rest, &where);
         rest.first = where.last + 1)
        check_still_out(c, where);
}

static void find_still_out(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++)
        listen_still_out(c, c->parts.at[i]);
    for (size_t i = 0; i < c->beside_count; i++)
        listen_still_out(c, c->beside[i]);
}

void find_unused(struct checker *c)
{
    const struct span talk = {talk_around(c).first, last_word(c)};
    for (const struct sentence *s = NULL; (s = sentence_next(c->r, talk, s));) {
        struct span where, within = {s->first, s->last};
        if (s->first < talk.first || !belongs(c, s->first))
            continue;
        check_list(c, s);
        for (; within.first <= within.last
               && said_find(&c->sayings, c->r, "laid_out", within, &where);
             within.first = where.last + 1)
            if (!is_in(c, where) && !goes_on(c, where))
                check_laid_out(c, s, where);
    }
    find_still_out(c);
}
