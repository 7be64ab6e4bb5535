/* build/quantity.h: matches -> amounts, lengths of time, temperatures.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_QUANTITY_H
#define DISHTAKE_BUILD_QUANTITY_H

#include "build/chunk.h"
#include "model/recipe.h"

struct said_amount {
    struct amount amount, package;
    bool vague;   /* no amount, or one in handfuls and splashes */
    bool unsized; /* in a unit of no set size: spoons */
    bool more;    /* "another", "two more" */
    bool each;    /* of every food in the list */
};

/* The amount of a line: of its slot `amount` or `number`. */
void line_amount(const struct recording *r, const struct sentence *s, const struct match *line,
                 struct said_amount *out);
/* The value of the number at these words. */
void number_at(const struct recording *r, const struct sentence *s, struct span words,
               struct ratio *low, struct ratio *high);
/* A match of the kind `amount` or `vague`. */
void read_amount(const struct recording *r, const struct sentence *s, const struct match *m,
                 struct said_amount *out);

/* "Three tablespoons plus a teaspoon": adds what the line says on top, in the unit of the first;
 * not where the two units have no size in common ("a stick plus two tablespoons"). */
void add_top(const struct recording *r, const struct pack *k, const struct sentence *s,
             const struct match *line, struct said_amount *out);

#endif
