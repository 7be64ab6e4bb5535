/* read/test_many.c: as many cues as can be, and one more; as many turns of one. Apart from the
 * other tests of readers, since two million cues take seconds.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>

#include "base/buffer.h"
#include "read/limits.h"
#include "read/read.h"

#define ARENA_BYTES ((size_t) 1 << 30)

/* How many cues come of `head` and so many pieces; 0 where they are refused. */
static size_t cues_of(const char *head, const char *piece, size_t times)
{
    struct arena arena;
    struct buffer bytes = {0};
    struct problems problems = {0};
    struct recording r = {.arena = &arena};
    volatile size_t count = 0;
    buffer_put_string(&bytes, head);
    for (size_t i = 0; i < times; i++)
        buffer_put_string(&bytes, piece);
    arena_init(&arena, ARENA_BYTES);
    if (arena_open(&arena) && read_cues(&r, buffer_text(&bytes), &problems))
        count = r.cues.count;
    arena_release(&arena);
    problems_release(&problems);
    buffer_release(&bytes);
    return count;
}

#define WEBVTT_CUE "WEBVTT\n\n00:01.000 --> 00:02.000\n"

/* At a limit and one over it; of more turns than are told apart the rest stays in the last. */
static void test_counts(void **state)
{
    static const struct {
        const char *head, *piece;
        size_t limit, at, over;
    } rows[] = {
        {"0:01 a ", ">> a ", CAPTION_PARTS_MAX - 1, CAPTION_PARTS_MAX, CAPTION_PARTS_MAX},
        {"0:01 a ", ">> a ", CAPTION_PARTS_MAX - 2, CAPTION_PARTS_MAX - 1, CAPTION_PARTS_MAX},
        {WEBVTT_CUE, "<v A>b ", CAPTION_PARTS_MAX - 1, CAPTION_PARTS_MAX - 1, CAPTION_PARTS_MAX},
        {WEBVTT_CUE, "<v A>b ", CAPTION_PARTS_MAX, CAPTION_PARTS_MAX, CAPTION_PARTS_MAX},
        {"", "0\t1\ta\n", READ_CUES_MAX, READ_CUES_MAX, 0},
    };
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        assert_int_equal(cues_of(rows[i].head, rows[i].piece, rows[i].limit), rows[i].at);
        assert_int_equal(cues_of(rows[i].head, rows[i].piece, rows[i].limit + 1), rows[i].over);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_counts)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
