/* split/weighted.h: what evidence comes to, by the weights that were learned for it (a .def file).
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_WEIGHTED_H
#define DISHTAKE_SPLIT_WEIGHTED_H

#include <stddef.h>

/* Both have `count`. What it means, and from where on it is enough, is the .def file's own. */
static inline double weighted_sum(const double *x, const double *weights, size_t count)
{
    double sum = 0;
    for (size_t n = 0; n < count; n++)
        sum += weights[n] * x[n];
    return sum;
}

#endif
