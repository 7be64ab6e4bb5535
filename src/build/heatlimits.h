/* build/heatlimits.h: how hot the things of a kitchen get.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEATLIMITS_H
#define DISHTAKE_BUILD_HEATLIMITS_H

#include "build/builder.h"

/* Inside a food: Celsius up to here, Fahrenheit above. Water boils at 100 Celsius. */
#define INSIDE_C_MOST 100
/* Where ovens have Celsius, a jam or a syrup is hotter than water boils: up to the hard ball
 * (common practice, no source). */
#define SUGAR_C_MOST 130
#define WATER_C_MOST 100
#define OIL_C_MOST 235
#define OVEN_LEAST 90

/* Whether `thing` can have the number of chunk `c`, in the scale that it says, else in the
 * recording's: "one eighty" of an oven is none of the water in the pan. */
bool may_have_heat(const struct builder *b, const struct chunk *c, struct text thing);
/* Whether a kitchen has that heat at all. */
bool is_possible(const struct temperature *t);

#endif
