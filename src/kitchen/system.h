/* kitchen/system.h: an ingredient's amount as a US or a metric recipe would give it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_SYSTEM_H
#define DISHTAKE_KITCHEN_SYSTEM_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

enum system { SYSTEM_US, SYSTEM_METRIC };

/* The line's amount in the other system, rounded as a kitchen measures; where it is in that system
 * already, or is counted, or no published weight fits, `known` is false: it is then printed as it
 * was said. To metric: liquids in mL by NIST's kitchen equivalents, all else in grams by its own
 * weight, but spoons of less than 10 g stay spoons. To US: liquids and dry goods in cups and
 * spoons, all else in ounces and pounds. `source` (may be NULL) is where the figure comes from. */
struct amount amount_in_system(const struct kitchen *k, struct arena *a,
                               const struct profile *profile, const struct ingredient *line,
                               enum system system, struct text *source);

#endif
