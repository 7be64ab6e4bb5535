/* build/steptext.c
 * SPDX-License-Identifier: MIT */
#include "build/steptext.h"
#include <stdint.h>
#include "build/minutes.h"
#include "build/stepjoin.h"
#include "build/writer.h"
#include "match/capture.h"
#include "match/clause.h"

/* A text shorter than this is a verb and no more. */
#define LEAST_BYTES 9

static void add_use(struct builder *b, struct step *s, size_t id)
{
    for (size_t i = 0; i < s->uses.count; i++)
        if (s->uses.at[i] == id)
            return;
    *LIST_ADD(b->r->arena, &s->uses) = id;
}

/* The ingredients that the step's words name: those listed here, or the line that a mention speaks
 * of again. */
static void link_foods(struct builder *b, struct step *s, size_t begin, size_t end)
{
    for (size_t i = begin; i < end; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (!is_food(c))
            continue;
        bool found = false;
        for (size_t n = 0; n < b->dish->ingredients.count; n++) {
            size_t id = b->dish->ingredients.at[n].id;
            if (id >= c->first && id <= c->last) {
                add_use(b, s, id);
                found = true;
            }
        }
        const struct entry *food = found ? NULL : match_entry(b->r, c->match, SLOT_food);
        const struct ingredient *line = food ? find_food(b, food, entry_value(food)) : NULL;
        if (line)
            add_use(b, s, line->id);
    }
}

bool find_range(struct writer *w, size_t not_before)
{
    const struct builder *b = w->b;
    const struct sentence *s = b->sentence;
    size_t first = s->first < not_before ? not_before : s->first;
    w->begin = 0;
    while (w->begin < b->chunks.count && b->chunks.at[w->begin].first < first)
        w->begin++;
    w->end = w->begin;
    while (w->end < b->chunks.count && b->chunks.at[w->end].first <= w->s->words.last)
        w->end++;
    while (w->end > w->begin && w->end < b->chunks.count && b->chunks.at[w->end].scope & SCOPE_UNTIL
           && b->chunks.at[w->end - 1].scope & SCOPE_UNTIL)
        w->end++; /* "until it | looks like wet sand" */
    while (w->end > w->begin && w->end < b->chunks.count && in_reason(w, w->end - 1)
           && b->r->words.at[b->chunks.at[w->end - 1].last].after < AFTER_COMMA)
        w->end++; /* "so it | doesn't catch" */
    return w->begin < w->end;
}

/* What could not be put in better words, as it was said. */
static void write_plainly(struct writer *w, size_t not_before)
{
    struct builder *b = w->b;
    size_t n = sentence_from(b->r, w->s->words.first);
    if (n == b->r->sentences.count)
        return;
    b->sentence = &b->r->sentences.at[n];
    read_chunks(b, b->sentence);
    if (!find_range(w, not_before))
        return;
    size_t verb = find_verb(w, w->begin, w->end);
    if (w->p.length && verb < w->end && b->chunks.at[verb].tag != TAG_ACTION)
        return; /* "Lid on." is better said as "Cover." */
    const struct entry *saying = verb < w->end ? b->chunks.at[verb].entry : NULL;
    if (w->p.length && saying
        && (holds_object(&b->chunks.at[verb])
            || step_text(b->k, "turned", entry_words(saying)).length))
        return; /* and "Have a taste." as "Taste." */
    struct prose short_text = w->p;
    w->p = (struct prose){.length = 0};
    say_range(w, w->begin, w->end);
    prose_stop(&w->p);
    if (!w->p.length)
        w->p = short_text;
}

/* Which of the step's actions are said by verbs. */
static unsigned said_actions(struct writer *w, size_t not_before)
{
    struct builder *b = w->b;
    unsigned said = 0;
    for (const struct sentence *s = NULL; (s = sentence_next(b->r, w->s->words, s));) {
        b->sentence = s;
        read_chunks(b, s);
        if (!find_range(w, not_before))
            continue;
        for (size_t i = w->begin; i < w->end; i++) {
            struct text action = said_verb(b, i).action;
            for (size_t a = 0; action.length && a < w->s->actions.count; a++)
                if (text_equal(step_action(w, action), w->s->actions.at[a]))
                    said |= 1U << a;
        }
    }
    return said;
}

/* Whether any of the step's actions says something without the foods that it is done to. */
static bool tells_enough(const struct writer *w)
{
    for (size_t i = 0; i < w->s->actions.count; i++)
        if (is_enough(w, w->s->actions.at[i]))
            return true;
    return false;
}

/* Plainer words for a text that cannot be trusted, where there are any. */
static void tell_plainly(struct writer *w, size_t not_before)
{
    struct prose before = w->p;
    w->p = (struct prose){.length = 0};
    w->pending_count = 0;
    w->named = false;
    w->said = said_actions(w, not_before);
    bool measured = w->s->durations.count || w->s->temperatures.count;
    bool kept = begins_well(w, (struct text){before.at, before.length}) && tells_enough(w);
    if (!write_step_plainly(w, not_before) && (measured || kept))
        w->p = before;
}

