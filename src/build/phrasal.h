/* build/phrasal.h: verbs whose second half stands at a distance: "put the chicken back", "lid on".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_PHRASAL_H
#define DISHTAKE_BUILD_PHRASAL_H

#include "build/builder.h"

struct phrasal {
    struct text action;
    size_t end; /* the chunk of the word farther behind */
    bool thing; /* the words between are part of it: "put the lid on" */
};

/* The table with its columns found; in the arena. */
struct phrasals phrasals_load(struct arena *a, const struct pack *k);
/* Whether chunk `c` is a food, or a part of the dish ("sauce"). */
bool is_food_word(const struct chunk *c);
/* What chunk `i` stands for together with a word behind it in its clause, by the pack's table
 * `phrasal`. False, with `out` untouched, when there is no such word. */
bool find_phrasal(const struct builder *b, size_t i, struct phrasal *out);

#endif
