/* build/ordered.h: whether a verb in its plain form, or one that a food does ("goes in"), tells
 * what to do.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_ORDERED_H
#define DISHTAKE_BUILD_ORDERED_H

#include "build/builder.h"

/* Whether chunk `i` is a verb that tells what to do here and now: "chop it", "the dough goes in",
 * but not "a chop", "or it'll stick", "before you cut it". */
bool is_ordered(const struct builder *b, size_t i);
/* "Wash the boards", "wipe down the counter": what is done to the kitchen, not to the food. */
bool is_tidying(const struct builder *b, size_t i);

#endif
