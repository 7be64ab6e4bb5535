/* tests/edits/test_anchor.c: where an edit lands when the captions were made anew: rows of a
 * transcript and what it must read then. The edit reads "salt" as "basil" where it was said of the
 * carrot.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <string.h>

#include "dishtake.h"

#define ONION "[0:00] First the onion, then add salt to the pan.\n"
#define CARROT "[0:10] Now the carrot, then add salt to the pan.\n"
#define CELERY "[0:20] Last the celery, then add salt to the pan.\n"
#define HELLO "[0:00] Hello and welcome back to my kitchen, friends.\n"

static const char EDITS[] =
    "{\"format\":\"dishtake edits 1\",\"edits\":[{\"kind\":\"word\",\"on\":{\"words\":[15,15],"
    "\"said\":\"salt\",\"before\":\"now the carrot then add\",\"after\":\"to the pan last the\","
    "\"at\":12},\"value\":\"basil\"}]}";

/* `reads` NULL: it has no place, and nothing is changed. */
static const struct row {
    const char *transcript, *reads;
} rows[] = {
    {ONION CARROT CELERY, "carrot, then add basil"},
    /* moved by a sentence, so that where it stood the same word was said of the onion */
    {HELLO ONION CARROT CELERY, "carrot, then add basil"},
    {CARROT CELERY, "carrot, then add basil"},
    {ONION CELERY CARROT, "carrot, then add basil"},
    {CARROT, "carrot, then add basil"},
    {HELLO HELLO CARROT ONION CELERY, "carrot, then add basil"},
    /* a word more, a word less, another word around it */
    {ONION "[0:10] Now then the carrot, then add salt to the pan.\n" CELERY,
     "carrot, then add basil"},
    {ONION "[0:10] The carrot, then add salt to the pan.\n" CELERY, "carrot, then add basil"},
    {ONION "[0:10] Now the carrot, then add salt to this pan.\n" CELERY, "carrot, then add basil"},
    {ONION "[0:10] Now the carrots, then add salt to the pan.\n" CELERY, "carrots, then add basil"},
    /* the word itself is another one now, or is gone */
    {HELLO "[0:10] Now the carrot, then add malt to the pan.\n", NULL},
    {HELLO "[0:10] Salt on the table, and nothing else that is alike.\n", NULL},
    {HELLO, NULL},
};

static void edits_find_their_place(void **state)
{
    struct dishtake *d = dishtake_new(NULL, 0);
    struct dishtake_read_options o = {
        .size = sizeof o, .edits = EDITS, .edits_length = sizeof EDITS - 1, .edits_name = "edits"};
    size_t length, bad = 0;
    (void) state;
    assert_non_null(d);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct row *row = &rows[i];
        assert_int_equal(dishtake_read(d, row->transcript, strlen(row->transcript), "talk.txt", &o),
                         DISHTAKE_DONE);
        const char *now = dishtake_write(d, "captions", "srt", NULL, &length);
        assert_non_null(now);
        const char *first = strstr(now, "basil");
        if (!row->reads != !first || (row->reads && !strstr(now, row->reads))
            || (first && strstr(first + 1, "basil"))
            || !dishtake_edit_unplaced(d, 1) != (row->reads != NULL)) {
            print_error("row %zu is read as\n%s", i, now);
            bad++;
        }
    }
    dishtake_free(d);
    assert_int_equal(bad, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(edits_find_their_place)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
