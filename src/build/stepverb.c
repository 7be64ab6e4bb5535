/* build/stepverb.c: a clause with its verb put first.
 * SPDX-License-Identifier: MIT */
#include "build/stephead.h"

/* The thing spoken of before a verb that it goes with: "the garlic goes in". `end` when there is
 * none. */
static size_t subject_before(const struct writer *w, size_t begin, size_t verb)
{
    const struct chunk *v = &w->b->chunks.at[verb];
    unsigned char before = verb > begin ? w->b->chunks.at[verb - 1].tag : 0;
    bool that = before == TAG_THE
                && (chunk_marks(v) & (MARK_OF(puts) | MARK_OF(waits) | MARK_OF(takes))
                    || (verb > begin + 1 && is_let(w->b, &w->b->chunks.at[verb - 2])));
    bool thing = before == TAG_LINE || before == TAG_PART || before == TAG_IT || before == TAG_DISH
                 || before == TAG_VESSEL || before == TAG_REST || that;
    if (!thing || v->tag != TAG_ACTION || is_lead_place(w, begin, verb - 1)
        || w->b->r->words.at[w->b->chunks.at[verb - 1].last].after == AFTER_COMMA)
        return verb;
    size_t i = verb;
    while (i > begin) {
        const struct chunk *c = &w->b->chunks.at[i - 1];
        if (c->tag != TAG_LINE && c->tag != TAG_PART && c->tag != TAG_IT && c->tag != TAG_DISH
            && c->tag != TAG_THE && c->tag != TAG_AND && c->tag != TAG_REST && c->tag != TAG_OF
            && c->tag != TAG_STATE && c->tag != TAG_DONE && c->tag != TAG_WHOLE
            && c->tag != TAG_AMOUNT && c->tag != TAG_VESSEL)
            break;
        i--;
    }
    while (i < verb && w->b->chunks.at[i].tag == TAG_AND)
        i++;
    return i;
}

/* "In a big bowl", "when the butter foams": what stands before the verb and says where or when. */
static void say_lead(struct writer *w, size_t begin, size_t verb)
{
    size_t i = begin;
    while (i < verb && (w->b->chunks.at[i].tag == TAG_SO || w->b->chunks.at[i].tag == TAG_AND))
        i++;
    size_t end = i;
    if (i < verb && w->b->chunks.at[i].tag == TAG_INTO) {
        while (end < verb && w->b->chunks.at[end].tag != TAG_VESSEL)
            end++;
        end = end < verb && end - i < 6 ? end + 1 : i;
    }
    while (end < verb && w->b->chunks.at[end].scope & SCOPE_UNTIL)
        end++;
    if (end == i)
        return;
    say_range(w, i, end);
    prose_comma(&w->p);
}

/* "Top with the dill": where the action is not the verb that was said, and has its object behind
 * "with". */
static void say_with(struct writer *w, const struct chunk *c, struct text action, size_t subject,
                     size_t verb)
{
    bool other = subject < verb || !text_equal(action, entry_value(c->entry));
    if (other && step_words_list(w->b->k, "with", action))
        prose_word(&w->p, step_word(w->b->k, "with"), true);
}

/* "Put it in the fridge" is written "marinate": it keeps the place, which is a matter of safety. */
static void say_own_place(struct writer *w, const struct chunk *c, struct text action)
{
    const struct word *last = &w->b->r->words.at[c->last];
    const struct entry *place = entry_as(pack_find(w->b->k, last->key, NULL), TAG_PLACE);
    if (c->first == c->last || !place || text_equal(action, entry_value(c->entry)))
        return;
    prose_word(&w->p, step_word(w->b->k, "in"), true);
    prose_word(&w->p, step_word(w->b->k, "the"), true);
    prose_word(&w->p, last->key, false);
}

/* The thing that was said before the verb: "they go in" is "add them". */
static void say_subject(struct writer *w, size_t subject, size_t verb)
{
    bool it = subject + 1 == verb && is_pronoun(w, subject, verb);
    bool they = it
                && text_equal(w->b->r->words.at[w->b->chunks.at[subject].last].key,
                              step_word(w->b->k, "subject"));
    bool named = it && name_pronoun(w, verb, subject, verb);
    if (they && !named)
        prose_word(&w->p, step_word(w->b->k, "object"), false);
    else if (!named)
        say_range(w, subject, verb);
}

/* The verb with the thing that was said before it, if any; `takes`: the foods that wait come in
 * place of the saying's own object. */
