/* read/cue.c: drafts of captions -> cues.
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "read/clean.h"
#include "read/limits.h"
#include "read/read.h"

struct place read_place(const struct reader *rd, unsigned line)
{
    return (struct place){.file = rd->r->file, .line = line};
}

void repair(struct reader *rd, enum repair kind, unsigned line)
{
    if (!rd->repairs[kind].count++)
        rd->repairs[kind].line = line;
}

double cue_end(const struct cue *c)
{
    return c->end >= 0 ? c->end : c->start + (double) text_letters(c->text) / LETTERS_PER_SECOND;
}

/* Moves a place from `begin` to `end` of the source. */
static void advance(struct text source, size_t begin, size_t end, unsigned *line, unsigned *column)
{
    for (size_t i = begin; i < end; i++) {
        bool over = source.at[i] == '\n';
        *line += over;
        *column = over ? 1 : *column + 1;
    }
}

/* Only in these kinds is the caption in the file as the cleaner saw it. */
static bool raw_is_caption(enum transcript_kind kind)
{
    return kind != KIND_TTML && kind != KIND_JSON;
}

void cue_place(const struct recording *r, const struct cue *c, size_t offset, unsigned *line,
               unsigned *column)
{
    *line = c->line;
    *column = c->column;
    if (!raw_is_caption(r->kind) || !offset)
        return;
    struct text raw = text_slice(r->source, c->raw, c->raw_end);
    size_t begin = clean_origin(r->kind, raw, c->skipped);
    size_t end = clean_origin(r->kind, raw, c->skipped + offset);
    advance(raw, begin, end, line, column);
}

size_t cue_origin(const struct recording *r, const struct cue *c, size_t offset)
{
    struct text raw = text_slice(r->source, c->raw, c->raw_end);
    return c->raw + clean_origin(r->kind, raw, c->skipped + offset);
}

static bool is_blank(char c)
{
    return c == ' ' || c == '\n';
}

struct cue cue_before(const struct cue *c, size_t length)
{
    struct cue part = *c;
    while (length && is_blank(c->text.at[length - 1]))
        length--;
    part.text.length = length;
    part.times_count = 0;
    while (part.times_count < c->times_count && c->times[part.times_count].offset < length)
        part.times_count++;
    return part;
}

/* The word times from `offset` on, counted from there. */
static void move_times(const struct reader *rd, struct cue *part, size_t offset)
{
    size_t first = 0;
    while (first < part->times_count && part->times[first].offset < offset)
        first++;
    size_t count = part->times_count - first;
    struct word_time *moved = count ? arena_alloc(rd->r->arena, count * sizeof *moved) : NULL;
    for (size_t i = 0; i < count; i++) {
        moved[i] = part->times[first + i];
        moved[i].offset -= offset;
    }
    part->times = moved;
    part->times_count = count;
}

struct cue cue_after(const struct reader *rd, const struct cue *c, size_t offset)
{
    struct cue part = *c;
    while (offset < c->text.length && is_blank(c->text.at[offset]))
        offset++;
    if (!offset)
        return part;
    cue_place(rd->r, c, offset, &part.line, &part.column);
    part.text = text_slice(c->text, offset, c->text.length);
    part.skipped += offset;
    move_times(rd, &part, offset);
    return part;
}

/* Times within the cue and in order. */
static bool times_are_good(const struct draft *d, const struct cleaned *clean)
{
    double before = d->start - TOUCH_SECONDS;
    for (size_t i = 0; i < clean->times.count; i++) {
        double time = clean->times.at[i].start;
        if (time < before || (d->end > d->start && time > d->end + TOUCH_SECONDS))
            return false;
        before = time;
    }
    return true;
}

static double settle_start(struct reader *rd, const struct draft *d)
{
    size_t count = rd->r->cues.count;
    if (d->start >= 0)
        return d->start;
    problem_note(rd->p, read_place(rd, d->line),
                 "the time of this caption cannot be read; it is taken to follow the one before");
    return count ? fmax(cue_end(&rd->r->cues.at[count - 1]), rd->r->cues.at[count - 1].start) : 0;
}

static struct cue settle_cue(struct reader *rd, const struct draft *d, struct cleaned *clean)
{
    struct arena *a = rd->r->arena;
    struct cue c = {.start = settle_start(rd, d),
                    .end = d->end,
                    .speaker = d->speaker,
                    .raw = d->raw,
                    .raw_end = d->raw_end,
                    .line = d->line,
                    .column = d->column};
    c.text = arena_text(a, clean->text);
    if (raw_is_caption(rd->r->kind)) {
        struct text raw = text_slice(rd->r->source, d->raw, d->raw_end);
        advance(raw, 0, clean_origin(rd->r->kind, raw, 0), &c.line, &c.column);
    }
    if (!times_are_good(d, clean)) {
        repair(rd, REPAIR_WORD_TIMES, d->line);
        LIST_CUT(&clean->times, 0);
    }
    if (clean->times.count) {
        struct word_time *times = arena_alloc(a, clean->times.count * sizeof *times);
        memcpy(times, clean->times.at, clean->times.count * sizeof *times);
        c.times = times;
        c.times_count = clean->times.count;
    }
    return c;
}

static void add_part(struct reader *rd, const struct cue *whole, size_t begin, size_t end)
{
    if (line_is_blank(text_slice(whole->text, begin, end)))
        return;
    struct cue part = cue_before(whole, end);
    *LIST_ADD(rd->r->arena, &rd->r->cues) = cue_after(rd, &part, begin);
}

/* One cue a voice, as long as there are few. */
static void add_voices(struct reader *rd, struct cue whole, const struct cleaned *clean)
{
    size_t begin = 0, voices = clean->voices.count;
    for (size_t i = 0; i < voices && i < CAPTION_PARTS_MAX; i++) {
        const struct voice *voice = &clean->voices.at[i];
        add_part(rd, &whole, begin, voice->offset);
        begin = voice->offset;
        whole.speaker = voice->name;
    }
    add_part(rd, &whole, begin, whole.text.length);
}

bool add_cue(struct reader *rd, const struct draft *d)
{
    if (rd->r->cues.count >= READ_CUES_MAX)
        return problem(rd->p, read_place(rd, d->line), "has more than %u captions", READ_CUES_MAX);
    clean_text(rd, d->text, &rd->clean);
    if (!rd->clean.text.length)
        return true;
    add_voices(rd, settle_cue(rd, d, &rd->clean), &rd->clean);
    return true;
}

void time_span_add(struct time_span *s, double start, double end, struct text text)
{
    if (start >= 0 && (!s->letters || start < s->first))
        s->first = start;
    s->last = start > s->last ? start : s->last;
    s->last = end > s->last ? end : s->last;
    s->letters += text_letters(text);
}

double time_span_unit(const struct time_span *s)
{
    return s->last - s->first > UNITS_PER_LETTER * (double) s->letters ? 0.001 : 1;
}
