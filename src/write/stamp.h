/* write/stamp.h: times as caption and chapter files have them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_STAMP_H
#define DISHTAKE_WRITE_STAMP_H

#include "base/arena.h"

/* "01:02:33.000", to the millisecond; `point` is '.' (WebVTT, Podlove) or ',' (SubRip). */
struct text stamp_text(struct arena *a, double seconds, char point);
/* Milliseconds; never below 0. */
unsigned long long stamp_milliseconds(double seconds);

#endif
