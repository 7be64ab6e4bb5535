/* check/saying.h: what a checker listens for: sets of short patterns over words and classes, from
 * check-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAYING_H
#define DISHTAKE_CHECK_SAYING_H

#include "pack/pack.h"
#include "pack/ready.h"
#include "tag/fits.h"

#define SAYING_TOKENS 10

/* "i've|i set|put * out": tokens as in hearing.tsv; `*` lets up to GAP_WORDS words pass. */
struct saying {
    struct text set;
    size_t number;               /* the set's */
    const struct token **places; /* rows share what is written alike; NULL: a gap */
    size_t count;
    uint64_t begins; /* bits by what its first place takes: it can begin with no word that has none
                        of them */
};
#define GAP_WORDS 4

/* Bits by tags (64 and more are as those below), by shapes of words and of values: of what a place
 * takes, or of a word. */
static inline uint64_t saying_bits(const struct unit_set *tags, uint64_t words, uint64_t values)
{
    return tags->bits[0] | tags->bits[1] | tags->bits[2] | tags->bits[3]
           | (words << 23 | words >> 41) | (values << 43 | values >> 21);
}

/* Rows [first, end) of the table. */
struct saying_set {
    struct text name;
    size_t first, end;
    bool anything; /* one begins with a gap */
};

/* All that is listened for. */
struct saying_list {
    struct arena memory;       /* of all that follows, and of itself, where it begins one block */
    const struct table *table; /* borrowed; NULL: the pack has none */

    LIST(struct saying) all; /* by its rows */
    LIST(struct saying_set) sets;
    struct fits begins; /* which sets a word may begin, by the set's number */
};

/* Where the tables begin, which pack/ready.h has made. */
#define SAYING_TABLES offsetof(struct saying_list, all)

/* NULL: no memory, or a row is wrong, with a problem. saying_list_free frees; the pack must outlive
 * it. */
struct saying_list *saying_list_new(const struct pack *k, struct problems *p);
/* Reads the pack's table into a list of the caller's, in the arena; false, with a problem, where a
 * row is wrong. */
bool saying_list_load(struct saying_list *list, struct arena *a, const struct pack *k,
                      struct problems *p);
/* The same of that image. */
struct saying_list *saying_list_open(const struct ready *image, const struct pack *k);
/* The same of the pack that is built in, ready-made; all threads may share it. */
struct saying_list *saying_list_builtin(const struct pack *k);
void saying_list_free(struct saying_list *list); /* NULL is fine */

#endif
