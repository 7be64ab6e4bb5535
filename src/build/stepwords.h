/* build/stepwords.h: the language's words of written steps: rows of the table step-words.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPWORDS_H
#define DISHTAKE_BUILD_STEPWORDS_H

#include "build/builder.h"

enum step_column { STEP_KIND, STEP_KEY, STEP_TEXT }; /* of the table step-words */

/* The table's text for `key` under `kind`; empty when it has no such row, or there is no table. */
struct text step_cell(const struct table *t, struct text kind, struct text key);

/* The same of the pack. Here, as are those below, so that a literal's length is known at the call:
 * each word of a step is asked for a dozen times. */
static inline struct text step_text(const struct pack *k, const char *kind, struct text key)
{
    return step_cell(pack_table(k, "step-words"), (struct text){kind, strlen(kind)}, key);
}

/* The same, with the table at hand. */
static inline struct text step_row(const struct builder *b, const char *kind, struct text key)
{
    return step_cell(b->step_words, (struct text){kind, strlen(kind)}, key);
}

/* The pack's text for a single word of written steps; empty when it has none. */
static inline struct text step_word(const struct pack *k, const char *key)
{
    return step_text(k, "word", (struct text){key, strlen(key)});
}

/* Whether the table lists `word` under `kind`. */
static inline bool step_words_list(const struct pack *k, const char *kind, struct text word)
{
    return step_text(k, kind, word).length > 0;
}

/* Whether the word of chunk `c` is listed under `kind` ("talk", "after"). */
static inline bool is_step_word(const struct builder *b, const struct chunk *c, const char *kind)
{
    return step_row(b, kind, b->r->words.at[c->last].key).length > 0;
}

#endif
