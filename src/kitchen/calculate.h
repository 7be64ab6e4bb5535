/* kitchen/calculate.h: one line of kitchen arithmetic in words: "2 cups flour" in "gram". What
 * `dishtake measure` asks.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_CALCULATE_H
#define DISHTAKE_KITCHEN_CALCULATE_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* What a line is answered with: the tables, the cook's measures, where texts and problems go. */
struct asked {
    const struct kitchen *k;
    struct arena *a;
    const struct profile *profile;
    struct problems *problems;
};

struct calculation {
    struct text said, result; /* "2 cups flour", "250 grams" */
    struct text line;         /* both: "2 cups flour = 250 grams" */
    struct text source;       /* the row or the law that it comes from; empty for degrees */
    struct text rounding;     /* how it was rounded, in words */
};

/* `input` is NUMBER [UNIT] [of] [FOOD] or a temperature ("350 F", "gas mark 4"); a number is 2,
 * 1/2, 1 1/2, 2.5, 1½, or two of them for a range: 2-3. `to` is a unit, a scale, or empty: as the
 * kitchen would measure it. False, with a problem that says what would be right, when something is
 * not known or too large. */
bool calculate(const struct asked *q, struct text input, struct text to, struct calculation *out);

#endif
