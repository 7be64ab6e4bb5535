/* review/range.c: one range only. RFC 9110, 14.2, lets a server refuse several; no player sends
 * them.
 * SPDX-License-Identifier: MIT */
#include "review/range.h"

/* Digits up to a byte number that fits; false when there are none, or too many. */
static bool read_number(struct text t, size_t *at, uint64_t *n)
{
    size_t begin = *at;
    *n = 0;
    for (; *at < t.length && t.at[*at] >= '0' && t.at[*at] <= '9'; ++*at) {
        if (*at - begin >= 18)
            return false;
        *n = *n * 10 + (uint64_t) (t.at[*at] - '0');
    }
    return *at > begin;
}

/* "-500": the last 500 bytes. */
static enum range_kind read_suffix(struct text t, size_t at, uint64_t size, uint64_t *first,
                                   uint64_t *last)
{
    uint64_t n;
    if (!read_number(t, &at, &n) || at != t.length || !n || !size)
        return RANGE_BAD;
    *first = n < size ? size - n : 0;
    *last = size - 1;
    return RANGE_PART;
}

enum range_kind range_read(struct text header, uint64_t size, uint64_t *first, uint64_t *last)
{
    struct text t = text_trim(header);
    size_t at = sizeof "bytes=" - 1;
    uint64_t from, to = UINT64_MAX;
    if (!text_starts(t, "bytes="))
        return RANGE_WHOLE; /* another unit is ignored (14.2) */
    if (at < t.length && t.at[at] == '-')
        return read_suffix(t, at + 1, size, first, last);
    if (!read_number(t, &at, &from) || at >= t.length || t.at[at++] != '-')
        return RANGE_BAD;
    if (at < t.length && !read_number(t, &at, &to))
        return RANGE_BAD;
    if (at != t.length || from > to || from >= size)
        return RANGE_BAD;
    *first = from;
    *last = to < size ? to : size - 1;
    return RANGE_PART;
}
