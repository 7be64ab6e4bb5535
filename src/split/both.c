/* split/both.c
 * SPDX-License-Identifier: MIT */
#include "split/both.h"

#include "split/evidence.h"
#include "split/move.h"

/* A piece: of border.def, or, behind these, of move.def. */
#define AT(piece) (piece)
#define OF(piece) (EVIDENCES + (piece))
#define ROW(kind, one, other_kind, other, new, back, what) \
    [BOTH_##one##_##other] = {kind(one), other_kind(other)},

static const size_t ROWS[BOTHS][2] = {
#define BOTH ROW
#define BOTH_ITS ROW
#include "split/both.def"
#undef BOTH
#undef BOTH_ITS
};

void find_both(const double *x, float *out)
{
    for (size_t n = 0; n < BOTHS; n++) {
        double product = 1;
        for (size_t k = 0; k < 2; k++)
            product *= ROWS[n][k] < EVIDENCES ? x[ROWS[n][k]] : 1;
        out[n] = (float) product;
    }
}