/* Foods that still wait at the end: those of the step's first sentence go in before what it does.
 */
static void say_last_foods(struct writer *w)
{
    struct prose before = w->p;
    size_t first = sentence_from(w->b->r, w->s->words.first);
    bool early = w->pending_count && before.length
                 && w->pending[0].sentence == &w->b->r->sentences.at[first];
    if (!early) {
        flush_pending(w);
        return;
    }
    keep_new(w);
    w->p = (struct prose){.length = 0};
    flush_pending(w);
    prose_put(&w->p, (struct text){before.at, before.length});
}

static void write_step(struct builder *b, size_t index)
{
    struct step *s = &b->dish->steps.at[index];
    size_t not_before = index ? s[-1].words.last + 1 : 0;
    struct writer w = {.b = b, .s = s, .index = index};
    w.said = said_actions(&w, not_before);
    for (const struct sentence *sentence = NULL;
         (sentence = sentence_next(b->r, s->words, sentence));) {
        b->sentence = sentence;
        read_chunks(b, sentence);
        if (!find_range(&w, not_before))
            continue;
        if (find_verb(&w, w.begin, w.end) < w.end)
            write_clauses(&w);
        else
            write_verbless(&w);
        link_foods(b, s, w.begin, w.end);
    }
    say_last_foods(&w);
    if (w.p.length < LEAST_BYTES)
        write_plainly(&w, not_before);
    if (w.p.length && is_doubtful(&w))
        tell_plainly(&w, not_before);
    say_lost_heat(&w);
    s->text = tidy_text(b, (struct text){w.p.at, w.p.length});
}

/* A time or a heat of which nothing is told to be done is no step: the step before has it. */
static void hand_over(struct arena *a, struct step *to, const struct step *from)
{
    for (size_t i = 0; i < from->durations.count; i++)
        *LIST_ADD(a, &to->durations) = from->durations.at[i];
    for (size_t i = 0; i < from->temperatures.count; i++)
        *LIST_ADD(a, &to->temperatures) = from->temperatures.at[i];
}

/* A step whose words another one took over says nothing. */
static void drop_empty(struct arena *a, struct dish *d)
{
    size_t kept = 0;
    for (size_t i = 0; i < d->steps.count; i++) {
        struct step *s = &d->steps.at[i];
        bool empty = !s->text.length;
        if (kept && (empty || !s->actions.count))
            hand_over(a, &d->steps.at[kept - 1], s);
        else if (!empty)
            d->steps.at[kept++] = *s;
    }
    LIST_CUT(&d->steps, kept);
}

/* Whether the step takes a component to where the dish is cooked or served. */
static bool ends_group(const struct builder *b, const struct step *s)
{
    const uint64_t whole = MARK_OF(ovens) | MARK_OF(grills) | MARK_OF(deep) | MARK_OF(serves);
    for (size_t i = 0; i < s->actions.count; i++) {
        const struct entry *e = action_entry(b->k, s->actions.at[i]);
        if (e && e->marks & whole && !(e->marks & MARK_OF(changes)))
            return true;
    }
    return false;
}

/* What is baked or served is the dish, no longer its topping, until a component is named again. */
static void end_groups(struct builder *b)
{
    struct text ended = TEXT_EMPTY;
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        struct step *s = &b->dish->steps.at[i];
        if (s->group.length && ends_group(b, s))
            ended = s->group;
        if (text_equal(s->group, ended))
            s->group = TEXT_EMPTY;
        else
            ended = TEXT_EMPTY;
    }
}

void write_steps(struct builder *b)
{
    b->chunks.sentence = NULL; /* what was read of them may be changed by what was built */
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        struct step *s = &b->dish->steps.at[i];
        write_step(b, i);
        if (!s->text.length && s->told.count) {
            s->actions = s->told; /* "then drained and back in": the rules know half of it */
            write_step(b, i);
        }
    }
    keep_told(b->dish);
    drop_empty(b->r->arena, b->dish);
    take_up_unnamed(b);
    end_groups(b);
}

struct text until_text(const struct recording *r, const struct sentence *s, struct span until)
{
    struct prose p = {.begun = SIZE_MAX}; /* no sentence, so no capital */
    size_t last = clause_around(r, s, until.last).last;
    for (size_t i = until.last + 1; i <= last; i++) {
        if (!(r->words.at[i].scope & SCOPE_UNTIL))
            break;
        if (!r->words.at[i].filler)
            prose_word(&p, r->words.at[i].text, false);
        if (i < last && r->words.at[i].after == AFTER_HYPHEN)
            prose_hyphen(&p);
    }
    return arena_text(r->arena, (struct text){p.at, p.length});
}
