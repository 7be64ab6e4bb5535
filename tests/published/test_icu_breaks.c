/* published/test_icu_breaks.c: words and sentences in the recordings' own talk, against ICU.
 * Outside source: ICU's break iterator (Unicode Standard Annex 29 with CLDR's rules of English,
 * Debian's libicu-dev). Where a kitchen needs other words than a text does, icu-breaks.tsv says so,
 * by patterns over the place that differs; whatever fits none of them must be the same (all words,
 * 98 of 100 sentences), and a row that nothing needs fails.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>
#include <glob.h>
#include <unicode/ubrk.h>
#include <unicode/uregex.h>

#include "base/buffer.h"
#include "published/icu.h"
#include "words/limits.h"

#define REASONS_MOST 40
#define REASONS_BYTES 16384
#define FILE_BYTES ((size_t) 4 << 20)
#define SHOWN_MOST 20
/* The share of sentence borders that must be the same, of those that no row explains. */
#define SENTENCES_LEAST 0.98

/* A reason to differ. */
struct reason {
    struct text kind;
    URegularExpression *pattern;
    size_t used;
};

struct piece {
    size_t begin, end; /* bytes of the joined text */
};
typedef LIST(struct piece) piece_list;

struct comparison {
    struct reason reasons[REASONS_MOST];
    size_t reasons_count;
    size_t same, meant, wrong;
    struct arena arena; /* of a recording's pieces */
    struct buffer joined;
};

static struct reader reader;

static URegularExpression *pattern_open(struct text t)
{
    UErrorCode error = U_ZERO_ERROR;
    UParseError where;
    UText wide = UTEXT_INITIALIZER;
    utext_openUTF8(&wide, t.at, (int64_t) t.length, &error);
    URegularExpression *r = uregex_openUText(&wide, 0, &where, &error);
    if (U_FAILURE(error))
        print_error("not a pattern: %.*s\n", TEXT(t));
    assert_true(U_SUCCESS(error));
    utext_close(&wide);
    return r;
}

static bool fits(URegularExpression *pattern, struct text place)
{
    UErrorCode error = U_ZERO_ERROR;
    UText wide = UTEXT_INITIALIZER;
    utext_openUTF8(&wide, place.at, (int64_t) place.length, &error);
    uregex_setUText(pattern, &wide, &error);
    bool found = uregex_matches(pattern, -1, &error);
    assert_true(U_SUCCESS(error));
    utext_close(&wide);
    return found;
}

/* The rows of tests/published/icu-breaks.tsv that are about words, or about sentences. */
static void reasons_read(struct comparison *c, const char *of)
{
    static char bytes[REASONS_BYTES];
    FILE *file = fopen("tests/published/icu-breaks.tsv", "rb");
    assert_non_null(file);
    struct text rest = {bytes, fread(bytes, 1, sizeof bytes, file)}, line, first, kind;
    fclose(file);
    while (text_part(&rest, '\n', &line)) {
        if (!text_part(&line, '\t', &first) || !text_is(first, of)
            || !text_part(&line, '\t', &kind))
            continue;
        assert_true(c->reasons_count < REASONS_MOST);
        c->reasons[c->reasons_count++] = (struct reason){kind, pattern_open(line), 0};
    }
}

/* The talk as one text: captions divided by a space, their line breaks too. `starts` is where each
 * begins. */
static void join_cues(struct comparison *c, size_t *starts)
{
    buffer_clear(&c->joined);
    for (size_t i = 0; i < reader.r.cues.count; i++) {
        starts[i] = c->joined.length;
        buffer_put(&c->joined, reader.r.cues.at[i].text);
        buffer_put_char(&c->joined, ' ');
    }
    for (size_t i = 0; i < c->joined.length; i++)
        if (c->joined.at[i] == '\n')
            c->joined.at[i] = ' ';
}

static struct piece word_piece(const size_t *starts, size_t word)
{
    const struct word *w = &reader.r.words.at[word];
    size_t begin = starts[w->cue] + (size_t) (w->text.at - reader.r.cues.at[w->cue].text.at);
    return (struct piece){begin, begin + w->text.length};
}

