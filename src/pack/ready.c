/* pack/ready.c
 * SPDX-License-Identifier: MIT */
#include "pack/ready.h"

#include "base/pages.h"

/* The jump of a full arena ends here. */
static uintptr_t *room_for(struct arena *memory, const struct ready *image)
{
    size_t bytes = image->words * sizeof(uintptr_t);
    arena_init(memory, bytes);
    if (arena_open(memory))
        return arena_alloc(memory, bytes);
    return NULL;
}

/* Into words that are 0. Each start does it a hundred thousand times. */
static void read_code(const struct ready *image, uintptr_t *words, const char *pack)
{
    uintptr_t last[] = {[READY_WITHIN] = (uintptr_t) words, [READY_TO_PACK] = (uintptr_t) pack};
    const uint16_t *at = image->code, *end = at + image->length;
    for (uintptr_t *to = words; at < end;) {
        const unsigned number = *at++, kind = number & READY_KINDS;
        uintptr_t value = number >> READY_KIND_BITS;
        if (kind >= READY_WITHIN) {
            if (value == READY_MOST) {
                value = at[0] | (uintptr_t) at[1] << 16;
                at += 2;
            }
            *to++ = last[kind] += value >> 1 ^ (0 - (value & 1));
        } else if (kind == READY_PLAIN) {
            *to++ = value;
        } else if (value) {
            to += value;
        } else {
            memcpy(to++, at, sizeof *to);
            at += sizeof *to / sizeof *at;
        }
    }
}

void *ready_open(const struct ready *image, const struct pack *pack)
{
    struct arena memory;
    uintptr_t *words = room_for(&memory, image);
    if (!words)
        return NULL;
    read_code(image, words, pack_bytes(pack).at);
    pages_forget(image->code, image->length * sizeof *image->code);
    *(struct arena *) (void *) words = memory;
    return words;
}
