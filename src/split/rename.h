/* split/rename.h: two names are two dishes.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_RENAME_H
#define DISHTAKE_SPLIT_RENAME_H

#include "split/standing.h"

/* Whether the name that sentence `i` says is none of the dish, which was named before. */
bool renames(const struct recording *r, const struct feature *f, const struct standing *dish,
             size_t i);

#endif
