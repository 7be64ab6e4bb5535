/* build/yieldplace.h: where in the dish the words of a yield are said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_YIELDPLACE_H
#define DISHTAKE_BUILD_YIELDPLACE_H

#include "build/builder.h"

/* The first word of the sentences in which it is said to be cut. */
size_t cut_from(const struct builder *b);
/* Whether something is cut there, before the match. */
bool is_cut_before(const struct builder *b, const struct match *m);
/* Whether the dish was made before, and nothing goes into it any more: what is filled then is the
 * dish, whatever else is said of it. */
bool dish_is_filled(const struct builder *b);
/* Whether the sentence is among the dish's last ones, and the dish was made before. */
bool is_at_end(const struct builder *b);
/* Whether hardly anything is done in the dish so far, and no more than its main food is named
 * before: talk that leads to a dish has steps that are none. */
bool is_at_start(const struct builder *b);
/* Whether the sentence names a dish, or the one before it. */
bool is_named(const struct builder *b);

#endif
