/* kitchen/image.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/image.h"

/* The jump of a full arena ends here. */
static uintptr_t *room_for(struct arena *memory, const struct kitchen_image *image)
{
    return arena_open(memory) ? arena_alloc(memory, image->words * sizeof *image->block) : NULL;
}

static void point_into(uintptr_t *words, struct pointers pointers, const void *base)
{
    for (size_t i = 0; i < pointers.count; i++)
        words[pointers.at[i]] += (uintptr_t) base;
}

struct kitchen *kitchen_open(const struct kitchen_image *image, const struct pack *pack)
{
    struct arena memory;
    arena_init(&memory, image->words * sizeof *image->block);
    uintptr_t *words = room_for(&memory, image);
    if (!words)
        return NULL;
    memcpy(words, image->block, image->words * sizeof *words);
    point_into(words, image->within, words);
    point_into(words, image->to_pack, pack_bytes(pack).at);
    struct kitchen *k = (struct kitchen *) (void *) words;
    k->memory = memory;
    k->pack = pack;
    return k;
}
