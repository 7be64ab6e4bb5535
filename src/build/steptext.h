/* build/steptext.h: spoken words -> the words of a written step.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPTEXT_H
#define DISHTAKE_BUILD_STEPTEXT_H

#include "build/builder.h"

/* Writes the text of every step and its ingredients (`uses`) of
 * b->dish, once all its sentences were read: verb first, no "you", "so", asides and
 * conditions; foods without the amounts that stand in the list, but with the portion where a food
 * is divided. */
void write_steps(struct builder *b);
/* "it's golden brown": the words behind "until", to the end of the clause. Arena. */
struct text until_text(const struct recording *r, const struct sentence *s, struct span until);

#endif
