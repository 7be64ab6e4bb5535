/* pack/image.h: a pack as one block of memory. Nothing in it is a pointer, so it can stand
 * anywhere: made from text when a grammar is loaded, or as const data of the program, made when
 * that was built; read by the same functions. Its texts end with a NUL.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_IMAGE_H
#define DISHTAKE_PACK_IMAGE_H

#include "pack/pack.h"

/* `count` things of one kind, `at` bytes from the block's begin. */
struct section {
    uint32_t at, count;
};

/* The block begins with this. */
struct image {
    uint32_t bytes;         /* of the block */
    struct section entries; /* struct entry */
    struct section words;   /* struct image_key: all words and beginnings of entries; first is
                             * 1 + the number of the first reading, 0 for a mere beginning; more is
                             * whether a longer entry begins so */
    struct section inner; /* struct image_key: single words of longer names of foods; first is where
                           * they stand in inner_entries, more is how many they are */
    struct section inner_entries; /* uint32_t, numbers of entries */
    struct section pronounced;    /* struct pronounced, tag after tag */
    struct section of_tag;        /* uint32_t: where each tag's begin; one more for the end */
    struct section tables;        /* struct image_table */
    struct section rules;         /* struct image_rule, stage by stage */
};

/* A slot of an open-addressing table; a free one has no text. Sections of them have a power of two,
 * or none. */
struct image_key {
    struct ref text;
    uint32_t hash, first, more;
};

struct image_table {
    struct ref name, file;
    uint32_t columns, rows;
    uint32_t heads, cells, lines; /* bytes from the block's begin */
    struct section keys, pairs;   /* uint32_t: 1 + the first row with a first cell; with the first
                                   * two cells, where most first cells have several rows */
    struct section nexts;         /* uint32_t: 1 + the next row with the same first cell; none where
                                   * no two rows have the same */
};

struct image_rule {
    struct rule rule; /* without its pointers and texts, which are: */
    struct ref name, file, pattern, option, sieve;
    uint32_t examples; /* bytes from the block's begin */
};

uint32_t key_hash(struct text t);
/* Of the first two cells of a row. */
uint32_t pair_hash(struct text a, struct text b);

/* The pack of a block, which must outlive it; pack_free gives `owned` (may be NULL) to free().
 * NULL: no memory; then `owned` is still the caller's. */
struct pack *pack_open(const void *image, void *owned);

#endif
