/* build/timeeach.h: what a length of time is counted by.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_TIMEEACH_H
#define DISHTAKE_BUILD_TIMEEACH_H

#include "build/builder.h"

/* "side" or "batch", of the length of time in chunk `index`; empty: it is one for all. */
struct text counted_by(const struct builder *b, size_t index);

#endif
