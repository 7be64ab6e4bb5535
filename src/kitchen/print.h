/* kitchen/print.h: how numbers, amounts and lengths of time are written. All texts are made in the
 * arena.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_PRINT_H
#define DISHTAKE_KITCHEN_PRINT_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

enum print_words {
    WORDS_WHOLE, /* "2 tablespoons" */
    WORDS_BRIEF  /* "2 Tbsp" */
};

/* "1½" where a kitchen has such a measure; else decimals, "0.35", at most four places and none that
 * end in 0. `decimal` asks for decimals everywhere, as with grams. Empty for a none. */
struct text print_number(struct arena *a, struct ratio n, bool decimal);

/* "about 2 to 3 tablespoons", "at least 200 g", "½ teaspoon", "2"; empty for an amount that is not
 * known. */
struct text print_amount(const struct kitchen *k, struct arena *a, const struct amount *amount,
                         enum print_words words);
/* With what it is packed in: "1 can (400 g)". */
struct text print_packed(const struct kitchen *k, struct arena *a, const struct amount *amount,
                         const struct amount *package, enum print_words words);
/* "25 to 30 minutes", "1 hour 30 minutes", "at least 8 hours"; seconds. A range is in one unit
 * where both ends are below a hundred of it: "8 hours 20 minutes to 12 hours 20 minutes". */
struct text print_time(const struct kitchen *k, struct arena *a, double min, double max,
                       enum print_words words);
/* The same of a dish's summary: from ten minutes on it is rounded up to whole ones. */
struct text print_sum_of_times(const struct kitchen *k, struct arena *a, const struct time_sum *t);

/* "350 °F", "gas mark 4": from `low` to `high`, one number where they are the same. `scale` is
 * 'F', 'C' or 'G'. */
struct text print_degrees(const struct kitchen *k, struct arena *a, struct ratio low,
                          struct ratio high, char scale);

/* The fraction that begins `t` with one of Unicode's signs ("½"), and how many bytes it takes; none
 * when it does not. */
struct ratio fraction_read(struct text t, size_t *length);

#endif
