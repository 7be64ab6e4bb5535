/* read/test_read.c: the readers. Each file of tests/read/samples has what is to be read from it in
 * NAME.cues. `test_read FILE...` shows what is read from files, with --captions a line a caption;
 * ACCEPT=1 rewrites expectations. SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <ctype.h>
#include <dirent.h>
#include <stdlib.h>
#include <string.h>

#include "read/limits.h"
#include "../fuzz/read.h"
#include "show.h"

#define SAMPLES "tests/read/samples/"
#define CORPUS "tests/corpus/"

/* How show_files shows a recording. */
static void (*show)(const struct recording *r, struct buffer *out) = show_cues;

#define ARENA_BYTES ((size_t) 1 << 30)
/* TEXT_OF for a static table. */
#define BYTES(literal)                 \
    {                                  \
        (literal), sizeof(literal) - 1 \
    }

/* Reads `bytes` with an arena of `ceiling` bytes. What was read and what was wrong go to `out` and
 * `why`, which may be NULL. False when no cue could be read; `*full` tells that the arena was too
 * small. */
static bool read_within(struct text bytes, size_t ceiling, struct buffer *out, struct buffer *why,
                        bool *full)
{
    struct arena arena;
    struct problems problems = {0};
    struct recording r = {.arena = &arena, .file = "sample"};
    volatile bool good = false;
    arena_init(&arena, ceiling);
    *full = true;
    if (arena_open(&arena)) {
        good = read_cues(&r, bytes, &problems);
        *full = false;
        if (good && out)
            show(&r, out);
        if (why)
            show_problems(&problems, why);
    }
    arena_release(&arena);
    problems_release(&problems);
    return good;
}

static bool read_bytes(struct text bytes, struct buffer *out, struct buffer *why)
{
    bool full;
    bool good = read_within(bytes, ARENA_BYTES, out, why, &full);
    assert_false(full);
    return good;
}

/* What a message says, without the "expected" that all of them end with. */
static void assert_error(struct text bytes, const char *message)
{
    struct buffer out = {0}, why = {0};
    bool good = read_bytes(bytes, &out, &why);
    if (good || !why.at || !strstr(why.at, message))
        fail_msg("wanted the error \"%s\", got: %s%s", message, why.at ? why.at : "",
                 out.at ? out.at : "");
    buffer_release(&out);
    buffer_release(&why);
}

static void open_file(const char *folder, const char *name, struct buffer *bytes)
{
    char path[512];
    snprintf(path, sizeof path, "%s%s", folder, name);
    if (!show_file(path, bytes))
        fail_msg("%s cannot be opened; run this from the project's top folder", path);
}

/* ---- samples */

static void check_sample(const char *name)
{
    struct buffer bytes = {0}, out = {0}, want = {0};
    char expected[300];
    open_file(SAMPLES, name, &bytes);
    read_bytes(buffer_text(&bytes), &out, &out);
    snprintf(expected, sizeof expected, "%s.cues", name);
    if (getenv("ACCEPT")) {
        char path[512];
        snprintf(path, sizeof path, SAMPLES "%s", expected);
        FILE *file = fopen(path, "wb");
        assert_non_null(file);
        fwrite(out.at, 1, out.length, file);
        fclose(file);
    }
    open_file(SAMPLES, expected, &want);
    if (!text_equal(buffer_text(&out), buffer_text(&want)))
        fail_msg("%s is read as\n%s\nnot as\n%s", name, out.at, want.at);
    buffer_release(&bytes);
    buffer_release(&out);
    buffer_release(&want);
}

static bool is_sample(const char *name)
{
    return name[0] != '.' && !text_ends(text_from(name), ".cues");
}

/* Calls `check` for each sample; how many there were. */
static size_t each_sample(void (*check)(const char *name))
{
    DIR *folder = opendir(SAMPLES);
    struct dirent *entry;
    size_t count = 0;
    if (!folder)
        fail_msg(SAMPLES " is not here; run this from the project's top folder");
    while ((entry = readdir(folder)))
        if (is_sample(entry->d_name)) {
            check(entry->d_name);
            count++;
        }
    closedir(folder);
    return count;
}

