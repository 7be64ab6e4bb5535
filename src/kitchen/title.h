/* kitchen/title.h: a title for a dish that nobody names, made of what goes in and what is done with
 * it. Made from the language's title-rules.tsv and title-foods.tsv. Common practice of cookbooks,
 * no source.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_TITLE_H
#define DISHTAKE_KITCHEN_TITLE_H

#include "kitchen/food.h"
#include "model/recipe.h"

/* One of the words of a cell: a food, a group, an action ... or a mark of such. */
struct title_choice {
    struct text word;
    uint64_t mark; /* 0: the word is no mark */
};

/* "stock|water:600" */
struct title_choices {
    const struct title_choice *at;
    size_t count;
    double grams; /* 0: none are given */
};

/* Divided by '&': all must hold. */
typedef LIST(struct title_choices) condition_list;

/* A row of title-foods.tsv: how much a gram of a food says about a dish. */
struct title_food {
    struct title_choices foods; /* foods, marks or groups; none: every other */
    double savory, sweet;
    double usual;      /* grams, where nothing says how many */
    struct text shown; /* what a title calls it: "beef" for ground beef; empty: as it was said */
};

/* Foods that a title names at most. */
#define TITLE_FOODS 2

/* A row of title-rules.tsv: what a kind of dish is made of and what is done with it. All that it
 * asks for must hold; what is empty asks for nothing. */
struct title_rule {
    struct text said;       /* kinds of the dish's word that the cook said; "*" is any */
    condition_list foods;   /* at least so many grams of these together */
    condition_list without; /* none of these may be in it */
    condition_list actions; /* base forms, or marks of actions */
    struct title_choices undone;
    condition_list vessels;
    struct text heat; /* "yes", "no" */
    bool sweet;       /* foods are compared by what they say about something sweet or baked */
    struct title_choices unnamed; /* foods that go without saying: the rice of a risotto */
    /* The title with no main food, one, or two; empty: then this row makes none. {1} {2} are foods,
     * {4} {5} the same in the plural where there are several, {3} the dish's word. */
    struct text titles[TITLE_FOODS + 1];
};

struct titles {
    LIST(struct title_food) foods;
    LIST(struct title_rule) rules; /* the first that fits is taken */
};

/* What the cook called the dish, though it was no name. */
struct dish_word {
    struct text kind, words; /* "pancake", "flapjacks"; both empty: nothing */
};

struct kitchen;

/* False, with a problem at its line, when a row asks for what the pack does not know. */
bool titles_load(struct titles *t, const struct foods *f, struct arena *a, const struct pack *k,
                 struct problems *p);

/* The title, not capitalised, in the arena; empty when no row makes one. `named`: the word is all
 * of the cook's own title, which is filled up by one food that the dish is clearly about, or stays.
 */
struct text make_title(const struct kitchen *k, struct arena *a, const struct profile *profile,
                       const struct dish *d, struct dish_word said, bool named);

#endif
