/* build/beside.h: what stands right beside some words, for what is learned of how cooks talk.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_BESIDE_H
#define DISHTAKE_BUILD_BESIDE_H

#include "model/recording.h"

/* Of a tag that is none: a stop or the end, a comma. */
enum { BESIDE_STOP = 0, BESIDE_COMMA = 1 };

/* The tag that stands before word `first`, or behind word `last`. */
unsigned char tag_before(const struct recording *r, size_t first);
unsigned char tag_behind(const struct recording *r, size_t last);

#endif
