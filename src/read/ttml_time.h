/* read/ttml_time.h: times as TTML writes them. Source: W3C, Timed Text Markup Language 2, of
 * November 2018, section 12.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_TTML_TIME_H
#define DISHTAKE_READ_TTML_TIME_H

#include "base/text.h"

/* What a document counts by, each a second; none is 0. */
struct ttml_rates {
    double frames, ticks;
};

/* "00:01:02.500", "00:01:02:12", "12.5s", "48f": seconds. False, with `seconds` untouched, for what
 * is no time. */
bool ttml_time(struct text value, const struct ttml_rates *rates, double *seconds);

#endif
