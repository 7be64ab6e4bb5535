/* kitchen/weight_row.h: which of a food's published weights answers for what was said of it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_WEIGHT_ROW_H
#define DISHTAKE_KITCHEN_WEIGHT_ROW_H

#include "kitchen/kitchen.h"

/* The rows taken: those of the best form; of each form, the measure that is nearest. */
struct choice {
    size_t rank;
    struct ratio min, max; /* grams of one measure */
    struct ratio nearest;
    const struct food_row *row; /* the first one taken; NULL: none answers */
    bool mixed;                 /* rows of different forms */
};

/* The row of `unit`, or near it, that says most of what the line says of its food, known by `name`.
 */
struct choice choose_row(const struct kitchen *k, const struct ingredient *line,
                         const struct food_name *name, const struct unit *unit);

/* Whether what was not said makes it differ so much that it is asked instead of answered. */
bool is_too_wide(const struct choice *c);

#endif
