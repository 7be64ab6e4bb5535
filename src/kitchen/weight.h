/* kitchen/weight.h: grams of an amount of a food, and back, by published weights; each with its
 * source.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_WEIGHT_H
#define DISHTAKE_KITCHEN_WEIGHT_H

#include "kitchen/convert.h"

/* What one measure of a food weighs, as an interval where that depends on what was not said. */
struct measured {
    bool known;
    struct ratio min, max; /* grams of one measure */
    struct text source;    /* arena */
    const struct food *food;
    struct text why_not; /* arena: why it is not known */
};

/* A food as it was said. Only the names and what was done to it are looked at. */
struct measured weigh_one(const struct kitchen *k, struct arena *a, const struct profile *profile,
                          const struct ingredient *line, const struct unit *unit);

/* The weight of an ingredient line. What was said as a weight, package included, is taken as said;
 * everything else needs a row of grammars/common/food-weights.tsv, and where none fits `known` is
 * false and `why_not` (may be NULL) says why, in the language's words. Never an infinity: "at
 * least" has no weight. */
struct weight weigh(const struct kitchen *k, struct arena *a, const struct profile *profile,
                    const struct ingredient *line, struct text *why_not);

/* The published food that the line is weighed as; NULL when there is none. */
const struct food *weighed_as(const struct kitchen *k, const struct ingredient *line);

#endif
