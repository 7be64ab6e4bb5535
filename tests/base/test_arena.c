/* base/test_arena.c: what stands aside in an arena goes by itself, and a jump while it is open
 * leaves the arena usable.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>

#include <cmocka.h>

#include "base/arena.h"

#define CEILING ((size_t) 1 << 20)
#define PIECE 3000
#define PIECES 60 /* several blocks */

static void fill(struct arena *a, char with)
{
    for (size_t i = 0; i < PIECES; i++) {
        char *piece = arena_alloc(a, PIECE);
        for (size_t n = 0; n < PIECE; n++) {
            assert_int_equal(piece[n], 0);
            piece[n] = with;
        }
    }
}

/* Functions of their own, so that no local variable changes between setjmp and the jump. */
static void drop_what_stands_aside(struct arena *a)
{
    assert_int_equal(arena_open(a), 1);
    struct text kept = arena_text(a, text_from("kept"));
    size_t before = a->used;
    arena_aside(a);
    fill(a, 'a');
    arena_back(a);
    struct text after = arena_text(a, text_from("after"));
    assert_true(a->used > before + PIECES * PIECE);
    arena_drop(a);
    assert_true(a->used < before + PIECE);
    fill(a, 'b');
    assert_true(text_is(kept, "kept"));
    assert_true(text_is(after, "after"));
}

static void aside_goes_and_the_rest_stays(void **state)
{
    (void) state;
    struct arena a;
    arena_init(&a, CEILING);
    drop_what_stands_aside(&a);
    arena_release(&a);
}

static bool overfill(struct arena *a)
{
    if (!arena_open(a))
        return false;
    arena_aside(a);
    for (;;)
        arena_alloc(a, PIECE);
}

static bool use(struct arena *a)
{
    if (!arena_open(a))
        return false;
    fill(a, 'c');
    arena_aside(a);
    fill(a, 'd');
    arena_back(a);
    arena_drop(a);
    return true;
}

static void a_jump_from_aside_is_mended_by_a_reset(void **state)
{
    (void) state;
    struct arena a;
    arena_init(&a, CEILING);
    assert_false(overfill(&a));
    arena_reset(&a);
    assert_int_equal(a.used, 0);
    assert_true(use(&a));
    arena_reset(&a);
    assert_true(use(&a));
    arena_release(&a);
}

static void a_full_arena_lets_go_of_both_sides(void **state)
{
    (void) state;
    struct arena a;
    arena_init(&a, CEILING);
    assert_false(overfill(&a));
    arena_release(&a); /* LeakSanitizer would tell */
    assert_int_equal(a.used, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(aside_goes_and_the_rest_stays),
                                       cmocka_unit_test(a_jump_from_aside_is_mended_by_a_reset),
                                       cmocka_unit_test(a_full_arena_lets_go_of_both_sides)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
