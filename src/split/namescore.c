/* split/namescore.c: how much speaks for a name, by the weights of name.def.
 * SPDX-License-Identifier: MIT */
#include "split/candidate.h"
#include "split/weighted.h"

static const double trait_weights[] = {
#define SAID(name, dish, food, foreign, other, what)
#define TRAIT(name, weight, what) weight,
#include "split/name.def"
#undef SAID
#undef TRAIT
};
static const double said_weights[][NAME_KINDS] = {
#define SAID(name, dish, food, foreign, other, what) {dish, food, foreign, other},
#define TRAIT(name, weight, what)
#include "split/name.def"
#undef SAID
#undef TRAIT
};

double name_score(const struct candidates *c, const struct candidate *n)
{
    double x[TRAITS];
    struct said_bits said;
    enum name_kind kind = name_traits(c, n, x, &said);
    double score = weighted_sum(x, trait_weights, TRAITS);
    for (size_t half = 0; half < 2; half++)
        for (uint64_t bits = said.at[half]; bits; bits &= bits - 1)
            score += said_weights[64 * half + (size_t) __builtin_ctzll(bits)][kind];
    return score;
}

double no_name_score(void)
{
    return trait_weights[TRAIT_NONE];
}