static void say_verb(struct writer *w, const struct said_verb *said, size_t subject, size_t verb,
                     bool takes)
{
    const struct chunk *c = &w->b->chunks.at[verb];
    struct text action = step_action(w, said->action);
    struct text turned = step_text(w->b->k, "turned", entry_words(c->entry));
    struct text plain = step_text(w->b->k, "plain", action);
    if (plain.length && c->first == c->last && !said->split
        && (puts_only(w, verb) || (takes && !says_tag(w, verb + 1, clause_end(w, verb), TAG_INTO))))
        action = plain; /* "put the mustard oil": "add" */
    if (keeps_verb(w, c, action))
        action = entry_value(c->entry); /* "leave it": it rests */
    if (turned.length && !takes && text_equal(action, entry_value(c->entry)))
        prose_word(&w->p, turned, false); /* "in they go": "add them" */
    else
        prose_word(&w->p, said->split || takes ? action : verb_words(c, action, subject < verb),
                   false);
    say_with(w, c, action, subject, verb);
    bool bare = subject == verb && is_reworded(c, action) && !is_object_word(w, verb + 1);
    size_t food = bare && !w->pending_count ? subject_food(w, verb) : verb;
    if (food < verb) {
        prose_word(&w->p, step_word(w->b->k, "the"), true);
        say_food(w->b, &w->p, &w->b->chunks.at[food], true);
    }
    say_subject(w, subject, verb);
    say_own_place(w, c, action);
}

/* "Let the onion soften": the verb behind its thing, which may be the foods that wait for it. */
static void say_let(struct writer *w, size_t subject, size_t verb, struct text action, bool takes)
{
    prose_word(&w->p, step_word(w->b->k, "let"), true);
    bool they = subject + 1 == verb
                && text_equal(w->b->r->words.at[w->b->chunks.at[subject].last].key,
                              step_word(w->b->k, "subject"));
    if (takes)
        say_pending(w);
    else if (they)
        prose_word(&w->p, step_word(w->b->k, "object"), false);
    else
        say_range(w, subject, verb);
    prose_word(&w->p, action, false);
}

/* Whether the thing before the verb is let do it: "let that soften", "it can rest". */
static bool lets(const struct writer *w, size_t begin, size_t subject, size_t verb)
{
    const struct chunk *c = &w->b->chunks.at[verb];
    if (subject == verb || !c->entry)
        return false;
    return (subject > begin && is_let(w->b, &w->b->chunks.at[subject - 1]))
           || (chunk_marks(c) & MARK_OF(waits) && !(chunk_marks(c) & MARK_OF(cold)));
}

/* What stands behind the verb; a time that is not the verb's gets the cooking it is of. */
static void say_rest(struct writer *w, const struct chunk *c, struct text action, size_t rest,
                     size_t end)
{
    const uint64_t busy = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(mixes);
    const struct entry *e = action_entry(w->b->k, action);
    bool changes = (chunk_marks(c) | (e ? e->marks : 0)) & MARK_OF(changes);
    bool has = (chunk_marks(c) | (e ? e->marks : 0)) & busy;
    size_t time = find_time(w, rest, end), lead = time < end ? lead_of_time(w, rest, time) : end;
    bool other = !has || changes;
    struct prose before = w->p;
    say_range(w, rest, lead);
    if (time < end && !(other && say_unsaid_time(w, lead, time, end))
        && !say_told_time(w, lead, time, end)) {
        w->p = before;
        say_range(w, rest, end);
    }
}

/* "Lower", "turn off": what is done to the heat. */
static bool is_change(const struct writer *w, struct text action)
{
    const struct entry *e = action_entry(w->b->k, action);
    return e && e->marks & MARK_OF(changes);
}

/* A clause's verb on its way into the text. */
struct clause_verb {
    const struct chunk *c;
    struct said_verb said;
    struct text action, apart;
    size_t begin, subject, verb, rest, end; /* chunks: of the clause, of what is said of it */
    bool thing;                             /* "oven on": it is no verb */
    bool takes;                             /* the foods that wait for it */
};

static struct clause_verb clause_verb(struct writer *w, size_t begin, size_t verb, size_t end)
{
    struct clause_verb v = {.c = &w->b->chunks.at[verb], .apart = TEXT_EMPTY, .begin = begin};
    v.verb = verb;
    v.end = end;
    v.said = written_verb(w, verb, &v.apart);
    v.action = step_action(w, v.said.action);
    v.subject = subject_before(w, begin, verb);
    v.rest = verb + 1;
    v.thing = v.c->tag != TAG_ACTION && v.c->tag != TAG_DOING;
    bool bare = w->pending_count && v.subject == verb && !v.said.split && is_reworded(v.c, v.action)
                && !is_object_word(w, verb + 1);
    v.takes = bare || takes_pending(w, v.subject, verb, end);
    return v;
}