static void test_samples(void **state)
{
    (void) state;
    assert_true(each_sample(check_sample) >= 20);
}

/* ---- the same recording in every format */

/* Start, end, text of all cues, without the kind and the places. */
static void show_words(struct text shown, struct buffer *out)
{
    struct text line;
    text_part(&shown, '\n', &line);
    while (text_part(&shown, '\n', &line)) {
        size_t space = text_find(line, ' ', 0);
        buffer_put(out, text_slice(line, space, line.length));
        buffer_put_char(out, '\n');
    }
}

static void test_same_in_all_formats(void **state)
{
    static const char *const names[] = {"same.srt", "same.vtt",  "same.ttml",
                                        "same.md",  "same.json", "same.tsv"};
    struct buffer first = {0};
    (void) state;
    for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
        struct buffer bytes = {0}, out = {0}, words = {0};
        open_file(SAMPLES, names[i], &bytes);
        assert_true(read_bytes(buffer_text(&bytes), &out, NULL));
        show_words(buffer_text(&out), &words);
        if (!i)
            buffer_put(&first, buffer_text(&words));
        assert_string_equal(words.at, first.at);
        buffer_release(&bytes);
        buffer_release(&out);
        buffer_release(&words);
    }
    buffer_release(&first);
}

/* ---- encodings */

enum to {
    TO_UTF8,
    TO_MARKED_UTF8,
    TO_CRLF,
    TO_CR,
    TO_LE,
    TO_BE,
    TO_MARKED_LE,
    TO_MARKED_BE,
    TO_1252,
    TOS
};

/* The letters of same.srt that are not ASCII, as UTF-8, UTF-16 and Windows-1252 (WHATWG Encoding
 * Standard, from memory). */
static const struct {
    const char *utf8;
    unsigned unit;
    char byte;
} letters[] = {{"\xC3\xA8", 0xE8, '\xE8'},
               {"\xC3\xAE", 0xEE, '\xEE'},
               {"\xC2\xBD", 0xBD, '\xBD'},
               {"\xE2\x80\x93", 0x2013, '\x96'}};

static void put_unit(struct buffer *out, unsigned unit, bool little)
{
    char bytes[] = {(char) (unit >> 8), (char) (unit & 0xFF)};
    buffer_put_char(out, bytes[little]);
    buffer_put_char(out, bytes[!little]);
}

/* The letter at t.at[i] in the encoding `to`; its length in UTF-8. */
static size_t put_letter(struct buffer *out, struct text t, size_t i, enum to to)
{
    bool wide = to == TO_LE || to == TO_BE || to == TO_MARKED_LE || to == TO_MARKED_BE;
    struct text rest = text_slice(t, i, t.length);
    unsigned unit = (unsigned char) t.at[i];
    size_t length = 1;
    char byte = t.at[i];
    for (size_t k = 0; k < sizeof letters / sizeof *letters; k++)
        if (text_starts(rest, letters[k].utf8)) {
            unit = letters[k].unit;
            byte = letters[k].byte;
            length = strlen(letters[k].utf8);
        }
    if (wide)
        put_unit(out, unit, to == TO_LE || to == TO_MARKED_LE);
    else if (to == TO_1252)
        buffer_put_char(out, byte);
    else
        buffer_put(out, text_slice(rest, 0, length));
    return length;
}

static void put_encoded(struct buffer *out, struct text t, enum to to)
{
    if (to == TO_MARKED_UTF8)
        buffer_put_string(out, "\xEF\xBB\xBF");
    if (to == TO_MARKED_LE || to == TO_MARKED_BE)
        put_unit(out, 0xFEFF, to == TO_MARKED_LE);
    for (size_t i = 0; i < t.length;) {
        if (t.at[i] == '\n' && (to == TO_CR || to == TO_CRLF)) {
            buffer_put_string(out, to == TO_CR ? "\r" : "\r\n");
            i++;
        } else {
            i += put_letter(out, t, i, to);
        }
    }
}

