/* kitchen/heat.h: temperatures in a line of kitchen arithmetic: "gas mark 4", "350 F in a fan
 * oven". Within the folder.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_HEAT_H
#define DISHTAKE_KITCHEN_HEAT_H

#include "kitchen/calculate.h"

/* Where problems of the line are: it has no file. */
#define INPUT_PLACE ((struct place){NULL, 0, 0})

/* How a temperature is given: 'F', 'C' or 'G' (0: it is none), of a fan oven or not. */
struct heat_scale {
    char scale;
    bool fan;
};

/* "C", "gas mark", "F in a fan oven"; scale 0 when it is none. */
struct heat_scale heat_scale_read(const struct kitchen *k, struct text t);

/* Where "gas mark 4" puts the scale first: 'G', and `*rest` is the number; else 0, and `*rest` is
 * as it was or not of use. */
char heat_scale_first(const struct kitchen *k, struct text input, struct text *rest);

/* Into which scale when none was asked for: a fan oven's figure into the conventional one's, else
 * into the other scale. */
struct heat_scale heat_scale_other(struct heat_scale from);

/* Sets said, result, source and rounding. False, with a problem, when there is no such figure. */
bool calculate_heat(const struct asked *q, const struct amount *n, struct heat_scale from,
                    struct heat_scale to, struct calculation *out);

#endif
