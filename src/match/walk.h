/* match/walk.h: the matches of some kinds, one after the other: those of a sentence, or those that
 * begin among some words.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_WALK_H
#define DISHTAKE_MATCH_WALK_H

#include "model/recording.h"
#include "pack/pack.h"

/* What is left to go through. In a sentence, numbers come first, phrases last, since each stage of
 * the rules sees what the one before found. */
struct walk {
    const struct recording *r; /* borrowed */
    size_t next, end;          /* in its list of matches */
    uint64_t kinds;            /* KIND_OF bits */
    struct span begins;        /* where they begin */
};

/* Those of a sentence; NULL has none. */
struct walk walk_sentence(const struct recording *r, const struct sentence *s, uint64_t kinds);
/* Those that begin in words [first, last], which may reach beyond the recording's end. */
struct walk walk_words(const struct recording *r, struct span words, uint64_t kinds);
struct walk walk_all(const struct recording *r, uint64_t kinds);
/* The next one; NULL: that was the last. */
const struct match *walk_next(struct walk *w);

/* The first one; NULL: there is none. */
const struct match *match_in(const struct recording *r, const struct sentence *s, uint64_t kinds);
const struct match *match_among(const struct recording *r, struct span words, uint64_t kinds);
/* The first one that has all of these words, and maybe more. */
const struct match *match_over(const struct recording *r, const struct sentence *s,
                               struct span words, uint64_t kinds);

#endif
