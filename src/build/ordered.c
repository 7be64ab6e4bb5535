/* build/ordered.c
 * SPDX-License-Identifier: MIT */
#include "build/ordered.h"

#include "build/asked.h"
#include "build/doer.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/noorder.h"
#include "build/stepwords.h"

static unsigned char tag_at(const struct asked *q, size_t back)
{
    return q->i >= back ? q->b->chunks.at[q->i - back].tag : 0;
}

static bool has_any_object(const struct asked *q)
{
    return has_object(q->b, q->i) || has_object_inside(q->b, q->i);
}

/* "I kind of rub it around": as if the hedge were not there. */
static bool is_hedged(const struct asked *q)
{
    unsigned char who = tag_at(q, 2);
    return q->before == TAG_HEDGE && (who == TAG_ME || who == TAG_YOU || who == TAG_WILL);
}

/* "Roughly chop the herbs" */
static bool is_how(const struct asked *q)
{
    unsigned char start = tag_at(q, 2);
    return q->before == TAG_HEDGE && has_object(q->b, q->i)
           && (q->i == 1 || start == TAG_AND || start == TAG_SO);
}

/* "What I'm going to do is add the wine", "what you want to do here is fold it over" */
static bool is_what_to_do(const struct asked *q)
{
    const struct chunk *at = q->b->chunks.at;
    size_t is = q->i > 1 ? q->i - 2 : 0;
    while (is > 0 && (at[is].tag == TAG_SO || at[is].tag == TAG_OTHER))
        is--;
    return q->before == TAG_BE && q->i > 1
           && (chunk_marks(&at[is]) & MARK_OF(light) || at[is].tag == TAG_OPENER
               || at[is].tag == TAG_WILL);
}

/* "The first job is to chop the onions" */
static bool is_job(const struct asked *q)
{
    return q->before == TAG_TO && q->lead && q->lead->tag == TAG_BE && has_any_object(q);
}

static void ask(const struct builder *b, size_t i, struct asked *q)
{
    const struct chunk *c = &b->chunks.at[i];
    *q = (struct asked){.b = b, .i = i, .c = c, .marks = chunk_marks(c)};
    q->lead = i > 1 ? &b->chunks.at[i - 2] : NULL;
    q->before = i ? b->chunks.at[i - 1].tag : (unsigned char) TAG_SO;
    q->comma = i && b->r->words.at[b->chunks.at[i - 1].last].after == AFTER_COMMA;
    q->third = is_third_person(c->entry);
    if (is_hedged(q))
        q->before = q->lead->tag;
    else if (is_how(q) || is_what_to_do(q) || is_job(q) || is_with_tool(b, i))
        q->before = TAG_SO;
}

/* "Before you cut it", "how I fold it" */
static enum verdict when_done(const struct asked *q)
{
    bool who = q->before == TAG_IT || q->before == TAG_YOU || q->before == TAG_ME;
    return who && q->lead && is_step_word(q->b, q->lead, "after") ? NO : PASS;
}

static enum verdict only_told(const struct asked *q)
{
    return is_perceived(q->b, q->i) || is_cooks_own(q->b, q->i) || is_camera(q->b, q->i) ? NO
                                                                                         : PASS;
}

/* "Do you put cinnamon in", "shall I salt it": captions without marks ask too. */
static enum verdict is_asked(const struct asked *q)
{
    return (q->before == TAG_YOU || q->before == TAG_ME) && q->lead
                   && is_step_word(q->b, q->lead, "asks-first")
               ? NO
               : PASS;
}

/* "From start to finish", "now that I finish": with nothing that it is done to or with. */
static enum verdict only_ends(const struct asked *q)
{
    return is_step_word(q->b, q->c, "ends-only") && !has_any_object(q)
                   && (chunk_tag(&q->b->chunks, q->i + 1) != TAG_INTO
                       || q->b->r->words.at[q->c->last].after >= AFTER_COMMA)
               ? NO
               : PASS;
}

