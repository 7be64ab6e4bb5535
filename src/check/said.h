/* check/said.h: what a checker listens for: sets of short patterns over words and classes, from
 * check-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAID_H
#define DISHTAKE_CHECK_SAID_H

#include "model/recording.h"
#include "pack/pack.h"
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

/* Rows [first, end) of the table, and the words of the recording that one of them may begin with,
 * so that a look for the set passes over all others. */
struct saying_set {
    struct text name;
    size_t first, end;
    bool anything;    /* one begins with a gap */
    uint64_t *places; /* a bit for each word */
};

struct sayings {
    const struct table *table; /* borrowed; NULL: the pack has none */
    LIST(struct saying) all;   /* by its rows */
    LIST(struct saying_set) sets;
    struct fits begins; /* which sets a word may begin, by the set's number */
};

/* Reads the pack's table, for one recording; false with a problem where a row is wrong. Arena. */
bool sayings_load(struct sayings *list, struct arena *a, const struct pack *k,
                  const struct recording *r, struct problems *p);
/* The first place in words [first, last] of that recording where one of the set is said; false when
 * there is none. */
bool said_find(const struct sayings *list, const struct recording *r, const char *set,
               struct span within, struct span *where);

#endif
