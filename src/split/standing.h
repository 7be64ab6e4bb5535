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
    float sweet, savory; /* foods that are found in desserts only, and in no dessert */
    float lines;         /* foods with an amount */
    uint32_t since;      /* the first sentence of its last stretch */
    uint32_t last;       /* its last sentence */
    uint32_t sentences;  /* how many it has */
    uint32_t ended;      /* 1 + the last sentence with a yield, a garnish or a leave; 0: none */
    uint32_t timed;      /* 1 + the last one that says how long something takes; 0: none */
};

/* So many of the dishes that were left last are told apart by when they were. */
#define LEFT_KEPT 4

/* The dishes of a way: dish d stands in of[d % DISHES_KEPT]. */
struct standings {
    size_t dishes;          /* how many were begun */
    size_t on;              /* the one that is on, or was last; NO_DISH: none so far */
    size_t left[LEFT_KEPT]; /* the others, that which was left last first; NO_DISH: none */
    uint64_t finished;      /* a bit for each that is_finished, 1 << d % DISHES_KEPT */
    struct standing of[DISHES_KEPT];
};

/* No dish so far. */
void standings_init(struct standings *s);
/* Copies what there is: most talks have few dishes. */
void standings_copy(struct standings *to, const struct standings *from);
const struct standing *standing_of(const struct standings *s, size_t dish);
/* It came to a yield, a garnish or a leave when it was on last. */
bool is_finished(const struct standing *d);
/* It was just said how long something takes when it was on last. */
bool waits(const struct standing *d);
/* Foods with an amount that it lacks to FEW_LINES. */
double few_lines(const struct standing *d);
/* How many dishes were left since that one was, LEFT_KEPT at most. */
size_t left_since(const struct standings *s, size_t dish);
/* How many others were left unfinished. */
size_t unfinished(const struct standings *s);
/* The first dish that is told apart. */
size_t first_kept(const struct standings *s);
/* Sentence `i` goes into `dish`, which may be a new one. `counts`: what it says is of the dish. */
void stand(struct standings *s, const struct feature *f, size_t i, size_t dish, bool counts);
/* What the food of sentence `i` costs in that dish: a chocolate in a soup. */
double clash(const struct standings *s, const struct feature *f, size_t dish);

#endif