/* "They add the garlic first, and it burns": people who do it wrong. */
static enum verdict others_do(const struct asked *q)
{
    return q->before == TAG_IT && is_step_word(q->b, q->c - 1, "people") && has_object(q->b, q->i)
                   && q->marks & MARK_OF(puts) && !q->comma
                   && !step_words_list(q->b->k, "moves", q->b->r->words.at[q->c->first].key)
               ? NEVER
               : PASS;
}

/* "Get the skillet out": it is fetched from the cupboard. */
static bool is_fetched(const struct asked *q)
{
    size_t n = q->i + 1;
    while (chunk_tag(&q->b->chunks, n) == TAG_THE || chunk_tag(&q->b->chunks, n) == TAG_ARTICLE
           || chunk_tag(&q->b->chunks, n) == TAG_SIZE)
        n++;
    unsigned char tag = chunk_tag(&q->b->chunks, n);
    return is_step_word(q->b, q->c, "fetches") && (tag == TAG_VESSEL || tag == TAG_TOOL)
           && find_done(q->b, TAG_OVEN) == NOWHERE;
}

/* "Put the lid back on" */
static enum verdict goes_with_particle(const struct asked *q)
{
    struct phrasal split;
    if (!find_phrasal(q->b, q->i, &split))
        return PASS;
    if (q->before == TAG_EATER
        || (step_words_list(q->b->k, "taken-off", split.action) && is_fetched(q)))
        return NO; /* "some people put cream in" */
    return yes_or_no(split.action.length && q->before != TAG_TO && q->before != TAG_OF);
}

/* "Wants a stir", "give that a good shake": the verb is said as a thing. */
static enum verdict is_given(const struct asked *q)
{
    const struct chunk *at = q->b->chunks.at;
    size_t i = q->i;
    if (q->before != TAG_ARTICLE && q->before != TAG_STATE && q->before != TAG_SIZE)
        return PASS;
    while (i && (at[i - 1].tag == TAG_STATE || at[i - 1].tag == TAG_SIZE))
        i--;
    if (!i || at[i - 1].tag != TAG_ARTICLE || has_reading(q->b, q->c, TAG_UNIT)
        || has_reading(q->b, q->c, TAG_FOOD) || has_reading(q->b, q->c, TAG_DISH)
        || has_reading(q->b, q->c, TAG_TOOL))
        return PASS;
    for (i--; i
              && (at[i - 1].tag == TAG_IT || at[i - 1].tag == TAG_LINE || at[i - 1].tag == TAG_THE
                  || at[i - 1].tag == TAG_PART || at[i - 1].tag == TAG_VESSEL);)
        i--;
    return i && step_words_list(q->b->k, "gives", q->b->r->words.at[at[i - 1].last].key) ? YES
                                                                                         : PASS;
}

static enum verdict gets_into(const struct asked *q)
{
    return is_get_into(q->b, q->i) ? yes_or_no(q->before != TAG_TO && q->before != TAG_OF) : PASS;
}

static enum verdict no_act(const struct asked *q)
{
    return is_weak(q->b, q->marks) || is_quality(q->b, q->i, q->before) || is_participle(q->b, q->i)
               ? NO
               : PASS;
}

/* "Let that soften" */
static enum verdict is_allowed(const struct asked *q)
{
    return (q->before == TAG_THE || q->before == TAG_IT) && q->lead && is_let(q->b, q->lead)
                   && !is_weak(q->b, q->marks)
               ? YES
               : PASS;
}

/* "So you can lift it out": what for. At a sentence's start "so" only goes on. */
static enum verdict says_what_for(const struct asked *q)
{
    return q->before == TAG_WILL && q->i > 2 && q->lead->tag == TAG_SO
                   && (q->c - 1)->first < (q->c - 1)->last && is_step_word(q->b, q->c - 1, "leave")
               ? NO
               : PASS;
}

/* "The crumble's forty minutes", "smoke's going the wrong way": a thing with what is said of it. */
static enum verdict is_shortened(const struct asked *q)
{
    return text_ends(q->b->r->words.at[q->c->last].key, "'s") ? NEVER : PASS;
}

