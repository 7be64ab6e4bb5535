/* build/heattime.h: numbers with a time beside them, which are an oven's, or with the oven; whether
 * a heat counts here.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEATTIME_H
#define DISHTAKE_BUILD_HEATTIME_H

#include "build/builder.h"

/* "Back in at a hundred and sixty, for fifty minutes", "fifty minutes at one sixty", "One sixty.
 * Fifty minutes.": a heat that an oven has, and a time. */
bool is_for_a_time(const struct builder *b, const struct chunk *c);
/* "The oven's on one eighty", "in the oven at two hundred": set there, whatever was denied or told
 * before in captions without stops. */
bool is_oven_set(const struct builder *b, const struct chunk *c);
/* "Up to two hundred", "then down to three fifty": as an oven's dial is turned. */
bool is_dialled(const struct builder *b, const struct chunk *c);
/* Whether the heat of chunk `c` is one of this dish. A condition counts for the inside of a food,
 * for oil, and for who has another oven: "if you have a thermometer, one forty-five", "if yours is
 * a fan, one sixty". */
bool is_heat_here(const struct builder *b, const struct chunk *c);

#endif
