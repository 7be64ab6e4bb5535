/* tests/read/show.h: a transcript as the readers understood it, in plain lines.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TESTS_READ_SHOW_H
#define DISHTAKE_TESTS_READ_SHOW_H

#include <stdio.h>

#include "base/buffer.h"
#include "read/read.h"

static const char *const show_kinds[] = {
    [KIND_UNKNOWN] = "unknown", [KIND_SUBRIP] = "subrip",           [KIND_WEBVTT] = "webvtt",
    [KIND_TTML] = "ttml",       [KIND_TIMED_LINES] = "timed-lines", [KIND_JSON] = "json",
    [KIND_TSV] = "tsv",
};

static inline void show_word_time(const struct word_time *w, struct buffer *out)
{
    buffer_format(out, "{%.3f", w->start);
    if (w->end >= 0)
        buffer_format(out, "-%.3f", w->end);
    buffer_put_char(out, '}');
}

/* "LINE:COLUMN START END SPEAKER| TEXT", with " / " where the line breaks and "{1.292}" or
 * "{1.292-1.5}" before a word that has a time. What is not given is "?". */
static inline void show_cue(const struct cue *c, struct buffer *out)
{
    size_t next = 0;
    buffer_format(out, "%u:%u %.3f ", c->line, c->column, c->start);
    if (c->end < 0)
        buffer_put_char(out, '?');
    else
        buffer_format(out, "%.3f", c->end);
    buffer_format(out, " %.*s| ", TEXT(c->speaker.length ? c->speaker : TEXT_OF("?")));
    for (size_t i = 0; i < c->text.length; i++) {
        for (; next < c->times_count && c->times[next].offset == i; next++)
            show_word_time(&c->times[next], out);
        if (c->text.at[i] == '\n')
            buffer_put_string(out, " / ");
        else
            buffer_put_char(out, c->text.at[i]);
    }
    buffer_put_char(out, '\n');
}

/* "KIND LANGUAGE LENGTH", then a line a cue. */
static inline void show_cues(const struct recording *r, struct buffer *out)
{
    buffer_format(out, "%s %.*s %.3f\n", show_kinds[r->kind],
                  TEXT(r->language.length ? r->language : TEXT_OF("?")), r->length);
    for (size_t i = 0; i < r->cues.count; i++)
        show_cue(&r->cues.at[i], out);
}

/* "START END TEXT", a line a caption of the file: the turns of one caption together. */
static inline void show_captions(const struct recording *r, struct buffer *out)
{
    for (size_t i = 0, next; i < r->cues.count; i = next) {
        const struct cue *first = &r->cues.at[i], *last = first;
        for (next = i; next < r->cues.count && r->cues.at[next].raw == first->raw; next++)
            last = &r->cues.at[next];
        buffer_format(out, "%.3f %.3f", first->start, last->end);
        for (const struct cue *c = first; c <= last; c++) {
            buffer_put_char(out, ' ');
            for (size_t k = 0; k < c->text.length; k++)
                buffer_put_char(out, c->text.at[k] == '\n' ? ' ' : c->text.at[k]);
        }
        buffer_put_char(out, '\n');
    }
}

/* "note LINE: MESSAGE" or "error LINE: MESSAGE". */
static inline void show_problems(const struct problems *p, struct buffer *out)
{
    for (size_t i = 0; i < p->count; i++)
        buffer_format(out, "%s %u: %s\n", p->at[i].level == PROBLEM_ERROR ? "error" : "note",
                      p->at[i].at.line, p->at[i].message);
}

/* Puts all bytes of a file into `out`; false when it cannot be opened. */
static inline bool show_file(const char *name, struct buffer *out)
{
    FILE *file = fopen(name, "rb");
    char piece[65536];
    size_t n;
    if (!file)
        return false;
    while ((n = fread(piece, 1, sizeof piece, file)) > 0)
        buffer_put(out, (struct text){piece, n});
    fclose(file);
    return true;
}

#endif
