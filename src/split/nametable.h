/* split/nametable.h: names of one recording by what they are made of, the same for "bun" and
 * "buns".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_NAMETABLE_H
#define DISHTAKE_SPLIT_NAMETABLE_H

#include "split/candidate.h"

/* Room for what `all` has room for. */
void name_table_open(struct candidates *c);
/* "With", "and a" between two noun phrases of one name. */
bool joins_names(unsigned char tag);
/* Of a name with one word more; words that join are none. */
uint64_t longer_hash(uint64_t hash, const struct word *w);

#endif
