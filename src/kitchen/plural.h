/* kitchen/plural.h: foods in the plural, where a text wants it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_PLURAL_H
#define DISHTAKE_KITCHEN_PLURAL_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* The plural of a word or words, as the pack has it; the words themselves where it has none. Arena
 * or `words`. */
struct text plural_of(const struct pack *k, struct arena *a, struct text words);
/* The line's food as that amount of it is written: "2 eggs" whatever was heard, "2 cups
 * blueberries" as it was said, there or where the food is named again; a number that lacks its unit
 * counts none. Arena or the line's own. */
struct text food_counted(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                         const struct amount *amount);

#endif
