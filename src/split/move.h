/* split/move.h: what speaks for it that with a sentence another dish begins, or an earlier one goes
 * on, by where the dishes stand and whose things are spoken of.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_MOVE_H
#define DISHTAKE_SPLIT_MOVE_H

#include "split/both.h"
#include "split/links.h"
#include "split/logs.h"
#include "split/standing.h"

enum move_evidence {
#define MOVE(name, new, back, what) name,
#include "split/move.def"
#undef MOVE
    MOVES
};

/* What is the same for all that can be done at a sentence in one way. */
struct move_base {
    const struct standings *standings; /* borrowed, as are the next four */
    const struct feature *f;           /* the sentence's */
    const struct things *things;
    const struct logs *logs;
    const float *both; /* of find_both */
    size_t i;          /* the sentence */
    double x[MOVES];
    /* What that comes to, once it is asked for: for a dish that goes on, and for one that begins.
     */
    double score[2];
    bool scored[2];
};

/* A sentence, the things of it and of those behind it, and what all of them need. */
struct move_place {
    const struct feature *f; /* of all sentences; borrowed, as are the next three */
    const struct things *things;
    const struct logs *logs;
    const float *both; /* of find_both, for the sentence */
    size_t i, count;   /* the sentence, of so many */
};
struct move_base find_base(const struct standings *s, const struct move_place *at);
/* Fills in x[MOVES] for dish `dish`, which goes on with the sentence; NO_DISH: for one that begins.
 */
void find_moves(const struct move_base *b, const struct links *links, size_t dish, double *x);
/* What that comes to, in the units of border.def, for a dish that goes on and for one that begins.
 */
double speaks_for(struct move_base *b, struct links *links, size_t dish);
double speaks_for_new(struct move_base *b, struct links *links);

#endif
