/* check/spoons.c: "two spoons of oil": which spoon was not heard, and a tablespoon holds three
 * times as much as a teaspoon.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

/* "A spoon of it. What spoon? The big one, that's a tablespoon": it is told so soon,
 * or in the words themselves: "a dessert spoon". */
#define TOLD_WORDS 16
/* "Salt, one spoon". */
#define FOOD_WORDS 3

static const struct word *food_among(const struct checker *c, size_t first, size_t last)
{
    for (size_t i = first; i <= last && i < c->r->words.count; i++)
        if (c->r->words.at[i].tag == TAG_FOOD && c->r->words.at[i].entry)
            return &c->r->words.at[i];
    return NULL;
}

/* The food that the spoons are of: behind them ("of" or not), or else right before; NULL where it
 * is something made ("a spoon of the sauce on each"). */
static const struct word *food_of_spoons(const struct checker *c, struct span said)
{
    const struct word *w = food_among(c, said.first, said.last);
    return w ? w : food_among(c, said.last + 1, said.last + FOOD_WORDS);
}

bool spoon_told(const struct checker *c, struct span said)
{
    struct span where, behind = {said.last, said.last};
    while (behind.last + 1 < c->r->words.count && behind.last < said.last + TOLD_WORDS
           && (behind.last + 1 <= said.last + FOOD_WORDS
               || c->r->words.at[behind.last + 1].tag != TAG_FOOD))
        behind.last++;
    return said_find(&c->sayings, c->r, "spoon_kind", said, &where)
           || said_find(&c->sayings, c->r, "spoon_told", behind, &where)
           || said_with(c, "for_each", said);
}

bool says_spoon(const struct checker *c, struct span words)
{
    struct span where;
    return said_find(&c->sayings, c->r, "which_spoon", words, &where)
           && !said_find(&c->sayings, c->r, "spoon_kind", where, &where);
}

static void find_spoons_in(struct checker *c, struct span part)
{
    struct span where;
    while (part.first <= part.last && said_find(&c->sayings, c->r, "which_spoon", part, &where)) {
        const struct word *food = food_of_spoons(c, where);
        part.first = where.last + 1;
        if (food && !spoon_told(c, where) && !(c->r->words.at[where.first].scope & SCOPE_NOT_DONE))
            REPORT_PLAIN(c, which_spoon,
                         ((struct subject_of){c->r->words.at[where.first].start, where,
                                              entry_shown(food->entry)}));
    }
}

void find_spoons(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++)
        find_spoons_in(c, c->parts.at[i]);
}
