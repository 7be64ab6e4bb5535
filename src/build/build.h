/* build/build.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_BUILD_H
#define DISHTAKE_BUILD_BUILD_H

#include "model/recording.h"
#include "pack/pack.h"

bool build_recipes(struct recording *r, const struct pack *k, struct problems *p);

#endif
