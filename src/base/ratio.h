/* base/ratio.h: an exact number of kitchen size, so that a third of a cup three times is a cup.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_RATIO_H
#define DISHTAKE_BASE_RATIO_H

#include <stdbool.h>
#include <stdint.h>

/* over/under in lowest terms, `under` > 0. Two values are no numbers: {1, 0} is "and upwards" (the
 * top of "at least two"), {0, 0} is "none", and is what every operation gives that would overflow
 * or that has a none in it. So a chain of operations is checked once, at its end, by ratio_known.
 */
struct ratio {
    int64_t over, under;
};

#define RATIO_NONE ((struct ratio){0, 0})
#define RATIO_UPWARDS ((struct ratio){1, 0})
#define RATIO(n) ((struct ratio){(n), 1})

struct ratio ratio_make(int64_t over, int64_t under); /* lowered; under 0 gives none */
bool ratio_known(struct ratio a);                     /* a number, or "and upwards" */
bool ratio_finite(struct ratio a);                    /* a number */
struct ratio ratio_add(struct ratio a, struct ratio b);
struct ratio ratio_subtract(struct ratio a, struct ratio b);
struct ratio ratio_multiply(struct ratio a, struct ratio b);
struct ratio ratio_divide(struct ratio a, struct ratio b); /* by zero gives none */
int ratio_compare(struct ratio a, struct ratio b);         /* none sorts first, upwards last */
bool ratio_equal(struct ratio a, struct ratio b);          /* none equals none */
double ratio_double(struct ratio a);                       /* INFINITY for upwards, NAN for none */
/* The multiple of `step` (> 0) that is nearest, or the next lower one; a half goes up. */
struct ratio ratio_round(struct ratio a, struct ratio step);
struct ratio ratio_floor(struct ratio a, struct ratio step);
/* Reads "3", "1/2", "1 1/2", "2.75" (whole text); none when it is no such number. */
struct ratio ratio_read(const char *at, unsigned long length);

#endif
