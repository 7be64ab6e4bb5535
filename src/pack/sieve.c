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

void sieve_put_slot(struct sieve *s, enum sieve_code code, size_t slot)
{
    if (!insert(s, s->length, 2))
        return;
    s->codes[s->length - 2] = (unsigned char) code;
    s->codes[s->length - 1] = (unsigned char) slot;
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

void sieve_wrap_repeat(struct sieve *s, size_t begin, enum sieve_code code, unsigned least,
                       unsigned most)
{
    size_t length = s->length - begin;
    if (!insert(s, begin, 5))
        return;
    s->codes[begin] = (unsigned char) code;
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

static size_t length_of(const unsigned char *bytes)
{
    return bytes[0] + 256u * bytes[1];
}

static void strip(struct sieve *out, const unsigned char *at, const unsigned char *end);

static const unsigned char *strip_choices(struct sieve *out, const unsigned char *at)
{
    const unsigned char *lengths = at + 2, *codes = lengths + 2 * at[1];
    size_t begin = out->length, ends[SIEVE_LIST_MOST] = {0};
    for (size_t n = 0; n < at[1]; n++) {
        const size_t length = length_of(lengths + 2 * n);
        strip(out, codes, codes + length);
        ends[n] = out->length;
        codes += length;
    }
    sieve_wrap_choices(out, begin, ends, at[1]);
    return codes;
}

/* A code that has codes within: the code behind it. */
static const unsigned char *strip_within(struct sieve *out, const unsigned char *at)
{
    const bool look = *at == SIEVE_AHEAD || *at == SIEVE_NOT_AHEAD;
    const unsigned char *codes = at + (look ? 3 : 5), *end = codes + length_of(codes - 2);
    const size_t begin = out->length;
    strip(out, codes, end);
    if (look)
        sieve_wrap_look(out, begin, (enum sieve_code) * at);
    else
        sieve_wrap_repeat(out, begin, (enum sieve_code) * at, at[1], at[2]);
    return end;
}

static void strip(struct sieve *out, const unsigned char *at, const unsigned char *end)
{
    while (at < end) {
        const enum sieve_code code = (enum sieve_code) * at;
        switch (code) {
        case SIEVE_UNITS:
        case SIEVE_BEHIND:
        case SIEVE_NOT_BEHIND:
            sieve_put_list(out, code, at + 2, at[1]);
            at += 2 + at[1];
            break;
        case SIEVE_OPEN:
        case SIEVE_CLOSE:
            at += 2;
            break;
        case SIEVE_CHOICES:
            at = strip_choices(out, at);
            break;
        case SIEVE_AHEAD:
        case SIEVE_NOT_AHEAD:
        case SIEVE_REPEAT:
        case SIEVE_REPEAT_FEW:
            at = strip_within(out, at);
            break;
        default:
            sieve_put(out, code);
            at++;
        }
    }
}

void sieve_strip(struct sieve *out, const struct sieve *from)
{
    out->length = 0;
    out->full = from->full;
    strip(out, from->codes, from->codes + from->length);
}

struct text sieve_text(const struct sieve *s)
{
    return s->full ? TEXT_EMPTY : (struct text){(const char *) s->codes, s->length};
}
