/* build/stepclause.c: a sentence with verbs -> clauses, each written by what it has.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"
#include "match/clause.h"

size_t clause_end(const struct writer *w, size_t i)
{
    const struct builder *b = w->b;
    const struct chunk *at = b->chunks.at;
    while (i + 1 < w->end && !clause_ends(b->r, b->sentence, at[i].last)) {
        bool time = i + 2 < w->end && at[i + 1].tag == TAG_AND && at[i + 2].tag == TAG_DURATION;
        if (time)
            break; /* "foil off | and another ten minutes" */
        i++;
    }
    return i + 1;
}

size_t find_verb(const struct writer *w, size_t begin, size_t end)
{
    for (size_t i = begin; i < end; i++)
        if (said_verb(w->b, i).action.length)
            return i;
    return end;
}

bool says_tag(const struct writer *w, size_t begin, size_t end, unsigned char tag)
{
    for (size_t i = begin; i < end; i++)
        if (w->b->chunks.at[i].tag == tag)
            return true;
    return false;
}

/* An action of the step that heats or waits and that no verb says; from now on it counts as said.
 */
static struct text unsaid_heat(struct writer *w)
{
    const uint64_t takes_time = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits);
    for (size_t i = 0; i < w->s->actions.count; i++) {
        const struct entry *e = action_entry(w->b->k, w->s->actions.at[i]);
        if (w->said & 1U << i || !e || !(e->marks & takes_time))
            continue;
        w->said |= 1U << i;
        return w->s->actions.at[i];
    }
    return TEXT_EMPTY;
}

/* A clause without a verb is kept where it says how long, how hot, until when, or goes on with
 * foods. */
static void write_rest(struct writer *w, size_t begin, size_t end)
{
    unsigned char first = w->b->chunks.at[begin].tag;
    bool talk = says_tag(w, begin, end, TAG_ME) || says_tag(w, begin, end, TAG_YOU)
                || says_tag(w, begin, end, TAG_HAVE);
    bool tells = is_reason(w, begin) || says_tag(w, begin, end, TAG_DURATION)
                 || says_tag(w, begin, end, TAG_HEATED) || says_tag(w, begin, end, TAG_LINE);
    if (prose_begins(&w->p)
        || (first != TAG_UNTIL && first != TAG_OR && (talk || !tells || first == TAG_THERE)))
        return;
    struct text action = says_tag(w, begin, end, TAG_DURATION) ? unsaid_heat(w) : TEXT_EMPTY;
    if (action.length) {
        prose_word(&w->p, step_word(w->b->k, "and"), true);
        prose_word(&w->p, action, true);
        size_t from = begin;
        while (from < end && w->b->chunks.at[from].tag != TAG_DURATION)
            from++;
        (void) say_place(w, begin, from); /* a matter of safety, when it is a fridge */
        if (!says_tag(w, begin, end, TAG_FOR))
            prose_word(&w->p, step_word(w->b->k, "for"), true);
        while (begin < end && w->b->chunks.at[begin].tag != TAG_DURATION
               && w->b->chunks.at[begin].tag != TAG_FOR)
            begin++;
    } else if (first != TAG_AND && first != TAG_OR && !is_reason(w, begin)) {
        prose_comma(&w->p);
    }
    say_range(w, begin, end);
}

/* "In a big bowl," before the clause with the verb. */
static bool is_lead(const struct writer *w, size_t begin, size_t end)
{
    const struct chunk *at = w->b->chunks.at;
    while (begin < end && (at[begin].tag == TAG_SO || at[begin].tag == TAG_AND))
        begin++;
    if (begin >= end || end >= w->end)
        return false;
    bool place = at[begin].tag == TAG_INTO && says_tag(w, begin, end, TAG_VESSEL)
                 && !says_tag(w, begin, end, TAG_LINE);
    return place || at[begin].tag == TAG_WHEN;
}

/* The end of the clause at `i`, together with the one it leads to. `verb` becomes its verb's chunk,
 * or that end. */
static size_t read_clause(const struct writer *w, size_t i, size_t *verb)
{
    size_t lead = clause_end(w, i);
    *verb = find_verb(w, i, lead);
    if (*verb < lead || !is_lead(w, i, lead))
        return lead;
    size_t last = clause_end(w, lead);
    size_t found = find_verb(w, lead, last);
    if (found == last)
        return lead;
    *verb = found;
    return last;
}

void write_clauses(struct writer *w)
{
    for (size_t i = w->begin, end, verb; i < w->end; i = end) {
        end = read_clause(w, i, &verb);
        if (verb == end) {
            write_rest(w, i, end);
            continue;
        }
        if (!prose_begins(&w->p) && w->b->chunks.at[i].tag == TAG_AND)
            prose_word(&w->p, step_word(w->b->k, "and"), true);
        else if (!prose_begins(&w->p))
            prose_stop(&w->p);
        write_verb(w, i, verb, end);
    }
    prose_stop(&w->p);
}
