/* build/steprepeat.c: the same verb again at once, which is no step of its own.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"

#include "base/arena.h"
#include "build/stepjoin.h"

/* Seconds in which the same verb again is the same step, if it says nothing new. */
#define REPEAT_SECONDS 15.0

/* "Squeeze them out in a towel. Squeeze like you mean it." */
static bool is_repeat(const struct builder *b, size_t first)
{
    const struct step *s = &b->dish->steps.at[first], *last = first ? s - 1 : NULL;
    bool alone = last && b->dish->steps.count == first + 1 && s->actions.count == 1
                 && last->actions.count
                 && text_equal(s->actions.at[0], last->actions.at[last->actions.count - 1]);
    if (!alone || (s->durations.count && last->durations.count) || s->temperatures.count
        || (s->until.length && last->until.length) || s->start - last->end > REPEAT_SECONDS)
        return false;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_LINE || b->chunks.at[i].tag == TAG_PART
            || b->chunks.at[i].tag == TAG_REST)
            return false;
    return true;
}

/* The step before takes how long and until when its verb is said again: "Wash it. Wash it until the
 * water's clear." */
static void take_repeat(struct builder *b, size_t first)
{
    struct step *s = &b->dish->steps.at[first], *last = s - 1;
    for (size_t i = 0; i < s->durations.count; i++)
        *LIST_ADD(b->r->arena, &last->durations) = s->durations.at[i];
    for (size_t i = 0; i < s->temperatures.count; i++)
        *LIST_ADD(b->r->arena, &last->temperatures) = s->temperatures.at[i];
    if (s->durations.count || s->until.length) {
        last->words.last = s->words.last;
        last->end = s->end;
    }
    if (s->until.length)
        last->until = s->until;
    LIST_CUT(&b->dish->steps, b->dish->steps.count - 1);
}

void join_repeat(struct builder *b, size_t first)
{
    if (b->dish->steps.count > first && is_repeat(b, first))
        take_repeat(b, first);
}
