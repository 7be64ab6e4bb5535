/* build/step.c: a sentence's instructions -> steps, with their times, temperatures, heat, vessel.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"

#include <string.h>

#include "base/arena.h"
#include "build/heat.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/stepmeasure.h"
#include "build/steptext.h"

/* "Meanwhile, chop the onions": said before the step's word in its sentence. */
static bool is_meanwhile(const struct builder *b, size_t word)
{
    for (size_t i = 0; i < b->chunks.count && b->chunks.at[i].first < word; i++)
        if (b->chunks.at[i].tag == TAG_MEANWHILE)
            return b->dish->steps.count > 1; /* the step itself is one */
    return false;
}

static struct step *add_step(struct builder *b, size_t word)
{
    struct step *s = LIST_ADD(b->r->arena, &b->dish->steps);
    s->id = word;
    s->start = b->r->words.at[word].start;
    s->end = b->r->words.at[word].end;
    s->words = (struct span){word, word};
    s->group = b->group;
    s->beside = is_meanwhile(b, word);
    return s;
}

static bool has_action(const struct step *s, struct text action)
{
    for (size_t i = 0; i < s->actions.count; i++)
        if (text_equal(s->actions.at[i], action))
            return true;
    return false;
}

/* A time or a temperature without a verb ("twenty minutes in the oven") belongs to the sentence's
 * step, else to the dish's last one when it is near, else it makes a step of its own. */
static struct step *step_for(struct builder *b, struct step *open, const struct chunk *c)
{
    if (open)
        return open;
    struct step *last = b->dish->steps.count ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
    if (last && b->r->words.at[c->first].start - last->end < 15)
        return last;
    return add_step(b, c->first);
}

static void describe(struct step *s, const struct chunk *c)
{
    if (c->tag == TAG_VESSEL && c->entry && !s->vessel.length)
        s->vessel = entry_shown(c->entry);
    if (c->tag == TAG_HEAT && c->entry && !s->heat.length)
        s->heat = entry_value(c->entry);
}

/* The words of the sentence's signs of doneness. */
static void read_until(struct builder *b, struct step *s)
{
    for (size_t i = 0; i < b->sentence->match_count && !s->until.length; i++) {
        const struct match *m = &b->r->matches.at[b->sentence->match_first + i];
        if (m->rule->kind == RULE_until && m->words.first > s->words.first)
            s->until = until_text(b->r, b->sentence, m->words);
    }
}

/* A condition counts for the inside of a food: "if you have a thermometer, one forty-five". */
static bool is_heat_here(const struct builder *b, const struct chunk *c)
{
    unsigned scope = b->r->words.at[c->first].scope;
    if (scope & (SCOPE_UNREAL | SCOPE_NEGATED | SCOPE_INSTEAD))
        return false;
    struct temperature t;
    return !(scope & SCOPE_SUPPOSED) || (read_temperature(b, c, &t) && text_is(t.of, "inside"));
}

/* Adds an action to the sentence's step, in the order in which they were said. */
static struct step *add_action(struct builder *b, struct step *open, const struct chunk *c,
                               struct text action)
{
    if (open && has_action(open, action))
        return open;
    if (!open || open->actions.count >= STEP_ACTIONS)
        open = add_step(b, c->first);
    *LIST_ADD(b->r->arena, &open->actions) = action;
    return open;
}

/* The action that chunk `i` says, in the place where the dish is now; empty when it says none. */
static struct text said_action(const struct builder *b, size_t i)
{
    struct said_verb verb = said_verb(b, i);
    return verb.split || !verb.action.length ? verb.action : action_in_context(b, verb.action, i);
}

static uint64_t instruction_marks(const struct builder *b)
{
    uint64_t marks = 0;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (is_verb(b, i)) {
            const struct entry *e = action_entry(b->k, said_action(b, i));
            marks |= chunk_marks(&b->chunks.at[i]) | (e ? e->marks : 0);
        }
    return marks;
}

/* The implied action of chunk `i`; empty when it implies none. */
static struct text implied_at(const struct implied *implied, size_t count, size_t i)
{
    for (size_t n = 0; n < count; n++)
        if (implied[n].chunk == i)
            return implied[n].action;
    return TEXT_EMPTY;
}

/* The pan on the stove: what is said of a heat or a time next is of it. */
static void note_pan(struct builder *b, const struct chunk *c)
{
    if (c->tag != TAG_VESSEL || !(chunk_marks(c) & MARK_OF(wet)) || c->scope & SCOPE_NOT_DONE)
        return;
    b->pan = c->entry;
    b->pan_at = c->first;
}

/* Into the oven is a step of its own. */
static bool is_baking(const struct builder *b, struct text action)
{
    const struct entry *e = action_entry(b->k, action);
    return e && e->marks & MARK_OF(ovens);
}

/* What one chunk adds to the sentence's step. */
static struct step *read_chunk(struct builder *b, struct step *open, size_t i, struct text implied)
{
    const struct chunk *c = &b->chunks.at[i];
    struct text said = said_action(b, i);
    note_pan(b, c);
    if (said.length)
        open = add_action(b, open, c, said);
    if (!implied.length) {
        implied = implied_time(b, i);
        if (implied.length && !open && !is_baking(b, implied))
            open = step_of_time(b, i);
    }
    if (implied.length)
        open = add_action(b, open, c, implied);
    if (c->tag == TAG_DURATION && !(c->scope & SCOPE_NOT_DONE))
        open = step_for(b, open, c), add_duration(b, open, i);
    else if (c->tag == TAG_SIDE && c->entry && !(c->scope & SCOPE_NOT_DONE))
        repeat_duration(b, c);
    else if (c->tag == TAG_HEATED && is_heat_here(b, c))
        open = step_for(b, open, c), add_temperature(b, open, c);
    if (open && !(c->scope & SCOPE_NOT_DONE)) {
        describe(open, c);
        grow_step(b, open, c);
    }
    return open;
}

