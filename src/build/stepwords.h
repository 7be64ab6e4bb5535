/* build/stepwords.h: the language's words of written steps: rows of the table step-words.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPWORDS_H
#define DISHTAKE_BUILD_STEPWORDS_H

#include "build/builder.h"

enum step_column { STEP_KIND, STEP_KEY, STEP_TEXT }; /* of the table step-words */

/* The pack's text for `key` under `kind` of the table step-words; empty when it has no such row. */
struct text step_text(const struct pack *k, const char *kind, struct text key);
/* The same, with the table at hand. */
struct text step_row(const struct builder *b, const char *kind, struct text key);
/* The pack's text for a single word of written steps (table step-words); empty when it has none. */
struct text step_word(const struct pack *k, const char *key);
/* Whether the table lists `word` under `kind`. */
bool step_words_list(const struct pack *k, const char *kind, struct text word);
/* Whether the word of chunk `c` is listed under `kind` ("talk", "after"). */
bool is_step_word(const struct builder *b, const struct chunk *c, const char *kind);

#endif
