/* build/yield.h: what a yield counts, once the dish has its title.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_YIELD_H
#define DISHTAKE_BUILD_YIELD_H

#include "model/recording.h"
#include "pack/pack.h"

/* They tell how much a dish makes. */
#define YIELD_KINDS (KIND_OF(yield) | KIND_OF(count) | KIND_OF(tally))

/* "It makes twelve" is twelve of what the title names in the plural; a number that counts nothing
 * else is no yield where the title names none. */
void settle_yield(const struct pack *k, struct dish *d);

#endif
