/* kitchen/plural.h: foods in the plural, where a text wants it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_PLURAL_H
#define DISHTAKE_KITCHEN_PLURAL_H

#include "model/recipe.h"
#include "pack/pack.h"

/* The plural of a word or words, as the pack has it; the words themselves where it has none. Arena
 * or `words`. */
struct text plural_of(const struct pack *k, struct arena *a, struct text words);
/* The line's food as that amount of it is written: "2 eggs" whatever was heard, "two cups of
 * blueberries" as it was said. Arena or the line's own. */
struct text food_counted(const struct pack *k, struct arena *a, const struct ingredient *line,
                         const struct amount *amount);

#endif
