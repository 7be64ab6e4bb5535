/* check/taken.h: whether a food that was laid out is taken up.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_TAKEN_H
#define DISHTAKE_CHECK_TAKEN_H

#include "check/report.h"

/* "I've two onions here, chop them", "so they go over the top": whether the food at word `i` is
 * used in the same breath, up to word `last`; "when it goes in" is a promise. */
bool taken_up(const struct checker *c, size_t i, size_t last);
/* Whether the dish speaks of the food farther off than in the breath of the words `where`, and not
 * of what is "still sat there". */
bool spoken_elsewhere(const struct checker *c, const struct entry *food, struct span where);

/* Whether the dish puts the food in behind the word. */
bool used_behind(const struct checker *c, const struct entry *food, size_t word);

#endif
