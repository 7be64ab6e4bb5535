/* pack/ready.h: tables that were made of the built-in pack when the program was built
 * (src/precompile.c), as one block of memory, so that no start makes them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_READY_H
#define DISHTAKE_PACK_READY_H

#include "base/arena.h"
#include "pack/pack.h"

/* The code tells the block word by word, each by a number whose last two bits say what it is. A
 * pointer is told by how far it is from the one of its kind before it, twice that, and one less
 * below 0: most are near. */
enum ready_kind {
    READY_ZEROS, /* so many words that are 0; none: the word itself follows, in the next numbers */
    READY_PLAIN,
    READY_WITHIN, /* a pointer into the block */
    READY_TO_PACK /* and into pack_bytes() */
};
#define READY_KIND_BITS 2
#define READY_KINDS 3u /* those bits */
/* The most that a number tells: of a pointer that it is far, and how far follows in two numbers,
 * the lower first. */
#define READY_MOST (UINT16_MAX >> READY_KIND_BITS)

/* The block begins with a struct whose first member is its arena. That, and what the struct has
 * before its tables, is not set. */
struct ready {
    const uint16_t *code;
    size_t length, words; /* of the code, in numbers; of the block */
};

/* A copy with pointers of its own, for the pack that it was made of, which must outlive it.
 * arena_release of its arena frees it. NULL: no memory. */
void *ready_open(const struct ready *image, const struct pack *pack);

#endif
