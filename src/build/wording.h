/* build/wording.h: the pieces of a written step: foods, numbers, heat, words as they were said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WORDING_H
#define DISHTAKE_BUILD_WORDING_H

#include "build/builder.h"
#include "build/prose.h"
#include "build/stepwords.h"

/* Words as they were said: numbers as digits, no fillers. */
void say_words(const struct builder *b, struct prose *p, size_t first, size_t last);
/* A food as a step names it; `the`: with an article where its amount is left out. */
void say_food(const struct builder *b, struct prose *p, const struct chunk *c, bool the);
/* Any chunk. */
void say_chunk(const struct builder *b, const struct step *s, struct prose *p,
               const struct chunk *c);

#endif
