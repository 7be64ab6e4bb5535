/* write/stamp.c
 * SPDX-License-Identifier: MIT */
#include "write/stamp.h"

#include <math.h>

unsigned long long stamp_milliseconds(double seconds)
{
    return seconds > 0 ? (unsigned long long) llround(seconds * 1000) : 0;
}

struct text stamp_text(struct arena *a, double seconds, char point)
{
    unsigned long long ms = stamp_milliseconds(seconds);
    return arena_format(a, "%02llu:%02llu:%02llu%c%03llu", ms / 3600000, ms / 60000 % 60,
                        ms / 1000 % 60, point, ms % 1000);
}
