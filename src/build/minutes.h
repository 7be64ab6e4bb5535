/* build/minutes.h: numbers that are minutes, said without the word.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_MINUTES_H
#define DISHTAKE_BUILD_MINUTES_H

#include "build/builder.h"

/* Makes b->chunks those of the sentence, where they are not yet, and lengths of time of the numbers
 * among them that are one: "two minutes, flip it, then one", "leave it ten". */
void read_chunks(struct builder *b, const struct sentence *s);

#endif
