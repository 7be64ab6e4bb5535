/* build/heatagain.h: temperatures that are said more than once.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_HEATAGAIN_H
#define DISHTAKE_BUILD_HEATAGAIN_H

#include "build/builder.h"

/* Whether `t`, which chunk `c` says, is no new temperature of the dish: it has that one already, or
 * it takes the place of one just said, which is then changed. */
bool is_heat_again(struct builder *b, const struct chunk *c, const struct temperature *t);

/* Whether the dish has a temperature of the thing already. */
bool has_heat_of(const struct dish *d, struct text of);

#endif
