/* whole/test_whole.c: whole recordings through the library, and every byte that is written of them.
 * What comes of a row stands in tests/whole/NAME.txt. ACCEPT=1 writes these anew, to be read in the
 * diff: what changes there and was not meant to is a fault, which the figures may be too coarse to
 * show. SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buffer.h"
#include "dishtake.h"

#define FOLDER "tests/whole/"

static const struct row {
    const char *name, *file;
    bool all;     /* every format, not only those that are read as they are */
    bool explain; /* the tags of all words and what matched, too */
    const char *kitchen, *units, *times, *serves, *list;
    const char *edits; /* a file of the cook's: captions and the review page, too */
} rows[] = {
    {"hilltop", "samples/hilltop-canteen.srt", .all = true, .units = "both"},
    {"hilltop-half", "samples/hilltop-canteen.srt", .units = "us", .times = "1/2"},
    {"hilltop-edited", "samples/hilltop-canteen.srt", .edits = FOLDER "hilltop.edits.json"},
    {"chat", "tests/corpus/pier-chat.txt", .units = "both"},
    {"peppers", "tests/recordings/muffled-peppers.vtt", .units = "both"},
    {"breakfast", "tests/recordings/hill-breakfast.tsv", .explain = true, .units = "metric"},
    {"tour", "tests/recordings/wool-hall-tour.txt", .units = "both"},
    {"cabin", "tests/recordings/fourth/one-burner-cabin.txt", .units = "both"},
    {"weeknights", "tests/recordings/fifth/three-weeknights.vtt", .units = "both"},
    {"grilled", "tests/recordings/fifth/two-at-the-grill.tsv", .units = "us"},
    {"stew-metric", "tests/corpus/granddad-stew.srt", .units = "metric", .kitchen = "us"},
    {"breads-uk", "tests/corpus/harbour-breads.srt", .units = "both", .kitchen = "uk"},
    {"salads", "tests/corpus/market-salads.json", .units = "us", .times = "2"},
    {"bake-listed", "tests/corpus/holiday-bake.txt",
     .list = "2 1/2 cups flour\n1 cup sugar\n3 eggs\nsalt\nvanilla\n1 tin of treacle\n"},
    {"rolling-soup", "tests/corpus/rolling-soup.vtt", .explain = true, .times = "3"},
    {"two-cooks", "tests/corpus/two-cooks.srt", .units = "metric", .kitchen = "au"},
    {"tiny", "tests/corpus/tiny.tsv", .explain = true, .times = "3/2"},
    {"school-soup", "tests/recordings/school-soup.ttml", .units = "both"},
    {"grill", "tests/recordings/backyard-grill.txt", .units = "both"},
    {"two-bakes", "tests/recordings/two-bakes.vtt", .units = "metric"},
    {"vegan", "tests/recordings/weeknight-vegan.srt", .units = "both"},
};

static bool is_asked(const struct row *row, const struct dishtake_format *f)
{
    if (strcmp(f->output, "explain") == 0)
        return row->all || row->explain;
    if (strcmp(f->output, "captions") == 0 || strcmp(f->output, "review") == 0)
        return row->all || row->edits;
    return row->all || strcmp(f->as, "text") == 0;
}

static void read_file(const char *name, struct buffer *out)
{
    FILE *file = fopen(name, "rb");
    char part[1 << 14];
    size_t n;
    if (!file)
        fail_msg("%s cannot be opened; run this from the project's top folder", name);
    while ((n = fread(part, 1, sizeof part, file)))
        buffer_put(out, (struct text){part, n});
    fclose(file);
}

/* Without the numbers in "(en/words.lex:12)": a row that is added above must change nothing here.
 */
static void put_output(struct buffer *out, struct text t)
{
    size_t end;
    for (size_t i = 0; i < t.length; i = end) {
        end = text_find(t, ':', i) + 1;
        buffer_put(out, text_slice(t, i, end));
        size_t behind = end;
        while (behind < t.length && t.at[behind] >= '0' && t.at[behind] <= '9')
            behind++;
        struct text file = text_slice(t, i, end);
        if (text_ends(file, ".lex:") || text_ends(file, ".rules:"))
            end = behind;
    }
}

static void write_all(struct dishtake *d, const struct row *row, struct buffer *out)
{
    const struct dishtake_write_options o = {.size = sizeof o,
                                             .at = -1,
                                             .units = row->units,
                                             .times = row->times,
                                             .serves = row->serves,
                                             .detail = true};
    struct dishtake_format f;
    struct dishtake_message m;
    size_t length;
    for (size_t i = 0; dishtake_message(d, i, &m); i++)
        buffer_format(out, "%u:%u: %s\n", m.line, m.column, m.text);
    for (size_t i = 0; dishtake_format(i, &f); i++) {
        if (!is_asked(row, &f))
            continue;
        const char *bytes = dishtake_write(d, f.output, f.as, &o, &length);
        buffer_format(out, "\n======== %s %s\n", f.output, f.as);
        put_output(out, (struct text){bytes, bytes ? length : 0});
    }
}

static void accept(const char *name, const struct buffer *out)
{
    FILE *file = fopen(name, "wb");
    assert_non_null(file);
    assert_int_equal(fwrite(out->at, 1, out->length, file), out->length);
    fclose(file);
}

/* Tells the first line that differs. */
static bool is_same(const char *name, struct text is, struct text was)
{
    struct text a = TEXT_EMPTY, b = TEXT_EMPTY;
    for (unsigned line = 1; is.length || was.length; line++) {
        text_part(&is, '\n', &a);
        text_part(&was, '\n', &b);
        if (text_equal(a, b))
            continue;
        print_error("%s:%u: is\n  %.*s\nand was\n  %.*s\n(ACCEPT=1 writes it anew)\n", name, line,
                    TEXT(a), TEXT(b));
        return false;
    }
    return true;
}

static bool test_row(struct dishtake *d, const struct row *row)
{
    struct buffer bytes = {0}, edits = {0}, out = {0}, want = {0};
    char name[100];
    read_file(row->file, &bytes);
    if (row->edits)
        read_file(row->edits, &edits);
    const struct dishtake_read_options o = {.size = sizeof o,
                                            .kitchen = row->kitchen,
                                            .edits = edits.at,
                                            .edits_length = edits.length,
                                            .edits_name = row->edits,
                                            .list = row->list,
                                            .list_length = row->list ? strlen(row->list) : 0};
    snprintf(name, sizeof name, FOLDER "%s.txt", row->name);
    assert_int_equal(dishtake_read(d, bytes.at, bytes.length, row->file, &o), DISHTAKE_DONE);
    write_all(d, row, &out);
    if (getenv("ACCEPT"))
        accept(name, &out);
    read_file(name, &want);
    bool good = is_same(name, buffer_text(&out), buffer_text(&want));
    buffer_release(&bytes);
    buffer_release(&edits);
    buffer_release(&out);
    buffer_release(&want);
    return good;
}

static void test_rows(void **state)
{
    struct dishtake *d = dishtake_new(NULL, 0);
    size_t bad = 0;
    (void) state;
    assert_non_null(d);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        bad += !test_row(d, &rows[i]);
    dishtake_free(d);
    assert_int_equal(bad, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_rows)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
