/* read/test_cases.c: what is read from small files, case by case: tests/read/NAME.cases, whose
 * first lines say how they are written.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdlib.h>
#include <string.h>

#include "../fuzz/read.h"
#include "show.h"

#define ARENA_BYTES ((size_t) 1 << 26)

/* What a case stands for: a letter behind a backslash is the byte of that name, and "\\(3:ab)" is
 * "ababab". */
static void put_bytes(struct text written, struct buffer *out)
{
    static const char names[] = "trf0\\", bytes[] = "\t\r\f\0\\";
    for (size_t i = 0; i < written.length; i++) {
        struct text rest = text_slice(written, i, written.length);
        const char *name = NULL;
        if (text_starts(rest, "\\(")) {
            size_t colon = text_find(rest, ':', 0), close = text_find(rest, ')', colon);
            for (unsigned long n = strtoul(rest.at + 2, NULL, 10); n; n--)
                buffer_put(out, text_slice(rest, colon + 1, close));
            i += close;
            continue;
        }
        if (text_starts(rest, "\\") && rest.length > 1)
            name = strchr(names, rest.at[1]);
        buffer_put_char(out, name ? bytes[name - names] : written.at[i]);
        i += name != NULL;
    }
}

static void read_case(struct text bytes, struct buffer *out)
{
    struct arena arena;
    struct problems problems = {0};
    struct recording r = {.arena = &arena, .file = "case"};
    struct buffer cues = {0};
    arena_init(&arena, ARENA_BYTES);
    assert_true(arena_open(&arena));
    if (read_cues(&r, bytes, &problems))
        show_cues(&r, &cues);
    struct text shown = buffer_text(&cues);
    size_t first = text_find(shown, '\n', 0);
    buffer_put(out, text_slice(shown, first < shown.length ? first + 1 : first, shown.length));
    show_problems(&problems, out);
    buffer_release(&cues);
    arena_release(&arena);
    problems_release(&problems);
}

/* From behind "= name" to the empty line that ends the case; false where it is read otherwise. */
static bool check_case(const char *file, struct text name, struct text *rest)
{
    struct buffer written = {0}, expected = {0}, bytes = {0}, want = {0}, is = {0};
    struct text line;
    while (text_part(rest, '\n', &line) && !text_is(line, "--"))
        buffer_format(&written, "%.*s\n", TEXT(line));
    while (text_part(rest, '\n', &line) && line.length)
        buffer_format(&expected, "%.*s\n", TEXT(line));
    put_bytes(buffer_text(&written), &bytes);
    put_bytes(buffer_text(&expected), &want);
    read_case(buffer_text(&bytes), &is);
    bool good = text_equal(buffer_text(&is), buffer_text(&want));
    if (!good)
        print_error("%s: %.*s is read as\n%.*snot as\n%.*s", file, TEXT(name),
                    TEXT(buffer_text(&is)), TEXT(buffer_text(&want)));
    buffer_release(&written);
    buffer_release(&expected);
    buffer_release(&bytes);
    buffer_release(&want);
    buffer_release(&is);
    return good;
}

static void check_file(const char *file, size_t least)
{
    struct buffer bytes = {0};
    size_t cases = 0, bad = 0;
    if (!show_file(file, &bytes))
        fail_msg("%s cannot be opened; run this from the project's top folder", file);
    struct text rest = buffer_text(&bytes), line;
    while (text_part(&rest, '\n', &line))
        if (text_starts(line, "= ")) {
            cases++;
            bad += !check_case(file, line, &rest);
        }
    buffer_release(&bytes);
    print_message("figure: %s: %zu of %zu cases\n", file, cases - bad, cases);
    assert_true(cases >= least);
    assert_int_equal(bad, 0);
}

static void test_files(void **state)
{
    static const struct {
        const char *file;
        size_t least; /* cases */
    } rows[] = {{"tests/read/webvtt.cases", 50},
                {"tests/read/limits.cases", 17},
                {"tests/read/speakers.cases", 20},
                {"tests/read/others.cases", 20}};
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        check_file(rows[i].file, rows[i].least);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_files)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
