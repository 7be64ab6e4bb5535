/* split/way.h: the best ways to understand the sentences so far, and how each goes on.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_WAY_H
#define DISHTAKE_SPLIT_WAY_H

#include "split/segment.h"
#include "split/standing.h"

/* How many ways are kept. */
#define WAYS_MOST 12

/* What a sentence can be. An aside and a farewell belong to the dish: talk after which the dish
 * goes on, and talk after which it does not, since its name was said. */
enum part { OUTSIDE, INSIDE, ASIDE, FAREWELL };

/* One of the best ways to understand the sentences so far. */
struct way {
    double score;
    enum part part;
    double closed; /* how clearly the dish was closed that the farewell takes leave of */
    const struct segment *at;
    struct standings *dishes;
};

/* How a way goes on with the next sentence. */
struct move {
    double score, closed;
    const struct way *from;
    enum part part;
    size_t dish; /* whose the sentence is; as many as there are: a new one */
    bool begins; /* a segment begins */
    size_t key;  /* of its chain */
};

struct ways {
    struct way way[WAYS_MOST];
    size_t count;
    struct standings standings[WAYS_MOST]; /* large, so that they are not moved about */
    struct standings *spare[WAYS_MOST];    /* those that no way has */
    size_t spare_count;
    struct move moves[WAYS_MOST];
    size_t moves_count;
    struct move *worst; /* of them, once there are so many that one must go */
};

/* One way, in which nothing was said yet: all from `nothing`, borrowed, on. */
void ways_begin(struct ways *w, const struct segment *nothing);
/* Keeps the move, if it is one of the best. */
void ways_offer(struct ways *w, const struct move *m);
/* The moves that were kept become the ways, with sentence `i` of `f`. Segments are the arena's. */
void ways_take(struct ways *w, struct arena *arena, const struct feature *f, size_t i);
const struct way *ways_best(const struct ways *w);

/* Whether a move of that score is none of the best, as nine of ten are: asked first, so that they
 * are not made. */
static inline bool ways_lose(const struct ways *w, double score)
{
    return w->moves_count == WAYS_MOST && score <= w->worst->score;
}

#endif
