/* read/ttml_time.c
 * SPDX-License-Identifier: MIT */
#include "read/ttml_time.h"

#include <string.h>

#include "read/clock.h"
#include "read/limits.h"

/* "12.5s", "900ms", "1.5h", "2m", "48f", "10000t". */
static bool read_offset(const struct ttml_rates *rates, struct text value, double *seconds)
{
    const struct {
        const char *metric;
        double seconds;
    } metrics[] = {
        {"ms", 0.001},          {"h", 3600}, {"m", 60}, {"s", 1}, {"f", 1 / rates->frames},
        {"t", 1 / rates->ticks}};
    for (size_t i = 0; i < sizeof metrics / sizeof *metrics; i++) {
        struct text number = text_slice(value, 0, value.length - strlen(metrics[i].metric));
        double count;
        bool whole;
        if (!text_ends(value, metrics[i].metric) || !number_read(number, &count, &whole))
            continue;
        bool possible = count >= 0 && count * metrics[i].seconds <= TIME_SECONDS_MAX;
        if (possible)
            *seconds = count * metrics[i].seconds;
        return possible;
    }
    return false;
}

/* "00:01:02.500", or with frames "00:01:02:12". */
static bool read_clock_time(const struct ttml_rates *rates, struct text value, double *seconds)
{
    struct clock c;
    size_t at = 0, last = value.length;
    while (last && value.at[last - 1] != ':')
        last--;
    size_t colons = 0;
    for (size_t i = 0; i < value.length; i++)
        colons += value.at[i] == ':';
    struct text clock = colons == 3 ? text_slice(value, 0, last - 1) : value;
    double frames = 0;
    bool whole;
    if (!clock_read(clock, &at, &c) || at < clock.length)
        return false;
    if (colons == 3
        && (!number_read(text_slice(value, last, value.length), &frames, &whole) || frames < 0))
        return false;
    *seconds = c.seconds + frames / rates->frames;
    return true;
}

bool ttml_time(struct text value, const struct ttml_rates *rates, double *seconds)
{
    return read_clock_time(rates, value, seconds) || read_offset(rates, value, seconds);
}
