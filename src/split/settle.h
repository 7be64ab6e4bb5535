/* split/settle.h: what a name is of, by what stands around it, once all sentences were read.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_SETTLE_H
#define DISHTAKE_SPLIT_SETTLE_H

#include "split/feature.h"

/* Whether the name in sentence `i` is of what comes or of what was; and one that stands alone. */
void settle_name(const struct recording *r, struct feature *f, size_t i);
void settle_bare(const struct recording *r, struct feature *f, size_t i);

#endif
