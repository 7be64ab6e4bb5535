/* build/stepclause.c: a sentence with verbs -> clauses, each written by what it has.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"
#include "match/clause.h"

/* So far behind its verb a particle may stand. */
#define PARTICLE_REACH 6

static bool is_bare_form(const struct chunk *c)
{
    return c->entry && text_equal(entry_words(c->entry), entry_shown(c->entry));
}

/* "Bring everything | back up to a boil": the end of what another verb began. */
static bool is_particle(const struct writer *w, size_t i)
{
    for (size_t n = i; n-- > 0 && i - n <= PARTICLE_REACH;) {
        struct said_verb said = said_verb(w->b, n);
        if (said.split && said.phrasal.end == i)
            return true;
    }
    return false;
}

/* "Drain it | rinse it", "wash it well | lid on", where captions have no commas: an order that
 * nothing joins to the one before. */
static bool begins_order(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i], *before = c - 1;
    struct said_verb said = said_verb(w->b, i);
    bool thing = c->tag != TAG_ACTION;
    if (!said.action.length || before->scope & SCOPE_UNTIL || is_particle(w, i)
        || !(thing ? said.split : is_bare_form(c)))
        return false;
    bool object = before->tag == TAG_IT || before->tag == TAG_OTHER || before->tag == TAG_INTO
                  || before->tag == TAG_PLACE || before->tag == TAG_DURATION
                  || before->tag == TAG_VESSEL || before->tag == TAG_CONTAINER;
    bool joined = !thing && chunk_marks(c) & MARK_OF(puts) && c->first < c->last;
    return !joined
           && (object || w->b->r->words.at[before->last].after >= AFTER_COMMA
               || (thing && before->tag == TAG_ACTION && !(chunk_marks(before) & MARK_OF(light))));
}

/* "Let it soften | and the onions go in": another thing does it. */
static bool begins_subject(const struct writer *w, size_t i)
{
    const struct chunk *at = w->b->chunks.at;
    size_t n = i + 1;
    while (n < w->end && (at[n].tag == TAG_THE || at[n].tag == TAG_SIZE))
        n++;
    return at[i].tag == TAG_AND && n + 1 < w->end
           && (at[n].tag == TAG_LINE || at[n].tag == TAG_IT || at[n].tag == TAG_PART)
           && at[n + 1].tag == TAG_ACTION && said_verb(w->b, n + 1).action.length;
}

/* "Cover it, | fridge, an hour": where it waits is another clause. */
static bool begins_wait(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    return c->tag == TAG_PLACE && chunk_marks(c) & MARK_OF(cold)
           && w->b->r->words.at[(c - 1)->last].after >= AFTER_COMMA;
}

/* "A pinch of salt | toast two slices of bread", where captions have no commas: the verb has foods
 * of its own, so that those before it are none. */
static bool begins_own_order(const struct writer *w, size_t i)
{
    const struct chunk *at = w->b->chunks.at;
    const struct match *listed = at[i].match, *own = i + 2 < w->end ? at[i + 2].match : NULL;
    return at[i].tag == TAG_LINE && listed && listed->rule->kind == RULE_line && own
           && at[i + 2].tag == TAG_LINE && own->rule->kind == RULE_line
           && at[i + 1].tag == TAG_ACTION && is_bare_form(&at[i + 1])
           && said_verb(w->b, i + 1).action.length;
}

