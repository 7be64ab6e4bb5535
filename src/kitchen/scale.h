/* kitchen/scale.h: a dish for more people, or fewer. The amounts stay exact, so that twice and then
 * half is the same dish; what a cook can measure is found when they are written (measure.h). What
 * does not grow with the dish is said in words beside it. Made from the language's
 * scaling-notes.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_SCALE_H
#define DISHTAKE_KITCHEN_SCALE_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* Beyond these a factor is taken for a mistake. */
#define SCALE_MOST 1000

/* What to multiply by to make `wanted` of `of` (empty: whatever the yield counts). A range yields
 * by its middle. False, with a problem in `p`, when no yield is known, nothing is wanted, or it is
 * a yield of another kind. */
bool scale_to_yield(const struct yield *yield, struct ratio wanted, struct text of,
                    struct ratio *factor, struct problems *p);

struct scale_note {
    struct text note;
    id_list because; /* ingredient ids or step ids; empty when it is of the whole dish */
};
typedef LIST(struct scale_note) scale_note_list;

/* Multiplies every ingredient, its weight, the shopping lines and the yield; times and temperatures
 * stay. Appends to `notes` (may be NULL) what the cook should know. False, with a problem, and the
 * dish untouched, for a factor that is no number, not above 0, or too large or small. */
bool scale_dish(const struct kitchen *k, struct arena *a, struct dish *dish, struct ratio factor,
                scale_note_list *notes, struct problems *p);

#endif
