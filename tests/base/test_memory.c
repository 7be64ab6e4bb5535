/* base/test_memory.c: buffers, arenas and lists of problems, at the sizes where they grow.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/arena.h"
#include "base/buffer.h"
#include "base/problem.h"

/* Bytes put in pieces of `piece`: all of them are there, with a NUL behind the last. */
static void fill(size_t length, size_t piece)
{
    struct buffer b = {0};
    char bytes[5000];
    for (size_t i = 0; i < sizeof bytes; i++)
        bytes[i] = (char) ('a' + i % 23);
    for (size_t at = 0; at < length; at += piece)
        buffer_put(&b, (struct text){bytes + at, at + piece < length ? piece : length - at});
    assert_int_equal(b.length, length);
    assert_true(text_equal(buffer_text(&b), (struct text){bytes, length}));
    assert_true(!length || (b.at[length] == '\0' && b.room > length));
    buffer_clear(&b);
    assert_int_equal(buffer_text(&b).length, 0);
    assert_true(!length || b.at[0] == '\0');
    buffer_put_string(&b, "again");
    assert_string_equal(b.at, "again");
    buffer_release(&b);
}

static void buffers_grow(void **state)
{
    static const size_t lengths[] = {0, 1, 1022, 1023, 1024, 1025, 2047, 2048, 2049, 4097};
    static const size_t pieces[] = {1, 7, 1023, 1024, 5000};
    (void) state;
    for (size_t i = 0; i < sizeof lengths / sizeof *lengths; i++)
        for (size_t k = 0; k < sizeof pieces / sizeof *pieces; k++)
            fill(lengths[i], pieces[k]);
}

static void buffers_print(void **state)
{
    struct buffer b = {0};
    (void) state;
    buffer_put_whole(&b, 0);
    buffer_put_char(&b, ' ');
    buffer_put_whole(&b, 1234567890);
    buffer_format(&b, " %s|%*d", "x", 2000, 7);
    assert_int_equal(b.length, 1 + 1 + 10 + 3 + 2000);
    assert_memory_equal(b.at, "0 1234567890 x|", 15);
    assert_string_equal(b.at + b.length - 2, " 7");
    buffer_release(&b);
}

/* More than there can be is refused, and what came before stays. */
static void buffers_fail_once(void **state)
{
    struct buffer b = {0};
    (void) state;
    buffer_put_string(&b, "kept");
    assert_false(buffer_room(&b, SIZE_MAX / 4 + 1));
    assert_true(b.failed);
    buffer_put_string(&b, " dropped");
    buffer_put_whole(&b, 7);
    buffer_format(&b, "%d", 7);
    assert_string_equal(b.at, "kept");
    buffer_clear(&b);
    buffer_put_string(&b, "new");
    assert_string_equal(b.at, "new");
    buffer_release(&b);
}

/* Whether `size` bytes, then `more`, can be had of an arena with that ceiling. */
static bool fits(size_t ceiling, size_t size, size_t more)
{
    struct arena a;
    volatile bool done = false;
    arena_init(&a, ceiling);
    if (arena_open(&a)) {
        memset(arena_alloc(&a, size), 1, size);
        memset(arena_alloc(&a, more), 1, more);
        done = true;
    }
    arena_release(&a);
    return done;
}

static void arenas_have_a_ceiling(void **state)
{
    (void) state;
    const size_t step = _Alignof(max_align_t), room = 10 * step; /* room is given in steps */
    assert_true(fits(room, room, 0));
    assert_false(fits(room, room + 1, 0));
    assert_true(fits(room, 4 * step, 6 * step));
    assert_false(fits(room, 4 * step, 6 * step + 1));
    assert_true(fits(room, 1, 9 * step));
    assert_false(fits(room, 1, 9 * step + 1));
    assert_false(fits(room, step + 1, 9 * step));
    assert_false(fits(room, SIZE_MAX, 0));
    assert_true(fits((size_t) 1 << 20, (size_t) 1 << 19, (size_t) 1 << 19));
}

/* Zeroed, also where it was used before; a mark gives back what came after it and no more. */
static void arenas_are_used_again(void **state)
{
    struct arena a;
    (void) state;
    arena_init(&a, (size_t) 1 << 22);
    assert_true(arena_open(&a));
    for (int turn = 0; turn < 3; turn++) {
        char *first = arena_alloc(&a, 100);
        memset(first, 'x', 100);
        struct arena_mark mark = arena_mark(&a);
        for (size_t size = 1; size < 200000; size = size * 3 + 1) {
            unsigned char *more = arena_alloc(&a, size);
            assert_int_equal((uintptr_t) more % _Alignof(max_align_t), 0);
            for (size_t i = 0; i < size; i++)
                assert_int_equal(more[i], 0);
            memset(more, 'y', size);
        }
        assert_true(a.used > mark.used);
        arena_rewind(&a, mark);
        assert_int_equal(a.used, mark.used);
        char *zero = arena_alloc(&a, 100);
        for (size_t i = 0; i < 100; i++)
            assert_true(first[i] == 'x' && zero[i] == 0);
        arena_reset(&a);
        assert_int_equal(a.used, 0);
    }
    arena_release(&a);
}

