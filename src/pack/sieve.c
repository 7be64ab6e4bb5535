/* pack/sieve.c
 * SPDX-License-Identifier: MIT */
#include "pack/sieve.h"

/* Room for `count` bytes at `at`, where they are still to be written; false when it is full. */
static bool insert(struct sieve *s, size_t at, size_t count)
{
    if (s->full || count > SIEVE_BYTES - s->length) {
        s->full = true;
        return false;
    }
    memmove(s->codes + at + count, s->codes + at, s->length - at);
    s->length += count;
    return true;
}

static void put_length(unsigned char *at, size_t length)
{
    at[0] = (unsigned char) (length & 0xff);
    at[1] = (unsigned char) (length >> 8);
}

void sieve_put(struct sieve *s, enum sieve_code code)
{
    if (insert(s, s->length, 1))
        s->codes[s->length - 1] = (unsigned char) code;
}

void sieve_put_list(struct sieve *s, enum sieve_code code, const unsigned char *units, size_t count)
{
    size_t at = s->length;
    if (count > SIEVE_LIST_MOST)
        s->full = true;
    if (!insert(s, at, 2 + count))
        return;
    s->codes[at] = (unsigned char) code;
    s->codes[at + 1] = (unsigned char) count;
    if (count)
        memcpy(s->codes + at + 2, units, count);
}

void sieve_wrap_look(struct sieve *s, size_t begin, enum sieve_code code)
{
    size_t length = s->length - begin;
    if (!insert(s, begin, 3))
        return;
    s->codes[begin] = (unsigned char) code;
    put_length(s->codes + begin + 1, length);
}

void sieve_wrap_repeat(struct sieve *s, size_t begin, unsigned least, unsigned most)
{
    size_t length = s->length - begin;
    if (!insert(s, begin, 5))
        return;
    s->codes[begin] = SIEVE_REPEAT;
    s->codes[begin + 1] = (unsigned char) least;
    s->codes[begin + 2] = (unsigned char) most;
    put_length(s->codes + begin + 3, length);
}

/* "(FOOD|PART|DISH)" is one list, which takes one step. False when a choice is more than classes.
 */
static bool join_lists(struct sieve *s, size_t begin, const size_t *ends, size_t count)
{
    unsigned char units[SIEVE_BYTES];
    size_t all = 0, at = begin;
    for (size_t i = 0; i < count; at = ends[i++]) {
        size_t listed = ends[i] > at + 1 ? s->codes[at + 1] : 0;
        if (ends[i] < at + 2 || s->codes[at] != SIEVE_UNITS || at + 2 + listed != ends[i])
            return false;
        memcpy(units + all, s->codes + at + 2, listed);
        all += listed;
    }
    if (all > SIEVE_LIST_MOST)
        return false;
    s->length = begin;
    sieve_put_list(s, SIEVE_UNITS, units, all);
    return true;
}

void sieve_wrap_choices(struct sieve *s, size_t begin, const size_t *ends, size_t count)
{
    if (count > SIEVE_LIST_MOST)
        s->full = true;
    if (s->full || join_lists(s, begin, ends, count) || !insert(s, begin, 2 + 2 * count))
        return;
    s->codes[begin] = SIEVE_CHOICES;
    s->codes[begin + 1] = (unsigned char) count;
    for (size_t i = 0; i < count; i++)
        put_length(s->codes + begin + 2 + 2 * i, ends[i] - (i ? ends[i - 1] : begin));
}

void sieve_swap(struct sieve *s, size_t begin, size_t middle)
{
    unsigned char before[SIEVE_BYTES];
    size_t first = middle - begin, second = s->length - middle;
    memcpy(before, s->codes + begin, first);
    memmove(s->codes + begin, s->codes + middle, second);
    memcpy(s->codes + begin + second, before, first);
}

struct text sieve_text(const struct sieve *s)
{
    return s->full ? TEXT_EMPTY : (struct text){(const char *) s->codes, s->length};
}