/* ICU's words (`words`; its spaces and signs are none) or sentences. */
static piece_list icu_pieces(struct comparison *c, bool words)
{
    piece_list list = {NULL, 0, 0};
    UErrorCode error = U_ZERO_ERROR;
    UText wide = UTEXT_INITIALIZER;
    utext_openUTF8(&wide, c->joined.at, (int64_t) c->joined.length, &error);
    UBreakIterator *it = ubrk_open(words ? UBRK_WORD : UBRK_SENTENCE, "en", NULL, 0, &error);
    ubrk_setUText(it, &wide, &error);
    assert_true(U_SUCCESS(error));
    int32_t begin = ubrk_first(it);
    for (int32_t end = ubrk_next(it); end != UBRK_DONE; begin = end, end = ubrk_next(it))
        if (!words || ubrk_getRuleStatus(it) >= UBRK_WORD_NONE_LIMIT)
            *LIST_ADD(&c->arena, &list) = (struct piece){(size_t) begin, (size_t) end};
    ubrk_close(it);
    utext_close(&wide);
    return list;
}

/* Counts a place that differs: meant, where a row of the table describes it. */
static void differs(struct comparison *c, struct text place)
{
    for (size_t i = 0; i < c->reasons_count; i++)
        if (fits(c->reasons[i].pattern, place)) {
            c->reasons[i].used++;
            c->meant++;
            return;
        }
    if (c->wrong++ < SHOWN_MOST)
        print_error("differs, and no row says why: %.*s\n", TEXT(place));
}

/* Moves both behind the pieces that lie over one another. */
static void skip_cluster(const piece_list *ours, size_t *a, const piece_list *icu, size_t *b)
{
    for (size_t end = 0;;) {
        const struct piece *x = *a < ours->count ? &ours->at[*a] : NULL,
                           *y = *b < icu->count ? &icu->at[*b] : NULL;
        const struct piece *next = !y || (x && x->begin <= y->begin) ? x : y;
        if (!next || (end && next->begin >= end))
            return;
        end = next->end > end ? next->end : end;
        *(next == x ? a : b) += 1;
    }
}

/* "250_g": pieces [begin, end) */
static const char *pieces_text(struct comparison *c, const piece_list *list, size_t begin,
                               size_t end)
{
    const char *all = "";
    for (size_t i = begin; i < end; i++) {
        struct text t = text_slice(buffer_text(&c->joined), list->at[i].begin, list->at[i].end);
        all = arena_format(&c->arena, "%s%s%.*s", all, i > begin ? "_" : "", TEXT(t)).at;
    }
    return all;
}

static void compare_words(struct comparison *c, const piece_list *ours, const piece_list *icu)
{
    for (size_t a = 0, b = 0; a < ours->count || b < icu->count;) {
        size_t from_a = a, from_b = b;
        skip_cluster(ours, &a, icu, &b);
        bool one = a - from_a == 1 && b - from_b == 1;
        if (one && ours->at[from_a].begin == icu->at[from_b].begin
            && ours->at[from_a].end == icu->at[from_b].end)
            c->same++;
        else
            differs(c, arena_format(&c->arena, "%s / %s", pieces_text(c, ours, from_a, a),
                                    pieces_text(c, icu, from_b, b)));
    }
}

static void words_of_recording(struct comparison *c)
{
    size_t *starts = arena_alloc(&c->arena, (reader.r.cues.count + 1) * sizeof *starts);
    piece_list ours = {NULL, 0, 0};
    join_cues(c, starts);
    for (size_t i = 0; i < reader.r.words.count; i++)
        *LIST_ADD(&c->arena, &ours) = word_piece(starts, i);
    piece_list icu = icu_pieces(c, true);
    compare_words(c, &ours, &icu);
}

/* What stands around a border before `word`, as the table's patterns read it: the last two words,
 * what the recording says of the border, the next word. "flour. <cue> Then" */
static struct text border_place(struct comparison *c, const size_t *starts, size_t word)
{
    const struct word *w = &reader.r.words.at[word], *before = w - 1;
    size_t begin = word_piece(starts, word > 1 ? word - 2 : 0).begin,
           middle = word_piece(starts, word).begin;
    struct text joined = buffer_text(&c->joined);
    struct text said = text_trim(text_slice(joined, begin, middle));
    return arena_format(&c->arena, "%.*s%s%s%s |%.*s", TEXT(said),
                        w->new_speaker ? " <speaker>" : "",
                        w->start - before->end >= LONG_PAUSE_SECONDS ? " <pause>" : "",
                        w->cue != before->cue ? " <cue>" : "", TEXT(w->text));
}

