/* build/stepmeasure.c: the times and temperatures of a step.
 * SPDX-License-Identifier: MIT */
#include "build/stepmeasure.h"

#include <math.h>

#include "build/heat.h"
#include "build/heatagain.h"
#include "build/timeeach.h"
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

static double seconds(struct ratio t)
{
    return ratio_double(t);
}

static bool waits_here(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (chunk_marks(&b->chunks.at[i]) & MARK_OF(waits))
            return true;
    return false;
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

/* "We've got an hour", "I have half an hour": the cook's own time. */
static bool is_owned(const struct builder *b, size_t index)
{
    const struct chunk *have = index ? &b->chunks.at[index - 1] : NULL;
    if (!have || have->tag != TAG_HAVE || !is_step_word(b, have, "owns")
        || b->r->words.at[have->last].after >= AFTER_COMMA) /* "the lowest you've got, an hour" */
        return false;
    return have->first < have->last || (index > 1 && have[-1].tag == TAG_ME);
}

#define DAY_SECONDS (24.0 * 3600)

/* "This is a day for soup": what nothing waits for lasts no day. */
static bool is_a_day(const struct builder *b, size_t index)
{
    return b->chunks.at[index].match && seconds(b->chunks.at[index].match->low) >= DAY_SECONDS
           && !waits_here(b) && !(index && b->chunks.at[index - 1].tag == TAG_FOR);
}

/* What may stand between "been" and the time: "been more like", "been its", "been on there". */
#define BEEN_CHUNKS 4

/* "It's been forty minutes": the time that the dish has had, where nothing says where or by what
 * verb: "they've been in the oven for an hour". */
static bool has_been(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index; i-- > 0 && index - i <= BEEN_CHUNKS;) {
        const struct chunk *k = &c->at[i];
        if (is_step_word(b, k, "been"))
            return b->dish->steps.count > 0
                   && (chunk_tag(c, index + 1) != TAG_INTO
                       || chunk_tag(c, index + 2) == TAG_HEAT); /* "on high" is no place */
        if (k->tag == TAG_FOR || k->tag == TAG_ACTION || k->tag == TAG_DOING || k->tag == TAG_OVEN
            || k->tag == TAG_PLACE || k->tag == TAG_VESSEL
            || b->r->words.at[k->last].after >= AFTER_COMMA)
            break;
    }
    return false;
}

/* "Ten minutes for the eggs is over", "twenty minutes are up" */
static bool is_up(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index + 1; i + 1 < c->count && i <= index + BEEN_CHUNKS; i++) {
        if (b->r->words.at[c->at[i - 1].last].after >= AFTER_COMMA)
            return false;
        if (c->at[i].tag == TAG_BE && is_step_word(b, &c->at[i + 1], "over"))
            return true;
    }
    return false;
}

/* "Okay, four hours on.", "fifty minutes on the clock": how long it was. */
static bool is_elapsed(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const size_t on = index + 1;
    if (on >= c->count || !b->dish->steps.count || !is_step_word(b, &c->at[on], "elapsed")
        || b->r->words.at[c->at[index].last].after >= AFTER_COMMA)
        return false;
    if (on + 1 == c->count || b->r->words.at[c->at[on].last].after >= AFTER_COMMA)
        return true;
    return c->at[on + 1].tag == TAG_THE && on + 2 < c->count
           && is_step_word(b, &c->at[on + 2], "clock");
}

/* "Use it within an hour": by when, not how long. */
static bool is_deadline(const struct builder *b, size_t index)
{
    return index && is_step_word(b, &b->chunks.at[index - 1], "deadline");
}

/* "An hour old", "every ten minutes", "dinner's in an hour": no time that anything takes. */
static bool is_no_length(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (is_up(b, index) || has_been(b, index) || is_elapsed(b, index))
        return true;
    return (index + 1 < c->count && is_step_word(b, &c->at[index + 1], "passed"))
           || (index > 0 && is_step_word(b, &c->at[index - 1], "every")) || is_owned(b, index)
           || is_a_day(b, index) || is_deadline(b, index);
}

/* "Right, that's forty-two minutes": a time that the dish has already, when it is over. */
static bool is_over(const struct builder *b, size_t index, double min, double max)
{
    const struct chunks *c = &b->chunks;
    if (!index || c->at[index - 1].tag != TAG_THERE
        || (index > 1 && c->at[index - 2].tag != TAG_SO))
        return false;
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = 0; n < s->durations.count; n++)
            if (s->durations.at[n].min <= min && max <= s->durations.at[n].max)
                return true;
    }
    return false;
}

/* How far a word may be from the time of which it says that it was. */
#define SPENT_CHUNKS 4

bool is_spent(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index; i-- > 0 && index - i <= SPENT_CHUNKS;) {
        if (b->r->words.at[c->at[i].last].after >= AFTER_STOP)
            break;
        if (is_step_word(b, &c->at[i], "spent"))
            return true;
    }
    return index + 1 < c->count && is_step_word(b, &c->at[index + 1], "spent");
}

bool takes_length(const struct builder *b, size_t index)
{
    const struct match *m = b->chunks.at[index].match;
    return !is_no_length(b, index) && !is_over(b, index, seconds(m->low), seconds(m->high));
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
    struct duration d = {
        seconds(c->match->low), seconds(c->match->high), TEXT_EMPTY, TEXT_EMPTY, false, 0, {0, 0}};
    for (size_t i = c->first; i <= c->last; i++) {
        if (b->r->words.at[i].tag == TAG_ATLEAST)
            d.max = INFINITY;
        d.approx |= b->r->words.at[i].tag == TAG_HEDGE;
    }
    if (is_least(b, index))
        d.max = INFINITY;
    if (is_no_length(b, index) || isnan(d.min) || d.min < COOKING_SECONDS_LEAST
        || d.min > (waits_here(b) ? WAITING_SECONDS_MOST : COOKING_SECONDS_MOST))
        return;
    d.of = s->actions.count ? s->actions.at[s->actions.count - 1] : TEXT_EMPTY;
    d.each = counted_by(b, index);
    d.at = b->r->words.at[c->first].start;
    d.words = (struct span){c->first, c->last};
    if (is_other_side(b, &d, c) || is_that_night(b, &d) || is_same_time(b, &d, c)
        || is_over(b, index, d.min, d.max))
        return;
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
