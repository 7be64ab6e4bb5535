/* split/passing.h: names said in passing.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_PASSING_H
#define DISHTAKE_SPLIT_PASSING_H

#include "split/border.h"

/* "It does six, that rhubarb crumble": the last words in the stretch that stand before a dish's
 * word and go with it; first > last when there are none. Sets the sentence that says it. */
struct span named_in_passing(const struct recording *r, struct stretch s, size_t *sentence);

#endif
