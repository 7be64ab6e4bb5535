/* kitchen/allergen.h: which allergens of the US and EU lists the foods of a dish bring, and by
 * which ingredient. Made from grammars/common/allergens.tsv and allergen-names.tsv. Never says that
 * a dish is free of anything.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_ALLERGEN_H
#define DISHTAKE_KITCHEN_ALLERGEN_H

#include "kitchen/food.h"
#include "model/recipe.h"

struct allergen_food {
    const struct ref *us, *eu; /* by its nature, divided by "; ": "tree nuts (almond)" */
    const struct ref *us_check, *eu_check; /* often, by maker or recipe */
    bool ask;                              /* only a kind of food: which one must be asked */
};

/* One allergen by its names in the two laws; a law that does not list it has an empty name. */
struct allergen_name {
    struct text us, eu, shown;
    bool food; /* the law wants the kind named: "fish (cod)" */
};

struct allergens {
    LIST(struct allergen_food) foods;
    struct names names; /* of foods */
    LIST(struct allergen_name) list;
};

enum law {
    LAW_US = 1, /* 21 USC 321(qq): nine */
    LAW_EU = 2  /* Regulation (EU) No 1169/2011, Annex II: fourteen; the UK's list too */
};

struct kitchen;

bool allergens_load(struct allergens *s, struct arena *a, const struct pack *k, struct problems *p);

/* Fills dish->allergens, in the order of the ingredients; both foods of an alternative count,
 * garnishes too, what is only served beside does not. `ask` (may be NULL) gets the ids of
 * ingredients named by kind only ("nuts", "stock"). */
void find_allergens(const struct kitchen *k, struct arena *a, struct dish *dish, id_list *ask);

/* "Contains: milk, wheat, fish (anchovy, cod)" by the laws in `laws` (enum law, added up); empty
 * when none was found. What is only often so is left out: it stands in dish->allergens with
 * check_label. To be followed by PHRASE labels. */
struct text print_contains(const struct kitchen *k, struct arena *a, const struct dish *dish,
                           unsigned laws);

#endif