static void test_encodings(void **state)
{
    struct buffer bytes = {0}, want = {0};
    (void) state;
    open_file(SAMPLES, "same.srt", &bytes);
    assert_true(read_bytes(buffer_text(&bytes), &want, NULL));
    for (enum to to = TO_UTF8; to < TOS; to++) {
        struct buffer encoded = {0}, out = {0}, why = {0};
        put_encoded(&encoded, buffer_text(&bytes), to);
        assert_true(read_bytes(buffer_text(&encoded), &out, &why));
        assert_string_equal(out.at, want.at);
        if (to == TO_1252)
            assert_non_null(strstr(why.at, "note 3: is no UTF-8; read as Windows-1252"));
        else
            assert_int_equal(why.length, 0);
        buffer_release(&encoded);
        buffer_release(&out);
        buffer_release(&why);
    }
    buffer_release(&bytes);
    buffer_release(&want);
}

static void test_odd_encodings(void **state)
{
    static const struct {
        struct text bytes;
        const char *cues, *problems;
    } rows[] = {
        {BYTES("0:01 na\xC3"), "timed-lines ? 1.133\n1:6 1.000 ? ?| na\n",
         "note 1: the file ends inside a letter; the rest of it may be lost\n"},
        {BYTES("\xEF\xBB\xBF"
               "0:01 a\xE9z"),
         "timed-lines ? 1.200\n1:6 1.000 ? ?| a\xEF\xBF\xBDz\n",
         "note 1: bytes that are no UTF-8; each is read as U+FFFD\n"},
        {BYTES("0:01 a\0z"), "timed-lines ? 1.200\n1:6 1.000 ? ?| a\xEF\xBF\xBDz\n",
         "note 0: zero bytes; each is read as U+FFFD\n"},
        /* U+1F35E as a pair, a lone high half, a lone low half, and a byte too many. */
        {BYTES("\xFF\xFE"
               "0\0:\0"
               "0\0"
               "1\0 \0\x3C\xD8\x5E\xDF\x3C\xD8\x5E\xDF\x3C\xD8 \0\x5E\xDF!"),
         "timed-lines ? 1.333\n1:6 1.000 ? ?| \xF0\x9F\x8D\x9E\xF0\x9F\x8D\x9E\xEF\xBF\xBD "
         "\xEF\xBF\xBD\n",
         NULL},
        /* Bytes that Windows-1252 leaves open, and the last of those that it moves. */
        {BYTES("0:01 \x80"
               "5 \x93x\x94 \x81 \x9F\xFF"),
         "timed-lines ? 1.600\n1:6 1.000 ? ?| \xE2\x82\xAC"
         "5 \xE2\x80\x9Cx\xE2\x80\x9D \xC5\xB8\xC3\xBF\n",
         NULL},
    };
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct buffer out = {0}, why = {0};
        assert_true(read_bytes(rows[i].bytes, &out, &why));
        assert_string_equal(out.at, rows[i].cues);
        if (rows[i].problems)
            assert_string_equal(why.at, rows[i].problems);
        buffer_release(&out);
        buffer_release(&why);
    }
}

/* ---- what cannot be read */

#define BOMB                                                                          \
    "<?xml version=\"1.0\"?><!DOCTYPE tt [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;\">]>" \
    "<tt><body><p begin=\"1s\">&b;</p></body></tt>"

