/* split/snap.h: a dish begins with the words that announce it and ends with those that take leave
 * of it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_SNAP_H
#define DISHTAKE_SPLIT_SNAP_H

#include "split/border.h"

/* Moves the ends of the `count` stretches, which stay in order and apart: the start to where the
 * talk of the dish begins (start.h); the end to the dish's name or yield, else to the last
 * instruction. */
void snap_stretches(const struct recording *r, const struct feature *f, const struct borders *b,
                    struct stretch *s, size_t count);

#endif
