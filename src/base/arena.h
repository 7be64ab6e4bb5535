/* base/arena.h: one recording's memory, handed out piece by piece and given back all at once.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_ARENA_H
#define DISHTAKE_BASE_ARENA_H

#include <assert.h>
#include <setjmp.h>
#include <stddef.h>

#include "base/text.h"

struct arena_block;

/* Only one thread uses an arena at a time. Built with ARENA_MALLOC each object is a malloc of its
 * own, so that sanitizers see an overrun. */
struct arena {
    struct arena_block *blocks; /* newest first */
    struct arena_block *spare;  /* kept by arena_reset for the next recording */
    struct arena_block *other;  /* those of the side that is not open: arena_aside() */
    size_t other_used;          /* bytes handed out there */
    bool aside;                 /* what stands aside is open */
    size_t used;                /* bytes handed out since the reset */
    size_t ceiling;             /* bytes that may be handed out at most */
    jmp_buf full;               /* where arena_alloc jumps when it has nothing to give */
};

void arena_init(struct arena *a, size_t ceiling);
void arena_release(struct arena *a);
/* The next `size` bytes will stand together; of an open arena. Not so with ARENA_MALLOC. */
void arena_reserve(struct arena *a, size_t size);
/* Everything handed out becomes invalid; the memory is kept for the next recording. */
void arena_reset(struct arena *a);

/* How far an arena is filled. */
struct arena_mark {
    struct arena_block *block;
    size_t block_used, used;
};
struct arena_mark arena_mark(const struct arena *a);
/* What was handed out since the mark becomes invalid. A mark holds until the arena is reset or
 * rewound to an earlier one. */
void arena_rewind(struct arena *a, struct arena_mark mark);

/* What a stage needs only for itself: what is handed out from arena_aside() to arena_back() stands
 * aside, and goes at arena_drop(), while all else stays. It cannot be opened twice at a time, and
 * marks are taken and rewound only while nothing stands aside. */
void arena_aside(struct arena *a);
void arena_back(struct arena *a);
void arena_drop(struct arena *a);

/* Opens the arena for a run: `if (arena_open(a)) { work } else { it was full }`, and never within a
 * larger expression (C11, 7.13.1.1). What runs inside must own nothing that the jump would leak
 * (docs/decisions/0003-no-memory.md). */
#define arena_open(a) (setjmp((a)->full) == 0)

/* `size` zeroed bytes, aligned for any type; never NULL: at the ceiling, or when the system has no
 * memory left, it jumps to arena_open. Valid until arena_reset. */
void *arena_alloc(struct arena *a, size_t size);
/* A copy of `t` in the arena, with a NUL after it. */
struct text arena_text(struct arena *a, struct text t);
struct text arena_format(struct arena *a, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* With sanitizers, where each thing handed out is a block of its own: that nobody left an element
 * behind a list's end. */
static inline void list_assert_zero(const void *at, size_t size)
{
#ifdef ARENA_MALLOC
    for (size_t i = 0; i < size; i++)
        assert(((const char *) at)[i] == 0);
#else
    (void) at, (void) size;
#endif
}

/* A list that grows in an arena: `LIST(struct cue) cues;` zeroed is empty. */
#define LIST(type)          \
    struct {                \
        type *at;           \
        size_t count, room; \
    }
/* A zeroed element at the end of `list`, as a pointer. Earlier pointers into the list go stale.
 * What is behind the end must be zero for that, so elements are taken out by the macros below. */
#define LIST_ADD(arena, list)                                                                   \
    ((list)->at = (list)->count < (list)->room ? (list)->at                                     \
                                               : arena_grow((arena), (list)->at, (list)->count, \
                                                            &(list)->room, sizeof *(list)->at), \
     list_assert_zero(&(list)->at[(list)->count], sizeof *(list)->at),                          \
     &(list)->at[(list)->count++])
/* The same at place `i`, a number that stays the same while the list grows; the elements from there
 * on move up. */
#define LIST_INSERT(arena, list, i)    \
    ((void) LIST_ADD((arena), (list)), \
     arena_move_up((list)->at, (list)->count, (i), sizeof *(list)->at), &(list)->at[(i)])
/* Takes element `i` out; those behind it move down. */
#define LIST_REMOVE(list, i) \
    (arena_move_down((list)->at, (list)->count, (i), sizeof *(list)->at), (list)->count--)
/* Only the first `kept` elements stay. */
#define LIST_CUT(list, kept) \
    (arena_clear((list)->at, (kept), (list)->count, sizeof *(list)->at), (list)->count = (kept))
/* Room for so many elements in an empty list, which saves the smaller selves that a growing list
 * leaves behind; it may still grow. */
#define LIST_RESERVE(arena, list, elements) \
    ((list)->at = arena_alloc((arena), (elements) * sizeof *(list)->at), (list)->room = (elements))
/* The list gets elements of its own in place of those that it shares; what they point to stays
 * shared. */
#define LIST_OWN(arena, list)                                                         \
    ((list)->at = arena_own((arena), (list)->at, (list)->count * sizeof *(list)->at), \
     (list)->room = (list)->count)
/* A copy of so many bytes; NULL of none. */
void *arena_own(struct arena *a, const void *from, size_t size);
/* For the macros: element `i` of `count`, whose place is zero then, or is gone; and elements from
 * `begin` up to `end` become zero. */
void arena_move_up(void *at, size_t count, size_t i, size_t element_size);
void arena_move_down(void *at, size_t count, size_t i, size_t element_size);
void arena_clear(void *at, size_t begin, size_t end, size_t element_size);
/* The elements in a larger room. */
void *arena_grow(struct arena *a, void *old, size_t count, size_t *room, size_t element_size);

#endif
