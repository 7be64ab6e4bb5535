/* kitchen/naming.h: what a title is made from, as the files see it that make one; nobody else
 * includes it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_NAMING_H
#define DISHTAKE_KITCHEN_NAMING_H

#include "kitchen/kitchen.h"

/* A bit by the text's last letter: whether it ends in a word is known by that, most often, without
 * a look at the rest. */
static inline uint32_t text_end_bit(struct text t)
{
    return t.length ? (uint32_t) 1 << (t.at[t.length - 1] & 31) : 0;
}

/* An ingredient with what was looked up for it once. */
struct told {
    const struct ingredient *line;
    struct text words, kind; /* of its food, as the tables write them: "self rising flour" */
    const struct food *food; /* that it is weighed as; NULL: none */
    uint32_t ends;           /* text_end_bit() of each name and of the food's group */
    const struct title_food *as;
    double grams;
    double about; /* how much the dish is about it, by the row that is filled */
};

/* An action of the dish, once, with what the lexicon says of it. */
struct deed {
    struct text action;
    uint64_t marks;
};

/* The dish, and the row that may make its title. */
struct naming {
    const struct kitchen *k;
    struct arena *a;
    const struct dish *dish;
    LIST(struct told) foods;
    LIST(struct deed) deeds;
    LIST(struct text) vessels; /* each once */
    bool cooks;
    struct dish_word said;
    bool named;
    const struct title_rule *rule; /* the one being tried */
};

/* title_fits.c. "Potato" ends "yukon gold potato"; whole words only. */
bool ends_with_words(struct text whole, struct text end);
/* Whether the food is one that is chosen from: "lentil" fits red lentils. */
bool is_one_of(const struct told *t, const struct title_choices *choices);
/* Whether the dish is and has all that naming.rule asks for. */
bool rule_fits(const struct naming *n);

/* title_fill.c. The title that naming.rule makes of the dish; empty where it makes none of so few
 * foods. Arena. */
struct text fill_title(const struct naming *n);

#endif
