/* tools/recipe_reader.h: recipes built of many files, for the tools that print what is asked on the
 * way to them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TOOLS_RECIPE_READER_H
#define DISHTAKE_TOOLS_RECIPE_READER_H

#include "build/build.h"
#include "split/split.h"
#include "talk_reader.h"

static inline void read_recipes(struct talk_reader *reader, const char *name, bool one_dish)
{
    struct recording r = {.file = name, .one_dish = one_dish};
    struct problems p = {0};
    if (!arena_open(&reader->arena))
        return;
    printf("# %s\n", name);
    if (talk_read(reader, &r) && split_dishes(&r, reader->pack, &p))
        build_recipes(&r, reader->pack, &p);
    arena_reset(&reader->arena);
}

/* Each file's name, behind "# ", and what is printed while its recipes are built. `one_dish`: all
 * of it is taken for one. */
static inline void read_all_recipes(int count, char **names, bool one_dish)
{
    struct talk_reader reader;
    bool ready = talk_reader_open(&reader);
    for (int n = 0; ready && n < count; n++)
        read_recipes(&reader, names[n], one_dish);
    talk_reader_close(&reader);
}

#endif
