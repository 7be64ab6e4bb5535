/* read/timed_lines.c: "[1:02] text", "1:02 text", or the time on a line of its own; in Markdown or
 * not. A line without a time belongs to the time before it. A time at the start of a line may also
 * be speech ("ready at / 3:50"): so all lines are looked at first, and a time counts when it is
 * written as the others are. SPDX-License-Identifier: MIT */
#include <string.h>

#include "read/clock.h"
#include "read/limits.h"
#include "read/reader.h"

/* How a time is written. Brackets make it sure. */
enum style { BRACKETED, BARE_ALONE, BARE_BEFORE_TEXT, BARE_AFTER_NAME, STYLES };

struct mark {
    enum style style;
    double start, end; /* end < 0: not given */
    size_t line_begin; /* offset of its line */
    size_t text_begin; /* offset of what is said */
    unsigned line;
    struct text speaker; /* empty when not given */
    bool after_text;     /* the line above has text */
    bool after_plain;    /* and no time of its own */
};

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

static bool read_mark(struct text line, struct mark *m)
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
    return read_mark(line, &m);
}

typedef LIST(struct mark) mark_list;

struct timed_lines {
    struct reader *rd;
    mark_list marks;
    size_t styles[STYLES]; /* how often each is used */
    bool wraps;            /* lines without a time follow lines of text */
};

static bool is_heading(struct text line)
{
    line = text_trim(line);
    size_t hashes = 0;
    while (hashes < line.length && line.at[hashes] == '#')
        hashes++;
    return hashes && hashes < 7 && (hashes == line.length || line.at[hashes] == ' ');
}

static void find_marks(struct timed_lines *t)
{
    struct lines lines = {.source = t->rd->r->source};
    struct line line;
    bool text_above = false, plain_above = false;
    while (next_line(&lines, &line)) {
        struct mark m;
        bool blank = line_is_blank(line.text);
        if (read_mark(line.text, &m)) {
            m.line = line.number;
            m.line_begin = line.begin;
            m.text_begin += line.begin;
            m.after_text = text_above;
            m.after_plain = plain_above;
            t->styles[m.style]++;
            *LIST_ADD(t->rd->r->arena, &t->marks) = m;
            text_above = m.style == BARE_BEFORE_TEXT || m.style == BRACKETED;
            plain_above = false;
            continue;
        }
        plain_above = !blank && !is_heading(line.text);
        t->wraps = t->wraps || (plain_above && text_above && t->marks.count);
        text_above = plain_above;
    }
}

/* A style that fewer than one time in five has is an accident of speech, unless it is bracketed. */
static bool style_counts(const struct timed_lines *t, enum style style)
{
    return style == BRACKETED || t->styles[style] * 5 >= t->marks.count;
}

/* In a paragraph that wraps, a time at the start of a line that is out of order is speech. */
static bool is_out_of_order(const struct timed_lines *t, size_t i, double before)
{
    const struct mark *m = &t->marks.at[i];
    if (m->style == BRACKETED || !(m->after_plain || (t->wraps && m->after_text)))
        return false;
    double next = i + 1 < t->marks.count ? t->marks.at[i + 1].start : m->start;
    return m->start < before || (next >= before && next < m->start);
}

/* Leaves only the times that begin a cue. */
static void judge_marks(struct timed_lines *t)
{
    size_t kept = 0;
    double before = 0;
    for (size_t i = 0; i < t->marks.count; i++) {
        const struct mark m = t->marks.at[i];
        if (!style_counts(t, m.style) || is_out_of_order(t, i, before))
            continue;
        before = m.start;
        t->marks.at[kept++] = m;
    }
    t->marks.count = kept;
}

static size_t trim_end(struct text source, size_t begin, size_t end)
{
    while (end > begin && line_is_blank(text_slice(source, end - 1, end)))
        end--;
    return end;
}

/* Text before the first time is speech when there is time for it; else it is a title. */
static bool add_opening(struct timed_lines *t)
{
    struct text source = t->rd->r->source;
    const struct mark *first = &t->marks.at[0];
    struct lines lines = {.source = text_slice(source, 0, first->line_begin)};
    struct line line;
    struct draft d = {.end = first->start, .column = 1};
    size_t letters = 0;
    while (next_line(&lines, &line)) {
        if (line_is_blank(line.text) || is_heading(line.text))
            continue;
        if (!d.line) {
            d.raw = line.begin;
            d.line = line.number;
        }
        d.raw_end = line.begin + line.text.length;
        letters += text_letters(line.text);
    }
    if (!d.line)
        return true;
    if ((double) letters / LETTERS_PER_SECOND > first->start) {
        repair(t->rd, REPAIR_BEFORE_TIMES, d.line);
        return true;
    }
    d.text = text_slice(source, d.raw, d.raw_end);
    return add_cue(t->rd, &d);
}

bool read_timed_lines(struct reader *rd)
{
    struct timed_lines t = {.rd = rd};
    struct text source = rd->r->source;
    find_marks(&t);
    judge_marks(&t);
    if (t.marks.count && !add_opening(&t))
        return false;
    for (size_t i = 0; i < t.marks.count; i++) {
        const struct mark *m = &t.marks.at[i];
        size_t end = i + 1 < t.marks.count ? t.marks.at[i + 1].line_begin : source.length;
        struct draft d = {.start = m->start,
                          .end = m->end,
                          .speaker = m->speaker,
                          .raw = m->text_begin,
                          .raw_end = trim_end(source, m->text_begin, end),
                          .line = m->line,
                          .column = (unsigned) (m->text_begin - m->line_begin) + 1};
        d.text = text_slice(source, d.raw, d.raw_end);
        if (!add_cue(rd, &d))
            return false;
    }
    return true;
}
