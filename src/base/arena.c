/* base/arena.c
 * SPDX-License-Identifier: MIT */
#include "base/arena.h"

#include <assert.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ALIGN _Alignof(max_align_t)
#define BLOCK_BYTES (64u * 1024)

struct arena_block {
    struct arena_block *next;
    size_t size, used;
    bool zero; /* all that is not used is zero */
    max_align_t bytes[];
};

void arena_init(struct arena *a, size_t ceiling)
{
    *a = (struct arena){.ceiling = ceiling};
}

static void free_blocks(struct arena_block *block)
{
    while (block) {
        struct arena_block *next = block->next;
        free(block);
        block = next;
    }
}

void arena_release(struct arena *a)
{
    free_blocks(a->blocks);
    free_blocks(a->other);
    free_blocks(a->spare);
    a->blocks = a->other = a->spare = NULL;
    a->used = a->other_used = 0;
    a->aside = false;
}

struct arena_mark arena_mark(const struct arena *a)
{
    return (struct arena_mark){a->blocks, a->blocks ? a->blocks->used : 0, a->used};
}

/* The blocks before `end` go. Those of the usual size are kept; a big one is given back, so that
 * one long recording does not hold its memory for a whole batch. */
static void give_back(struct arena *a, struct arena_block **blocks, const struct arena_block *end)
{
    while (*blocks != end) {
        struct arena_block *block = *blocks;
        *blocks = block->next;
        if (block->size == BLOCK_BYTES) {
            block->next = a->spare;
            a->spare = block;
        } else {
            free(block);
        }
    }
}

static void change_sides(struct arena *a)
{
    struct arena_block *blocks = a->blocks;
    size_t used = a->used - a->other_used; /* of the side that was open */
    a->blocks = a->other;
    a->other = blocks;
    a->other_used = used;
    a->aside = !a->aside;
}

void arena_aside(struct arena *a)
{
    assert(!a->aside);
    change_sides(a);
}

void arena_back(struct arena *a)
{
    assert(a->aside);
    change_sides(a);
}

void arena_drop(struct arena *a)
{
    assert(!a->aside);
    give_back(a, &a->other, NULL);
    a->used -= a->other_used;
    a->other_used = 0;
}

/* A jump may have left the other side open. */
void arena_rewind(struct arena *a, struct arena_mark mark)
{
    if (a->aside)
        arena_back(a);
    arena_drop(a);
    give_back(a, &a->blocks, mark.block);
    if (mark.block) {
        mark.block->used = mark.block_used;
        mark.block->zero = false;
    }
    a->used = mark.used;
}

void arena_reset(struct arena *a)
{
    arena_rewind(a, (struct arena_mark){NULL, 0, 0});
}

/* A large one is zeroed by the system: then no page is touched before it is used. */
static struct arena_block *new_block(struct arena *a, size_t size)
{
    struct arena_block *block = a->spare;
    if (block && size == BLOCK_BYTES) {
        a->spare = block->next;
    } else {
        bool zero = size > BLOCK_BYTES;
        block = zero ? calloc(1, sizeof *block + size) : malloc(sizeof *block + size);
        if (!block)
            longjmp(a->full, 1);
        block->size = size;
        block->zero = zero;
    }
    block->used = 0;
    block->next = a->blocks;
    a->blocks = block;
    return block;
}

void arena_reserve(struct arena *a, size_t size)
{
#ifdef ARENA_MALLOC
    (void) a, (void) size;
#else
    new_block(a, size);
#endif
}

/* What is in it is not set, unless `*zero`. */
static char *take(struct arena *a, size_t size, bool *zero)
{
    if (size > a->ceiling || a->used > a->ceiling - size)
        longjmp(a->full, 1);
    size_t need = (size + ALIGN - 1) / ALIGN * ALIGN;
    a->used += need;
    struct arena_block *block = a->blocks;
#ifdef ARENA_MALLOC
    block = new_block(a, need);
#else
    if (!block || block->size - block->used < need)
        block = new_block(a, need > BLOCK_BYTES / 4 ? need : BLOCK_BYTES);
#endif
    char *at = (char *) block->bytes + block->used;
    block->used += need;
    *zero = block->zero;
    return at;
}

void *arena_alloc(struct arena *a, size_t size)
{
    bool zero;
    char *at = take(a, size, &zero);
    return zero ? at : memset(at, 0, size);
}

struct text arena_text(struct arena *a, struct text t)
{
    bool zero;
    char *copy = take(a, t.length + 1, &zero);
    if (t.length)
        memcpy(copy, t.at, t.length);
    copy[t.length] = '\0';
    return (struct text){copy, t.length};
}

/* Most are short, and written once; a longer one is measured, then written where it is to stand. */
#define SHORT_FORMAT 256

struct text arena_format(struct arena *a, const char *format, ...)
{
    char room[SHORT_FORMAT];
    va_list args;
    va_start(args, format);
    int length = vsnprintf(room, sizeof room, format, args);
    va_end(args);
    if (length < 0)
        return TEXT_EMPTY;
    if (length < SHORT_FORMAT)
        return arena_text(a, (struct text){room, (size_t) length});
    char *at = arena_alloc(a, (size_t) length + 1);
    va_start(args, format);
    vsnprintf(at, (size_t) length + 1, format, args);
    va_end(args);
    return (struct text){at, (size_t) length};
}

void *arena_own(struct arena *a, const void *from, size_t size)
{
    bool zero;
    return size ? memcpy(take(a, size, &zero), from, size) : NULL;
}

/* Most lists stay short: of large elements there is room for few at first. */
static size_t first_room(size_t element_size)
{
    const size_t bytes = 256;
    return element_size * 8 <= bytes ? 8 : bytes / element_size + 1;
}

void *arena_grow(struct arena *a, void *old, size_t count, size_t *room, size_t element_size)
{
    size_t more = *room ? *room * 2 : first_room(element_size);
    if (more > SIZE_MAX / element_size)
        longjmp(a->full, 1);
    bool zero;
    char *at = take(a, more * element_size, &zero);
    size_t had = count * element_size;
    if (had)
        memcpy(at, old, had);
    if (!zero)
        memset(at + had, 0, more * element_size - had);
    *room = more;
    return at;
}

void arena_clear(void *at, size_t begin, size_t end, size_t element_size)
{
    if (begin < end)
        memset((char *) at + begin * element_size, 0, (end - begin) * element_size);
}

void arena_move_up(void *at, size_t count, size_t i, size_t element_size)
{
    char *here = (char *) at + i * element_size;
    memmove(here + element_size, here, (count - i - 1) * element_size);
    arena_clear(at, i, i + 1, element_size);
}

void arena_move_down(void *at, size_t count, size_t i, size_t element_size)
{
    char *here = (char *) at + i * element_size;
    memmove(here, here + element_size, (count - i - 1) * element_size);
    arena_clear(at, count - 1, count, element_size);
}
