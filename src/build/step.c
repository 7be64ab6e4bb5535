/* build/step.c: a sentence's instructions -> steps, with their times, temperatures, heat, vessel.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"

#include <string.h>

#include "build/heat.h"
#include "build/heatinside.h"
#include "build/heattime.h"
#include "build/timehere.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/stepmeasure.h"
#include "build/timepast.h"
#include "build/stepjoin.h"
#include "build/steptext.h"
#include "build/wording.h"
#include "match/matches.h"

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

/* Whether any action of the step, by the rules or by the odds, has one of these marks. */
static bool does(const struct builder *b, const struct step *s, uint64_t marks)
{
    for (size_t i = 0; i < s->actions.count + s->told.count; i++) {
        const size_t told = i - s->actions.count;
        const struct entry *e =
            action_entry(b->k, i < s->actions.count ? s->actions.at[i] : s->told.at[told]);
        if (e && e->marks & marks)
            return true;
    }
    return false;
}

/* "Cover the dough. Oven at four twenty-five.": an oven's heat is none of what is done without one;
 * but it is the meat's where the sentence has a thermometer. */
static bool is_apart(const struct builder *b, const struct step *s, const struct chunk *c,
                     uint64_t with)
{
    struct temperature t;
    return c->tag == TAG_HEATED && s->actions.count + s->told.count && !does(b, s, with)
           && read_temperature(b, c, &t) && text_is(t.of, "oven")
           && !tells_of_inside(b, sentence_words(b->sentence));
}

/* A time or a temperature without a verb ("twenty minutes in the oven") belongs to the sentence's
 * step, else to the dish's last one when it is near, else it makes a step of its own. */
static struct step *step_for(struct builder *b, struct step *open, const struct chunk *c)
{
    const uint64_t cooks = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(changes);
    if (open)
        return is_apart(b, open, c, cooks | MARK_OF(puts)) ? add_step(b, c->first) : open;
    struct step *last = b->dish->steps.count ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
    bool spent = c->tag == TAG_DURATION && is_spent(b, (size_t) (c - b->chunks.at));
    if (last && (spent || b->r->words.at[c->first].start - last->end < 15)
        && !is_apart(b, last, c, cooks))
        return last;
    return add_step(b, c->first);
}

/* A lid is no vessel to take anything out of. */
static void describe(const struct builder *b, struct step *s, const struct chunk *c)
{
    if (c->tag == TAG_VESSEL && c->entry && !s->vessel.length && !is_step_word(b, c, "lid"))
        s->vessel = entry_shown(c->entry);
    if (c->tag == TAG_HEAT && c->entry && !s->heat.length)
        s->heat = entry_value(c->entry);
}

/* The words of the sentence's signs of doneness. */
static void read_until(struct builder *b, struct step *s)
{
    struct matches signs = matches_of(b->r, b->sentence, KIND_OF(until));
    for (const struct match *m; !s->until.length && (m = matches_next(&signs));)
        if (m->words.first > s->words.first)
            s->until = until_text(b->r, b->sentence, m->words);
}

/* The step is dated by its first action that a recipe has, which is in it even where a denial seems
 * to reach so far. */
static void date_step(struct builder *b, struct step *s, const struct chunk *c)
{
    s->id = c->first;
    s->start = b->r->words.at[c->first].start;
    grow_step(b, s, c);
}

/* Adds an action to the sentence's step, in the order in which they were said. */
static struct step *add_action(struct builder *b, struct step *open, const struct chunk *c,
                               struct text action, bool ruled, bool told)
{
    if (!open || is_full(open, action, told))
        open = add_step(b, c->first);
    if (told && !open->told.count)
        date_step(b, open, c);
    put_action(b, open, action, ruled, told);
    return open;
}

struct text action_here(const struct builder *b, size_t i, struct said_verb verb)
{
    bool plain = !verb.split || step_words_list(b->k, "placed", verb.action); /* "goes back in" */
    return plain && verb.action.length ? action_in_context(b, verb.action, i) : verb.action;
}

struct text step_action_at(const struct builder *b, size_t i)
{
    return action_here(b, i, step_verb(b, i));
}

bool tells_action(const struct builder *b, size_t i)
{
    return said_verb(b, i).action.length > 0 || step_verb(b, i).action.length > 0;
}

/* "Off the heat, a teaspoon of vanilla": where it is done, not with what. */
static bool leads_to_food(const struct builder *b, const struct chunk *c)
{
    return c->entry && step_words_list(b->k, "leads", entry_words(c->entry));
}