/* Bits: 1 where we begin a sentence, 2 where ICU does. */
static void sentences_of_recording(struct comparison *c)
{
    size_t count = reader.r.words.count;
    size_t *starts = arena_alloc(&c->arena, (reader.r.cues.count + 1) * sizeof *starts);
    unsigned char *begins = arena_alloc(&c->arena, count + 1);
    join_cues(c, starts);
    piece_list icu = icu_pieces(c, false);
    for (size_t i = 0; i < reader.r.sentences.count; i++)
        begins[reader.r.sentences.at[i].first] |= 1;
    for (size_t i = 0, word = 0; i < icu.count && word < count; i++) {
        while (word < count && word_piece(starts, word).begin < icu.at[i].begin)
            word++;
        if (word < count)
            begins[word] |= 2;
    }
    for (size_t word = 1; word < count; word++)
        if (begins[word] == 3)
            c->same++;
        else if (begins[word])
            differs(c, arena_format(&c->arena, "%s: %.*s", begins[word] == 1 ? "ours" : "ICU",
                                    TEXT(border_place(c, starts, word))));
}

static bool is_transcript(const char *path)
{
    static const char *const others[] = {".gold.", "README", ".py", ".sh"};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        if (strstr(path, others[i]))
            return false;
    return true;
}

static void read_file(const char *path)
{
    static char bytes[FILE_BYTES];
    FILE *file = fopen(path, "rb");
    assert_non_null(file);
    size_t length = fread(bytes, 1, sizeof bytes, file);
    fclose(file);
    reader_read(&reader, (struct text){bytes, length});
}

/* What cooks' captions have and the recordings have seldom; invented for this test. */
static void read_signs(void)
{
    static const char signs[] =
        "0\t5\tSet the oven to 350°F, or 180 °C, for 10-12 minutes.\n"
        "5\t9\tAdd 250g flour, 1½ cups milk and 1-1/2 tsp. of salt.\n"
        "9\t15\tIt is $3.50, 1.5 liters, 1,000 grams, 50% of it, in a 9x13 tin.\n"
        "15\t19\tDon’t use all-purpose flour, it’s 00 flour – the 20th time.\n"
        "19\t22\tTake 2 tbsp. of oil and .5 oz. of yeast at 3:50.\n";
    reader_read(&reader, TEXT_OF(signs));
}

/* Runs `recording` over all recordings of the tests. */
static void compare(struct comparison *c, const char *of, void (*recording)(struct comparison *),
                    bool punctuated)
{
    static const char *const folders[] = {"tests/corpus/*.*", "tests/recordings/*.*",
                                          "tests/recordings/flawless/*.*", "samples/*.*"};
    glob_t files = {0};
    arena_init(&c->arena, READER_ARENA_BYTES);
    assert_true(arena_open(&c->arena));
    reasons_read(c, of);
    for (size_t i = 0; i < sizeof folders / sizeof *folders; i++)
        glob(folders[i], i ? GLOB_APPEND : 0, NULL, &files);
    for (size_t i = 0; i < files.gl_pathc; i++)
        if (is_transcript(files.gl_pathv[i])) {
            read_file(files.gl_pathv[i]);
            if (!punctuated || reader.r.punctuated)
                recording(c);
        }
    globfree(&files);
    read_signs();
    recording(c);
}

/* Says how often each reason was needed; one that never was is stale. */
static void finish(struct comparison *c, const char *of)
{
    size_t stale = 0, all = c->same + c->meant + c->wrong;
    for (size_t i = 0; i < c->reasons_count; i++) {
        printf("  %zu times: %.*s\n", c->reasons[i].used, TEXT(c->reasons[i].kind));
        stale += c->reasons[i].used == 0;
        uregex_close(c->reasons[i].pattern);
    }
    printf("figure: %zu of %zu %s are as ICU has them (%.2f %%), %zu differ on purpose, %zu else\n",
           c->same, all, of, 100.0 * (double) c->same / (double) all, c->meant, c->wrong);
    buffer_release(&c->joined);
    arena_release(&c->arena);
    assert_int_equal(stale, 0);
    assert_true(c->same > 1000);
}

static void words_are_icu_s(void **state)
{
    static struct comparison c;
    (void) state;
    compare(&c, "word", words_of_recording, false);
    finish(&c, "words");
    assert_int_equal(c.wrong, 0);
}

static void sentences_are_icu_s(void **state)
{
    static struct comparison c;
    (void) state;
    compare(&c, "sentence", sentences_of_recording, true);
    finish(&c, "sentences");
    assert_true((double) c.same >= SENTENCES_LEAST * (double) (c.same + c.wrong));
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(words_are_icu_s),
                                       cmocka_unit_test(sentences_are_icu_s)};
    reader_open(&reader);
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    reader_close(&reader);
    return failed;
}
