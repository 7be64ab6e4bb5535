/* build/timepast.h: times that were spoken of and that nothing takes: they went by, or are the
 * cook's.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_TIMEPAST_H
#define DISHTAKE_BUILD_TIMEPAST_H

#include "build/builder.h"

/* Whether the sentence tells of waiting: "chill", "overnight". */
bool waits_here(const struct builder *b);
/* Whether the time in chunk `index` is a length of time at all, no hour of the day or age. */
bool is_length(const struct builder *b, size_t index);
/* Whether it is told as over, of a time that the dish has already: `min` to `max` seconds. */
bool is_over(const struct builder *b, size_t index, double min, double max);
/* Both: whether it is one that something takes, not one that went by, or that the cook has. */
bool takes_length(const struct builder *b, size_t index);
/* "That was half an hour", "so it took us ten minutes": it is told of a step that there is
 * already. */
bool is_spent(const struct builder *b, size_t index);

#endif
