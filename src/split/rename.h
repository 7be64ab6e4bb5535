/* split/rename.h: two names are two dishes.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_RENAME_H
#define DISHTAKE_SPLIT_RENAME_H

#include "split/segment.h"

/* Whether the sentence says a dish's name. */
bool says_name(const struct feature *f);
/* For each sentence 1 + the last one up to it that says a name, 0 for none. Arena. */
const size_t *sentences_named(const struct recording *r, const struct feature *f, size_t count);
/* Whether sentence `i` says a name that is none of `dish`, which was named before in that chain.
 * `named` is of sentences_named. */
bool renames(const struct recording *r, const struct feature *f, const size_t *named,
             const struct segment *at, size_t i, size_t dish);

#endif