static void test_refused(void **state)
{
    static const struct {
        struct text bytes;
        const char *message;
    } rows[] = {
        {BYTES(""), "is empty: expected SubRip, WebVTT, TTML, lines that begin with a time, JSON"},
        {BYTES("x"), "is no transcript: expected SubRip"},
        {BYTES("\n"), "is no transcript: expected SubRip"},
        {BYTES("\xEF\xBB\xBF"), "is empty: expected"},
        {BYTES("Just a letter.\nIt is ready at 3:50.\n"), "is no transcript: expected SubRip"},
        {BYTES("\x7F"
               "ELF\2\1\1\0\0\0\0\0\0\0\0\0\3\0\x3E\0\1\0\0\0\0\0\0\0\0\0\0\0"),
         "is no text file: expected"},
        {BYTES("WEBVTT\n\nNOTE nothing\n"), "has no spoken words: expected"},
        {BYTES("WEBVTT\n\n00:01.000 --> 00:02.000\n[Music]\n"), "has no spoken words: expected"},
        {BYTES("[{\"start\": 1, \"text\": \"a\"}"), "is no well-formed JSON"},
        {BYTES("[{\"start\": 1, \"start\": 2, \"text\": \"a\"}]"), "duplicate object key"},
        {BYTES("{\"a\": [1, {\"b\": null}]}"), "has no spoken words: expected"},
        {BYTES(BOMB), "has a DOCTYPE"},
        {BYTES("<?xml version=\"1.0\"?><html><p>0:01 x</p></html>"), "is XML, but not TTML"},
        {BYTES("<tt><body>"), "no element found"},
    };
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        assert_error(rows[i].bytes, rows[i].message);
}

static void put_times(struct buffer *b, const char *string, size_t times)
{
    for (size_t i = 0; i < times; i++)
        buffer_put_string(b, string);
}

static void test_limits(void **state)
{
    struct buffer deep = {0};
    char *many = calloc(READ_BYTES_MAX + 1, 1);
    (void) state;
    assert_non_null(many);
    memset(many, 'a', READ_BYTES_MAX + 1);
    assert_error((struct text){many, READ_BYTES_MAX + 1}, "a transcript has at most");
    free(many);
    buffer_put_string(&deep, "<tt><body>");
    put_times(&deep, "<div>", TTML_DEPTH_MAX - 1);
    assert_error(buffer_text(&deep), "nested too deep");
    buffer_clear(&deep);
    put_times(&deep, "[", 100000);
    assert_error(buffer_text(&deep), "maximum parsing depth reached");
    buffer_clear(&deep);
    put_times(&deep, "{\"a\":", JSON_DEPTH_MAX + 1);
    buffer_put_string(&deep, "[{\"start\":1,\"text\":\"a\"}]");
    put_times(&deep, "}", JSON_DEPTH_MAX + 1);
    assert_error(buffer_text(&deep), "has no spoken words");
    buffer_release(&deep);
}

/* ---- hostile inputs */

static void cut_everywhere(const char *name)
{
    struct buffer bytes = {0};
    open_file(SAMPLES, name, &bytes);
    for (size_t length = 0; length <= bytes.length; length++) {
        /* A block of its own, so that the sanitizer sees a read behind its end. */
        char *cut = malloc(length + 1);
        assert_non_null(cut);
        memcpy(cut, bytes.at, length);
        cut = realloc(cut, length ? length : 1);
        read_bytes((struct text){cut, length}, NULL, NULL);
        free(cut);
    }
    buffer_release(&bytes);
}

static void test_cut_at_every_byte(void **state)
{
    (void) state;
    assert_true(each_sample(cut_everywhere) >= 20);
}

/* The arena's jump leaves nothing behind, wherever it comes: the leak sanitizer looks. */
static void starve(const char *name)
{
    struct buffer bytes = {0};
    bool full = true;
    size_t ceiling = 0;
    open_file(SAMPLES, name, &bytes);
    for (; full; ceiling += 200) {
        read_within(buffer_text(&bytes), ceiling, NULL, NULL, &full);
        assert_true(ceiling < ARENA_BYTES);
    }
    assert_true(ceiling > 200);
    buffer_release(&bytes);
}

static void test_small_arenas(void **state)
{
    (void) state;
    assert_true(each_sample(starve) >= 20);
}

/* What fuzzing began with and found, with the fuzz targets' own checks. */
static size_t replay(const char *folder)
{
    DIR *seeds = opendir(folder);
    struct dirent *entry;
    size_t count = 0;
    if (!seeds)
        fail_msg("%s is not here; run this from the project's top folder", folder);
    while ((entry = readdir(seeds))) {
        struct buffer bytes = {0};
        if (entry->d_name[0] == '.')
            continue;
        open_file(folder, entry->d_name, &bytes);
        read_any(buffer_text(&bytes));
        buffer_release(&bytes);
        count++;
    }
    closedir(seeds);
    return count;
}

