/* split/owner.h: which dish a name is of, by the foods that it tells.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_OWNER_H
#define DISHTAKE_SPLIT_OWNER_H

#include "split/border.h"

/* What names are chosen from. */
struct naming {
    const struct recording *r;
    const struct feature *f;
    const struct stretch *s;
    const size_t *dish; /* of each stretch; NO_DISH is possible */
    size_t count, dishes;
    struct span *best; /* of each dish; first > last while there is none */
    double *weight;    /* of what the rules of phrases chose */
    double *sure;      /* how much more speaks for it than for no name; NULL until choose_names() */
    size_t *named; /* of each sentence, the dish that it names, or NO_DISH; NULL: not asked for */
};

/* How much the words of a name tell of which dish it is: 1 a food, less what kind of dish it is. */
double name_tells(const struct recording *r, struct span name);
/* How much of what the name tells is spoken of in dish `d`, near stretch `k`, but for once in
 * sentence `i`, in which the name was said. */
double name_fits(const struct naming *n, size_t d, size_t k, size_t i, struct span name);
/* The dish that the name fits best; the one in which it is said, `home`, when none fits better.
 * "White bean soup. And rosemary focaccia": two dishes are named in the last one's stretch. NO_DISH
 * where it is said outside of all and fits none. */
size_t name_owner(const struct naming *n, size_t home, size_t k, size_t i, struct span name);
/* How much dish `d`, near stretch `k`, is about a food, as a share of the one it is most about. */
double share_of_dish(const struct naming *n, size_t d, size_t k, struct text kind);

#endif
