/* check/taken.c: whether a food that was laid out is taken up: in the same breath, or later.
 * SPDX-License-Identifier: MIT */
#include "check/taken.h"
#include "match/clause.h"

/* What goes into the dish is said within so many words. */
#define NEAR_WORDS 9
/* What is said of it in the same breath is no use of it. */
#define BREATH_WORDS 14

/* "Pomegranate molasses" is no pomegranate: what it only begins with does not name it. */
static bool begins_with(struct text name, struct text food)
{
    struct text start = {name.at, food.length};
    return name.length > food.length && text_equal(start, food) && name.at[food.length] == ' ';
}

/* Beef chuck that is laid out is spoken of as beef and as chuck. */
static bool speaks_of(const struct entry *said, const struct entry *food)
{
    return said && said->tag == TAG_FOOD
           && text_share_part(entry_value(said), entry_value(food), ' ')
           && !begins_with(entry_value(said), entry_value(food));
}

/* "They go over the top", "it goes in". */
static bool goes(const struct checker *c, size_t verb, size_t last)
{
    const struct word *w = &c->r->words.at[verb];
    unsigned char next = verb < last ? w[1].tag : TAG_OTHER;
    return word_acts(w)
           || (w->tag == TAG_ACTION
               && (next == TAG_DOWN || next == TAG_INTO || next == TAG_FINISH));
}

/* "Beat that with a fork", not "beat that egg". */
static bool all_of_it(const struct checker *c, size_t verb, size_t last)
{
    struct span where;
    return said_find(&c->sayings, c->r, "takes_up", (struct span){verb, last}, &where)
           && where.first == verb;
}

/* "Leave it in its glass", "maybe I'll put it": not yet. */
#define MAYBE_WORDS 3
static bool stays_out(const struct checker *c, size_t verb, size_t last)
{
    struct span where, before = {verb > MAYBE_WORDS ? verb - MAYBE_WORDS : 0, verb};
    return said_find(&c->sayings, c->r, "maybe", before, &where)
           || (said_find(&c->sayings, c->r, "stays_out", (struct span){verb, last}, &where)
               && where.first == verb);
}

/* "Peas here to go in with them": what they are here for is promised. */
static bool promised(const struct checker *c, size_t verb)
{
    const struct word *w = &c->r->words.at[c->r->words.at[verb].entry_first];
    return w >= c->r->words.at + 2 && w[-1].tag == TAG_TO
           && (w[-2].tag == TAG_OTHER || w[-2].tag == TAG_FOOD);
}

bool taken_up(const struct checker *c, size_t i, size_t last)
{
    struct span where;
    for (size_t n = i + 1; n + 1 <= last && n < i + BREATH_WORDS; n++) {
        const struct word *w = &c->r->words.at[n], *next = w + 1;
        size_t verb = n + 1;
        while (verb < last && c->r->words.at[verb].tag == TAG_INSIDE)
            verb++;
        bool for_that = w[-1].tag == TAG_TO; /* "to go in that" */
        if (word_acts(w) && !for_that && all_of_it(c, n, last))
            return true;
        if (word_acts(w) && next->tag == TAG_IT && !promised(c, n) && !stays_out(c, n, last))
            return true;
        if (n >= i + NEAR_WORDS)
            continue;
        if (said_find(&c->sayings, c->r, "takes_part", (struct span){n, last}, &where)
            && where.first == n)
            return true;
        if (w->tag == TAG_IT && w[-1].tag != TAG_WHEN && goes(c, verb, last))
            return true;
    }
    return false;
}

/* "Add the green onions", "the green onions go over it". */
static bool used_at(const struct checker *c, size_t i)
{
    const struct word *w = &c->r->words.at[i];
    size_t first = w->entry && w->entry->words_count > 1 ? w->entry_first : i;
    if (first && c->r->words.at[first - 1].tag == TAG_THE)
        first--;
    return (first && word_acts(&c->r->words.at[first - 1]))
           || (i + 2 < c->r->words.count && w[1].tag == TAG_ACTION && goes(c, i + 1, i + 2));
}

/* Whether something is done in the sentence. */
static bool acts_in(const struct checker *c, const struct sentence *s)
{
    for (size_t n = s->first; n <= s->last; n++)
        if (goes(c, n, s->last) && !(c->r->words.at[n].scope & SCOPE_NOT_DONE))
            return true;
    return false;
}

/* Whether word `i` speaks of the food in a later sentence, so near that it may be the same breath,
 * and puts it in. */
static bool used_soon(const struct checker *c, size_t i, struct span laid)
{
    const struct sentence *s = sentence_of(c->r, i), *then = sentence_of(c->r, laid.last);
    return s && then && s > then
           && (used_at(c, i) || (!(c->r->words.at[i].scope & SCOPE_NOT_DONE) && acts_in(c, s)));
}

/* "Orange is still sat there": no use of it. */
#define STILL_WORDS 5
static bool still_out(const struct checker *c, size_t i)
{
    struct span where, behind = {i + 1, i + STILL_WORDS};
    if (behind.last >= c->r->words.count)
        behind.last = c->r->words.count - 1;
    return said_find(&c->sayings, c->r, "still_out", behind, &where) && where.first <= i + 2;
}

bool used_behind(const struct checker *c, const struct entry *food, size_t word)
{
    for (size_t i = word + 1; i <= c->dish->words.last; i++)
        if (c->r->words.at[i].tag != TAG_INSIDE && speaks_of(c->r->words.at[i].entry, food)
            && !still_out(c, i) && in_dish(c, i) && used_at(c, i))
            return true;
    return false;
}

/* Whether the dish speaks of the food farther than BREATH_WORDS from words [first, last]. */
bool spoken_elsewhere(const struct checker *c, const struct entry *food, struct span where)
{
    const struct span laid = where;
    where.first = where.first > BREATH_WORDS ? where.first - BREATH_WORDS : 0;
    where.last += BREATH_WORDS;
    for (size_t i = c->dish->words.first; i <= c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag != TAG_INSIDE && speaks_of(w->entry, food)
            && !(i >= where.first && i <= where.last && !used_soon(c, i, laid)) && in_dish(c, i)
            && !still_out(c, i) && !(i > laid.last && w->scope & SCOPE_UNREAL && !used_at(c, i)))
            return true;
    }
    return false;
}
