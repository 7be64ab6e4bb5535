/* build/wordheat.h: temperatures as a step prints them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WORDHEAT_H
#define DISHTAKE_BUILD_WORDHEAT_H

#include "build/builder.h"
#include "build/prose.h"

/* The heat of chunk `c`, as step `s` understood it: "350 °F" of "three fifty". A gas mark stays as
 * it was said. */
void say_heat(const struct builder *b, const struct step *s, struct prose *p,
              const struct chunk *c);

#endif
