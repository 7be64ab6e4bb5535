/* read/clock.c
 * SPDX-License-Identifier: MIT */
#include "read/clock.h"

#include "read/limits.h"
#include "read/reader.h"

#define DIGITS_MAX 9

struct digits {
    double value;
    unsigned count;
    double scale; /* ten to the power of count */
};

/* False when there is no digit, or more than DIGITS_MAX. */
static bool read_digits(struct text t, size_t *at, struct digits *d)
{
    *d = (struct digits){.scale = 1};
    size_t i = *at;
    for (; i < t.length && is_digit(t.at[i]); i++) {
        if (++d->count > DIGITS_MAX)
            return false;
        d->value = d->value * 10 + (t.at[i] - '0');
        d->scale *= 10;
    }
    *at = i;
    return d->count > 0;
}

/* ".456" or ",456"; nothing else moves `*at`. */
static double read_fraction(struct text t, size_t *at, struct clock *c)
{
    struct digits d;
    size_t i = *at + 1;
    if (*at >= t.length || (t.at[*at] != '.' && t.at[*at] != ',') || !read_digits(t, &i, &d))
        return 0;
    c->comma = t.at[*at] == ',';
    c->dot = !c->comma;
    c->decimals = d.count;
    *at = i;
    return d.value / d.scale;
}

static bool is_sixtieth(struct digits d)
{
    return d.count == 2 && d.value < 60;
}

bool clock_read(struct text t, size_t *at, struct clock *c)
{
    struct digits part[4];
    size_t i = *at, n = 0;
    for (;;) {
        if (!read_digits(t, &i, &part[n++]))
            return false;
        if (n == 4 || i + 1 >= t.length || t.at[i] != ':' || !is_digit(t.at[i + 1]))
            break;
        i++;
    }
    if (n < 2 || (n == 4 && part[3].count != 3))
        return false;
    struct clock found = {.hours = n > 2, .digits = part[0].count};
    size_t last = n > 2 ? 2 : 1;
    double fraction = n == 4 ? part[3].value / part[3].scale : read_fraction(t, &i, &found);
    found.seconds = part[last].value + fraction + 60 * part[last - 1].value;
    if (found.hours)
        found.seconds += 3600 * part[0].value;
    found.loose = n == 4 || !is_sixtieth(part[last]) || (found.hours && !is_sixtieth(part[1]));
    if (found.seconds > TIME_SECONDS_MAX)
        return false;
    *c = found;
    *at = i;
    return true;
}

bool number_read(struct text t, double *value, bool *whole)
{
    struct digits d;
    struct clock fraction = {0};
    size_t i = t.length && t.at[0] == '-';
    double sign = i ? -1 : 1;
    if (!read_digits(t, &i, &d))
        return false;
    double part = read_fraction(t, &i, &fraction);
    if (i < t.length || d.value > TIME_SECONDS_MAX * 1000)
        return false;
    *value = sign * (d.value + part);
    *whole = !fraction.comma && !fraction.dot;
    return true;
}

bool time_read(struct text t, double *seconds, bool *whole)
{
    struct clock c;
    size_t i = 0;
    t = text_trim(t);
    if (number_read(t, seconds, whole))
        return true;
    if (!clock_read(t, &i, &c) || i < t.length)
        return false;
    *seconds = c.seconds;
    *whole = false;
    return true;
}
