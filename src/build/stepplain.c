/* build/stepplain.c: a step told plainly, where the words it was said in cannot be trusted: what is
 * done, to which foods, for how long.
 * SPDX-License-Identifier: MIT */
#include "build/minutes.h"
#include "build/implied.h"
#include "build/writer.h"

/* Chunks of a sign of doneness at most: a longer one goes on with talk. */
#define PLAIN_UNTIL 9

static uint64_t action_marks(const struct writer *w, struct text action)
{
    const struct entry *e = action_entry(w->b->k, action);
    return e ? e->marks : 0;
}

/* Whether the foods that wait are what the action is done to. */
static bool takes_foods(const struct writer *w, struct text action)
{
    const uint64_t takes = MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(cuts) | MARK_OF(heats)
                           | MARK_OF(prep) | MARK_OF(takes) | MARK_OF(serves) | MARK_OF(seasons);
    uint64_t marks = action_marks(w, action);
    return marks & takes && !(marks & (MARK_OF(boils) | MARK_OF(changes)));
}

/* The sentence of `action` with the foods that wait. */
static void say_action_plainly(struct writer *w, struct text action)
{
    if (say_action(w, action, true))
        return;
    prose_word(&w->p, action, false);
    if (step_words_list(w->b->k, "with", action))
        prose_word(&w->p, step_word(w->b->k, "with"), true);
    say_taken(w);
}

/* Foods that no verb takes: they go in, on top or beside, as the step has it. */
static void say_foods(struct writer *w)
{
    keep_new(w);
    prose_stop(&w->p);
    for (size_t i = 0; i < w->s->actions.count && w->pending_count; i++) {
        struct text action = w->s->actions.at[i];
        if (!(w->said & 1U << i) && takes_foods(w, action) && say_action(w, action, true))
            w->said |= 1U << i;
    }
    if (w->pending_count)
        (void) say_action(w, implied_list(w->b->k), true);
    w->pending_count = 0;
    prose_stop(&w->p);
}

bool is_enough(const struct writer *w, struct text action)
{
    uint64_t marks = action_marks(w, action);
    const uint64_t weak = MARK_OF(idle) | MARK_OF(light);
    const uint64_t wants = MARK_OF(puts) | MARK_OF(takes) | MARK_OF(seasons) | MARK_OF(serves);
    if (marks & MARK_OF(waits) && !(marks & weak))
        return true; /* "set aside" */
    return marks & MARK_OF(prep) || !(marks & (wants | weak));
}

/* "Put" is "add" where nothing tells whereto. */
static struct text plain_verb(const struct writer *w, struct text action)
{
    struct text plain = step_text(w->b->k, "plain", action);
    return plain.length ? plain : action;
}

/* "It", "them" with a verb of two words stands between them: "pat it dry". */
static bool say_around(struct writer *w, struct text action, size_t i, size_t end)
{
    size_t space = text_find(action, ' ', 0);
    if (space >= action.length || !is_pronoun(w, i, end))
        return false;
    prose_word(&w->p, text_slice(action, 0, space), false);
    say_range(w, i, i + 1);
    prose_word(&w->p, text_slice(action, space + 1, action.length), false);
    return true;
}

/* "Take it out": a saying with its object inside, written as it stands. */
static bool is_saying(const struct writer *w, size_t verb, struct text action)
{
    const struct chunk *c = &w->b->chunks.at[verb];
    return c->entry && c->tag == TAG_ACTION && holds_object(c) && !is_reworded(c, action);
}

static bool leads_to_place(unsigned char tag)
{
    return tag == TAG_ARTICLE || tag == TAG_THE || tag == TAG_SIZE || tag == TAG_STATE
           || tag == TAG_FULLNESS || tag == TAG_NUMBER;
}

/* "They go in a big dish": "add them to a big dish". */
static bool say_into(struct writer *w, size_t verb, struct text action, size_t to)
{
    unsigned char next = verb + 1 < to ? w->b->chunks.at[verb + 1].tag : 0;
    bool place = next == TAG_ARTICLE || next == TAG_THE || next == TAG_VESSEL || next == TAG_SIZE;
    size_t noun = verb + 1;
    while (noun < to && leads_to_place(w->b->chunks.at[noun].tag))
        noun++;
    if (!is_into(w, verb) || is_saying(w, verb, action) || !place || noun == to
        || w->b->chunks.at[noun].tag == TAG_LINE)
        return false;
    prose_word(&w->p, action, false);
    if (w->pending_count)
        say_taken(w);
    else if (verb > w->begin && is_pronoun(w, verb - 1, verb))
        say_range(w, verb - 1, verb);
    else
        prose_word(&w->p, step_word(w->b->k, "all"), false);
    say_to(w, action);
    say_range(w, verb + 1, to);
    return true;
}

/* A saying with its object inside: "off the heat". */
static struct text turned_of(const struct writer *w, size_t verb)
{
    const struct entry *e = w->b->chunks.at[verb].entry;
    return e ? step_text(w->b->k, "turned", entry_words(e)) : TEXT_EMPTY;
}

/* "Spoon into the cases": a place is enough, as what is there goes into it. */
static bool names_place(const struct writer *w, size_t from, size_t to)
{
    return from < to && w->b->chunks.at[from].tag == TAG_INTO && names_object(w, from + 1, to);
}

