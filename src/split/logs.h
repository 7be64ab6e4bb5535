/* split/logs.h: logarithms of whole numbers, which are counts of sentences: a search asks for the
 * same ones many times.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_LOGS_H
#define DISHTAKE_SPLIT_LOGS_H

#include <math.h>
#include <stddef.h>

/* Numbers below this stand in the table; others are asked for one by one. */
#define LOGS_MOST 1024

struct logs {
    size_t count;                           /* how many are filled in */
    double of[LOGS_MOST], after[LOGS_MOST]; /* log(n); log1p(n) */
};

/* For numbers below `count`, most often. */
static inline void logs_make(struct logs *l, size_t count)
{
    l->count = count < LOGS_MOST ? count : LOGS_MOST;
    for (size_t n = 0; n < l->count; n++) {
        l->of[n] = log((double) n);
        l->after[n] = log1p((double) n);
    }
}
static inline double log_of(const struct logs *l, size_t n)
{
    return n < l->count ? l->of[n] : log((double) n);
}
static inline double log_after(const struct logs *l, size_t n)
{
    return n < l->count ? l->after[n] : log1p((double) n);
}

#endif
