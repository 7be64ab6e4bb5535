/* split/both.c
 * SPDX-License-Identifier: MIT */
#include "split/both.h"

#include "split/evidence.h"
#include "split/move.h"

/* A piece: of border.def, or, behind these, of move.def. */
#define AT(piece) (piece)
#define OF(piece) (EVIDENCES + (piece))
#define ROW(kind, one, other_kind, other, new, back, what) \
    [BOTH_##one##_##other] = {{kind(one), other_kind(other)}, {new, back}},

static const struct {
    size_t of[2];
    double weights[2];
} ROWS[BOTHS] = {
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
            product *= ROWS[n].of[k] < EVIDENCES ? x[ROWS[n].of[k]] : 1;
        out[n] = (float) product;
    }
}

double weigh_both(const float *border, const double *x, int what, size_t first, size_t end)
{
    double score = 0;
    for (size_t n = first; n < end; n++) {
        double product = (double) border[n] * ROWS[n].weights[what];
        for (size_t k = 0; k < 2; k++)
            product *= ROWS[n].of[k] < EVIDENCES ? 1 : x[ROWS[n].of[k] - EVIDENCES];
        score += product;
    }
    return score;
}
