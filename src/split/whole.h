/* split/whole.h: what each dish that was found comes to in all.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_WHOLE_H
#define DISHTAKE_SPLIT_WHOLE_H

#include "split/owner.h"

struct whole {
    size_t first, last;                 /* sentences, from its first stretch to its last */
    size_t first_stretch, last_stretch; /* others may stand between them */
    size_t sentences, measured, actions, parts, timed;
    size_t talk;   /* sentences without cooking */
    double opens;  /* of what announces it in its first sentences, the most */
    double closes; /* of what takes leave of it, the most */
    struct affinity about;
    float sweet, savory; /* foods that are found in desserts only, and in none */
    struct span name;    /* what the rules of phrases call it; first > last: nothing */
    double name_weight;
};

/* The dishes of a recording. */
struct wholes {
    struct recording *r; /* borrowed, as all up to `dishes` */
    const struct pack *k;
    const struct feature *f;
    const struct borders *b;
    const struct stretch *s;
    const size_t *dish; /* of each stretch; NO_DISH is possible */
    size_t count;       /* stretches */
    size_t dishes;
    size_t *owner; /* the dish of each sentence, or NO_DISH */
    struct whole *of;
    struct naming names; /* the best of all that is said (choose.h) */
};

/* Fills in what is not borrowed. Arena. */
void wholes_make(struct wholes *w);

#endif
