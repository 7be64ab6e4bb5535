/* kitchen/caution.h: the published food-safety advice for the foods and methods of a dish. It
 * cautions and never clears. Made from grammars/common/caution-rules.tsv (when) and
 * safe-temperatures.tsv (which publication), and the language's caution-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_CAUTION_H
#define DISHTAKE_KITCHEN_CAUTION_H

#include "kitchen/food.h"
#include "model/recipe.h"

/* When a caution is due: an ingredient has one of the marks or is one of the foods, and the dish
 * has one of the actions. What is empty asks nothing; lists are divided by '|'. */
struct caution_rule {
    struct text id, foods, actions;
    uint64_t marks;
    uint64_t food_shapes, action_shapes; /* text_shape() of each of them */
    bool marked;                         /* it asks for marks */
    bool uncooked;                       /* only where nothing was heard that cooks by heat */
    struct text words, source;
    bool memory; /* the rule was not read in the publication or in a copy of it */
};

struct cautions {
    LIST(struct caution_rule) rules; /* in the order in which they are given */
};

struct kitchen;

bool cautions_load(struct cautions *s, struct arena *a, const struct pack *k, struct problems *p);

/* Fills dish->cautions; each names its row, its publication, and defers to local advice. */
void find_cautions(const struct kitchen *k, struct arena *a, struct dish *dish);

#endif
