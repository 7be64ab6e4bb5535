/* build/preheat.h: which dish an oven's heat is of that is said before the dish begins.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_PREHEAT_H
#define DISHTAKE_BUILD_PREHEAT_H

#include "model/recording.h"

/* The dish for which sentence `n`, which is no part of any, sets the oven: the next one that
 * bakes, else the next one; NULL where it sets none, or no dish begins soon. */
const struct dish *preheated_dish(const struct recording *r, size_t n);

#endif
