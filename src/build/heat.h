/* build/heat.h: temperatures with their scale and what they are of.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEAT_H
#define DISHTAKE_BUILD_HEAT_H

#include "build/builder.h"

/* Reads the match of a temperature rule; false when its number is none that a kitchen has. */
bool read_temperature(const struct builder *b, const struct chunk *c, struct temperature *out);
/* Whether the words of chunk `c` name a scale: "fan", "Celsius". */
bool has_scale(const struct builder *b, const struct chunk *c);
/* Whether a scale is Celsius, or a kind of oven ("fan") that has Celsius numbers; NULL is neither.
 */
bool is_celsius(const struct entry *scale);
/* The scale of the whole recording, 'F' or 'C', from its words and from the numbers that fit only
 * one. */
char recording_scale(const struct recording *r, const struct pack *k);

#endif
