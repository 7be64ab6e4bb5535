/* tests/base/test_digest.c: against the vectors of draft-eastlake-fnv (FNV-1a, 64 bits; from
 * memory).
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "base/digest.h"

static void vectors(void **state)
{
    static const struct {
        const char *bytes;
        uint64_t digest;
    } ROWS[] = {{"", UINT64_C(0xcbf29ce484222325)},
                {"a", UINT64_C(0xaf63dc4c8601ec8c)},
                {"foobar", UINT64_C(0x85944171f73967e8)}};
    (void) state;
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++)
        assert_true(digest_add(DIGEST_BEGIN, text_from(ROWS[i].bytes)) == ROWS[i].digest);
}

static uint64_t two(const char *a, const char *b)
{
    return digest_add_part(digest_add_part(DIGEST_BEGIN, text_from(a)), text_from(b));
}

static void parts_are_told_apart(void **state)
{
    (void) state;
    assert_true(two("ab", "c") == two("ab", "c"));
    assert_true(two("ab", "c") != two("a", "bc"));
    assert_true(two("", "abc") != two("abc", ""));
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(vectors),
                                       cmocka_unit_test(parts_are_told_apart)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
