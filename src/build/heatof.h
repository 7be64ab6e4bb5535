/* build/heatof.h: what a temperature is of: "oven", "oil", "inside" (of a food), "water" or "pan".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEATOF_H
#define DISHTAKE_BUILD_HEATOF_H

#include "build/builder.h"

/* By the words around chunk `c`, which has the match of a temperature rule, else by what the
 * sentences before spoke of; empty where nothing tells. */
struct text temperature_of(const struct builder *b, const struct chunk *c);
/* Whether a word of the sentence itself tells what chunk `c` is the heat of. */
bool says_heated(const struct builder *b, const struct chunk *c);
/* Remembers what this sentence says is hot, for numbers in the next ones. */
void note_heated(struct builder *b);

#endif
