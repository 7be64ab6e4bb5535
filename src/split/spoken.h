/* split/spoken.h: which things are spoken of behind a border, and whether they were before.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_SPOKEN_H
#define DISHTAKE_SPLIT_SPOKEN_H

#include "split/evidence.h"

/* Fills in what of x[EVIDENCES] tells that, for the border before sentence `i`. */
void find_spoken(const struct talk *t, size_t i, double *x);

#endif