static bool says_let(const struct writer *w, const struct clause_verb *v)
{
    return lets(w, v->begin, v->subject, v->verb)
           && (text_equal(v->action, entry_value(v->c->entry))
               || step_words_list(w->b->k, "keep", v->action));
}

/* "Onions in". */
static void say_food_in(struct writer *w, const struct clause_verb *v)
{
    prose_word(&w->p, v->action, false);
    prose_word(&w->p, step_word(w->b->k, "the"), true);
    if (v->c->tag == TAG_LINE)
        say_food(w->b, &w->p, v->c, true);
    else
        say_range(w, v->verb, v->rest);
}

/* The verb with what stands before it; false where no more is to be said. */
static bool say_head(struct writer *w, struct clause_verb *v)
{
    if (says_let(w, v)) {
        say_let(w, v->subject, v->verb, v->said.split ? v->action : entry_value(v->c->entry),
                v->takes);
        v->takes = false;
    } else if (v->said.split && is_food_word(v->c)) {
        say_food_in(w, v);
    } else if (v->said.split && v->thing) {
        if (!say_action(w, v->action, true)) /* "oven on" */
            prose_word(&w->p, v->action, false);
        return !says_tag(w, v->verb, v->end, TAG_HEATED);
    } else if (v->said.split && is_change(w, v->action)
               && !says_object(w, v->verb, v->said.phrasal.end) && say_action(w, v->action, true)) {
        w->named = true; /* "heat down": "lower the heat" */
    } else {
        say_verb(w, &v->said, v->takes ? v->verb : v->subject, v->verb,
                 v->takes && holds_object(v->c));
    }
    return true;
}

/* The foods that wait, or what a pronoun stands for. */
static void say_its_object(struct writer *w, struct clause_verb *v)
{
    const bool plain = v->subject == v->verb && !v->said.split;
    if (v->takes) {
        say_taken(w);
        v->rest += is_pronoun(w, v->rest, v->end);
    } else if (plain && is_pronoun(w, v->rest, v->end)) {
        v->rest += name_pronoun(w, v->verb, v->rest, v->end);
    }
    w->named = true;
    if (!v->takes && plain && lacks_object(w, v->c, v->action, v->rest, v->end))
        w->doubts++;
}

/* The small word that leads to the rest, where the verb was turned round or divided. */
static void say_link(struct writer *w, struct clause_verb *v)
{
    const bool turned = v->subject < v->verb || is_reworded(v->c, v->action);
    if (v->said.split)
        v->rest = say_split(w, &v->said.phrasal, v->thing ? v->said.phrasal.end : v->rest, v->end,
                            v->apart);
    else if (v->subject < v->verb && v->rest < v->end && w->b->chunks.at[v->rest].tag == TAG_LINE)
        prose_word(&w->p, step_word(w->b->k, "and"), true); /* "it goes in with butter" */
    else if (turned && is_into(w, v->verb) && is_place_word(w, v->rest, v->end)
             && !step_text(w->b->k, "turned", entry_words(v->c->entry)).length)
        say_to(w, v->action);
    else if (turned && comes_from(w, v->rest, v->end) && chunk_marks(v->c) & MARK_OF(takes))
        prose_word(&w->p, step_word(w->b->k, "from"), true); /* "those come off the grill" */
}

void write_verb(struct writer *w, size_t begin, size_t verb, size_t end)
{
    struct clause_verb v = clause_verb(w, begin, verb, end);
    if (!v.takes)
        flush_pending(w);
    say_lead(w, begin, v.subject);
    size_t head = w->p.length;
    if (!say_head(w, &v))
        return;
    if (!v.takes)
        v.rest = skip_said(w, v.rest, end, head);
    bool added = !v.takes && is_whole(w, v.c, head) && say_added(w, &v.rest, end);
    say_its_object(w, &v);
    if (!added && !(v.c->tag == TAG_ACTION && ends_in_place(w, head)))
        say_link(w, &v);
    size_t heat = skip_said(w, v.rest, end, head);
    if (heat > v.rest && !added)
        (void) say_added(w, &heat, end);
    v.rest = heat;
    say_rest(w, v.c, v.action, v.rest, end);
}
