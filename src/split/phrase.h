/* split/phrase.h: phrases that announce a dish, name it, or take leave of it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_PHRASE_H
#define DISHTAKE_SPLIT_PHRASE_H

#include "split/feature.h"

/* Whether the words are of a story, a supposition or an alternative. */
bool is_unreal(const struct recording *r, struct span words);
/* Adds to the sentence's feature what the match of an opening, a naming or a closing says. */
void read_phrase(const struct recording *r, const struct sentence *s, const struct match *m,
                 struct feature *f);

#endif
