/* split/both.h: pieces of evidence that count only together.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_BOTH_H
#define DISHTAKE_SPLIT_BOTH_H

#include <stddef.h>

/* The rows of both.def: first those that are the same for all dishes of a way, then, from
 * BOTH_ITS_FIRST on, those with something of the dish that may go on. */
enum both {
#define BOTH(kind, one, other_kind, other, new, back, what) BOTH_##one##_##other,
#define BOTH_ITS(kind, one, other_kind, other, new, back, what)
#include "split/both.def"
#undef BOTH
#undef BOTH_ITS
    BOTH_ITS_FIRST,
    BOTH_BEFORE_ITS = BOTH_ITS_FIRST - 1,
#define BOTH(kind, one, other_kind, other, new, back, what)
#define BOTH_ITS(kind, one, other_kind, other, new, back, what) BOTH_##one##_##other,
#include "split/both.def"
#undef BOTH
#undef BOTH_ITS
    BOTHS
};

/* What of each row is the border's: the product of its pieces of border.def, of x[EVIDENCES]; 1
 * where it has none. Fills in out[BOTHS]. */
void find_both(const double *x, float *out);

#endif
