/* split/choose.h: which of the names that are said is a dish's.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_CHOOSE_H
#define DISHTAKE_SPLIT_CHOOSE_H

#include "split/candidate.h"
#include "split/owner.h"

/* Weighs what the rules of phrases have chosen (n->best, n->weight) against all else that is said
 * of each dish, and puts the best in n->best; first > last where a made title is better. */
void choose_names(struct naming *n, const struct pack *k);
/* Tells all candidates of dish `d` of `c`, which candidates_of_dishes() made. */
void tell_candidates(const struct naming *n, struct candidates *c, size_t d, name_teller *tell,
                     void *to);
/* Arena. */
struct candidates candidates_of_dishes(const struct naming *n, const struct pack *k);

#endif
