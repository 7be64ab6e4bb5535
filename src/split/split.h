/* split/split.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_SPLIT_H
#define DISHTAKE_SPLIT_SPLIT_H

#include "model/recording.h"
#include "pack/pack.h"

bool split_dishes(struct recording *r, const struct pack *k, struct problems *p);

#endif