/* The verb of chunk `verb` and the words behind it up to `to`; false when that says nothing. */
static bool say_verb_words(struct writer *w, size_t verb, struct text action, size_t to)
{
    struct text turned = turned_of(w, verb);
    bool saying = is_saying(w, verb, action);
    size_t from = verb + 1;
    if (say_into(w, verb, action, to))
        return true;
    struct prose before = w->p;
    if (keeps_verb(w, &w->b->chunks.at[verb], action))
        action = entry_value(w->b->chunks.at[verb].entry);
    if (from < to && say_around(w, action, from, to))
        from++;
    else if (turned.length && text_equal(action, entry_value(w->b->chunks.at[verb].entry)))
        prose_word(&w->p, turned, false);
    else if ((from < to || saying) && !said_verb(w->b, verb).split)
        prose_word(&w->p, verb_words(&w->b->chunks.at[verb], action, false), false);
    else
        prose_word(&w->p, plain_verb(w, action), false);
    bool object = is_pronoun(w, from, to) || names_object(w, from, to) || from > verb + 1
                  || names_place(w, from, to)
                  || (from < to && is_step_word(w->b, &w->b->chunks.at[from], "many"));
    if (is_pronoun(w, from, to))
        from += name_pronoun(w, verb, from, to);
    say_range(w, from, to);
    w->named = true;
    if (object || saying || turned.length || is_enough(w, action))
        return true;
    w->p = before;
    return false;
}

/* Whether the action goes on for a time: not what puts in, takes out, cuts, flips. */
static bool takes_time(const struct writer *w, struct text action)
{
    const uint64_t busy = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(mixes);
    const uint64_t brief = MARK_OF(puts) | MARK_OF(takes) | MARK_OF(cuts) | MARK_OF(brief)
                           | MARK_OF(changes) | MARK_OF(seasons) | MARK_OF(serves);
    uint64_t marks = action_marks(w, action);
    return marks & busy || !(marks & brief);
}

/* How long and until when, as the clause says. */
static void say_times(struct writer *w, size_t begin, size_t end, bool takes)
{
    size_t time = find_time(w, begin, end);
    if (time && time < end && is_step_word(w->b, &w->b->chunks.at[time - 1], "every"))
        time = end;
    if (time < end && !w->timed && !say_unsaid_time(w, time, time, time + 1) && !prose_begins(&w->p)
        && takes)
        say_for(w, begin, time, time + 1);
    w->timed |= time < end;
    for (size_t i = begin, last; i < end; i++) {
        if (w->b->chunks.at[i].tag != TAG_UNTIL || prose_begins(&w->p))
            continue;
        if (!is_open_until(w, i, w->end, &last) && last - i <= PLAIN_UNTIL)
            say_range(w, i, last);
        return;
    }
}

/* The last food of the clause, where it stands behind words that cannot: "top with is the flour".
 */
static bool takes_later(struct writer *w, size_t verb, size_t to, size_t end, struct text action)
{
    if (to > verb + 1 || !takes_foods(w, action))
        return false;
    write_within(w, verb + 1, end, gather);
    keep_new(w);
    return w->pending_count > 0;
}

static bool is_change(const struct writer *w, struct text action)
{
    return action_marks(w, action) & MARK_OF(changes);
}

/* A verb with its foods, those listed before it or those behind it; what it names besides goes in
 * after it. */
static void say_clause(struct writer *w, size_t verb, size_t end)
{
    struct said_verb said = said_verb(w->b, verb);
    struct text action = step_action(w, said.action);
    size_t to = object_end(w, verb, end);
    bool own = names_object(w, verb + 1, to) && !is_into(w, verb);
    bool saying = turned_of(w, verb).length;
    if (w->pending_count && (own || saying || !takes_foods(w, action)))
        say_foods(w);
    if (said.split && is_food_word(&w->b->chunks.at[verb]))
        write_within(w, verb, verb + 1, gather); /* "onions in" */
    bool told = true, foods = w->pending_count > 0;
    if (!foods && !saying && takes_later(w, verb, to, end, action)) {
        foods = true;
        to = end;
    }
    struct prose before = w->p;
    prose_stop(&w->p);
    if (is_change(w, action) && say_action(w, action, true))
        to = verb + 1;
    else if (foods && !say_into(w, verb, action, to))
        say_action_plainly(w, plain_verb(w, action));
    else if (!foods)
        told = say_verb_words(w, verb, action, to);
    if (!told)
        w->p = before;
    else
        say_times(w, said.split ? said.phrasal.end : verb + 1, end, takes_time(w, action));
    w->named = true;
    write_within(w, to, end, gather);
}

/* The first verb from chunk `i` on that is an instruction by itself. */
static size_t next_verb(const struct writer *w, size_t i)
{
    while (i < w->end && (!said_verb(w->b, i).action.length || is_aside(w, i, w->begin)))
        i++;
    return i;
}

/* The clauses of one sentence. */
static void say_sentence(struct writer *w)
{
    size_t verb = next_verb(w, w->begin);
    w->timed = false;
    write_within(w, w->begin, verb, gather);
    if (verb > w->begin && find_time(w, w->begin, verb) < verb) {
        if (w->pending_count)
            say_foods(w);
        prose_reopen(&w->p);
        say_times(w, w->begin, verb, true);
    }
    while (verb < w->end) {
        size_t end = next_verb(w, verb + 1);
        say_clause(w, verb, end);
        verb = end;
    }
    prose_stop(&w->p);
}

bool write_step_plainly(struct writer *w, size_t not_before)
{
    struct builder *b = w->b;
    for (const struct sentence *s = NULL; (s = sentence_next(b->r, w->s->words, s));) {
        b->sentence = s;
        read_chunks(b, s);
        if (find_range(w, not_before))
            say_sentence(w);
    }
    if (w->pending_count)
        say_foods(w);
    prose_stop(&w->p);
    return w->p.length > 0;
}
