/* split/start.h: which sentence a dish begins with.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_START_H
#define DISHTAKE_SPLIT_START_H

#include "split/border.h"

/* So many sentences before its first cooking a dish may begin. */
#define TALK_MOST 16

/* The sentence with which the talk of stretch `s` begins: of those from `floor`, which is at most
 * `s.first`, up to the first in which something goes in or is done, and goes on being done. */
size_t find_start(const struct feature *f, const struct borders *b, size_t floor, struct stretch s);

#endif
