/* check/said.h: what a checker listens for: sets of short patterns over words and classes, from
 * check-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAID_H
#define DISHTAKE_CHECK_SAID_H

#include "model/recording.h"
#include "pack/pack.h"
#include "pack/ready.h"
#include "tag/fits.h"

#define SAYING_TOKENS 10

struct saying_place {
    struct token token;
    bool gap;
};

/* "i've|i set|put * out": tokens as in hearing.tsv; `*` lets up to GAP_WORDS words pass. */
struct saying {
    struct text set;
    size_t number; /* the set's */
    struct saying_place *places;
    size_t count;
};
#define GAP_WORDS 4

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
/* The same of that image. */
struct saying_list *saying_list_open(const struct ready *image, const struct pack *k);
/* The same of the pack that is built in, ready-made; all threads may share it. */
struct saying_list *saying_list_builtin(const struct pack *k);
void saying_list_free(struct saying_list *list); /* NULL is fine */

/* The same for one recording, while its words are what they are. */
struct sayings {
    const struct saying_list *list;
    uint64_t **places; /* for each set a bit for each word with which one of it may begin, so that a
                          look for the set passes over all others; where a look has found that none
                          does, however it is bounded, the bit goes */
};

/* Sets r->sayings, for the words as they are. `list` NULL: reads the pack's table; false with a
 * problem where a row is wrong. */
bool listen_for(struct recording *r, const struct saying_list *list, const struct pack *k,
                struct problems *p);
/* The first place in words [first, last] of that recording where one of the set is said; false when
 * there is none. */
bool said_find(const struct sayings *sayings, const struct recording *r, const char *set,
               struct span within, struct span *where);

#endif