/* "Wash the boards", "wipe down the counter" */
static bool is_tidying(const struct builder *b, size_t i)
{
    size_t n = i + 1;
    while (chunk_tag(&b->chunks, n) == TAG_THE || chunk_tag(&b->chunks, n) == TAG_ARTICLE
           || chunk_tag(&b->chunks, n) == TAG_STATE || chunk_tag(&b->chunks, n) == TAG_SIZE)
        n++;
    unsigned char tag = chunk_tag(&b->chunks, n);
    return (tag == TAG_VESSEL || tag == TAG_TOOL || tag == TAG_OVEN)
           && step_words_list(b->k, "cleans", entry_value(b->chunks.at[i].entry));
}

/* "You can eat them after an hour": leave, not an order. */
static enum verdict may_be_eaten(const struct asked *q)
{
    return q->before == TAG_WILL && q->marks & MARK_OF(serves)
                   && is_step_word(q->b, q->c - 1, "leave")
               ? NEVER
               : PASS;
}

/* "The pan, the one that can go in the oven": which thing it is. */
static enum verdict says_which(const struct asked *q)
{
    bool will = q->before == TAG_WILL && (q->c - 1)->first == (q->c - 1)->last; /* not "you just" */
    size_t back = will ? 2 : 1;
    if (q->i <= back || !q->b->r->punctuated || !is_that(q->b, q->c - back))
        return PASS;
    const struct chunk *thing = q->c - back - 1;
    bool named = thing->tag == TAG_IT || thing->tag == TAG_LINE || thing->tag == TAG_VESSEL
                 || thing->tag == TAG_PART || thing->tag == TAG_TOOL;
    return named && q->b->r->words.at[thing->last].after < AFTER_COMMA ? NEVER : PASS;
}

/* "Stew pot", "frying pan": what sort it is. */
static enum verdict names_vessel(const struct asked *q)
{
    const uint64_t cooks = MARK_OF(boils) | MARK_OF(fries) | MARK_OF(ovens);
    return q->marks & cooks && !(q->marks & MARK_OF(changes)) && q->c->first == q->c->last
                   && chunk_tag(&q->b->chunks, q->i + 1) == TAG_VESSEL
                   && q->b->r->words.at[q->c->last].after < AFTER_COMMA
               ? NO
               : PASS;
}

/* "That pulls the water out": what something brings about. */
static enum verdict brings_about(const struct asked *q)
{
    bool subject = !q->i || q->before == TAG_IT || q->before == TAG_THE;
    return q->third && subject && has_object(q->b, q->i) && !is_done_by_thing(q->b, q->i, q->marks)
               ? NEVER
               : PASS;
}

/* "You don't have to peel them": it is spared. */
static enum verdict is_spared(const struct asked *q)
{
    const struct chunk *before = q->c - 1;
    return q->before == TAG_OPTIONAL && before->entry
                   && step_words_list(q->b->k, "spares", entry_words(before->entry))
               ? NEVER
               : PASS;
}

/* What was said decides; the first that does not pass. */
static enum verdict (*const heard[])(const struct asked *) = {
    is_spared,    is_asked,     others_do,          only_ends,    when_done,     says_which,
    names_vessel, is_shortened, only_told,          may_be_eaten, says_what_for, brings_about,
    is_allowed,   is_given,     goes_with_particle, gets_into,    no_act,
};

/* What is heard of it decides, else what is said before it. */
static enum verdict listen(struct asked *q)
{
    enum verdict said = PASS;
    for (size_t n = 0; said == PASS && n < sizeof heard / sizeof *heard; n++)
        said = heard[n](q);
    if (q->comma && !q->third)
        q->before = TAG_SO;
    return said == PASS ? told_by_subject(q) : said;
}

enum verdict order_of(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (is_verb_word(c) && is_tidying(b, i))
        return NEVER;
    if (c->tag != TAG_ACTION || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
        || b->sentence->flags & SENTENCE_QUESTION)
        return NO;
    struct asked q;
    ask(b, i, &q);
    enum verdict said = listen(&q);
    return said == PASS ? YES : said;
}
