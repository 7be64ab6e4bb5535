/* split/segment.c
 * SPDX-License-Identifier: MIT */
#include "split/segment.h"

/* The prime of FNV-1a, 64 bits. */
#define KEY_PRIME ((size_t) 1099511628211u)

size_t segment_key(const struct segment *s, size_t first, size_t dish)
{
    return ((s->key ^ first) * KEY_PRIME ^ dish) * KEY_PRIME;
}

/* Jumps as in Myers, "An applicative random-access stack" (1983): twice as far where the two before
 * went equally far. */
struct segment segment_after(const struct segment *s, size_t first, size_t dish, size_t key)
{
    const struct segment *jump = s->jump, *far = jump ? jump->jump : NULL;
    bool equal = far && s->depth - jump->depth == jump->depth - far->depth;
    return (struct segment){s, equal ? far : s, s->depth + 1, first, dish, key};
}

const struct segment *segment_at(const struct segment *s, size_t sentence)
{
    while (s && s->first > sentence)
        s = s->jump && s->jump->first > sentence ? s->jump : s->before;
    return s;
}

static void reverse(struct stretch *out, size_t count)
{
    for (size_t i = 0; i < count / 2; i++) {
        struct stretch t = out[i];
        out[i] = out[count - 1 - i];
        out[count - 1 - i] = t;
    }
}

size_t segment_write(const struct segment *s, size_t count, struct stretch *out)
{
    size_t found = 0;
    for (; s; count = s->first, s = s->before)
        if (s->dish != NO_DISH && count > s->first)
            out[found++] = (struct stretch){s->first, count - 1, s->dish};
    reverse(out, found);
    return found;
}
