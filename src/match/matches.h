/* match/matches.h: the matches of some kinds, one after the other: those of a sentence, or those
 * that begin among some words.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_MATCHES_H
#define DISHTAKE_MATCH_MATCHES_H

#include "model/recording.h"
#include "pack/pack.h"

/* What is left to go through. In a sentence, numbers come first, phrases last, since each stage of
 * the rules sees what the one before found. */
struct matches {
    const struct recording *r; /* borrowed */
    size_t next, end;          /* in its list of matches */
    uint64_t kinds;            /* KIND_OF bits */
    struct span begins;        /* where they begin */
};

#define ANYWHERE ((struct span){0, SIZE_MAX})

/* Those of a sentence; NULL has none. */
static inline struct matches matches_of(const struct recording *r, const struct sentence *s,
                                        uint64_t kinds)
{
    if (!s)
        return (struct matches){0};
    return (struct matches){r, s->match_first, s->match_first + s->match_count, kinds, ANYWHERE};
}
/* Those that begin in words [first, last], which may reach beyond the recording's end. */
struct matches matches_among(const struct recording *r, struct span words, uint64_t kinds);
struct matches matches_all(const struct recording *r, uint64_t kinds);
/* The next one; NULL: that was the last. Here, since the builder asks it for each word. */
static inline const struct match *matches_next(struct matches *left)
{
    while (left->next < left->end) {
        const struct match *m = &left->r->matches.at[left->next++];
        if (m->words.first >= left->begins.first && m->words.first <= left->begins.last
            && left->kinds >> m->rule->kind & 1)
            return m;
    }
    return NULL;
}

/* The first one; NULL: there is none. */
const struct match *match_in(const struct recording *r, const struct sentence *s, uint64_t kinds);
const struct match *match_among(const struct recording *r, struct span words, uint64_t kinds);
/* The first one that begins at the word. */
const struct match *match_at(const struct recording *r, const struct sentence *s, size_t word,
                             uint64_t kinds);
/* The first one that has all of these words, and maybe more. */
const struct match *match_over(const struct recording *r, const struct sentence *s,
                               struct span words, uint64_t kinds);

#endif
