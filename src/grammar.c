/* grammar.c: the grammar of a handle: from files, or the one that is built in.
 * SPDX-License-Identifier: MIT */
#include "handle.h"

#include <stdlib.h>

void grammar_free(struct grammar *g)
{
    ear_free(g->ear);
    saying_list_free(g->sayings);
    kitchen_free(g->kitchen);
    pack_free(g->pack);
    problems_release(&g->problems);
    free(g);
}

/* Takes the pack; NULL: there is none, and why is in the problems of the grammar. */
static struct grammar *grammar_finish(struct grammar *g, struct pack *k)
{
    g->pack = k;
    if (k && !g->problems.errors)
        g->kitchen = kitchen_new(k, &g->problems);
    return g;
}

/* The same files as the pack's loader wants them. */
static struct grammar *grammar_of(const struct dishtake_file *files, size_t count)
{
    struct grammar *g = calloc(1, sizeof *g);
    struct pack_file *list = calloc(count, sizeof *list);
    if (!g || !list) {
        free(g);
        free(list);
        return NULL;
    }
    for (size_t i = 0; i < count; i++)
        list[i] = (struct pack_file){files[i].name, {files[i].bytes, files[i].length}};
    struct pack *k = pack_load(list, count, &g->problems);
    free(list);
    return grammar_finish(g, k);
}

static struct grammar *grammar_builtin(void)
{
    struct grammar *g = calloc(1, sizeof *g);
    if (!g)
        return NULL;
    g->pack = pack_builtin();
    g->kitchen = g->pack ? kitchen_builtin(g->pack) : NULL;
    g->ear = g->kitchen ? ear_builtin(g->pack) : NULL;
    g->sayings = g->ear ? saying_list_builtin(g->pack) : NULL;
    if (g->sayings)
        return g;
    grammar_free(g);
    return NULL;
}

struct grammar *grammar_new(const struct dishtake_file *files, size_t count)
{
    return count ? grammar_of(files, count) : grammar_builtin();
}
