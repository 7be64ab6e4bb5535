/* tools/recipe_reader.h: recipes built of many files, for the tools that print what is asked on the
 * way to them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TOOLS_RECIPE_READER_H
#define DISHTAKE_TOOLS_RECIPE_READER_H

#include "build/build.h"
#include "split/split.h"
#include "talk_reader.h"

static inline void build_all(void *one_dish, struct recording *r, const struct pack *k)
{
    struct problems p = {0};
    r->one_dish = *(const bool *) one_dish;
    if (split_dishes(r, k, &p))
        build_recipes(r, k, &p);
}

/* Each file's name, behind "# ", and what is printed while its recipes are built. `one_dish`: all
 * of it is taken for one. */
static inline void read_all_recipes(int count, char **names, bool one_dish)
{
    tell_talks(count, names, build_all, &one_dish);
}

#endif
