/* kitchen/food.h: the foods that have a published weight, by all their names.
 * Made from grammars/common/foods.tsv, food-weights.tsv, food-aliases.tsv (USDA SR28, public
 * domain) and the language's food-forms.tsv, food-modifiers.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_FOOD_H
#define DISHTAKE_KITCHEN_FOOD_H

#include "kitchen/unit.h"

/* What a row of weights may be used for. */
enum row_use {
    USE_FREELY,
    USE_OWN_MEASURE, /* USDA's rows disagree: never turned into a density */
    USE_NEVER        /* doubtful */
};

struct food_row {
    const struct ref *form; /* "chopped"; empty when the row is for the plain food */
    const struct unit *measure;
    struct ratio grams; /* of 1 measure */
    enum row_use use;
    const struct ref *usda_amount, *usda_measure, *usda_grams; /* as USDA has it, for the source */
    const struct ref *source; /* of a row that is not USDA's; else empty */
};

enum nutrient {
#define NUTRIENT(name, column) NUTRIENT_##name,
#include "kitchen/nutrients.def"
#undef NUTRIENT
    NUTRIENTS
};

struct food {
    struct text name, group; /* "unsalted butter", "dairy" */
    bool liquid, dry;  /* a metric kitchen measures it in mL; a US one in cups, though it is weighed
                          elsewhere */
    struct text also;  /* "stick=stalk": another word for one of its measures */
    struct text usual; /* the form or size when none is said: "large" egg, "packed" brown sugar */
    const struct ref *ndb, *usda; /* USDA's number and description of the record */
    double per_100g[NUTRIENTS];   /* NAN where USDA gives none */
    LIST(struct food_row) rows;
};

/* How well another name fits the food it is weighed as. */
enum fit {
    FIT_SAME,
    FIT_NEAR,     /* another food of about the same weight */
    FIT_ASK,      /* one of several foods that the name may mean */
    FIT_BY_WEIGHT /* the same by weight, not by volume: flaky salt */
};

struct food_name {
    const struct food *food;
    struct text form; /* the name says it: "cherry tomato" */
    enum fit fit;
};

struct foods {
    LIST(struct food) all;
    LIST(struct text) groups; /* of all foods, each once */
    LIST(struct food_name) named;
    struct names names;     /* -> named */
    struct names modifiers; /* words that change nothing: "ripe", "boneless" */
    struct names forms;     /* "minced" -> form_list */
    LIST(struct text) form_list;
    struct names parts; /* "lemon\tjuiced" -> part_list: the food that is then weighed */
    LIST(struct text) part_list;
};

/* Room for a name that is folded. */
#define FOLD_BYTES 288

bool foods_load(struct foods *f, const struct units *u, struct arena *a, const struct pack *k,
                struct problems *p);

/* The name itself, or without the modifiers in it ("large ripe tomato"). NULL when no food is known
 * by it. */
const struct food_name *food_find(const struct foods *f, struct text name);
/* The same look-up in another list of folded names. */
bool food_name_in(const struct foods *f, const struct names *list, struct text name, size_t *value);
/* The food that is weighed when this was done to it: "lemon", "juiced" -> "lemon juice"; else
 * empty. */
struct text food_part(const struct foods *f, struct text name, struct text done);
/* Both as they are looked up together, in `room`. */
struct text food_part_key(struct text name, struct text done, char room[2 * FOLD_BYTES]);
/* The forms of USDA's rows that a word stands for, divided by '|'; the word itself when the
 * language lists none. */
struct text food_forms(const struct foods *f, struct text word);

/* Lower case, no accents, spaces for hyphens, as names are looked up; empty when longer than a
 * third of FOLD_BYTES. */
struct text name_fold(struct text name, char room[FOLD_BYTES]);
/* The same to keep: the name itself, borrowed, where it is so already, else in the arena. */
struct text name_kept(struct arena *a, struct text name);

#endif
