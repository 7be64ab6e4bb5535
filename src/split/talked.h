/* split/talked.h: whether anything is cooked at all.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TALKED_H
#define DISHTAKE_SPLIT_TALKED_H

#include "split/whole.h"

enum talked {
#define TALKED(name, weight, what) TALKED_##name,
#include "split/talked.def"
#undef TALKED
    TALKEDS
};

/* Fills in x[TALKEDS]; there is a dish at least. */
void find_talked(const struct wholes *w, double *x);
/* Whether a cupboard is shown, or questions are answered, with amounts and times as if it were
 * cooking. */
bool is_only_talk(const struct wholes *w);

#endif