/* Seconds after which a list of foods and the verb that follows are two steps. */
#define LIST_SECONDS 15.0

/* Whether the sentence's first verb is done to what was listed before: "whisk it", "pat those dry".
 */
static bool takes_up_list(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE && c->match && c->match->rule->kind == RULE_line)
            return false;
        if (!said_action(b, i).length)
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
    if (s->actions.count < STEP_ACTIONS && !has_action(s, gone->actions.at[0]))
        *LIST_ADD(b->r->arena, &s->actions) = gone->actions.at[0];
    for (size_t i = 0; i < gone->durations.count; i++)
        *LIST_ADD(b->r->arena, &s->durations) = gone->durations.at[i];
    for (size_t i = 0; i < gone->temperatures.count; i++)
        *LIST_ADD(b->r->arena, &s->temperatures) = gone->temperatures.at[i];
    if (!s->vessel.length)
        s->vessel = gone->vessel;
    memmove(gone, gone + 1, (b->dish->steps.count - from - 1) * sizeof *gone);
    b->dish->steps.at[--b->dish->steps.count] =
        (struct step){0}; /* a list hands its room out as zeroes */
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

/* "Whisk in the milk. A pinch of salt.": what no verb takes up goes on with the step before, unless
 * that one takes time. */
static void settle_list(struct builder *b, size_t step)
{
    const struct step *list = &b->dish->steps.at[step], *last = step ? list - 1 : NULL;
    if (last && list->start - last->end < LIST_SECONDS / 2 && text_equal(list->group, last->group)
        && !last->durations.count && !last->until.length && !step_puts(b, last)
        && last->actions.count < STEP_ACTIONS)
        merge_step(b, step - 1, step);
}

/* "One sixty-five in the middle", "so, one eighty": a step that has no more than a temperature. */
static void name_heat(const struct builder *b, struct step *s)
{
    struct text action = s->actions.count || !s->temperatures.count
                             ? TEXT_EMPTY
                             : implied_heat(b->k, s->temperatures.at[0].of);
    if (action.length)
        *LIST_ADD(b->r->arena, &s->actions) = action;
}

/* "Two tablespoons of oil, swirl it around": the foods go in first, though the step is named by
 * what is said. */
static void add_listed(struct builder *b, struct step *s)
{
    struct text add = implied_list(b->k);
    const struct entry *e = s->actions.count ? action_entry(b->k, s->actions.at[0]) : NULL;
    bool readies = e && e->marks & (MARK_OF(cuts) | MARK_OF(takes) | MARK_OF(seasons));
    if (s->actions.count && s->actions.count < STEP_ACTIONS && !readies && !has_action(s, add))
        *LIST_ADD(b->r->arena, &s->actions) = add;
}

/* The steps from `first` on are new: the list before them is taken up or not. */
static void close_list(struct builder *b, size_t first, bool joins)
{
    bool list = b->dish->steps.count == first + 1 && instruction_marks(b) == 0
                && has_action(&b->dish->steps.at[first], implied_list(b->k));
    if (joins)
        join_list(b, first);
    else if (b->list_step && b->list_step == first)
        settle_list(b, first - 1);
    b->list_step = list ? b->dish->steps.count : 0;
}

/* A list may go on in sentences that make no step of their own. */
static void note_list(struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count && b->list_step; i++)
        if (b->chunks.at[i].tag == TAG_LINE && b->chunks.at[i].match)
            b->list_end = b->r->words.at[b->chunks.at[i].last].end;
}

/* Seconds in which the same verb again is the same step, if it says nothing new. */
#define REPEAT_SECONDS 15.0

/* "Squeeze them out in a towel. Squeeze like you mean it." */
static bool is_repeat(const struct builder *b, size_t first)
{
    const struct step *s = &b->dish->steps.at[first], *last = first ? s - 1 : NULL;
    bool alone = last && b->dish->steps.count == first + 1 && s->actions.count == 1
                 && last->actions.count
                 && text_equal(s->actions.at[0], last->actions.at[last->actions.count - 1]);
    if (!alone || s->durations.count || s->temperatures.count || s->until.length
        || s->start - last->end > REPEAT_SECONDS)
        return false;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_LINE || b->chunks.at[i].tag == TAG_PART
            || b->chunks.at[i].tag == TAG_REST)
            return false;
    return true;
}

void settle_steps(struct builder *b)
{
    if (b->list_step)
        settle_list(b, b->list_step - 1);
}

void build_steps(struct builder *b)
{
    struct implied implied[IMPLIED_MOST];
    size_t count = implied_actions(b, instruction_marks(b), implied);
    struct step *open = NULL;
    size_t first = b->dish->steps.count;
    bool joins = b->list_step && b->list_step == first && takes_up_list(b);
    for (size_t i = 0; i < b->chunks.count; i++)
        open = read_chunk(b, open, i, implied_at(implied, count, i));
    for (size_t i = first; i < b->dish->steps.count; i++) {
        struct step *s = &b->dish->steps.at[i];
        read_until(b, s);
        name_heat(b, s);
    }
    if (b->dish->steps.count > first && is_repeat(b, first))
        b->dish->steps.at[--b->dish->steps.count] = (struct step){0};
    if (b->dish->steps.count > first && instruction_marks(b) && lists_before_verb(b))
        add_listed(b, &b->dish->steps.at[first]);
    if (b->dish->steps.count > first)
        close_list(b, first, joins);
    note_list(b);
}
