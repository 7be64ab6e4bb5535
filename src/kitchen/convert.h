/* kitchen/convert.h: one amount in another unit, exactly; and how a figure is rounded before it is
 * shown.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_CONVERT_H
#define DISHTAKE_KITCHEN_CONVERT_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* `n` of one unit, counted in another of the same dimension, exactly. None when the dimensions
 * differ, one has no size of its own, or the result is too large. */
struct ratio convert_number(struct ratio n, const struct unit *from, const struct unit *to);
/* Both ends of an amount; `out->unit` is `to`. False, with `out` untouched, where convert_number
 * gives none. */
bool convert_amount(const struct amount *in, const struct unit *from, const struct unit *to,
                    struct amount *out);

/* Degrees: 'F', 'C', or 'G' for a gas mark. To a gas mark: the nearest one in the table, none when
 * there is none within a mark's width. */
struct ratio convert_degrees(const struct kitchen *k, struct ratio value, char from, char to);
/* What to set a fan oven to for a recipe written for a conventional one, and back, in the same
 * scale (not 'G'). */
struct ratio degrees_for_fan(struct ratio value, char scale);
struct ratio degrees_without_fan(struct ratio value, char scale);

/* No precision invented: a number that came out of a measured figure keeps two figures under a
 * hundred and three from there on, as many as the tables have. */
#define FIGURES_SMALL 2
#define FIGURES_LARGE 3
struct ratio round_figures(struct ratio n, int *figures);

/* What a temperature is of decides its step: ovens are marked by 25 °F and 5 °C, a thermometer
 * by 1. `step` is told. */
struct ratio round_degrees(struct ratio n, char scale, bool oven, int *step);

#endif
