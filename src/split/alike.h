/* split/alike.h: what speaks for it that two dishes that were found are one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_ALIKE_H
#define DISHTAKE_SPLIT_ALIKE_H

#include "split/whole.h"

enum alike {
#define ALIKE(name, weight, what) ALIKE_##name,
#include "split/alike.def"
#undef ALIKE
    ALIKES
};

/* Fills in what is of the recording, for all pairs of its dishes. */
void find_all_alike(const struct wholes *w, double *x);
/* Fills in the rest, for two dishes of which `a` began before `b`. */
void find_alike(const struct wholes *w, size_t a, size_t b, double *x);

#endif
