/* split/end.h: where a dish is spoken of last.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_END_H
#define DISHTAKE_SPLIT_END_H

#include "split/border.h"

/* Moves the end of each dish to the sentence that speaks of it last, however much of other dishes
 * lies between: "and that smell is the bread". Its stretches stay as they are. `dish` says which
 * dish each of the `count` stretches belongs to, or NO_DISH. */
void find_ends(struct recording *r, const struct feature *f, const struct stretch *s, size_t count,
               const size_t *dish);

#endif
