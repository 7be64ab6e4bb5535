/* build/steptime.c: "and fry for five minutes": a time whose cooking no verb says.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

size_t find_time(const struct writer *w, size_t begin, size_t end)
{
    while (begin < end
           && (w->b->chunks.at[begin].tag != TAG_DURATION
               || w->b->chunks.at[begin].scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)))
        begin++;
    return begin;
}

/* The step's time in chunk `time`; NULL: it has none there. */
static const struct duration *duration_at(const struct writer *w, size_t time)
{
    for (size_t i = 0; i < w->s->durations.count; i++)
        if (w->s->durations.at[i].words.first == w->b->chunks.at[time].first)
            return &w->s->durations.at[i];
    return NULL;
}

bool is_its_time(const struct writer *w, size_t time)
{
    return duration_at(w, time) != NULL;
}

void say_for(struct writer *w, size_t begin, size_t time, size_t end)
{
    const struct entry *long_time = w->b->r->words.at[w->b->chunks.at[time].first].entry;
    if (!(long_time && long_time->marks & MARK_OF(large))) /* "overnight" */
        prose_word(&w->p, step_word(w->b->k, "for"), true);
    size_t hedge = time > begin && w->b->chunks.at[time - 1].tag == TAG_HEDGE ? time - 1 : time;
    say_range(w, hedge, end);
}

/* Whether the step's action `i` heats or waits, and no verb says it. */
static bool is_unsaid(const struct writer *w, size_t i)
{
    const uint64_t takes_time = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits);
    const struct entry *e = action_entry(w->b->k, w->s->actions.at[i]);
    return !(w->said & 1U << i) && e && e->marks & takes_time && !(e->marks & MARK_OF(changes));
}

/* The step's action that its time in chunk `time` is of, if no verb says it; the count of actions
 * when there is none. */
static size_t action_of_time(const struct writer *w, size_t time)
{
    const struct duration *d = duration_at(w, time);
    for (size_t i = 0; i < w->s->actions.count; i++)
        if (d && is_unsaid(w, i) && text_equal(w->s->actions.at[i], d->of))
            return i;
    return w->s->actions.count;
}

bool say_unsaid_time(struct writer *w, size_t begin, size_t time, size_t end)
{
    size_t unsaid = action_of_time(w, time);
    if (unsaid == w->s->actions.count)
        return false;
    w->said |= 1U << unsaid; /* from now on it is said */
    if (!prose_begins(&w->p))
        prose_word(&w->p, step_word(w->b->k, "and"), true);
    struct text lets = step_text(w->b->k, "lets", w->s->actions.at[unsaid]);
    if (lets.length)
        prose_word(&w->p, lets, true);
    prose_word(&w->p, w->s->actions.at[unsaid], true);
    (void) say_place(w, begin, time); /* a matter of safety, when it is a fridge */
    say_for(w, begin, time, end);
    return true;
}

bool say_told_time(struct writer *w, size_t begin, size_t time, size_t end)
{
    if (!says_tag(w, begin, time, TAG_THERE))
        return false;
    say_for(w, begin, time, end);
    return true;
}

/* Words that only lead to a time: "for", "and give it". */
static const bool LEADS_TO_TIME[TAG_CODES] = {
    [TAG_FOR] = true, [TAG_HEDGE] = true, [TAG_AND] = true,   [TAG_SO] = true,  [TAG_IT] = true,
    [TAG_YOU] = true, [TAG_ME] = true,    [TAG_THERE] = true, [TAG_WILL] = true};

static bool leads_to_time(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    return LEADS_TO_TIME[c->tag] || (c->tag == TAG_ACTION && chunk_marks(c) & MARK_OF(light));
}

size_t lead_of_time(const struct writer *w, size_t begin, size_t time)
{
    size_t i = time, least = time;
    while (i > begin && leads_to_time(w, i - 1)) {
        i--;
        bool object = w->b->chunks.at[i].tag == TAG_IT;
        if (!object)
            least = i; /* "tip it | in five minutes": the object stays with its verb */
    }
    return least;
}