static void lists_grow(void **state)
{
    struct arena a;
    LIST(size_t) list = {0}, reserved = {0}, own;
    struct large {
        size_t number;
        char bytes[600];
    };
    LIST(struct large) larges = {0};
    (void) state;
    arena_init(&a, (size_t) 1 << 22);
    assert_true(arena_open(&a));
    LIST_RESERVE(&a, &reserved, 3);
    for (size_t i = 0; i < 1000; i++) {
        *LIST_ADD(&a, &list) = i;
        *LIST_ADD(&a, &reserved) = i;
        LIST_ADD(&a, &larges)->number = i;
    }
    own.at = list.at;
    own.count = list.count;
    own.room = list.room;
    LIST_OWN(&a, &own);
    own.at[7] = 0;
    for (size_t i = 0; i < 1000; i++) {
        assert_int_equal(list.at[i], i);
        assert_int_equal(reserved.at[i], i);
        assert_int_equal(larges.at[i].number, i);
        assert_int_equal(larges.at[i].bytes[599], 0);
    }
    assert_true(own.at != list.at && own.at[999] == 999 && own.count == 1000);
    assert_null(arena_own(&a, NULL, 0));
    arena_release(&a);
}

/* Elements go and come at any place; a new one is always zero. */
static void lists_shrink(void **state)
{
    struct arena a;
    LIST(size_t) list = {0};
    (void) state;
    arena_init(&a, (size_t) 1 << 22);
    assert_true(arena_open(&a));
    for (size_t i = 0; i < 6; i++)
        *LIST_ADD(&a, &list) = i + 1; /* 1 2 3 4 5 6 */
    LIST_REMOVE(&list, 0);
    LIST_REMOVE(&list, 4);
    LIST_REMOVE(&list, 1); /* 2 4 5 */
    assert_int_equal(*LIST_ADD(&a, &list), 0);
    assert_int_equal(*LIST_INSERT(&a, &list, 1), 0);
    assert_int_equal(*LIST_INSERT(&a, &list, 0), 0);
    const size_t now[] = {0, 2, 0, 4, 5, 0};
    assert_int_equal(list.count, 6);
    assert_memory_equal(list.at, now, sizeof now);
    LIST_CUT(&list, 2);
    for (size_t i = 2; i < list.room; i++)
        assert_int_equal(*LIST_ADD(&a, &list), 0);
    assert_true(list.at[1] == 2);
    arena_release(&a);
}

static void problems_are_counted(void **state)
{
    struct problems p = {0};
    (void) state;
    for (unsigned i = 0; i < PROBLEMS_KEPT + 3; i++)
        assert_false(problem(&p, (struct place){"f", i + 1, 2}, "error %u", i));
    struct problems then = p;
    for (unsigned i = 0; i < PROBLEMS_KEPT + 2; i++)
        problem_note(&p, (struct place){"f", i + 1, 2}, "note %u", i);
    assert_int_equal(p.count, 2 * PROBLEMS_KEPT);
    assert_int_equal(p.dropped, 5);
    assert_int_equal(p.errors, PROBLEMS_KEPT + 3);
    assert_int_equal(p.notes, PROBLEMS_KEPT + 2);
    assert_string_equal(p.at[PROBLEMS_KEPT - 1].message, "error 199");
    assert_int_equal(p.at[PROBLEMS_KEPT - 1].level, PROBLEM_ERROR);
    assert_string_equal(p.at[PROBLEMS_KEPT].message, "note 0");
    assert_int_equal(p.at[PROBLEMS_KEPT].level, PROBLEM_NOTE);
    assert_int_equal(p.at[PROBLEMS_KEPT].at.line, 1);
    problems_rewind(&p, &then);
    assert_int_equal(p.count, PROBLEMS_KEPT);
    assert_int_equal(p.errors, PROBLEMS_KEPT + 3);
    assert_int_equal(p.notes, 0);
    assert_int_equal(p.dropped, 3);
    problems_release(&p);
    /* A long one is cut, and ends. */
    problem(&p, (struct place){0}, "%0600d", 7);
    assert_int_equal(strlen(p.at[0].message), 511);
    problems_release(&p);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(buffers_grow),          cmocka_unit_test(buffers_print),
        cmocka_unit_test(buffers_fail_once),     cmocka_unit_test(arenas_have_a_ceiling),
        cmocka_unit_test(arenas_are_used_again), cmocka_unit_test(lists_grow),
        cmocka_unit_test(lists_shrink),          cmocka_unit_test(problems_are_counted),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
