/* build/yield.h: what a yield counts, once the dish has its title.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_YIELD_H
#define DISHTAKE_BUILD_YIELD_H

#include "model/recording.h"
#include "pack/pack.h"

/* Whether rules of that kind tell how much a dish makes. */
static inline bool is_yield_rule(enum rule_kind kind)
{
    return kind == RULE_yield || kind == RULE_count || kind == RULE_tally;
}

/* "It makes twelve" is twelve of what the title names in the plural; a number that counts nothing
 * else is no yield where the title names none. */
void settle_yield(const struct pack *k, struct dish *d);

#endif
