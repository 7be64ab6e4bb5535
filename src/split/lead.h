/* split/lead.h: talk that only leads to a dish, which the search took for one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_LEAD_H
#define DISHTAKE_SPLIT_LEAD_H

#include "split/border.h"

/* Leaves out such stretches of the `count`, and numbers the threads anew. Returns how many are
 * left.
 */
size_t drop_leads(const struct recording *r, const struct feature *f, struct stretch *s,
                  size_t count);

#endif
