/* build/wording.h: the pieces of a written step: foods, numbers, heat, words as they were said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WORDING_H
#define DISHTAKE_BUILD_WORDING_H

#include "build/builder.h"
#include "build/prose.h"

enum step_column { STEP_KIND, STEP_KEY, STEP_TEXT }; /* of the table step-words */

/* The pack's text for `key` under `kind` of the table step-words; empty when it has no such row. */
struct text step_text(const struct pack *k, const char *kind, struct text key);
/* The pack's text for a single word of written steps (table step-words); empty when it has none. */
struct text step_word(const struct pack *k, const char *key);
/* Whether the table lists `word` under `kind`. */
bool step_words_list(const struct pack *k, const char *kind, struct text word);
/* Whether the word of chunk `c` is listed under `kind` ("talk", "after"). */
bool is_step_word(const struct builder *b, const struct chunk *c, const char *kind);

/* Words as they were said: numbers as digits, no fillers. */
void say_words(const struct builder *b, struct prose *p, size_t first, size_t last);
/* A food as a step names it; `the`: with an article where its amount is left out. */
void say_food(const struct builder *b, struct prose *p, const struct chunk *c, bool the);
/* Any chunk. */
void say_chunk(const struct builder *b, const struct step *s, struct prose *p,
               const struct chunk *c);

#endif
