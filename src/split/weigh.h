/* split/weigh.h: what evidence of move.def and both.def comes to. A search asks at each sentence,
 * for each dish of each way: so the rows stand here one after the other, and where it is known at
 * the call which weights are asked for, no others are looked at.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_WEIGH_H
#define DISHTAKE_SPLIT_WEIGH_H

#include "split/move.h"

/* Of move.def, evidence [first, end) of x[MOVES], for a dish that begins or one that goes on. */
static inline double weigh(const double *x, bool begins, size_t first, size_t end)
{
    double score = 0;
#define MOVE(name, new, back, what)                                        \
    if ((name) >= first && (name) < end && (begins ? (new) : (back)) != 0) \
        score += (begins ? (new) : (back)) * x[name];
#include "split/move.def"
#undef MOVE
    return score;
}

/* Of a product's two pieces those of border.def are in find_both's already. */
#define WEIGH_AT(x, piece) 1
#define WEIGH_OF(x, piece) x[piece]
#define WEIGH_ROW(kind, one, other_kind, other, new, back, what)                   \
    if ((begins ? (new) : (back)) != 0)                                            \
        score += (double) border[BOTH_##one##_##other] * (begins ? (new) : (back)) \
                 * WEIGH_##kind(x, one) * WEIGH_##other_kind(x, other);

/* Of both.def, the rows with something of the dish (`its`), or those that are the same for all
 * dishes of a way. `border` is of find_both. */
static inline double weigh_both(const float *border, const double *x, bool begins, bool its)
{
    double score = 0;
#define BOTH(...)              \
    if (!its) {                \
        WEIGH_ROW(__VA_ARGS__) \
    }
#define BOTH_ITS(...)          \
    if (its) {                 \
        WEIGH_ROW(__VA_ARGS__) \
    }
#include "split/both.def"
#undef BOTH
#undef BOTH_ITS
    return score;
}

#endif
