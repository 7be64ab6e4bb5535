/* read/timed_lines.c: "[1:02] text", "1:02 text", or the time on a line of its own; in Markdown or
 * not. A line without a time belongs to the time before it. A time at the start of a line may also
 * be speech ("ready at / 3:50"): so all lines are looked at first, and a time counts when it is
 * written as the others are.
 * SPDX-License-Identifier: MIT */
#include "read/limits.h"
#include "read/timed_mark.h"

typedef LIST(struct mark) mark_list;

struct timed_lines {
    struct reader *rd;
    mark_list marks;
    size_t styles[STYLES]; /* how often each is used */
    bool wraps;            /* lines without a time follow lines of text */
};

static void find_marks(struct timed_lines *t)
{
    struct lines lines = {.source = t->rd->r->source};
    struct line line;
    bool text_above = false, plain_above = false;
    while (next_line(&lines, &line)) {
        struct mark m;
        bool blank = line_is_blank(line.text);
        if (mark_read(line.text, &m)) {
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
        plain_above = !blank && !line_is_heading(text_trim(line.text));
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
    LIST_CUT(&t->marks, kept);
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
        if (line_is_blank(line.text) || line_is_heading(text_trim(line.text)))
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
