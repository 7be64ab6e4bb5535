/* build/timehere.h: times that count although what stands before them is denied or supposed.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_TIMEHERE_H
#define DISHTAKE_BUILD_TIMEHERE_H

#include "build/builder.h"

/* "Don't touch it, ten minutes" is a wait of ten minutes, "if it shrinks back, leave it five
 * minutes" a rest; "not an hour" is none, nor what a story tells. */
bool is_time_here(const struct builder *b, size_t index);

#endif
