/* words/clock.c
 * SPDX-License-Identifier: MIT */
#include "words/clock.h"

#include <stdlib.h>

#include "base/arena.h"
#include "read/limits.h"
#include "words/limits.h"

/* How long the cue stands: as it says, else until the next one; 0 where neither is known. */
static double cue_seconds(const struct recording *r, unsigned cue)
{
    const struct cue *c = &r->cues.at[cue];
    if (c->end > c->start)
        return c->end - c->start;
    if (cue + 1 < r->cues.count && r->cues.at[cue + 1].start > c->start)
        return r->cues.at[cue + 1].start - c->start;
    return 0;
}

static int by_value(const void *a, const void *b)
{
    double one = *(const double *) a, other = *(const double *) b;
    return (one > other) - (one < other);
}

double letter_seconds(const struct recording *r)
{
    double *paces = arena_alloc(r->arena, (r->cues.count + 1) * sizeof *paces);
    size_t count = 0, last = r->cues.count > 1 ? r->cues.count - 1 : r->cues.count;
    for (unsigned cue = 0; cue < last; cue++) { /* the last one may stand for any time, or none */
        double seconds = cue_seconds(r, cue);
        if (seconds > 0 && r->cues.at[cue].text.length > 0)
            paces[count++] = seconds / (double) r->cues.at[cue].text.length;
    }
    if (count == 0)
        return 1 / LETTERS_PER_SECOND;
    qsort(paces, count, sizeof *paces, by_value);
    return paces[count / 2];
}

/* When the cue's last word ends. A cue that stands far longer than its words take was followed by
 * silence; the last one may not say how long it stands. */
static double cue_end(const struct recording *r, unsigned cue, double pace)
{
    const struct cue *c = &r->cues.at[cue];
    double letters = (double) c->text.length, seconds = cue_seconds(r, cue);
    if (seconds <= 0)
        return c->start + letters / LETTERS_PER_SECOND;
    return c->start + (seconds < letters * pace * SLOW_CUE ? seconds : letters * pace);
}

static void lay_evenly(struct recording *r, unsigned cue, size_t first, double end)
{
    const struct cue *c = &r->cues.at[cue];
    double letters = 0, passed = 0;
    for (size_t i = first; i < r->words.count; i++)
        letters += (double) r->words.at[i].text.length + 1;
    for (size_t i = first; i < r->words.count; i++) {
        struct word *w = &r->words.at[i];
        w->start = c->start + (end - c->start) * passed / letters;
        passed += (double) w->text.length + 1;
        w->end = c->start + (end - c->start) * passed / letters;
    }
}

/* The captions' own times; a word that they do not time begins where the one before it ends. */
static void take_times(struct recording *r, unsigned cue, size_t first, double end)
{
    const struct cue *c = &r->cues.at[cue];
    size_t next = 0;
    double at = c->start;
    for (size_t i = first; i < r->words.count; i++) {
        struct word *w = &r->words.at[i];
        size_t offset = (size_t) (w->text.at - c->text.at);
        while (next < c->times_count && c->times[next].offset < offset + w->text.length) {
            if (c->times[next].start > at)
                at = c->times[next].start;
            next++;
        }
        w->start = at;
        bool more = next < c->times_count && c->times[next].start > at;
        w->end = more ? c->times[next].start : end > at ? end : at;
    }
}

double silence_before(const struct recording *r, size_t i)
{
    return i > 0 ? r->words.at[i].start - r->words.at[i - 1].end : 0;
}

void time_words(struct recording *r, double pace, unsigned cue, size_t first)
{
    double end = cue_end(r, cue, pace);
    if (r->cues.at[cue].times_count)
        take_times(r, cue, first, end);
    else
        lay_evenly(r, cue, first, end);
    r->words.at[first].pause |= silence_before(r, first) >= PAUSE_SECONDS;
}