uint64_t instruction_marks(const struct builder *b)
{
    uint64_t marks = 0;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (is_verb(b, i) && !leads_to_food(b, &b->chunks.at[i])) {
            const struct entry *e = action_entry(b->k, action_here(b, i, said_verb(b, i)));
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

/* What it cooks in or over: what is said of a heat or a time next is of it. */
static void note_place(struct builder *b, const struct chunk *c)
{
    uint64_t marks = chunk_marks(c);
    if (c->scope & SCOPE_NOT_DONE)
        return;
    if (c->tag == TAG_VESSEL && marks & MARK_OF(wet)) {
        b->pan = c->entry;
        b->pan_at = c->first;
    } else if (c->tag == TAG_VESSEL && marks & MARK_OF(ovens)) {
        b->tin_at = c->first;
    } else if (c->tag == TAG_OVEN && marks & MARK_OF(ovens)) {
        b->oven_at = c->first;
    } else if (c->tag == TAG_OVEN && marks & MARK_OF(grills)) {
        b->grill_at = c->first;
    }
}

/* Into the oven is a step of its own. */
static bool is_baking(const struct builder *b, struct text action)
{
    const struct entry *e = action_entry(b->k, action);
    return e && e->marks & MARK_OF(ovens);
}

/* "Two minutes, flip it, two more": the cooking that goes on is another step. */
static bool is_cooked_again(const struct step *open, const struct chunk *c, struct text action)
{
    return open && c->tag == TAG_DURATION && open->durations.count && step_has(open, action)
           && !text_equal(open->actions.at[open->actions.count - 1], action);
}

/* Adds what chunk `i` tells to do, by the rules or by the odds. */
static struct step *read_action(struct builder *b, struct step *open, size_t i)
{
    const struct said_verb by_rules = said_verb(b, i);
    const struct text told = step_action_at(b, i),
                      said = told.length ? told : action_here(b, i, by_rules);
    return said.length ? add_action(b, open, &b->chunks.at[i], said, by_rules.action.length > 0,
                                    told.length > 0)
                       : open;
}

/* "It takes like twenty minutes", before anything went in or was done: how long all of it takes. */
static bool is_before_all(const struct builder *b, const struct step *open)
{
    return !open && !b->dish->steps.count && !b->dish->ingredients.count;
}

/* "Low heat, keep stirring": what the sentence says of the heat before its first action. */
static void describe_lead(const struct builder *b, struct step *s, size_t end)
{
    for (size_t i = 0; i < end; i++)
        if (b->chunks.at[i].tag == TAG_HEAT && !(b->chunks.at[i].scope & SCOPE_NOT_DONE))
            describe(b, s, &b->chunks.at[i]);
}

/* What one chunk adds to the sentence's step; `tells`: some action of the sentence is a recipe's.
 */
static struct step *read_chunk(struct builder *b, struct step *open, size_t i, struct text implied,
                               bool tells)
{
    const struct chunk *c = &b->chunks.at[i];
    const bool none = !open;
    note_place(b, c);
    if (tells)
        open = read_action(b, open, i);
    if (!implied.length) {
        implied = implied_time(b, i);
        if (implied.length && !open && !is_baking(b, implied))
            open = step_of_time(b, i);
    }
    if (implied.length)
        open =
            add_action(b, is_cooked_again(open, c, implied) ? NULL : open, c, implied, true, true);
    if (c->tag == TAG_DURATION && is_time_here(b, i) && !is_before_all(b, open))
        open = step_for(b, open, c), add_duration(b, open, i);
    else if (c->tag == TAG_SIDE && c->entry && !(c->scope & SCOPE_NOT_DONE))
        repeat_duration(b, c);
    else if (c->tag == TAG_HEATED && is_heat_here(b, c))
        open = step_for(b, open, c), add_temperature(b, open, c);
    if (none && open && open->id == c->first)
        describe_lead(b, open, i);
    if (open && !(c->scope & SCOPE_NOT_DONE)) {
        describe(b, open, c);
        grow_step(b, open, c);
    }
    return open;
}

/* "One sixty-five in the middle", "so, one eighty": a step that has no more than a temperature. */
static void name_heat(struct builder *b, struct step *s)
{
    struct text action = s->actions.count || !s->temperatures.count
                             ? TEXT_EMPTY
                             : implied_heat(b->k, s->temperatures.at[0].of);
    if (action.length)
        put_action(b, s, action, true, true);
}

/* Whether any action of the sentence is one of a recipe. */
static bool tells_step(const struct builder *b, size_t implied)
{
    bool tells = implied > 0;
    for (size_t i = 0; i < b->chunks.count && !tells; i++)
        tells = step_verb(b, i).action.length > 0;
    return tells;
}

void build_steps(struct builder *b)
{
    struct implied implied[IMPLIED_MOST];
    size_t count = implied_actions(b, instruction_marks(b), implied);
    struct step *open = NULL;
    size_t first = b->dish->steps.count;
    const bool tells = tells_step(b, count);
    bool joins = b->list_step && b->list_step == first && takes_up_list(b);
    for (size_t i = 0; i < b->chunks.count; i++)
        open = read_chunk(b, open, i, implied_at(implied, count, i), tells);
    for (size_t i = first; i < b->dish->steps.count; i++) {
        struct step *s = &b->dish->steps.at[i];
        read_until(b, s);
        name_heat(b, s);
        settle_actions(b, s);
    }
    join_repeat(b, first);
    if (b->dish->steps.count > first && lists_before_verb(b) && instruction_marks(b))
        add_listed(b, &b->dish->steps.at[first]);
    if (b->dish->steps.count > first)
        close_list(b, first, joins);
    note_list(b, first);
}
