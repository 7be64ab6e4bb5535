/* model/recipe.h: a dish as it will be written: ingredient lines, steps, times, yield. Data only.
 * Words are numbered through the whole transcript; ids are made of them, so they outlive a better
 * grammar. Everything lives in the recording's arena unless a field says otherwise.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MODEL_RECIPE_H
#define DISHTAKE_MODEL_RECIPE_H

#include "base/arena.h"
#include "model/match.h"

struct entry;

/* How much. `known` is false where nothing was said; then the rest is unset. */
struct amount {
    bool known;
    struct ratio min, max; /* equal when exact; max is RATIO_UPWARDS after "at least" */
    struct text unit;      /* canonical singular word ("tablespoon"); empty for a plain count */
    bool approx;           /* hedged: "about", "roughly" */
};

typedef LIST(struct text) text_list;
typedef LIST(size_t) id_list;

enum role { ROLE_INGREDIENT, ROLE_GARNISH, ROLE_SERVE_WITH };
const char *role_name(enum role role); /* "ingredient", "garnish", "serve-with" */
/* Reads "garnish"; false, with `role` untouched, when it is none. */
bool role_read(struct text name, enum role *role);

/* A weight in grams and where it comes from. `known` is false where no published weight fits. */
struct weight {
    bool known;
    double min, max;    /* grams */
    struct text source; /* "USDA SR28 01001: Butter, salted, 1 tbsp = 14.2 g" */
};

struct ingredient {
    size_t id;         /* the word number of its food: "i34" */
    struct span words; /* all the words it was made of */
    double at;         /* seconds: when its first word was said */
    struct text said;  /* the words as captioned */
    struct text food;  /* lower case, singular: "unsalted butter" */
    struct text kind;  /* what it is the same food as: "scallion" for "green onion" */
    struct amount amount;
    struct amount package; /* "a 400-gram tin": amount 1 can, package 400 gram */
    struct text size;      /* "large"; empty when not said */
    bool several;          /* named in the plural, here or later */
    text_list prep;  /* past participles as a recipe prints them: "minced", "cut into cubes" */
    text_list state; /* "cold", "ripe", "room temperature" */
    text_list alternatives; /* foods said as "or": "chives" */
    bool to_taste, optional;
    bool vague;     /* only "some", "a bit of", "a splash": amount.known may be true ("1 splash") */
    bool no_unit;   /* a number with no unit before a food that is not counted */
    bool had;       /* "I've got twelve thighs": so many, said again, are the same ones */
    bool announced; /* from a run-down, not yet seen to go in */
    bool laid_out;  /* "I've got olives out too": for later; dropped when never spoken of again */
    bool questioned;   /* only asked about so far; dropped when no answer comes */
    bool used;         /* a step uses it */
    size_t again;      /* the word that names it again, the last one; 0 for none */
    struct text group; /* component it goes into: "marinade"; empty for the dish itself */
    enum role role;
    struct text rule;          /* the grammar rule that found it */
    const struct entry *entry; /* borrowed from the pack; NULL for a food no lexicon knows */
    struct weight weight;
    bool edited; /* the cook's own word */
};

struct temperature {
    struct ratio value;
    char unit;      /* 'F', 'C', or 'G' for a gas mark */
    bool fan;       /* said of a fan oven */
    struct text of; /* "oven", "oil", "inside", "water", "pan" */
    double at;      /* seconds */
    struct span words;
};

struct duration {
    double min, max;  /* seconds; max is INFINITY after "at least" */
    struct text of;   /* the action: "bake", "rest" */
    struct text each; /* "side", "batch", or empty */
    bool approx;
    bool instead; /* in place of the one before: "six hours, but overnight is best" */
    double at;
    struct span words;
};

struct step {
    size_t id; /* the word number of its action: "s40" */
    double start, end;
    struct span words;
    struct text text;  /* as a recipe prints it: "Whisk in the flour." */
    text_list actions; /* base forms, the main one first */
    text_list told;    /* while it is built: those that will be its actions; `actions` has what the
                          rules alone say, by which it is laid out and worded */
    id_list uses;      /* ingredient ids */
    LIST(struct temperature) temperatures;
    LIST(struct duration) durations;
    struct text until;  /* "golden brown"; empty when no sign of doneness was said */
    struct text vessel; /* "large bowl" */
    struct text heat;   /* "medium-high" */
    struct text group;
    bool beside; /* runs while the step before it does: "meanwhile" */
    bool edited;
};

/* "It makes twelve": of what the title names in the plural, where it does; or else it is no yield.
 */
enum yield_pieces { YIELD_OF_WHAT_IS_SAID, YIELD_OF_PIECES, YIELD_OF_PIECES_ONLY };

struct yield {
    bool known;
    struct ratio min, max;
    struct text of;    /* "serving", or what is counted: "turnover" */
    struct span words; /* where it was said */
    enum yield_pieces pieces;
};

/* Worked out from the steps: seconds, as intervals. `known` false where no step gave a time. */
struct time_sum {
    bool known;
    double min, max;
    struct text from; /* what it was made of, in words */
};

struct allergen {
    struct text name; /* of the law's list: "milk" */
    struct text law;  /* "US and EU", "EU" */
    bool check_label; /* often, by maker: the label must be checked */
    id_list because;  /* ingredient ids */
};

struct caution {
    struct text text;   /* the advice, deferring to local food-safety rules */
    struct text source; /* the publication */
    struct text rule;   /* its row in the table: "S001" */
    id_list because;
};

/* "3 cans (400 g)"; package.known is false for what is not packed. */
struct packed_amount {
    struct amount amount, package;
};

/* The same food's lines added up, for the card and the shopping list. */
struct shopping_line {
    struct text food;
    id_list lines;         /* ingredient ids, in spoken order */
    struct amount amount;  /* known only where the lines could be added */
    struct amount package; /* of that amount, where all lines name the same: "3 cans (400 g)" */
    LIST(struct packed_amount)
    parts;          /* each kind that can be added, added up; one when all could be */
    bool divided;   /* it goes in more than once */
    bool plus_more; /* a part of it has no amount: "plus more" */
};

struct dish {
    size_t id; /* its first word: "d17" */
    struct text title;
    bool title_given; /* the cook's own, given with the dish: never made anew */
    bool title_said;  /* else made from the main food and the method */
    struct span words;
    double start, end;
    LIST(struct span) spans; /* its stretches of words, where it was left and returned to */
    struct yield yield;
    LIST(struct ingredient) ingredients;
    LIST(struct step) steps;
    LIST(struct shopping_line) shopping;
    struct time_sum active, cook, rest, total;
    LIST(struct allergen) allergens;
    LIST(struct caution) cautions;
    bool approved; /* by the cook */
};

#endif
