/* kitchen/aisle.h: where a shop keeps a food. Made from the language's shop-aisles.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_AISLE_H
#define DISHTAKE_KITCHEN_AISLE_H

#include "kitchen/food.h"
#include "model/recipe.h"

struct aisle {
    struct text name; /* "Vegetables and herbs" */
    size_t order;     /* as a shop is walked: the order of the table */
    bool pantry;      /* a staple most kitchens have */
    bool skip;        /* not bought: water */
};

struct aisles {
    LIST(struct aisle) all;
    struct names by_food, by_group, by_mark;
    struct aisle other; /* of a food that no row is for */
};

bool aisles_load(struct aisles *s, struct arena *a, const struct pack *k, struct problems *p);

/* By the food's own row, by the group of the food it is weighed as (NULL: none), by the marks of
 * its lexicon entry. */
const struct aisle *aisle_of(const struct aisles *s, struct text key, const struct food *food,
                             const struct entry *entry);

/* Whether a lexicon entry (NULL: none) has the mark of that name. */
bool entry_has_mark(const struct entry *entry, struct text mark);

#endif
