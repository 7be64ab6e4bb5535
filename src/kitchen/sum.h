/* kitchen/sum.h: amounts of one food added up: each unit of measure with those that it goes into.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_SUM_H
#define DISHTAKE_KITCHEN_SUM_H

#include "kitchen/weight.h"

/* What adding needs. */
struct adder {
    const struct kitchen *k; /* borrowed, as is the profile */
    struct arena *a;
    const struct profile *profile; /* says how large a cup is */
};

/* A sum of amounts that can be added: of one dimension, or of one thing that is counted. */
struct sum {
    const struct unit *unit; /* the largest one that was said */
    struct amount total, package;
};

struct sums {
    LIST(struct sum) all;
    bool plus_more;
    size_t measured; /* lines that had an amount */
};

/* What the lines come to; in the arena. The same for any order of them. */
struct sums sum_lines(const struct adder *with, const struct ingredient *const *lines,
                      size_t count);

#endif
