/* read/subrip.c: number, "00:00:01,200 --> 00:00:05,832", lines of text, an empty line. There is no
 * standard, so this reads all that can be told apart, and says once a kind what was mended.
 * SPDX-License-Identifier: MIT */
#include "read/clock.h"
#include "read/reader.h"

struct subrip {
    struct reader *rd;
    struct draft open;         /* the caption whose text is being collected; line 0: none yet */
    size_t last_text;          /* line number of its last line that is not blank */
    bool blank_seen;           /* after its first line */
    struct line number;        /* the last line that is nothing but a number; number 0: none */
    bool number_alone;         /* an empty line, or nothing, stands before it */
    size_t text_before;        /* the open caption's raw_end without that number */
    unsigned long last_number; /* of the caption before */
    bool numbered;             /* a caption had a number */
};

static void skip_blanks(struct text t, size_t *i)
{
    while (*i < t.length && (t.at[*i] == ' ' || t.at[*i] == '\t'))
        (*i)++;
}

/* "-->", and what people make of it: "->", "- ->", "=>", an arrow letter. */
static bool read_arrow(struct text t, size_t *i, bool *odd)
{
    static const char *const arrows[] = {"-->",  "--->", "->",  "- ->",
                                         "-- >", "=>",   "==>", "\xE2\x86\x92"};
    for (size_t k = 0; k < sizeof arrows / sizeof *arrows; k++) {
        struct text arrow = text_from(arrows[k]);
        if (text_equal(text_slice(t, *i, *i + arrow.length), arrow)) {
            *i += arrow.length;
            *odd = k > 0;
            return true;
        }
    }
    return false;
}

struct times {
    struct clock start, end;
    bool has_end, odd_arrow;
    size_t after; /* offset behind the times */
};

/* True when the line has a start and an arrow; the end may be unreadable. */
static bool read_times(struct text t, struct times *times)
{
    size_t i = 0;
    skip_blanks(t, &i);
    if (!clock_read(t, &i, &times->start))
        return false;
    skip_blanks(t, &i);
    if (!read_arrow(t, &i, &times->odd_arrow))
        return false;
    skip_blanks(t, &i);
    times->has_end = clock_read(t, &i, &times->end);
    times->after = i;
    return true;
}

bool line_has_arrow(struct text line)
{
    struct times times = {0};
    return read_times(line, &times) && times.has_end;
}

static bool is_broken_times(struct text t)
{
    size_t digits = 0, i = 0;
    bool arrow = false;
    for (; i < t.length; i++) {
        digits += is_digit(t.at[i]);
        arrow = arrow || (t.at[i] == '-' && text_starts(text_slice(t, i, t.length), "-->"));
    }
    return arrow && digits > 3;
}

static bool is_number(struct text t, unsigned long *value)
{
    t = text_trim(t);
    *value = 0;
    for (size_t i = 0; i < t.length; i++) {
        if (!is_digit(t.at[i]) || i > 8)
            return false;
        *value = *value * 10 + (unsigned long) (t.at[i] - '0');
    }
    return t.length > 0;
}

static bool close_caption(struct subrip *s)
{
    struct draft *d = &s->open;
    if (!d->line)
        return true;
    d->text = text_slice(s->rd->r->source, d->raw, d->raw_end);
    if (line_is_blank(d->text))
        repair(s->rd, REPAIR_NO_TEXT, d->line);
    return add_cue(s->rd, d);
}

static void check_number(struct subrip *s, unsigned line)
{
    unsigned long value;
    is_number(s->number.text, &value);
    if (s->numbered && value != s->last_number + 1)
        repair(s->rd, REPAIR_WRONG_NUMBER, s->number.number);
    if (!s->number_alone && s->open.line)
        repair(s->rd, REPAIR_NO_BLANK_LINE, line);
    s->last_number = value;
    s->numbered = true;
}

/* Is the last line that was only digits the number of the caption whose times stand in `line`?
 * Directly above the times it is, unless this file has no numbers and it ends a text ("bake at /
 * 350"). */
static bool has_number(const struct subrip *s, unsigned line)
{
    if (!s->number.number)
        return false;
    if (s->number.number + 1 == line)
        return s->number_alone || s->numbered || !s->open.line;
    return s->number_alone && s->last_text == s->number.number;
}

