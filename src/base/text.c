/* base/text.c
 * SPDX-License-Identifier: MIT */
#include "base/text.h"

#include <string.h>

struct text text_from(const char *string)
{
    return string ? (struct text){string, strlen(string)} : TEXT_EMPTY;
}

/* The last bytes of a text, fewer than eight, in two loads that may overlap: no loop, since most
 * words are that short. */
static uint64_t short_bytes(const char *at, size_t length)
{
    uint32_t begin, end;
    if (length >= 4) {
        memcpy(&begin, at, 4);
        memcpy(&end, at + length - 4, 4);
        return (uint64_t) begin << 32 | end;
    }
    if (!length)
        return 0;
    return (uint64_t) (unsigned char) at[0] << 16 | (uint64_t) (unsigned char) at[length / 2] << 8
           | (unsigned char) at[length - 1];
}

size_t text_hash(struct text t)
{
    const uint64_t odd = 0x9E3779B97F4A7C15u; /* 2^64 / golden ratio, as usual for such hashes */
    uint64_t h = t.length * odd, part;
    size_t i = 0;
    for (; i + 8 <= t.length; i += 8) {
        memcpy(&part, t.at + i, 8);
        h = (h ^ part) * odd;
        h ^= h >> 32;
    }
    const char *rest = i < t.length ? t.at + i : t.at; /* the empty text may stand nowhere */
    h = (h ^ short_bytes(rest, t.length - i)) * odd;
    return h ^ h >> 32;
}

/* So that no digits run over. */
#define WHOLE_MOST 10000000

int text_whole(struct text t)
{
    int number = 0;
    bool negative = t.length && *t.at == '-';
    for (size_t i = negative; i < t.length && number < WHOLE_MOST; i++)
        number = 10 * number + (t.at[i] - '0');
    return negative ? -number : number;
}

int text_compare(struct text a, struct text b)
{
    size_t shared = a.length < b.length ? a.length : b.length;
    int order = shared ? memcmp(a.at, b.at, shared) : 0;
    if (order)
        return order;
    return (a.length > b.length) - (a.length < b.length);
}

bool text_starts(struct text t, const char *start)
{
    size_t n = strlen(start);
    return t.length >= n && memcmp(t.at, start, n) == 0;
}

bool text_ends(struct text t, const char *end)
{
    size_t n = strlen(end);
    return t.length >= n && memcmp(t.at + t.length - n, end, n) == 0;
}

static bool is_space(char c)
{
    return c == ' ' || (c >= '\t' && c <= '\r');
}

struct text text_trim(struct text t)
{
    while (t.length && is_space(t.at[0]))
        t = (struct text){t.at + 1, t.length - 1};
    while (t.length && is_space(t.at[t.length - 1]))
        t.length--;
    return t;
}

struct text text_slice(struct text t, size_t begin, size_t end)
{
    if (end > t.length)
        end = t.length;
    if (begin > end)
        begin = end;
    return (struct text){t.at + begin, end - begin};
}

struct text text_last_word(struct text t)
{
    size_t i = t.length;
    while (i > 0 && t.at[i - 1] != ' ')
        i--;
    return text_slice(t, i, t.length);
}

size_t text_find(struct text t, char c, size_t from)
{
    if (from >= t.length)
        return t.length;
    const char *hit = memchr(t.at + from, c, t.length - from);
    return hit ? (size_t) (hit - t.at) : t.length;
}

/* Most parts are short, so that a loop is done before memchr would have begun. */
#define SHORT_PART 16

/* Where the part that begins at `from` ends. */
static size_t part_end(struct text t, size_t from, char separator)
{
    size_t i = from, near = t.length - from > SHORT_PART ? from + SHORT_PART : t.length;
    while (i < near && t.at[i] != separator)
        i++;
    return i < near || i == t.length ? i : text_find(t, separator, i);
}

bool text_part(struct text *rest, char separator, struct text *part)
{
    const struct text t = *rest;
    if (!t.at)
        return false;
    size_t cut = part_end(t, 0, separator);
    *part = (struct text){t.at, cut};
    *rest =
        cut < t.length ? (struct text){t.at + cut + 1, t.length - cut - 1} : (struct text){NULL, 0};
    return true;
}

size_t text_parts(struct text t, char separator)
{
    size_t count = t.length > 0;
    for (size_t i = text_find(t, separator, 0); i < t.length; i = text_find(t, separator, i + 1))
        count++;
    return count;
}

bool text_has_part(struct text list, char separator, struct text part)
{
    for (size_t i = 0, end; i < list.length; i = end + 1) {
        end = part_end(list, i, separator);
        if (text_equal((struct text){list.at + i, end - i}, part))
            return true;
    }
    return false;
}

bool text_share_part(struct text list, struct text other, char separator)
{
    for (size_t i = 0, end; i < list.length; i = end + 1) {
        end = part_end(list, i, separator);
        if (text_has_part(other, separator, (struct text){list.at + i, end - i}))
            return true;
    }
    return false;
}

size_t text_letters(struct text t)
{
    size_t count = 0;
    for (size_t i = 0; i < t.length; i++)
        count += !byte_goes_on(t.at[i]);
    return count;
}

/* Bytes of a letter behind its first one. What has more of them in a row is no UTF-8. */
#define BYTES_GOING_ON 3

struct text text_cut(struct text t, size_t bytes)
{
    size_t end = bytes;
    if (t.length <= bytes)
        return t;
    while (end && bytes - end < BYTES_GOING_ON && byte_goes_on(t.at[end]))
        end--;
    return text_slice(t, 0, end);
}

size_t text_digits(uint64_t number, char out[DIGITS_MOST])
{
    char reversed[DIGITS_MOST];
    size_t count = 0;
    do {
        reversed[count++] = (char) ('0' + number % 10);
        number /= 10;
    } while (number);
    for (size_t i = 0; i < count; i++)
        out[i] = reversed[count - 1 - i];
    return count;
}
