/* pack/ready.c
 * SPDX-License-Identifier: MIT */
#include "pack/ready.h"

/* The jump of a full arena ends here. */
static uintptr_t *room_for(struct arena *memory, const struct ready *image)
{
    size_t bytes = image->words * sizeof(uintptr_t);
    arena_init(memory, bytes);
    if (arena_open(memory))
        return arena_alloc(memory, bytes);
    return NULL;
}

/* Into words that are 0. Each start does it a hundred thousand times, so without a branch a kind.
 */
static void read_code(const struct ready *image, uintptr_t *words, const char *pack)
{
    const uintptr_t base[] = {
        [READY_PLAIN] = 0, [READY_WITHIN] = (uintptr_t) words, [READY_TO_PACK] = (uintptr_t) pack};
    const uint32_t *at = image->code, *end = at + image->length;
    for (uintptr_t *to = words; at < end;) {
        uint32_t number = *at++, value = number >> READY_KIND_BITS, kind = number & READY_KINDS;
        if (kind) {
            *to++ = base[kind] + value;
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
    *(struct arena *) (void *) words = memory;
    return words;
}
