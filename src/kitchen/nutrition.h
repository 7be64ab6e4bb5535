/* kitchen/nutrition.h: an estimate of what a serving holds, from the USDA records of the foods that
 * were weighed.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_NUTRITION_H
#define DISHTAKE_KITCHEN_NUTRITION_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* Less of the dish's weight than this, and there is no estimate. */
#define NUTRITION_SHARE 0.9

struct nutrition {
    bool known;
    double of_serving[NUTRIENTS]; /* kcal, g, mg; NAN where USDA gives none for one of the foods */
    double share;                 /* of the dish's weight that the estimate covers, 0 to 1 */
    struct ratio servings;
    struct text
        about; /* that it is an estimate, its share and source, in words; else why there is none */
};

/* Needs dish->yield in servings, and the weights of its lines. A line with an amount and no weight,
 * or with a weight and no record, counts against the share: the first as much as an average line.
 * Lines without any amount (to taste) are left out. */
struct nutrition estimate_nutrition(const struct kitchen *k, struct arena *a,
                                    const struct dish *dish);

#endif
