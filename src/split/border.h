/* split/border.h: what speaks for a dish that begins with a sentence.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_BORDER_H
#define DISHTAKE_SPLIT_BORDER_H

#include "split/feature.h"

/* Sentences [first, last] of one dish. */
struct stretch {
    size_t first, last;
    size_t thread; /* the same for all stretches of a dish */
};
#define NO_DISH ((size_t) -1)

/* A border's score where a better one stands so near that no dish fits between them. */
#define IMPOSSIBLE (-1e9)

/* For each sentence, how much speaks for a dish that begins with it, and for one that was left and
 * goes on with it. Arena. */
struct borders {
    double *begins, *returns;
    double *peaks; /* `begins` of the best of those near each other; of all others IMPOSSIBLE */
    float *both;   /* of find_both, BOTHS a sentence */
    double more;   /* how much more speaks for another dish, where more were told of */
    double *
        places; /* `begins` without how early in the talk it is: which of two is the better place */
};

struct borders weigh_borders(const struct recording *r, const struct feature *f, size_t count);
/* What a dish that begins inside another is asked for on top: a short talk has no room for it. */
double another_dish(size_t count);

#endif
