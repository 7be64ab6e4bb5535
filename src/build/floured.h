/* build/floured.h: "a little flour on the board": it is strewn there, and goes into nothing.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_FLOURED_H
#define DISHTAKE_BUILD_FLOURED_H

#include "build/builder.h"

/* Whether the food of chunk `i` is flour of no amount that lies on a board or table. */
bool is_on_board(const struct builder *b, size_t i);
/* The first such food; NOWHERE when there is none. */
size_t find_floured(const struct builder *b);

#endif
