/* kitchen/measure.h: amounts as the spoons, cups and scales of a kitchen can measure them.
 * Made from grammars/common/measures.tsv: which measures exist, and how fine an amount of each size
 * is measured.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_MEASURE_H
#define DISHTAKE_KITCHEN_MEASURE_H

#include "kitchen/unit.h"
#include "model/recipe.h"

#define RUNG_PARTS 8

/* From `least` on an amount is written in `unit`, in wholes and in these parts, rounded to `step`
 * of `step_unit`. */
struct rung {
    struct text ladder; /* the kitchen, or "weight", "grams", "liters" */
    const struct unit *unit, *step_unit;
    struct ratio least, step;
    struct ratio parts[RUNG_PARTS];
    size_t parts_count;
    bool decimal; /* a scale: two or three figures instead of spoons */
};

struct ladders {
    LIST(struct rung) rungs; /* of one ladder together, the largest first */
};

struct kitchen;

bool ladders_load(struct ladders *l, const struct units *u, struct arena *a, const struct pack *k,
                  struct problems *p);

/* An amount in measures that exist: "3/4 cup", "1 tablespoon"; they add up to it or to what it was
 * rounded to. */
#define MEASURED_PARTS 3
struct measurable {
    struct amount parts[MEASURED_PARTS];
    size_t count;
    bool rounded;
};

/* One end of an amount, `n` of `unit`. Never rounds to nothing. A unit in no ladder stays, in
 * quarters. */
struct measurable measurable_number(const struct kitchen *k, const struct profile *profile,
                                    struct ratio n, const struct unit *unit);
/* Whether a spoon, a cup or a scale shows the amount, in wholes, halves or the parts of its rungs:
 * none shows 1⅓ tablespoons. True of a unit in no ladder. */
bool is_measured(const struct kitchen *k, const struct profile *profile,
                 const struct amount *amount);
/* "¾ cup plus 1 tablespoon", "1 to 1½ cups", in words; `note` (may be NULL) says what it was
 * rounded from, or is empty. */
struct text print_measurable(const struct kitchen *k, struct arena *a,
                             const struct profile *profile, const struct amount *amount,
                             struct text *note);

#endif
