/* build/yieldor.h: yields that are told from both ends.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_YIELDOR_H
#define DISHTAKE_BUILD_YIELDOR_H

#include "build/builder.h"

/* "Six hungry lads, or nine who've eaten": sets the higher end where the words behind the match
 * tell one. */
void yield_with_other(const struct builder *b, const struct match *m, struct ratio *high);
/* "Ten if it's for the neighbours", right behind what was said: that is the higher end then. */
void yield_with_more(struct builder *b, const struct match *m);

#endif