static void take_number(struct subrip *s, unsigned line)
{
    if (has_number(s, line)) {
        check_number(s, line);
        if (s->open.line && s->open.raw_end > s->text_before)
            s->open.raw_end = s->text_before;
    } else {
        repair(s->rd, REPAIR_NO_NUMBER, line);
        if (s->open.line && s->last_text + 1 == line)
            repair(s->rd, REPAIR_NO_BLANK_LINE, line);
        s->last_number++;
    }
    s->number = (struct line){0};
}

static void check_clock(struct subrip *s, const struct clock *c, unsigned line)
{
    if (c->dot)
        repair(s->rd, REPAIR_DOT, line);
    if (c->loose || c->digits != 2 || !c->hours || c->decimals != 3)
        repair(s->rd, REPAIR_SHORT_CLOCK, line);
}

/* Settings behind the times ("X1:117 Y1:90", "align:start") have no speech in them. */
static bool is_setting(struct text rest)
{
    struct text word;
    while (text_part(&rest, ' ', &word))
        if (word.length && text_find(word, ':', 0) == word.length)
            return false;
    return true;
}

static bool open_caption(struct subrip *s, struct line line, const struct times *times)
{
    struct text rest = text_slice(line.text, times->after, line.text.length);
    size_t next = line.begin + line.text.length + 1;
    take_number(s, line.number);
    if (!close_caption(s))
        return false;
    s->open = (struct draft){.start = times->start.seconds,
                             .end = times->has_end ? times->end.seconds : -1,
                             .raw = next,
                             .raw_end = next,
                             .line = line.number + 1,
                             .column = 1};
    check_clock(s, &times->start, line.number);
    if (times->has_end)
        check_clock(s, &times->end, line.number);
    else
        problem_note(s->rd->p, read_place(s->rd, line.number),
                     "the end of this caption cannot be read");
    if (times->odd_arrow)
        repair(s->rd, REPAIR_ARROW, line.number);
    if (!is_setting(rest)) {
        repair(s->rd, REPAIR_SAME_LINE, line.number);
        s->open.raw = line.begin + times->after;
        s->open.raw_end = line.begin + line.text.length;
        s->open.line = line.number;
        s->open.column = (unsigned) times->after + 1;
    }
    s->last_text = line.number;
    s->blank_seen = false;
    return true;
}

static bool open_broken(struct subrip *s, struct line line)
{
    size_t next = line.begin + line.text.length + 1;
    take_number(s, line.number);
    if (!close_caption(s))
        return false;
    s->open = (struct draft){
        .start = -1, .end = -1, .raw = next, .raw_end = next, .line = line.number + 1, .column = 1};
    s->last_text = line.number;
    s->blank_seen = false;
    return true;
}

static void add_text(struct subrip *s, struct line line)
{
    unsigned long value;
    bool number = is_number(line.text, &value);
    if (number) {
        s->number = line;
        s->number_alone = s->blank_seen || s->last_text + 1 < line.number || !s->open.line;
        s->text_before = s->open.raw_end;
    }
    if (s->open.line) {
        if (!number && s->last_text + 1 < line.number && s->open.raw_end > s->open.raw)
            repair(s->rd, REPAIR_BLANK_INSIDE, line.number);
        s->open.raw_end = line.begin + line.text.length;
    } else if (!number) {
        repair(s->rd, REPAIR_BEFORE_TIMES, line.number);
    }
    s->last_text = line.number;
    s->blank_seen = false;
}

bool read_subrip(struct reader *rd)
{
    struct subrip s = {.rd = rd};
    struct lines lines = {.source = rd->r->source};
    struct line line;
    while (next_line(&lines, &line)) {
        struct times times = {0};
        bool good = true;
        if (line_is_blank(line.text))
            s.blank_seen = true;
        else if (read_times(line.text, &times))
            good = open_caption(&s, line, &times);
        else if (is_broken_times(line.text))
            good = open_broken(&s, line);
        else
            add_text(&s, line);
        if (!good)
            return false;
    }
    return close_caption(&s);
}