static void test_seeds(void **state)
{
    static const char *const folders[] = {
        "tests/fuzz/seeds/read_srt/",     "tests/fuzz/seeds/read_webvtt/",
        "tests/fuzz/seeds/read_ttml/",    "tests/fuzz/seeds/read_timed_lines/",
        "tests/fuzz/seeds/read_json/",    "tests/fuzz/seeds/read_tsv/",
        "tests/fuzz/seeds/read_encoding/"};
    (void) state;
    for (size_t i = 0; i < sizeof folders / sizeof *folders; i++)
        assert_true(replay(folders[i]) > 10);
}

/* Inputs on which a careless reader takes the square of their length; the time limit of the test
 * run is the judge. */
static void test_piles(void **state)
{
    static const struct {
        const char *head, *piece;
    } rows[] = {
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "<"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "&"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "["},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "("},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "{\\"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "<v A>b</v>"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", ">> a "},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "<00:00:01.500>a "},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "A\xCC\x81\xCC\xA7"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\nA", "\xCC\x81\xCC\xA7"},
        {"WEBVTT\n\n", "00:01.000 --> 00:02.000\na\n"},
        {"WEBVTT\n\n", "00:01.000 --> 00:02.000\n"},
        {"WEBVTT\n\n", "00:01.000 --> 00:02.000\na a a a a a a b\n\n"},
        {"WEBVTT\n\n00:01.000 --> 00:02.000\n", "a\n\n"},
        {"1\n00:00:01,000 --> 00:00:02,000\n", "1\n\n"},
        {"", "9\n00:00:09,000 --> 00:00:02,000\n- a\n- b\n\n"},
        {"", "0:01 a\n"},
        {"", "[0:01](0:01"},
        {"0:01 ", "**a"},
        {"0:01 ", "[a](b"},
        {"0:01 ", "\n> # "},
        {"", "0\t1\ta\n"},
        {"", "1\t"},
        {"[{\"start\":1,\"text\":\"x\"}", ",{\"start\":1,\"text\":\"y\"}"},
        {"[{\"start\":1,\"text\":\"x\",\"words\":[{}", ",{\"start\":1,\"word\":\"y\"}"},
        {"<tt><body>", "<p begin=\"1s\">a</p>"},
        {"<tt><body><p begin=\"1s\">", "a<br/>"},
    };
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct buffer bytes = {0};
        buffer_put_string(&bytes, rows[i].head);
        put_times(&bytes, rows[i].piece, 300000 / strlen(rows[i].piece));
        if (rows[i].head[0] == '[')
            buffer_put_string(&bytes, strchr(rows[i].head + 1, '[') ? "]}]" : "]");
        read_bytes(buffer_text(&bytes), NULL, NULL);
        buffer_release(&bytes);
    }
}

/* ---- the corpus */

/* Turns of one caption are cues apart. */
static void count_cues(const char *name, size_t cues, size_t captions)
{
    struct arena arena;
    struct buffer bytes = {0};
    struct problems problems = {0};
    struct recording r = {.arena = &arena};
    volatile size_t found = 0;
    open_file(CORPUS, name, &bytes);
    arena_init(&arena, ARENA_BYTES);
    if (!arena_open(&arena) || !read_cues(&r, buffer_text(&bytes), &problems))
        fail_msg("%s cannot be read", name);
    for (size_t n = 0; n < r.cues.count; n++)
        found += !n || r.cues.at[n].raw != r.cues.at[n - 1].raw;
    if (r.cues.count != cues || found != captions || problems.count)
        fail_msg("%s: %zu cues, %zu captions, %zu problems", name, r.cues.count, found,
                 problems.count);
    arena_release(&arena);
    problems_release(&problems);
    buffer_release(&bytes);
}

