/* split/unite.h: what was taken for two dishes and is one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_UNITE_H
#define DISHTAKE_SPLIT_UNITE_H

#include "split/alike.h"

/* Told of two dishes that are compared, and x[ALIKES] of them. */
typedef void pair_teller(void *to, size_t a, size_t b, const double *x);

/* Tells all pairs of dishes that are near each other. */
void tell_pairs(const struct wholes *w, pair_teller *tell, void *to);
/* Makes one of dishes that are alike: changes `dish`, which is w->dish, and numbers them anew in
 * the order in which they begin; returns how many there are then. `wanted`: so many if there are
 * enough, the likest made one; 0: nobody knows. Time grows with what is said. */
size_t unite_dishes(const struct wholes *w, size_t wanted, size_t *dish);

#endif
