/* check/inside.h: temperatures inside the food, for safety rules.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_INSIDE_H
#define DISHTAKE_CHECK_INSIDE_H

#include "check/report.h"

struct ratio fahrenheit(const struct temperature *t);
/* The highest temperature inside the food that was said for the dish; NULL when there is none.
 * Borrowed. */
const struct temperature *inside_most(const struct dish *d);
/* Whether one was said for this dish, or for one beside it that holds one of the foods (marks or
 * names, divided by spaces): where two dishes lie between each other, or a border is not sure, the
 * other one's temperature may be this one's. */
bool checked_beside(const struct checker *c, struct text foods);

#endif
