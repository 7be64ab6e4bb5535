/* build/wordmeasure.h: lengths of time and amounts that cooks say otherwise than recipes print
 * them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WORDMEASURE_H
#define DISHTAKE_BUILD_WORDMEASURE_H

#include "build/builder.h"
#include "build/prose.h"

/* Where such a measure begins at word `*i` and ends by `last`, says it as a recipe does: "1½ hours"
 * of "an hour and a half", "30 minutes" of "half an hour", "1 to 2 minutes" of "a minute or two",
 * "2 tablespoons" of "two tablespoon". `*i` becomes its last word. False for any other: nothing is
 * said then. */
bool say_measure(const struct builder *b, struct prose *p, size_t *i, size_t last);

#endif
