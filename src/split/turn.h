/* split/turn.h: words by which a sentence turns to something else, or goes on with the same.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TURN_H
#define DISHTAKE_SPLIT_TURN_H

#include "split/feature.h"

/* The first word of the sentence that is no "so", "okay" or "and"; its last one where all are. */
size_t after_so(const struct recording *r, const struct sentence *s);
/* Fills in what the sentence's own words say of it, beside its phrases and its mentions; these are
 * known already. */
void read_turn(const struct recording *r, const struct sentence *s, struct feature *f);

/* Whether the words behind word `i`, which ends "the second one", say what became of it: "the
 * second one went in the fire" announces no dish, "the last one, roast carrots" does. */
bool tells_of_one(const struct recording *r, const struct sentence *s, size_t i);

#endif
