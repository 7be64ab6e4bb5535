/* check/said.h: what a checker listens for: sets of short patterns over words and classes, from
 * check-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAID_H
#define DISHTAKE_CHECK_SAID_H

#include "model/recording.h"
#include "pack/pack.h"
#include "tag/slot.h"

#define SAYING_TOKENS 10

/* "i've|i set|put * out": tokens as in hearing.tsv; `*` lets up to GAP_WORDS words pass. */
struct saying {
    struct text set;
    struct token tokens[SAYING_TOKENS];
    bool gap[SAYING_TOKENS];
    size_t count;
};
#define GAP_WORDS 4

typedef LIST(struct saying) saying_list;

bool sayings_load(saying_list *list, struct arena *a, const struct pack *k, struct problems *p);
/* The first place in words [first, last] where one of the set is said; false when there is none. */
bool said_find(const saying_list *list, const struct recording *r, const char *set,
               struct span within, struct span *where);

#endif
