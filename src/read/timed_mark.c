/* read/timed_mark.c: "[1:02]", "1:02 - 1:10", "Ines 1:02", in Markdown or not.
 * SPDX-License-Identifier: MIT */
#include "read/timed_mark.h"

#include <string.h>

#include "read/clock.h"
#include "read/limits.h"

static size_t skip(struct text t, size_t i, const char *signs)
{
    while (i < t.length && t.at[i] && strchr(signs, t.at[i]))
        i++;
    return i;
}

/* Quote marks, headings, bullets, numbers of a list, bars of a table and emphasis. ">>" is a
 * speaker. */
static size_t skip_markdown(struct text t)
{
    size_t i = skip(t, 0, " \t");
    if (text_starts(text_slice(t, i, t.length), ">>"))
        return i;
    i = skip(t, i, " \t>#|");
    if (i + 1 < t.length && strchr("-*+", t.at[i]) && t.at[i + 1] == ' ')
        i += 2;
    size_t digits = i;
    while (digits < t.length && digits < i + 4 && is_digit(t.at[digits]))
        digits++;
    if (digits > i && digits + 1 < t.length && strchr(".)", t.at[digits])
        && t.at[digits + 1] == ' ')
        i = digits + 2;
    return skip(t, i, " \t*_`~");
}

/* The end of a range: " - 0:15", "–0:15", " --> 0:15". */
static size_t read_range(struct text t, size_t i, struct mark *m)
{
    static const char *const dashes[] = {"-->",          "->",           "-",
                                         "\xE2\x80\x93", "\xE2\x80\x94", "\xE2\x86\x92"};
    size_t at = skip(t, i, " \t");
    for (size_t k = 0; k < sizeof dashes / sizeof *dashes; k++) {
        struct text dash = text_from(dashes[k]);
        struct clock end;
        if (!text_equal(text_slice(t, at, at + dash.length), dash))
            continue;
        size_t after = skip(t, at + dash.length, " \t");
        if (!clock_read(t, &after, &end) || end.loose)
            return i;
        m->end = end.seconds;
        return after;
    }
    return i;
}

static char closing_of(char open)
{
    return open == '[' ? ']' : open == '(' ? ')' : open == '<' ? '>' : '\0';
}

/* "](https://...)" of a Markdown link. */
static size_t skip_link(struct text t, size_t i)
{
    size_t end = text_find(t, ')', i);
    if (i >= t.length || t.at[i] != '(' || end == t.length || text_find(t, ' ', i) < end
        || text_find(t, '/', i) > end)
        return i;
    return end + 1;
}

/* A time, in brackets or not, at `i`; moves `*i` behind it. */
static bool read_time(struct text t, size_t *i, struct mark *m)
{
    struct clock start;
    size_t at = *i;
    char close = at < t.length ? closing_of(t.at[at]) : '\0';
    at = close ? skip(t, at + 1, " ") : at;
    m->end = -1;
    if (!clock_read(t, &at, &start) || start.loose || start.digits > 3)
        return false;
    m->start = start.seconds;
    at = read_range(t, at, m);
    if (close) {
        at = skip(t, at, " ");
        if (at >= t.length || t.at[at] != close)
            return false;
        at = skip_link(t, at + 1);
    } else if (at < t.length && (is_letter(t.at[at]) || is_digit(t.at[at]))) {
        bool dash = (unsigned char) t.at[at] == 0xE2; /* a typographer's dash or quote */
        if (!dash)
            return false;
    }
    m->style = close ? BRACKETED : BARE_BEFORE_TEXT;
    *i = at;
    return true;
}

static bool begins_name(char c)
{
    return (c >= 'A' && c <= 'Z') || (unsigned char) c >= 0x80 || is_digit(c);
}

/* "Ines", "Dr. O'Hara", "Speaker 1": words that begin with a capital, up to a time; its length, 0
 * when it is no name. */
static size_t name_length(struct text t, size_t i)
{
    size_t begin = i, end = i;
    bool word_begins = true;
    if (i < t.length && is_digit(t.at[i]))
        return 0;
    for (; i < t.length && i - begin < NAME_BYTES_MAX; i++) {
        char c = t.at[i];
        bool in_word = is_letter(c) || is_digit(c) || c == '.' || c == '\'' || c == '-';
        if (in_word && word_begins && !begins_name(c)) {
            /* A bare time ends the name, and so does a dash before it. */
            return 0;
        }
        if (!in_word && c != ' ')
            break;
        struct clock clock;
        size_t at = i;
        if (word_begins && clock_read(t, &at, &clock))
            break;
        word_begins = c == ' ';
        end = in_word ? i + 1 : end;
    }
    return end - begin;
}

static bool read_named_time(struct text t, size_t *i, struct mark *m)
{
    size_t begin = *i, length = name_length(t, begin);
    if (!length)
        return false;
    size_t at = skip(t, begin + length, " \t*_`,:|-");
    if (!read_time(t, &at, m))
        return false;
    if (m->style != BRACKETED) {
        if (!line_is_blank(text_slice(t, skip(t, at, "*_`:"), t.length)))
            return false;
        m->style = BARE_AFTER_NAME;
    }
    m->speaker = text_slice(t, begin, begin + length);
    *i = at;
    return true;
}

/* "**Ines:** text" or "**Ines**: text" behind a time. */
static size_t read_bold_name(struct text t, size_t i, struct mark *m)
{
    size_t begin = skip(t, i, " \t");
    if (!text_starts(text_slice(t, begin, t.length), "**"))
        return i;
    begin += 2;
    size_t length = name_length(t, begin), end = begin + length;
    struct text rest = text_slice(t, end, t.length);
    if (!length || (!text_starts(rest, ":**") && !text_starts(rest, "**:")))
        return i;
    m->speaker = text_slice(t, begin, end);
    return end + 3;
}

bool mark_read(struct text line, struct mark *m)
{
    size_t i = skip_markdown(line);
    *m = (struct mark){.speaker = TEXT_EMPTY};
    if (!read_time(line, &i, m) && !read_named_time(line, &i, m))
        return false;
    i = skip(line, i, " \t~:|.");
    i = skip(line, read_bold_name(line, i, m), " \t*_`~:|.");
    if (i < line.length && line.at[i] == '-')
        i = skip(line, i, "- ");
    if (text_starts(text_slice(line, i, line.length), "\xE2\x80\x93 ")
        || text_starts(text_slice(line, i, line.length), "\xE2\x80\x94 "))
        i += 4;
    bool alone = line_is_blank(text_slice(line, i, line.length));
    if (alone && m->style == BARE_BEFORE_TEXT)
        m->style = BARE_ALONE;
    if (text_starts(text_trim(line), "#")) /* the words before it are a heading */
        m->speaker = TEXT_EMPTY;
    m->text_begin = i;
    return true;
}

bool line_is_timed(struct text line)
{
    struct mark m;
    return mark_read(line, &m);
}
