/* base/test_text.c: texts, their parts and their numbers, row by row.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdlib.h>

#include "base/buffer.h"

#define ROWS(rows) (sizeof(rows) / sizeof *(rows))

static void assert_text(struct text is, const char *wanted)
{
    if (!text_is(is, wanted))
        fail_msg("\"%.*s\" instead of \"%s\"", TEXT(is), wanted);
}

static void comparing(void **state)
{
    static const struct {
        const char *a, *b;
        int order; /* -1, 0 or 1 */
        bool starts, ends;
    } rows[] = {
        {"", "", 0, true, true},          {"a", "", 1, true, true},
        {"", "a", -1, false, false},      {"a", "a", 0, true, true},
        {"a", "b", -1, false, false},     {"b", "a", 1, false, false},
        {"ab", "a", 1, true, false},      {"ab", "b", -1, false, true},
        {"a", "ab", -1, false, false},    {"b", "ab", 1, false, false},
        {"abab", "ab", 1, true, true},    {"\xC3\xA9", "z", 1, false, false},
        {"aXb", "aYb", -1, false, false},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct text a = text_from(rows[i].a), b = text_from(rows[i].b);
        int order = text_compare(a, b);
        assert_int_equal((order > 0) - (order < 0), rows[i].order);
        assert_int_equal(text_equal(a, b), rows[i].order == 0);
        assert_int_equal(text_starts(a, rows[i].b), rows[i].starts);
        assert_int_equal(text_ends(a, rows[i].b), rows[i].ends);
    }
    assert_int_equal(text_from(NULL).length, 0);
}

static void cutting(void **state)
{
    static const struct {
        const char *text, *trimmed, *last_word;
    } rows[] = {
        {"", "", ""},
        {" ", "", ""},
        {"a", "a", "a"},
        {" a", "a", "a"},
        {"a ", "a", ""},
        {"\t\n\v\f\ra b\r\n", "a b", "b\r\n"},
        {"a  b", "a  b", "b"},
        {" a b c ", "a b c", ""},
        {"\x08"
         "a\x0E",
         "\x08"
         "a\x0E",
         "\x08"
         "a\x0E"},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_text(text_trim(text_from(rows[i].text)), rows[i].trimmed);
        assert_text(text_last_word(text_from(rows[i].text)), rows[i].last_word);
    }
}

static void slicing(void **state)
{
    static const struct {
        size_t begin, end;
        const char *slice;
    } rows[] = {{0, 4, "abca"}, {0, 5, "abca"}, {0, 0, ""}, {1, 3, "bc"}, {3, 4, "a"},
                {4, 4, ""},     {5, 9, ""},     {3, 1, ""}, {2, 99, "ca"}};
    static const struct {
        char c;
        size_t from, at;
    } finds[] = {{'a', 0, 0}, {'a', 1, 3}, {'a', 3, 3}, {'a', 4, 4}, {'a', 9, 4},
                 {'b', 0, 1}, {'b', 1, 1}, {'b', 2, 4}, {'x', 0, 4}};
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++)
        assert_text(text_slice(TEXT_OF("abca"), rows[i].begin, rows[i].end), rows[i].slice);
    for (size_t i = 0; i < ROWS(finds); i++)
        assert_int_equal(text_find(TEXT_OF("abca"), finds[i].c, finds[i].from), finds[i].at);
}

/* The parts of "a,b" are shown as "[a][b]". */
static void parting(void **state)
{
    static const struct {
        const char *text, *parts;
        size_t count;
    } rows[] = {
        {"", "[]", 0},           {"a", "[a]", 1},         {",", "[][]", 2},
        {"a,b", "[a][b]", 2},    {"a,,b", "[a][][b]", 3}, {",a,", "[][a][]", 3},
        {"a,b,", "[a][b][]", 3},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct text rest = text_from(rows[i].text), part;
        struct buffer shown = {0};
        while (text_part(&rest, ',', &part))
            buffer_format(&shown, "[%.*s]", TEXT(part));
        assert_text(buffer_text(&shown), rows[i].parts);
        buffer_release(&shown);
        assert_int_equal(text_parts(text_from(rows[i].text), ','), rows[i].count);
    }
}

static void lists(void **state)
{
    static const struct {
        const char *list, *other;
        bool has, share;
    } rows[] = {
        {"", "", false, false},           {"a", "", false, false},
        {"a b", "a", true, true},         {"a b", "b", true, true},
        {"a b", "c", false, false},       {"a bc", "b", false, false},
        {"a b", "c b", false, true},      {"a b", "b c", false, true},
        {"a b c", "x y z", false, false}, {"ab", "a b", false, false},
        {"a b c", "x c", false, true},    {"a", "a a", false, true},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct text list = text_from(rows[i].list), other = text_from(rows[i].other);
        assert_int_equal(text_has_part(list, ' ', other), rows[i].has);
        assert_int_equal(text_share_part(list, other, ' '), rows[i].share);
        assert_int_equal(text_share_part(text_from(rows[i].other), text_from(rows[i].list), ' '),
                         rows[i].share);
    }
}

static void numbers(void **state)
{
    static const struct {
        const char *text;
        int whole;
    } wholes[] = {{"0", 0},
                  {"7", 7},
                  {"42", 42},
                  {"-1", -1},
                  {"-", 0},
                  {"", 0},
                  {"9999999", 9999999},
                  {"-1234567", -1234567},
                  {"007", 7},
                  {"10000000", 10000000}};
    static const struct {
        uint64_t number;
        const char *digits;
    } digits[] = {{0, "0"},
                  {9, "9"},
                  {10, "10"},
                  {99, "99"},
                  {100, "100"},
                  {1234567890, "1234567890"},
                  {UINT64_MAX, "18446744073709551615"}};
    (void) state;
    for (size_t i = 0; i < ROWS(wholes); i++)
        assert_int_equal(text_whole(text_from(wholes[i].text)), wholes[i].whole);
    for (size_t i = 0; i < ROWS(digits); i++) {
        char out[DIGITS_MOST];
        size_t length = text_digits(digits[i].number, out);
        assert_text((struct text){out, length}, digits[i].digits);
    }
}

/* Each length up to three loads of eight bytes: the hash is of the bytes, wherever they stand, and
 * every one of them counts. */
static void hashes(void **state)
{
    static const char letters[] = "abcdefghijklmnopqrstuvwxyz";
    (void) state;
    for (size_t length = 0; length < sizeof letters; length++) {
        /* A block of its own, so that a sanitizer sees a read behind its end. */
        char *copy = malloc(length ? length : 1);
        assert_non_null(copy);
        memcpy(copy, letters, length);
        size_t hash = text_hash((struct text){copy, length});
        assert_true(hash == text_hash((struct text){letters, length}));
        for (size_t i = 0; i < length; i++) {
            copy[i] ^= 1;
            assert_true(text_hash((struct text){copy, length}) != hash);
            copy[i] ^= 1;
        }
        assert_true(!length || text_hash((struct text){copy, length - 1}) != hash);
        free(copy);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(comparing), cmocka_unit_test(cutting),
                                       cmocka_unit_test(slicing),   cmocka_unit_test(parting),
                                       cmocka_unit_test(lists),     cmocka_unit_test(numbers),
                                       cmocka_unit_test(hashes)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
