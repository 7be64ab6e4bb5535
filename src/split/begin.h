/* split/begin.h: where a dish is spoken of first.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_BEGIN_H
#define DISHTAKE_SPLIT_BEGIN_H

#include "split/owner.h"

/* Moves the beginning of each dish's first stretch in `s`, which are n->s, to the talk before it
 * that says its name. */
void begin_named(const struct naming *n, struct stretch *s);

#endif
