/* tests/write/test_rows.c: small transcripts, and what a form must say of them: a row each. What is
 * written is valid UTF-8, whatever was read.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <string.h>
#include <utf8proc.h>

#include "dishtake.h"

/* Three speakers' turns that nobody names. */
#define TURNS                                                            \
    "1\n00:00:01,000 --> 00:00:04,000\n>> Today we are making soup.\n\n" \
    "2\n00:00:05,000 --> 00:00:08,000\n>> Add two cups of water.\n\n"    \
    "3\n00:00:09,000 --> 00:00:12,000\n>> Simmer for ten minutes.\n"

/* Ten letters of two bytes. */
#define LETTERS "\u00e9\u00e9\u00e9\u00e9\u00e9\u00e9\u00e9\u00e9\u00e9\u00e9"
/* A voice of more bytes than a name may have; the limit falls inside a letter, and on its end. */
#define VOICE(name)                                                                       \
    "WEBVTT\n\n00:01.000 --> 00:03.000\n<v " name LETTERS LETTERS LETTERS LETTERS LETTERS \
    ">Add two cups of flour.\n"

#define LINE(text) "1\n00:00:01,000 --> 00:00:04,000\n" text "\n"

static const struct row {
    const char *transcript, *output, *as;
    const char *has, *lacks; /* NULL: nothing is asked for */
} rows[] = {
    /* a turn that nobody named begins with a dash, in every form and whoever's turn it is */
    {TURNS, "captions", "webvtt", "\n- Add two cups of water.\n", "<v"},
    {TURNS, "captions", "webvtt", "\n- Simmer for ten minutes.\n", "--\n"},
    {"WEBVTT\n\n00:01.000 --> 00:02.000\n- Add flour.\n\n00:03.000 --> 00:04.000\n- And salt.\n",
     "captions", "srt", "\n- And salt.\n", "--: "},
    /* names are cut between letters */
    {VOICE("a"), "captions", "srt", "a" LETTERS, NULL},
    {VOICE("aa"), "captions", "srt", "aa" LETTERS, NULL},
    {VOICE("aaa"), "review", "words", "aaa" LETTERS, NULL},
    /* an entry may be as long as the loader takes it */
    {LINE("add salt as much or as little as you like"), "explain", "text",
     "much                 ...       to taste", NULL},
    /* what is known of a sentence is called what it is */
    {LINE("When I was a girl we had no oven."), "explain", "text", "told of another time", NULL},
    {LINE("Is it done?"), "explain", "text", "words 0 to 2, a question\n", NULL},
    {LINE("Add two cups of lentils to the pot and simmer. That is the lentil soup done."),
     "explain", "text", "words 10 to 15, the dish that it names is made\n", "opens"},
};

static bool is_utf8(const char *bytes, size_t length)
{
    utf8proc_int32_t letter;
    utf8proc_ssize_t n = 1;
    for (size_t i = 0; n > 0 && i < length; i += (size_t) n)
        n = utf8proc_iterate((const utf8proc_uint8_t *) bytes + i, (utf8proc_ssize_t) (length - i),
                             &letter);
    return n > 0;
}

static bool row_holds(const struct row *row, const char *out, size_t length)
{
    return is_utf8(out, length) && (!row->has || strstr(out, row->has))
           && (!row->lacks || !strstr(out, row->lacks));
}

static void forms_say_it(void **state)
{
    struct dishtake *d = dishtake_new(NULL, 0);
    const struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    size_t length, bad = 0;
    (void) state;
    assert_non_null(d);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct row *row = &rows[i];
        assert_int_equal(dishtake_read(d, row->transcript, strlen(row->transcript), "talk", NULL),
                         DISHTAKE_DONE);
        const char *out = dishtake_write(d, row->output, row->as, &o, &length);
        assert_non_null(out);
        if (!row_holds(row, out, length)) {
            print_error("row %zu: %s as %s has\n%s\nwanted: %s\nnot: %s\n", i, row->output, row->as,
                        out, row->has ? row->has : "", row->lacks ? row->lacks : "");
            bad++;
        }
    }
    dishtake_free(d);
    assert_int_equal(bad, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(forms_say_it)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
