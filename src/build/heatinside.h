/* build/heatinside.h: temperatures that a food has inside.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEATINSIDE_H
#define DISHTAKE_BUILD_HEATINSIDE_H

#include "build/builder.h"

/* No food is hotter, in Fahrenheit. */
#define INSIDE_F_MOST 212

/* Whether the inside of a food can have the number of chunk `c`. */
bool may_be_inside(const struct builder *b, const struct chunk *c);
/* "That one's one sixty-eight": a number that no oven's dial shows, of a dish with meat or fish. */
bool is_no_dial(const struct builder *b, const struct chunk *c);
/* "It reads one forty-five", "pull it at 135", "it's one sixty-five in there": the words around
 * chunk `c` say that it was read in a food. */
bool is_read_inside(const struct builder *b, const struct chunk *c);
/* Whether the entry is a thermometer's; NULL is none. */
bool is_thermometer(const struct entry *e);
/* Whether one of the words tells of a thermometer or of a food's middle, by itself or within a
 * saying: "probe in the thigh", "put the thermometer in". */
bool tells_of_inside(const struct builder *b, struct span words);
/* "165 in the breast, and the thigh's at 180": of what the heat before it in the sentence is of. */
bool is_inside_too(const struct builder *b, const struct chunk *c);

#endif
