/* build/stepjoin.c: lists of foods that no verb takes up, and the steps beside them.
 * SPDX-License-Identifier: MIT */
#include "build/stepjoin.h"

#include "base/arena.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/stepmeasure.h"

/* Seconds after which a list of foods and the verb that follows are two steps. */
#define LIST_SECONDS 25.0

/* Whether the sentence's first verb is done to what was listed before: "whisk it", "pat those dry".
 */
bool takes_up_list(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE && c->match && c->match->rule->kind == RULE_line)
            return false;
        if (!tells_action(b, i))
            continue;
        unsigned char before = i ? b->chunks.at[i - 1].tag : 0;
        unsigned char after = i + 1 < b->chunks.count ? b->chunks.at[i + 1].tag : 0;
        return chunk_marks(c) & MARK_OF(mixes) || after == TAG_IT || after == TAG_THE
               || before == TAG_IT || before == TAG_THE;
    }
    return false;
}

/* Step `into` takes over the step beside it, `from`, with its words, times and all. */
static void merge_step(struct builder *b, size_t into, size_t from)
{
    struct step *s = &b->dish->steps.at[into], *gone = &b->dish->steps.at[from];
    if (gone->words.first < s->words.first)
        s->words.first = gone->words.first;
    if (gone->words.last > s->words.last) {
        s->words.last = gone->words.last;
        s->end = gone->end;
    }
    if (s->actions.count < STEP_ACTIONS || step_has(s, gone->actions.at[0]))
        put_action(b, s, gone->actions.at[0], true, false);
    for (size_t i = 0; i < gone->told.count; i++)
        put_action(b, s, gone->told.at[i], false, true);
    for (size_t i = 0; i < gone->durations.count; i++)
        *LIST_ADD(b->r->arena, &s->durations) = gone->durations.at[i];
    for (size_t i = 0; i < gone->temperatures.count; i++)
        *LIST_ADD(b->r->arena, &s->temperatures) = gone->temperatures.at[i];
    if (!s->vessel.length)
        s->vessel = gone->vessel;
    LIST_REMOVE(&b->dish->steps, from);
}

/* "Two eggs, a cup of milk. Whisk that." is one step, which is dated and named by its verb. */
static void join_list(struct builder *b, size_t step)
{
    const struct step *s = &b->dish->steps.at[step], *list = s - 1;
    double gap = s->start - (b->list_end > list->end ? b->list_end : list->end);
    if (gap <= LIST_SECONDS && text_equal(s->group, list->group))
        merge_step(b, step, step - 1);
}

static bool step_puts(const struct builder *b, const struct step *s)
{
    for (size_t i = 0; i < s->actions.count; i++) {
        const struct entry *e = action_entry(b->k, s->actions.at[i]);
        if (e && e->marks & MARK_OF(puts))
            return true;
    }
    return !s->actions.count;
}

/* Seconds within which what is said next is done to the foods just listed, whatever it is. */
#define NEXT_SECONDS 6.0
#define NEXT_LIST_SECONDS 12.0 /* from the list's first food to what is done */

/* "Two cans of tomatoes. Cover it and turn it down." Into the oven, to the table is a step of its
 * own. */
static void join_next(struct builder *b, size_t step)
{
    const struct step *s = &b->dish->steps.at[step], *list = s - 1;
    const struct entry *e = s->actions.count ? action_entry(b->k, s->actions.at[0]) : NULL;
    const uint64_t apart = MARK_OF(ovens) | MARK_OF(serves) | MARK_OF(takes);
    if (e && !is_worked(list) && !(e->marks & apart) && !step_puts(b, s)
        && s->actions.count < STEP_ACTIONS && s->start - list->end < NEXT_SECONDS
        && s->start - list->start < NEXT_LIST_SECONDS && text_equal(s->group, list->group))
        merge_step(b, step, step - 1);
}

/* "Whisk in the milk. A pinch of salt.": what no verb takes up goes on with the step before, unless
 * that one takes time. Whether it did. */
static bool settle_list(struct builder *b, size_t step)
{
    const struct step *list = &b->dish->steps.at[step], *last = step ? list - 1 : NULL;
    if (last && !is_worked(list) && list->start - last->end < LIST_SECONDS / 2
        && text_equal(list->group, last->group) && !last->durations.count && !last->until.length
        && !step_puts(b, last) && last->actions.count < STEP_ACTIONS
        && !step_has(list, implied_bowl(b->k))) {
        merge_step(b, step - 1, step);
        return true;
    }
    return false;
}

/* "Two tablespoons of oil, swirl it around": the foods go in first, though the step is named by
 * what is said. */
void add_listed(struct builder *b, struct step *s)
{
    struct text add = implied_list(b->k);
    const struct entry *e = s->actions.count ? action_entry(b->k, s->actions.at[0]) : NULL;
    bool readies = e && e->marks & (MARK_OF(takes) | MARK_OF(seasons));
    if (s->actions.count && s->actions.count < STEP_ACTIONS && !readies && !step_has(s, add))
        put_action(b, s, add, true, true);
}

void close_list(struct builder *b, size_t first, bool joins)
{
    bool list = b->dish->steps.count == first + 1
                && (step_has(&b->dish->steps.at[first], implied_list(b->k))
                    || step_has(&b->dish->steps.at[first], implied_bowl(b->k)))
                && instruction_marks(b) == 0;
    if (joins)
        join_list(b, first);
    else if (b->list_step && b->list_step == first && !settle_list(b, first - 1))
        join_next(b, first);
    b->list_step = list ? b->dish->steps.count : 0;
    b->put_in |= list && find_done(b, TAG_INTO) != NOWHERE;
}

/* A list may go on in sentences that make no step of their own. */
void note_list(struct builder *b, size_t first)
{
    const struct step *list = b->list_step ? &b->dish->steps.at[b->list_step - 1] : NULL;
    if (list && (list->durations.count || list->actions.count > 1))
        b->list_step = 0; /* it has been cooked since */
    if (!b->list_step)
        return;
    bool begins = b->dish->steps.count > first;
    bool near = begins || b->r->words.at[b->sentence->first].start - b->list_end < LIST_SECONDS;
    bool goes_on = !begins && b->list_step == first && !b->rundown && near;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_LINE || !c->match || !is_done(c))
            continue;
        b->list_end = near ? b->r->words.at[c->last].end : b->list_end;
        if (goes_on && c->match->rule->kind == RULE_line)
            grow_step(b, &b->dish->steps.at[first - 1], c);
    }
}

/* One food of which nobody said what is done goes into nothing; in "carrots in" it was said. */
void settle_steps(struct builder *b)
{
    struct dish *d = b->dish;
    if (b->list_step == 1 && d->steps.count == 1 && d->ingredients.count < 2 && !b->put_in
        && !is_worked(&d->steps.at[0]))
        LIST_CUT(&d->steps, 0);
    else if (b->list_step)
        settle_list(b, b->list_step - 1);
}
