/* pack/ready.h: tables that were made of the built-in pack when the program was built
 * (src/precompile.c), as one block of memory, so that no start makes them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_READY_H
#define DISHTAKE_PACK_READY_H

#include "base/arena.h"
#include "pack/pack.h"

/* Numbers of words of the block that are pointers; each has there how many bytes from the begin of
 * what it points into. */
struct pointers {
    const uint32_t *at;
    size_t count;
};

/* The block begins with a struct whose first member is its arena. That, and what the struct has
 * before its tables, is not set. */
struct ready {
    const uintptr_t *block;
    size_t words;
    struct pointers within, to_pack; /* into the block itself; into pack_bytes() */
};

/* A copy with pointers of its own, for the pack that it was made of, which must outlive it.
 * arena_release of its arena frees it. NULL: no memory. */
void *ready_open(const struct ready *image, const struct pack *pack);

#endif
