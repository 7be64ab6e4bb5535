/* build/stepmeasure.h: the times and temperatures of a step.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPMEASURE_H
#define DISHTAKE_BUILD_STEPMEASURE_H

#include "build/builder.h"

/* The step's words and seconds reach over chunk `c` as well. */
void grow_step(struct builder *b, struct step *s, const struct chunk *c);
/* The length of time in chunk `index` is of the step's last action; one too long for cooking, or
 * without a number, is left out. */
void add_duration(struct builder *b, struct step *s, size_t index);
/* "... and the same on the other side": the time just said holds for each side. */
void repeat_duration(struct builder *b, const struct chunk *c);
/* The temperature in `c`, unless it was said before; a correction takes its place. */
void add_temperature(struct builder *b, struct step *s, const struct chunk *c);

#endif
