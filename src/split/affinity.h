/* split/affinity.h: what goes with what in the dishes that people cook (table "goes-with").
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_AFFINITY_H
#define DISHTAKE_SPLIT_AFFINITY_H

#include "pack/pack.h"

/* As many numbers as a row of the table has. */
#define AFFINITY_SIZE 12 /* a multiple of 4 */

/* What some sentences are about: the sum of the rows of their things. */
struct affinity {
    float at[AFFINITY_SIZE];
    float count; /* of things with a row */
};

/* Adds the row of a thing; `how` is "" for a food, a part or a dish's word, "to " for an action,
 * "in " for a vessel. Nothing is added where `t` has no such row, or is NULL. */
void affinity_add(struct affinity *sum, const struct table *t, const char *how, struct text word);
void affinity_join(struct affinity *sum, const struct affinity *more);
/* How well two go together, on average over their things: over 0 where such things stand in one
 * dish more often than by chance (pointwise mutual information), under 0 where they do less often;
 * nearer to 0 the fewer things there are. */
static inline double affinity_between(const struct affinity *a, const struct affinity *b);
/* How often a common dish that has the food is made of it first of all, 0 to 1: chicken mostly is,
 * garlic hardly ever. */
float affinity_lead(const struct table *t, struct text food);

/* ---- what a search asks of each dish of each way at each sentence, and so stands here */

/* So many things that tell nothing are taken to be there besides. */
#define AFFINITY_UNSURE 2.0

static inline double affinity_between(const struct affinity *a, const struct affinity *b)
{
    double product = 0;
    for (size_t n = 0; n < AFFINITY_SIZE; n += 4) {
        product += (double) (a->at[n] * b->at[n]);
        product += (double) (a->at[n + 1] * b->at[n + 1]);
        product += (double) (a->at[n + 2] * b->at[n + 2]);
        product += (double) (a->at[n + 3] * b->at[n + 3]);
    }
    return product / ((a->count + AFFINITY_UNSURE) * (b->count + AFFINITY_UNSURE));
}

#endif
