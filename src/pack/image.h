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
    uint32_t bytes;               /* of the block */
    struct section numbers;       /* struct ratio: those of entries, each once */
    struct section entries;       /* struct entry */
    struct section words;         /* uint32_t, word_slot_value(): the words of all entries, and
                                   * beginnings of them */
    struct section beginnings;    /* struct ref: those that are no entry's words */
    struct section inner;         /* struct image_key: single words of longer names of foods; value
                                   * is where their run begins in inner_entries */
    struct section inner_entries; /* uint32_t: runs of numbers of entries, each behind its length */
    struct section pronounced;    /* struct pronounced, tag after tag */
    struct section of_tag;        /* uint32_t: where each tag's begin; one more for the end */
    struct section tables;        /* struct image_table */
    struct section rules;         /* struct image_rule, stage by stage */
};

/* A slot of an open-addressing table; a free one has no text. */
struct image_key {
    struct ref text;
    uint32_t hash, value;
};

/* Open addressing: where a hash is looked for first, and where next. Rooms are no powers of two,
 * since pages that are half empty take memory all the same. */
static inline size_t slot_first(uint32_t hash, size_t room)
{
    return (size_t) ((uint64_t) hash * room >> 32);
}
static inline size_t slot_next(size_t slot, size_t room)
{
    return slot + 1 < room ? slot + 1 : 0;
}

struct image_table {
    struct ref name, file;
    uint32_t columns, rows;
    uint32_t heads, cells, lines; /* bytes from the block's begin */
    struct section keys, pairs;   /* uint32_t, row_slot_value() of the first row with a first cell;
                                   * with the first two cells, where most first cells have several
                                   * rows */
    struct section nexts;         /* uint32_t: 1 + the next row with the same first cell; none where
                                   * all rows that have the same stand together */
};

struct image_rule {
    struct rule rule; /* without its pointers and texts, which are: */
    struct ref name, file, pattern, option, sieve, codes;
    uint32_t examples; /* bytes from the block's begin */
};

/* A table's slot: 1 + the row, and behind it eight bits of the hash, so that other rows are known
 * by the slot alone, without a look at their cells. */
#define ROW_BITS 24
#define ROWS_MOST ((1u << ROW_BITS) - 1)
static inline uint32_t row_slot_value(uint32_t hash, size_t row)
{
    return hash << ROW_BITS | (uint32_t) (row + 1);
}
static inline bool slot_may_hold(uint32_t slot, uint32_t hash)
{
    return (slot ^ hash << ROW_BITS) <= ROWS_MOST;
}
static inline size_t slot_row(uint32_t slot)
{
    return (slot & ROWS_MOST) - 1;
}

/* A word's slot: 1 + the number of its first reading, or, behind those, of the beginning that it
 * is; whether a longer entry begins so; and eight bits of the hash, so that the texts of other
 * words, which lie all over the pack, are hardly looked at. Free: 0. */
#define WORD_BITS 24
#define WORD_MORE (1u << (WORD_BITS - 1))
#define WORDS_MOST (WORD_MORE - 1)
static inline uint32_t word_slot_value(uint32_t hash, size_t number, bool more)
{
    return hash << WORD_BITS | (more ? WORD_MORE : 0) | (uint32_t) (number + 1);
}
static inline bool word_slot_may_be(uint32_t slot, uint32_t hash)
{
    return slot >> WORD_BITS == (hash & 0xff);
}
static inline size_t word_slot_number(uint32_t slot)
{
    return (slot & WORDS_MOST) - 1;
}

uint32_t key_hash(struct text t);
/* Of the first two cells of a row. */
uint32_t pair_hash(struct text a, struct text b);

/* The pack of a block, which must outlive it; pack_free gives `owned` to free(). NULL: the block is
 * const data of the program.
 * NULL: no memory; then `owned` is still the caller's. */
struct pack *pack_open(const void *image, void *owned);

#endif
