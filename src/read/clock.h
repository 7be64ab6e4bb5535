/* read/clock.h: times as captions write them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_CLOCK_H
#define DISHTAKE_READ_CLOCK_H

#include "base/text.h"

/* "1:02", "1:02:03", "01:02:03,456", "1:02.5". */
struct clock {
    double seconds;
    bool hours;      /* has three numbers */
    bool comma, dot; /* before the fraction */
    bool loose; /* minutes or seconds over 59, or not of two digits; or a colon before the fraction
                 */
    unsigned digits;   /* of the first number */
    unsigned decimals; /* digits of the fraction */
};

/* Reads a clock at t.at[*at] and moves `*at` behind it. False, with nothing touched, when there is
 * none. */
bool clock_read(struct text t, size_t *at, struct clock *c);
/* "12", "12.5", "-3": the whole of `t`. `whole` says that it has no fraction. */
bool number_read(struct text t, double *value, bool *whole);
/* A clock or a number: the whole of `t`, white space around it left out. */
bool time_read(struct text t, double *seconds, bool *whole);

#endif
