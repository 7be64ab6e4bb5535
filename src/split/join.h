/* split/join.h: which threads are dishes.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_JOIN_H
#define DISHTAKE_SPLIT_JOIN_H

#include "split/border.h"

/* For each stretch the number of the dish that it belongs to: its thread's, or where that is too
 * little for a dish (a tip, a tour of the shop) that of the stretch before it that speaks of the
 * same things; NO_DISH where there is none. Dishes are numbered from 0 in the order in which they
 * begin; returns how many there are. */
size_t join_stretches(const struct recording *r, const struct feature *f, const struct stretch *s,
                      size_t count, size_t *dish);

#endif
