/* split/passing.h: names said in passing.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_PASSING_H
#define DISHTAKE_SPLIT_PASSING_H

#include "split/border.h"

/* "It does six, that rhubarb crumble": the last words in the stretch that stand before a dish's
 * word and go with it; first > last when there are none. Sets the sentence that says it. */
struct span named_in_passing(const struct recording *r, struct stretch s, size_t *sentence);

/* The dish's own name ("colcannon") that the stretch says most often, once where it begins or ends;
 * first > last when it says none. `sentence` is the one that says it. */
struct span own_name(const struct recording *r, struct stretch s, size_t *sentence);

/* "Fried cabbage, my uncle's favorite": a food that the stretch is about, with how it was cooked,
 * said by itself where the stretch begins or ends; first > last when none is. */
struct span cooked_name(const struct recording *r, const struct feature *f, struct stretch s,
                        size_t *sentence);

#endif
