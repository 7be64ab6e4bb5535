/* review/delta.h: a page for one who has the page before: an element of a list that stood in that
 * list before is told by its place there, a number.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_DELTA_H
#define DISHTAKE_REVIEW_DELTA_H

#include "base/buffer.h"

/* Both are what dishtake_write gives for "review" as "recipes": a key or an element of a list a
 * line. */
void delta_put(struct text before, struct text now, struct buffer *out);

#endif
