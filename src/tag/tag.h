/* tag/tag.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_TAG_H
#define DISHTAKE_TAG_TAG_H

#include "model/recording.h"
#include "pack/pack.h"

bool tag_words(struct recording *r, const struct pack *k, struct problems *p);

#endif
