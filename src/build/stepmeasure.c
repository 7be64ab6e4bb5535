/* build/stepmeasure.c: the times and temperatures of a step.
 * SPDX-License-Identifier: MIT */
#include "build/stepmeasure.h"

#include <math.h>

#include "build/heat.h"
#include "build/heatagain.h"
#include "build/timeeach.h"
#include "build/timepast.h"
#include "build/wording.h"
#include "match/subject.h"

/* Longer than this is storage, not cooking, unless something waits for it. */
#define COOKING_SECONDS_MOST (30.0 * 3600)
/* "Two seconds ago" and "give me a second" are talk. */
#define COOKING_SECONDS_LEAST 3.0
#define WAITING_SECONDS_MOST (75.0 * 3600)
#define NIGHT_SECONDS (8.0 * 3600)
#define NIGHT_LEAST (7.0 * 3600)
#define NIGHT_MOST (16.0 * 3600)

void grow_step(struct builder *b, struct step *s, const struct chunk *c)
{
    if (c->first < s->words.first)
        s->words.first = c->first;
    if (c->last > s->words.last)
        s->words.last = c->last;
    if (b->r->words.at[s->words.last].end > s->end)
        s->end = b->r->words.at[s->words.last].end;
}

/* The last length of time of the dish, where so many seconds at most have gone by since it was
 * said; else NULL. */
static struct duration *last_duration(struct builder *b, double now, double most)
{
    for (size_t i = b->dish->steps.count; i-- > 0;) {
        struct step *s = &b->dish->steps.at[i];
        if (s->durations.count) {
            struct duration *d = &s->durations.at[s->durations.count - 1];
            return now - d->at <= most ? d : NULL;
        }
    }
    return NULL;
}

/* The same time said again so soon is the same time: "Two minutes. Two minutes a side." */
#define SAME_TIME_SECONDS 10.0

/* "Three minutes, turn it, and three more": whether the food was turned since word `last`. */
static bool is_turned(const struct builder *b, size_t last, size_t first)
{
    for (size_t i = last + 1; i < first; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & MARK_OF(turns)
            && !(w->scope & SCOPE_NOT_DONE))
            return true;
    }
    return false;
}

/* The time of the one side and then of the other, in one breath: it is counted by side. */
static bool is_other_side(struct builder *b, const struct duration *d, const struct chunk *c)
{
    struct duration *old = last_duration(b, d->at, 2 * SAME_TIME_SECONDS);
    if (!old || old->words.first < b->sentence->first || old->each.length || old->min != d->min
        || old->max != d->max || !is_turned(b, old->words.last, c->first))
        return false;
    old->each = TEXT_OF("side");
    return true;
}

/* What a night is taken for, and what else may be said of it: "overnight, twelve hours". */
static bool is_a_night(const struct duration *d)
{
    return d->min == NIGHT_SECONDS && d->max == NIGHT_SECONDS * 3 / 2;
}

static bool may_be_night(const struct duration *d)
{
    return d->min >= NIGHT_LEAST && d->max <= NIGHT_MOST;
}

/* "Overnight, twelve hours": the hours are what the night is. */
static bool is_that_night(struct builder *b, const struct duration *d)
{
    struct duration *old = last_duration(b, d->at, SAME_TIME_SECONDS);
    if (!old || !may_be_night(old) || !may_be_night(d) || is_a_night(old) == is_a_night(d))
        return false;
    if (is_a_night(old)) {
        old->min = d->min;
        old->max = d->max;
    }
    return true;
}

/* "At least six hours, but overnight is best": a night in place of a wait as long as that. */
#define LONG_WAIT_SECONDS (2.0 * 3600)

static bool is_night_instead(struct builder *b, const struct duration *d, size_t index)
{
    const struct duration *old = last_duration(b, d->at, SAME_TIME_SECONDS);
    const bool place = chunk_tag(&b->chunks, index + 1) == TAG_INTO; /* "overnight in the fridge" */
    return old && is_a_night(d) && !place && old->min >= LONG_WAIT_SECONDS;
}

/* Whether the time was said just before; what it is counted by may only be said now. */
static bool is_same_time(struct builder *b, const struct duration *d, const struct chunk *c)
{
    struct duration *old = last_duration(b, d->at, SAME_TIME_SECONDS);
    for (size_t i = c->first; i <= c->last; i++)
        if (b->r->words.at[i].tag == TAG_MORE)
            return false;
    if (!old || old->min != d->min || old->max > d->max)
        return false;
    old->max = d->max; /* "Thirty minutes. Thirty to thirty-five." */
    if (!old->each.length)
        old->each = d->each;
    return true;
}

void repeat_duration(struct builder *b, const struct chunk *c)
{
    struct duration *old = last_duration(b, b->r->words.at[c->first].start, 2 * SAME_TIME_SECONDS);
    if (old && !old->each.length && chunk_marks(c) & MARK_OF(again))
        old->each = entry_value(c->entry);
}

/* "Two hours in the fridge, at least." */
static bool is_least(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index + 1; i < c->count && c->at[i].tag != TAG_DURATION; i++)
        if (c->at[i].tag == TAG_ATLEAST)
            return i + 1 == c->count || b->r->words.at[c->at[i].last].after >= AFTER_COMMA;
    return false;
}

void add_duration(struct builder *b, struct step *s, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    struct duration d = {.min = ratio_double(c->match->low), .max = ratio_double(c->match->high)};
    for (size_t i = c->first; i <= c->last; i++) {
        if (b->r->words.at[i].tag == TAG_ATLEAST)
            d.max = INFINITY;
        d.approx |= b->r->words.at[i].tag == TAG_HEDGE;
    }
    if (is_least(b, index))
        d.max = INFINITY;
    if (!is_length(b, index) || isnan(d.min) || d.min < COOKING_SECONDS_LEAST
        || d.min > (waits_here(b) ? WAITING_SECONDS_MOST : COOKING_SECONDS_MOST))
        return;
    d.of = s->actions.count ? s->actions.at[s->actions.count - 1] : TEXT_EMPTY;
    d.each = counted_by(b, index);
    d.at = b->r->words.at[c->first].start;
    d.words = chunk_words(c);
    if (is_other_side(b, &d, c) || is_that_night(b, &d) || is_same_time(b, &d, c)
        || is_over(b, index, d.min, d.max))
        return;
    d.instead = is_night_instead(b, &d, index);
    *LIST_ADD(b->r->arena, &s->durations) = d;
    grow_step(b, s, c);
}

void add_temperature(struct builder *b, struct step *s, const struct chunk *c)
{
    struct temperature t;
    if (!read_temperature(b, c, &t) || is_heat_again(b, c, &t))
        return;
    *LIST_ADD(b->r->arena, &s->temperatures) = t;
    grow_step(b, s, c);
}
