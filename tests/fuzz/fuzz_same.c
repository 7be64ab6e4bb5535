/* fuzz/fuzz_same.c: what must not change what is found: whether a rule's slots are found by its
 * codes or by PCRE2, and which format brings the words. The bytes become plain cues, a line each.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buffer.h"
#include "dishtake.h"
#include "match/groups.h"

#define CUE_SECONDS 4

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* The linker puts this in the place of groups_find(), for the reading that asks PCRE2 for every
 * rule.
 */
static bool by_pcre2;

enum groups_found __wrap_groups_find(const struct rule *rule, const struct subject *s, size_t from,
                                     struct groups *out);
enum groups_found __real_groups_find(const struct rule *rule, const struct subject *s, size_t from,
                                     struct groups *out);

enum groups_found __wrap_groups_find(const struct rule *rule, const struct subject *s, size_t from,
                                     struct groups *out)
{
    return by_pcre2 ? GROUPS_UNSURE : __real_groups_find(rule, s, from, out);
}

/* The grammar is loaded once. */
static struct dishtake *handle(void)
{
    static struct dishtake *d;
    if (!d)
        d = dishtake_new(NULL, 0);
    if (!d || !dishtake_ready(d))
        abort();
    return d;
}

/* Letters, digits, and the signs that no format takes for its own. */
static char plain(uint8_t c)
{
    bool fine = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')
                || strchr(".,?/'", c);
    return c && fine ? (char) c : ' ';
}

enum form { SRT, WEBVTT, JSON, LINES, FORMS };

static void put_time(struct buffer *b, unsigned seconds, enum form form)
{
    if (form == JSON)
        buffer_format(b, "%u", seconds);
    else if (form == LINES)
        buffer_format(b, "[%u:%02u:%02u]", seconds / 3600, seconds / 60 % 60, seconds % 60);
    else
        buffer_format(b, "%02u:%02u:%02u%c000", seconds / 3600, seconds / 60 % 60, seconds % 60,
                      form == SRT ? ',' : '.');
}

static void put_cue(struct buffer *b, unsigned n, struct text words, enum form form)
{
    if (form == SRT)
        buffer_format(b, "%u\n", n + 1);
    if (form == JSON)
        buffer_put_string(b, n ? ",\n{\"start\": " : "{\"start\": ");
    put_time(b, n * CUE_SECONDS, form);
    buffer_put_string(b, form == JSON ? ", \"end\": " : form == LINES ? " " : " --> ");
    if (form != LINES)
        put_time(b, (n + 1) * CUE_SECONDS, form);
    buffer_put_string(b, form == JSON ? ", \"text\": \"" : form == LINES ? "" : "\n");
    buffer_put(b, words);
    buffer_put_string(b, form == JSON ? "\"}" : form == LINES ? "\n" : "\n\n");
}

static bool is_letter(char c)
{
    return (c | 0x20) >= 'a' && (c | 0x20) <= 'z';
}

/* From the first letter or digit on, as what stands between a line's time and its words is the
 * format's; empty when there is no letter. */
static struct text cue_words(struct text line)
{
    bool letter = false;
    for (size_t i = 0; i < line.length; i++)
        letter |= is_letter(line.at[i]);
    while (line.length && !is_letter(*line.at) && !(*line.at >= '0' && *line.at <= '9'))
        line = text_slice(line, 1, line.length);
    return letter ? text_trim(line) : text_from("");
}

/* A line of `lines` is a cue; lines without a letter are left out. One word more stands at the end:
 * timed lines do not say when their last cue ends, and the times of its words are guessed. */
static struct buffer transcript(struct text lines, enum form form)
{
    struct buffer b = {0};
    struct text line;
    unsigned n = 0;
    buffer_put_string(&b, form == WEBVTT ? "WEBVTT\n\n" : form == JSON ? "{\"segments\": [" : "");
    while (text_part(&lines, '\n', &line)) {
        struct text words = cue_words(line);
        if (words.length)
            put_cue(&b, n++, words, form);
    }
    put_cue(&b, n, text_from("yes"), form);
    buffer_put_string(&b, form == JSON ? "]}\n" : "");
    return b;
}

/* The card as Markdown: all that was found, with hardly a time in it. Owned by the caller. */
static char *found(struct dishtake *d, struct text bytes, const char *output, const char *as)
{
    size_t length;
    if (dishtake_read(d, bytes.at, bytes.length, "fuzz", NULL) != DISHTAKE_DONE)
        return strdup("unreadable");
    const char *out = dishtake_write(d, output, as, NULL, &length);
    if (!out)
        abort();
    return strdup(out);
}

/* Digits of times: those with a colon before or after. What is left must be the same. */
static void drop_times(char *s)
{
    char *to = s;
    for (char *at = s; *at; at++) {
        bool digit = *at >= '0' && *at <= '9';
        bool in_time = *at == ':' || (digit && (at[1] == ':' || (at > s && at[-1] == ':')))
                       || (digit && at > s && at[-1] >= '0' && at[-1] <= '9'
                           && (at[1] == ':' || (at > s + 1 && at[-2] == ':')));
        if (!in_time)
            *to++ = *at;
    }
    *to = '\0';
}

static void must_be_same(const char *a, const char *b, const char *what)
{
    if (strcmp(a, b) == 0)
        return;
    fprintf(stderr, "not the same: %s\n---- one\n%s\n---- other\n%s\n", what, a, b);
    abort();
}

static void compare_matchers(struct text bytes)
{
    char *a = found(handle(), bytes, "recipes", "json");
    by_pcre2 = true;
    char *b = found(handle(), bytes, "recipes", "json");
    by_pcre2 = false;
    must_be_same(a, b, "slots found by codes and by PCRE2");
    free(a);
    free(b);
}

static void compare_formats(struct text lines)
{
    char *cards[FORMS];
    for (enum form form = SRT; form < FORMS; form++) {
        struct buffer b = transcript(lines, form);
        cards[form] = found(handle(), buffer_text(&b), "card", "markdown");
        drop_times(cards[form]);
        buffer_release(&b);
    }
    for (enum form form = WEBVTT; form < FORMS; form++)
        must_be_same(cards[SRT], cards[form],
                     form == WEBVTT ? "WebVTT"
                     : form == JSON ? "JSON"
                                    : "timed lines");
    for (enum form form = SRT; form < FORMS; form++)
        free(cards[form]);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct buffer lines = {0};
    for (size_t i = 0; i < size; i++)
        buffer_put_char(&lines, data[i] == '\n' ? '\n' : plain(data[i]));
    compare_formats(buffer_text(&lines));
    struct buffer srt = transcript(buffer_text(&lines), SRT);
    compare_matchers(buffer_text(&srt));
    buffer_release(&srt);
    buffer_release(&lines);
    return 0;
}