static void test_corpus(void **state)
{
    /* Captions: counted with grep. In SubRip and WebVTT lines with an arrow, in rolling files those
     * of them whose cue has words that are new; in the others lines with a time. */
    static const struct {
        const char *name;
        size_t cues, captions;
    } rows[] = {
        {"clean-captions.vtt", 57, 48},
        {"dockside-suppers.md", 51, 51},
        {"fixed-width.vtt", 115, 115},
        {"granddad-stew.srt", 103, 103},
        {"harbour-breads.srt", 164, 164},
        {"holiday-bake.txt", 49, 49},
        {"lighthouse-compilation.md", 89, 89},
        {"market-salads.json", 70, 70},
        {"no-dish.srt", 58, 58},
        {"pier-chat.txt", 189, 189},
        {"rolling-soup.vtt", 83, 83},
        {"segments.json", 75, 75},
        {"sunday-five.md", 58, 58},
        {"tiny.tsv", 13, 13},
        {"two-cooks.srt", 144, 92},
    };
    (void) state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        count_cues(rows[i].name, rows[i].cues, rows[i].captions);
}

/* ---- places */

/* In these samples each word stands in the file as it reads, so its place must have its letters. */
static void check_places(const char *name)
{
    struct arena arena;
    struct buffer bytes = {0};
    struct problems problems = {0};
    struct recording r = {.arena = &arena};
    open_file(SAMPLES, name, &bytes);
    arena_init(&arena, ARENA_BYTES);
    assert_true(arena_open(&arena) && read_cues(&r, buffer_text(&bytes), &problems));
    for (size_t n = 0; n < r.cues.count; n++) {
        const struct cue *c = &r.cues.at[n];
        assert_true(c->raw <= c->raw_end && c->raw_end <= r.source.length);
        for (size_t i = 0; i < c->text.length; i++) {
            unsigned line, column;
            if (!isalnum((unsigned char) c->text.at[i]) || (i && c->text.at[i - 1] != ' '))
                continue;
            cue_place(&r, c, i, &line, &column);
            size_t at = 0;
            for (unsigned k = 1; k < line; k++)
                at = text_find(r.source, '\n', at) + 1;
            at += column - 1;
            assert_true(at >= c->raw && at < c->raw_end);
            if (r.source.at[at] != c->text.at[i])
                fail_msg("%s: cue %zu, letter %zu is not at %u:%u", name, n, i, line, column);
        }
    }
    arena_release(&arena);
    problems_release(&problems);
    buffer_release(&bytes);
}

static void test_places(void **state)
{
    static const char *const names[] = {"repairs.srt", "dialogue.srt", "blocks.vtt",
                                        "rolling.vtt", "rollup.srt",   "brackets.md",
                                        "names.md",    "plain.txt",    "heads.tsv"};
    (void) state;
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        check_places(names[i]);
}

static int show_files(int count, char **names)
{
    struct buffer out = {0};
    bool good = true;
    for (int i = 0; i < count; i++) {
        struct buffer bytes = {0};
        good = show_file(names[i], &bytes) && read_bytes(buffer_text(&bytes), &out, &out) && good;
        buffer_release(&bytes);
    }
    fwrite(out.at ? out.at : "", 1, out.length, stdout);
    buffer_release(&out);
    return good ? EXIT_SUCCESS : EXIT_FAILURE;
}

int main(int argc, char **argv)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_samples),
        cmocka_unit_test(test_same_in_all_formats),
        cmocka_unit_test(test_encodings),
        cmocka_unit_test(test_odd_encodings),
        cmocka_unit_test(test_refused),
        cmocka_unit_test(test_limits),
        cmocka_unit_test(test_cut_at_every_byte),
        cmocka_unit_test(test_small_arenas),
        cmocka_unit_test(test_piles),
        cmocka_unit_test(test_corpus),
        cmocka_unit_test(test_places),
        cmocka_unit_test(test_seeds),
    };
    if (argc > 2 && !strcmp(argv[1], "--captions")) {
        show = show_captions;
        return show_files(argc - 2, argv + 2);
    }
    return argc > 1 ? show_files(argc - 1, argv + 1) : cmocka_run_group_tests(tests, NULL, NULL);
}
