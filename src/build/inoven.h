/* build/inoven.h: whether the dish is in the oven now, or goes in.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_INOVEN_H
#define DISHTAKE_BUILD_INOVEN_H

#include "build/builder.h"

/* Whether what was named at word `at`, such as a tin for the oven or a barbecue, was so after any
 * pan. */
bool is_after_pan(const struct builder *b, size_t at);
/* Whether the dish is in the oven; `heat` has the marks of what heated it last. */
bool is_in_oven(const struct builder *b, uint64_t heat);
/* Whether the sentence's time is too short for baking. */
bool is_too_short(const struct builder *b);
/* Whether it has been put in a tin, after any pan, and the sentence's time is one of baking. */
bool bakes_in_tin(const struct builder *b);
/* "In it goes, forty minutes", "back in for a quarter of an hour": it goes in now. */
bool goes_in_oven(const struct builder *b, uint64_t heat);

#endif
