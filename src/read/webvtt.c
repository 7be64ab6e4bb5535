/* read/webvtt.c: the parsing algorithm of the W3C's WebVTT Candidate Recommendation of April 2019,
 * section 6.1, which recovers from everything. It drops a block whose times are broken, or that has
 * none; speech must not be lost, so here such a block is kept and reported.
 * SPDX-License-Identifier: MIT */
#include "read/clock.h"
#include "read/reader.h"

struct webvtt {
    struct reader *rd;
    struct lines lines;
    struct draft
        open; /* the last cue, held back for text that a stray empty line cut off; line 0: none */
    bool sealed; /* a comment stands behind it already */
};

static bool has_arrow(struct text t)
{
    for (size_t i = text_find(t, '-', 0); i < t.length; i = text_find(t, '-', i + 1))
        if (text_starts(text_slice(t, i, t.length), "-->"))
            return true;
    return false;
}

static void skip_blanks(struct text t, size_t *i)
{
    while (*i < t.length && (t.at[*i] == ' ' || t.at[*i] == '\t' || t.at[*i] == '\f'))
        (*i)++;
}

static bool read_time(struct webvtt *w, struct line line, size_t *i, double *seconds)
{
    struct clock c;
    skip_blanks(line.text, i);
    if (!clock_read(line.text, i, &c))
        return false;
    if (c.comma)
        repair(w->rd, REPAIR_COMMA, line.number);
    *seconds = c.seconds;
    return true;
}

/* "00:01.000 --> 00:02.000 align:start"; the settings place the cue on the screen, and are left
 * out. */
static void read_times(struct webvtt *w, struct line line, struct draft *d)
{
    size_t i = 0;
    d->start = d->end = -1;
    if (!read_time(w, line, &i, &d->start))
        return;
    skip_blanks(line.text, &i);
    if (!text_starts(text_slice(line.text, i, line.text.length), "-->")) {
        d->start = -1;
        return;
    }
    i += 3;
    if (!read_time(w, line, &i, &d->end))
        problem_note(w->rd->p, read_place(w->rd, line.number),
                     "the end of this caption cannot be read");
}

static bool close_cue(struct webvtt *w)
{
    struct draft *d = &w->open;
    bool has_one = d->line > 0;
    d->text = text_slice(w->rd->r->source, d->raw, d->raw_end);
    if (has_one && d->raw == d->raw_end)
        repair(w->rd, REPAIR_NO_TEXT, d->line);
    return !has_one || add_cue(w->rd, d);
}

static bool open_cue(struct webvtt *w, struct line times)
{
    size_t next = times.begin + times.text.length + 1;
    if (!close_cue(w))
        return false;
    w->open = (struct draft){.raw = next, .raw_end = next, .line = times.number + 1, .column = 1};
    w->sealed = false;
    read_times(w, times, &w->open);
    return true;
}

static bool is_comment(struct text first)
{
    struct text word = text_slice(first, 0, 4);
    return text_is(word, "NOTE")
           && (first.length == 4 || first.at[4] == ' ' || first.at[4] == '\t');
}

/* Comments, styles and regions; and a number that lost its times. */
static bool is_silent(struct text first, bool alone)
{
    struct text word = text_trim(first);
    bool number = alone;
    for (size_t i = 0; i < word.length; i++)
        number = number && is_digit(word.at[i]);
    return number || is_comment(first) || text_is(word, "STYLE") || text_is(word, "REGION");
}

/* A block without times: `end` is where its last line ends. */
static bool add_block(struct webvtt *w, struct line first, size_t end)
{
    bool alone = first.begin + first.text.length == end;
    if (is_silent(first.text, alone)) {
        w->sealed = true;
        return true;
    }
    if (!w->open.line) {
        repair(w->rd, REPAIR_BEFORE_TIMES, first.number);
        return true;
    }
    if (w->sealed) {
        if (!close_cue(w))
            return false;
        w->open = (struct draft){
            .start = -1, .end = -1, .raw = first.begin, .line = first.number, .column = 1};
        w->sealed = false;
    } else {
        repair(w->rd, REPAIR_BLOCK, first.number);
    }
    w->open.raw_end = end;
    return true;
}

/* The lines up to an empty one, or to times that do not belong to them. The times may stand in the
 * first line or, behind an identifier, in the second. */
static bool read_block(struct webvtt *w, struct line line)
{
    struct line first = line;
    bool timed = false;
    size_t count = 0, end = line.begin;
    do {
        count++;
        if (!line.text.length)
            break;
        if (has_arrow(line.text)) {
            if (timed || count > 2) { /* a cue without an empty line before it */
                w->lines.at = line.begin;
                w->lines.number = line.number - 1;
                break;
            }
            timed = true;
            if (!open_cue(w, line))
                return false;
            continue;
        }
        end = line.begin + line.text.length;
        if (timed)
            w->open.raw_end = end;
    } while (next_line(&w->lines, &line));
    return timed || add_block(w, first, end);
}

/* "Kind: captions", "Language: en" between the first line and the first empty one. */
static void read_header(struct webvtt *w)
{
    struct line line;
    next_line(&w->lines, &line);
    while (next_line(&w->lines, &line)) {
        if (!line.text.length)
            return;
        if (has_arrow(line.text)) {
            w->lines.at = line.begin;
            w->lines.number = line.number - 1;
            return;
        }
        if (text_starts(line.text, "Language:"))
            w->rd->r->language = text_trim(text_slice(line.text, 9, line.text.length));
    }
}

bool read_webvtt(struct reader *rd)
{
    struct webvtt w = {.rd = rd, .lines = {.source = rd->r->source}};
    struct line line;
    read_header(&w);
    while (next_line(&w.lines, &line))
        if (line.text.length && !read_block(&w, line))
            return false;
    return close_cue(&w);
}
