/* pack/ready.c
 * SPDX-License-Identifier: MIT */
#include "pack/ready.h"

/* The jump of a full arena ends here. */
static uintptr_t *copy_block(struct arena *memory, const struct ready *image)
{
    size_t bytes = image->words * sizeof *image->block;
    arena_init(memory, bytes);
    return arena_open(memory) ? arena_own(memory, image->block, bytes) : NULL;
}

static void point_into(uintptr_t *words, struct pointers pointers, const void *base)
{
    for (size_t i = 0; i < pointers.count; i++)
        words[pointers.at[i]] += (uintptr_t) base;
}

void *ready_open(const struct ready *image, const struct pack *pack)
{
    struct arena memory;
    uintptr_t *words = copy_block(&memory, image);
    if (!words)
        return NULL;
    point_into(words, image->within, words);
    point_into(words, image->to_pack, pack_bytes(pack).at);
    *(struct arena *) (void *) words = memory;
    return words;
}
