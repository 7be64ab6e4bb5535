/* pack/index.c: texts -> numbers, by open addressing.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/image.h"
#include "pack/load.h"

/* The slot of `t`, or the free one where it would go. */
static struct key *probe(const struct index *x, struct text t, uint32_t hash)
{
    size_t mask = x->room - 1;
    for (size_t i = hash & mask;; i = (i + 1) & mask) {
        struct key *key = &x->slots[i];
        if (!key->at
            || (key->hash == hash && key->length == t.length
                && memcmp(key->at, t.at, t.length) == 0))
            return key;
    }
}

static void grow(struct arena *a, struct index *x, size_t room)
{
    struct index grown = {arena_alloc(a, room * sizeof(struct key)), room, x->count};
    for (size_t i = 0; i < x->room; i++) {
        const struct key *key = &x->slots[i];
        if (key->at)
            *probe(&grown, (struct text){key->at, key->length}, key->hash) = *key;
    }
    *x = grown;
}

void index_reserve(struct arena *a, struct index *x, size_t count)
{
    size_t room = 64;
    while (room / 4 * 3 < count)
        room *= 2;
    if (room > x->room)
        grow(a, x, room);
}

struct key *index_put(struct arena *a, struct index *x, struct text t)
{
    uint32_t hash = key_hash(t);
    struct key *key = x->room ? probe(x, t, hash) : NULL;
    if (key && key->at)
        return key; /* so that what is in it does not move when it is only looked up */
    if (x->count >= x->room / 4 * 3) {
        index_reserve(a, x, x->count + 1);
        key = probe(x, t, hash);
    }
    *key = (struct key){.at = t.at, .length = (uint32_t) t.length, .hash = hash};
    x->count++;
    return key;
}
