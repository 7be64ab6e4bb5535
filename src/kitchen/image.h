/* kitchen/image.h: a kitchen as one block of memory, made of the built-in pack when the program was
 * built (kitchen/precompile.c), so that no table is read at a start.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_IMAGE_H
#define DISHTAKE_KITCHEN_IMAGE_H

#include "kitchen/kitchen.h"

/* Numbers of words of the block that are pointers; each has there how many bytes from the begin of
 * what it points into. */
struct pointers {
    const uint32_t *at;
    size_t count;
};

/* The block begins with the struct kitchen, whose memory and pack are not set. */
struct kitchen_image {
    const uintptr_t *block;
    size_t words;
    struct pointers within, to_pack; /* into the block itself; into pack_bytes() */
};

/* The kitchen of that image, with pointers of its own, for the pack that the image was made of,
 * which must outlive it. NULL: no memory. kitchen_free frees. */
struct kitchen *kitchen_open(const struct kitchen_image *image, const struct pack *pack);

#endif
