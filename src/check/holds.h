/* check/holds.h: which foods a dish holds, for safety rules: by its lines, and by the words near
 * what was said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_HOLDS_H
#define DISHTAKE_CHECK_HOLDS_H

#include "check/report.h"

/* `marks` are names of marks.def or of foods, divided by spaces: "poultry ground", "honey". Foods
 * that are bought cooked count for "cooked" only. */

/* The first line of `d`, one of c's recording, that is one of them; NULL when there is none. What
 * is only served beside it, or spoken of as another dish's ("the chicken"), is none. Borrowed. */
const struct ingredient *food_of(const struct checker *c, const struct dish *d, struct text marks);
/* Whether one of them is named within a minute of talk before the word. */
/* Whether one of the dish's lines that has one of the marks is cooked, canned or smoked already. */
bool cooked_before(const struct checker *c, struct text marks);
bool food_before(const struct checker *c, struct text marks, size_t word);
/* Whether the last food that is named near before the word is of the marks or names. */
bool nearest_food_is(const struct checker *c, struct text marks, size_t word);
/* Whether the last meat, fish or egg named before the word is none of them, where all of them are
 * meat or fish: "the lamb ... pink in the middle", in a dish that has sausages too. */
bool other_animal(const struct checker *c, struct text marks, size_t word);

#endif
