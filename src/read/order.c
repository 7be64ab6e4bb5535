/* read/order.c: cues by start. What is wrong with their times is reported, and nothing is left out.
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "read/limits.h"
#include "read/reader.h"

struct key {
    double start;
    size_t at; /* in the file's order, which decides between equal starts */
};

static int compare_keys(const void *left, const void *right)
{
    const struct key *a = left, *b = right;
    if (a->start != b->start)
        return a->start < b->start ? -1 : 1;
    return (a->at > b->at) - (a->at < b->at);
}

static bool cues_are_sorted(const struct recording *r)
{
    for (size_t i = 1; i < r->cues.count; i++)
        if (r->cues.at[i].start < r->cues.at[i - 1].start)
            return false;
    return true;
}

void sort_cues(struct recording *r)
{
    if (cues_are_sorted(r))
        return;
    struct key *keys = arena_alloc(r->arena, r->cues.count * sizeof *keys);
    struct cue *sorted = arena_alloc(r->arena, r->cues.count * sizeof *sorted);
    for (size_t i = 0; i < r->cues.count; i++)
        keys[i] = (struct key){r->cues.at[i].start, i};
    qsort(keys, r->cues.count, sizeof *keys, compare_keys);
    for (size_t i = 0; i < r->cues.count; i++)
        sorted[i] = r->cues.at[keys[i].at];
    r->cues.at = sorted;
    r->cues.room = r->cues.count;
}

/* An end that is none becomes unknown, so that the words are laid out up to the next cue. */
static void check_end(struct reader *rd, struct cue *c)
{
    if (c->end < 0 || c->end > c->start)
        return;
    problem_note(rd->p, read_place(rd, c->line),
                 c->end < c->start ? "ends before it begins; its end is taken as not given"
                                   : "lasts no time; its end is taken as not given");
    c->end = -1;
}

static void check_start(struct reader *rd, const struct cue *c, double latest)
{
    if (c->start < latest)
        problem_note(rd->p, read_place(rd, c->line),
                     "begins before a caption that stands above it; put in order");
}

static bool same_caption(const struct cue *a, const struct cue *b)
{
    return a->raw == b->raw && a->raw_end == b->raw_end && a->start == b->start;
}

/* The cue before `i` that lasts longest, where `i` begins before it ends; else NULL. `*last` is
 * kept from cue to cue. */
static const struct cue *overlapped(const struct recording *r, size_t i, const struct cue **last)
{
    const struct cue *c = &r->cues.at[i], *above = *last;
    if (!above || c->end > above->end)
        *last = c;
    return above && c->start < above->end - TOUCH_SECONDS && !same_caption(above, c) ? above : NULL;
}

static size_t count_overlaps(const struct recording *r)
{
    const struct cue *last = NULL;
    size_t count = 0;
    for (size_t i = 0; i < r->cues.count; i++)
        count += overlapped(r, i, &last) != NULL;
    return count;
}

/* Where most captions overlap, that is how the file was made, and one line says so. */
void report_overlaps(struct reader *rd)
{
    const struct recording *r = rd->r;
    const struct cue *last = NULL, *above;
    size_t count = count_overlaps(r);
    bool most = count * 2 > r->cues.count && count > 2;
    for (size_t i = 0; i < r->cues.count; i++) {
        above = overlapped(r, i, &last);
        if (!above)
            continue;
        if (!most) {
            problem_note(rd->p, read_place(rd, r->cues.at[i].line),
                         "begins before the caption in line %u ends; both are kept", above->line);
            continue;
        }
        problem_note(rd->p, read_place(rd, r->cues.at[i].line),
                     "%zu captions begin before another one ends, this is the first; all are kept",
                     count);
        return;
    }
}

void order_cues(struct reader *rd)
{
    struct recording *r = rd->r;
    double latest = 0;
    for (size_t i = 0; i < r->cues.count; i++) {
        struct cue *c = &r->cues.at[i];
        check_end(rd, c);
        check_start(rd, c, latest);
        latest = c->start > latest ? c->start : latest;
    }
    sort_cues(r);
}
