/* split/standing.h: what each dish has come to so far in one way to share the sentences.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_STANDING_H
#define DISHTAKE_SPLIT_STANDING_H

#include "split/border.h"

/* Of one way's dishes only the last so many are told apart. */
#define DISHES_KEPT 64
#define FEW_LINES 3 /* a dish of fewer foods with an amount is hardly over */

/* Where a dish stands. */
struct standing {
    float sweet, savory;   /* foods that are found in desserts only, and in no dessert */
    float lines;           /* foods with an amount */
    struct affinity about; /* what it is made of, and what was done */
    uint32_t since;        /* the first sentence of its last stretch */
    uint32_t last;         /* its last sentence */
    uint32_t sentences;    /* how many it has */
    uint32_t ended;        /* 1 + the last sentence with a yield, a garnish or a leave; 0: none */
    uint32_t named;        /* 1 + the last one that says a name; 0: none */
    uint32_t timed;        /* 1 + the last one that says how long something takes; 0: none */
};

/* So many of the dishes that were left last are told apart by when they were. */
#define LEFT_KEPT 4

/* The dishes of a way: dish d stands in of[d % DISHES_KEPT]. */
struct standings {
    size_t dishes;          /* how many were begun */
    size_t on;              /* the one that is on, or was last; NO_DISH: none so far */
    size_t left[LEFT_KEPT]; /* the others, that which was left last first; NO_DISH: none */
    uint64_t finished;      /* the dish_bit of each that is_finished */
    struct standing of[DISHES_KEPT];
};

/* No dish so far. */
void standings_init(struct standings *s);
/* Copies what there is: most talks have few dishes. */
void standings_copy(struct standings *to, const struct standings *from);
/* How many others were left unfinished. */
size_t unfinished(const struct standings *s);
/* Sentence `i` goes into `dish`, which may be a new one. `counts`: what it says is of the dish. */
void stand(struct standings *s, const struct feature *f, size_t i, size_t dish, bool counts);

/* ---- what a search asks of each dish of each way at each sentence, and so stands here */

#define ENDED_SENTENCES 6 /* so near its end a dish is finished ... */
#define TIMED_SENTENCES 3 /* ... or waits */
#define TASTE_SURE 2.60   /* a dish has a taste once it has many more than so many foods of it */

static inline const struct standing *standing_of(const struct standings *s, size_t dish)
{
    return &s->of[dish % DISHES_KEPT];
}
/* Where many dishes are told of at once each has a bit; NO_DISH has none. */
static inline uint64_t dish_bit(size_t dish)
{
    return dish == NO_DISH ? 0 : (uint64_t) 1 << dish % DISHES_KEPT;
}
/* The first dish that is told apart. */
static inline size_t first_kept(const struct standings *s)
{
    return s->dishes > DISHES_KEPT ? s->dishes - DISHES_KEPT : 0;
}
/* Whether that happened in the last stretch, near its end. */
static inline bool is_near_end(const struct standing *d, uint32_t happened, uint32_t sentences)
{
    return happened > d->since && happened + sentences > d->last + 1;
}
/* It came to a yield, a garnish or a leave when it was on last. */
static inline bool is_finished(const struct standing *d)
{
    return is_near_end(d, d->ended, ENDED_SENTENCES);
}
/* It was just said how long something takes when it was on last. */
static inline bool waits(const struct standing *d)
{
    return is_near_end(d, d->timed, TIMED_SENTENCES);
}
/* Foods with an amount that it lacks to FEW_LINES. */
static inline double few_lines(const struct standing *d)
{
    double lacks = FEW_LINES - (double) d->lines;
    return lacks > 0 ? lacks : 0;
}
/* How many dishes were left since that one was, LEFT_KEPT at most. */
static inline size_t left_since(const struct standings *s, size_t dish)
{
    size_t n = 0;
    while (n < LEFT_KEPT && s->left[n] != dish)
        n++;
    return n;
}
/* What the food of sentence `i` costs in that dish: a chocolate in a soup. */
static inline double clash(const struct standings *s, const struct feature *f, size_t dish)
{
    if (dish == NO_DISH || dish < first_kept(s))
        return 0;
    const struct standing *d = standing_of(s, dish);
    return (f->sweet * d->savory + f->savory * d->sweet) / (d->sweet + d->savory + TASTE_SURE);
}

#endif