size_t clause_end(const struct writer *w, size_t i)
{
    const struct builder *b = w->b;
    const struct chunk *at = b->chunks.at;
    bool verb = said_verb(b, i).action.length > 0;
    while (i + 1 < w->end && !clause_ends(b->r, b->sentence, at[i].last)) {
        bool time = i + 2 < w->end && at[i + 1].tag == TAG_AND && at[i + 2].tag == TAG_DURATION;
        bool will = at[i + 1].tag == TAG_WILL && at[i + 1].first < at[i + 1].last && i + 2 < w->end
                    && said_verb(b, i + 2).action.length;
        if (time || (verb && (will || begins_wait(w, i + 1))) || (!verb && begins_own_order(w, i))
            || (verb && (begins_order(w, i + 1) || begins_subject(w, i + 1))))
            break; /* "foil off | and another ten minutes" */
        i++;
        verb |= said_verb(b, i).action.length > 0;
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

/* A clause without a verb is kept where it says how long, how hot, until when, or goes on with
 * foods. */
static void write_rest(struct writer *w, size_t begin, size_t end)
{
    unsigned char first = w->b->chunks.at[begin].tag;
    bool talk = says_tag(w, begin, end, TAG_ME) || says_tag(w, begin, end, TAG_YOU)
                || says_tag(w, begin, end, TAG_HAVE);
    bool tells = is_reason(w, begin) || says_tag(w, begin, end, TAG_DURATION)
                 || says_tag(w, begin, end, TAG_HEATED) || says_tag(w, begin, end, TAG_LINE);
    size_t time = find_time(w, begin, end);
    if (!prose_begins(&w->p) && time < end && !talk
        && (say_unsaid_time(w, begin, time, end) || say_told_time(w, begin, time, end)))
        return;
    if (prose_begins(&w->p)
        || (first != TAG_UNTIL && first != TAG_OR && (talk || !tells || first == TAG_THERE)))
        return;
    if (first != TAG_AND && first != TAG_OR && !is_reason(w, begin))
        prose_comma(&w->p);
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

/* "A tablespoon of oil in the big pot, and I slice an onion": foods and heat before the first verb
 * are written as where there is none; the verb may take them up. */
static bool write_before_verb(struct writer *w, size_t begin, size_t end)
{
    bool tells = says_tag(w, begin, end, TAG_LINE) || says_tag(w, begin, end, TAG_VESSEL);
    bool talk = says_tag(w, begin, end, TAG_ME) || says_tag(w, begin, end, TAG_YOU);
    size_t time = find_time(w, begin, end);
    if (!prose_begins(&w->p) || talk || end >= w->end)
        return false;
    if (!tells) /* "twenty minutes, and stir it once" */
        return time < end && say_unsaid_time(w, begin, time, end);
    write_within(w, begin, end, write_verbless);
    return true;
}

/* "Add." after other sentences tells nothing. */
static bool is_bare(const struct writer *w, size_t verb, const struct prose *before)
{
    const uint64_t wants = MARK_OF(puts) | MARK_OF(takes);
    const struct entry *e = action_entry(w->b->k, said_verb(w->b, verb).action);
    uint64_t marks = e && !(e->marks & MARK_OF(prep)) ? e->marks : 0; /* "Drain." says enough */
    bool whole = before->length && prose_begins(before);
    for (size_t i = before->length + 1; i < w->p.length && whole; i++)
        whole = w->p.at[i] != ' ';
    return whole && marks & wants;
}

/* The step's action that is done in the cold, where no verb says it. */
static void write_chilled(struct writer *w)
{
    for (size_t i = 0; i < w->s->actions.count; i++) {
        const struct entry *e = action_entry(w->b->k, w->s->actions.at[i]);
        if (e && e->marks & MARK_OF(cold) && !(w->said >> i & 1)
            && say_action(w, entry_value(e), true))
            w->said |= 1U << i;
    }
    prose_stop(&w->p);
}

/* "Cling film, fridge, and slice it once it's firm": a clause that is no more than a cold place. */
static bool write_cold_place(struct writer *w, size_t begin, size_t end)
{
    const size_t before = w->p.length, time = find_time(w, begin, end);
    for (size_t i = begin; i < end && time == end; i++) {
        const struct chunk *c = &w->b->chunks.at[i];
        if (c->tag == TAG_PLACE && chunk_marks(c) & MARK_OF(cold) && w->p.length == before) {
            prose_stop(&w->p);
            write_within(w, begin, end, write_chilled);
        }
    }
    return w->p.length > before;
}

void write_clauses(struct writer *w)
{
    for (size_t i = w->begin, end, verb; i < w->end; i = end) {
        end = read_clause(w, i, &verb);
        if (verb == end) {
            if (!write_cold_place(w, i, end) && !write_before_verb(w, i, end))
                write_rest(w, i, end);
            continue;
        }
        if (!prose_begins(&w->p) && w->b->chunks.at[i].tag == TAG_AND)
            prose_word(&w->p, step_word(w->b->k, "and"), true);
        else if (!prose_begins(&w->p))
            prose_stop(&w->p);
        struct prose before = w->p;
        write_verb(w, i, verb, end);
        if (is_bare(w, verb, &before))
            w->p = before;
    }
    prose_stop(&w->p);
}
