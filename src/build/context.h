/* build/context.h: where the dish is now, and what a weak action means there.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_CONTEXT_H
#define DISHTAKE_BUILD_CONTEXT_H

#include "build/builder.h"

/* No chunk. */
#define NOWHERE SENTENCE_WORDS

enum context_column { CONTEXT_SAID, CONTEXT_WHERE, CONTEXT_ACTION }; /* of context-actions.tsv */

/* What `said`, of the verb in chunk `verb` or of none (NOWHERE), means where the dish is now:
 * "put it in the oven" is to bake it. The pack's table context-actions knows;
 * without a row it is what was said. */
struct text action_in_context(const struct builder *b, struct text said, size_t verb);

/* The marks of the dish's last action that heats anything; 0 when nothing was heated. */
uint64_t last_heat(const struct builder *b);

/* Whether a dough with yeast waits in the warm: nothing was baked yet, and the sentence says a time
 * in which it can rise. */
bool is_proving(const struct builder *b);

/* "A litre of stock on top": the sentence's first food is poured, not sprinkled. */
bool is_poured(const struct builder *b);

#endif
