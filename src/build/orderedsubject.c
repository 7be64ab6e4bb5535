/* build/orderedsubject.c: whether a verb tells what to do, by the word before it.
 * SPDX-License-Identifier: MIT */
#include "build/asked.h"

#include "build/doer.h"
#include "build/instruction.h"
#include "build/noorder.h"
#include "build/stepwords.h"

/* "While they | rest", "while it rests" */
static enum verdict goes_on_meanwhile(const struct asked *q)
{
    const struct chunk *before = q->i ? q->c - 1 : NULL;
    if (q->before == TAG_IT && q->lead && q->lead->tag == TAG_MEANWHILE)
        return NO;
    return before && q->before == TAG_MEANWHILE && ends_in_subject(q->b, before)
                   && q->b->r->words.at[before->last].after < AFTER_COMMA
               ? NO
               : PASS;
}

/* "It should coat the spoon", "they just melt": what is seen when it is right. */
static enum verdict shows_it(const struct asked *q)
{
    if (q->before != TAG_WILL || !q->lead)
        return PASS;
    bool alone = (q->c - 1)->first == (q->c - 1)->last
                 && q->b->r->words.at[q->lead->last].after < AFTER_COMMA; /* not "and you" */
    bool thing = alone && (q->lead->tag == TAG_IT || is_that(q->b, q->lead));
    return thing && !is_done_by_thing(q->b, q->i, q->marks) ? NO : PASS;
}

/* "It'll smoke the place out", "the kids will finish these off", "or it'll stick", "it's open" */
static enum verdict would_happen(const struct asked *q)
{
    if (q->before == TAG_WILL && is_step_word(q->b, q->c - 1, "foretells")
        && !is_done_by_thing(q->b, q->i, q->marks))
        return NEVER;
    if (q->before == TAG_WILL && q->lead && q->lead->tag == TAG_EATER)
        return NEVER;
    return is_consequence(q->b, q->i) || (q->before == TAG_THERE && !q->comma) ? NEVER : PASS;
}

/* "The dough goes in", but not "she goes in" */
static enum verdict thing_does(const struct asked *q)
{
    if (!q->third)
        return PASS;
    return yes_or_no(q->before != TAG_ME && (q->before != TAG_THE || is_that(q->b, q->c - 1))
                     && is_done_by_thing(q->b, q->i, q->marks));
}

/* "Those go in", "those wash them"; "the chop" is a thing, but "put the" goes on with another
 * verb. */
static enum verdict after_the(const struct asked *q)
{
    if (q->before != TAG_THE || (q->lead && q->lead->tag == TAG_ACTION))
        return PASS;
    return yes_or_no(is_that(q->b, q->c - 1)
                     && (is_done_by_thing(q->b, q->i, q->marks) || is_order(q->b, q->i)));
}

static const bool BEFORE_NOUN[TAG_CODES] = {
    [TAG_TO] = true,    [TAG_THE] = true,    [TAG_ARTICLE] = true,
    [TAG_OF] = true,    [TAG_AMOUNT] = true, [TAG_VAGUE] = true,
    [TAG_EATER] = true, [TAG_WHOLE] = true,  [TAG_BESIDE] = true};

/* "A chop", "two whisks", "of beat": a thing */
static enum verdict is_noun(const struct asked *q)
{
    return BEFORE_NOUN[q->before] || is_noun_behind(q->b, q->i) ? NO : PASS;
}

/* What a food may do with nothing behind: "the onions go in", "it simmers". */
static enum verdict behind_thing(const struct asked *q)
{
    const uint64_t does = MARK_OF(puts) | MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits)
                          | MARK_OF(boils) | MARK_OF(mixes);
    if (q->before == TAG_LINE && !has_object(q->b, q->i) && q->i + 1 < q->b->chunks.count)
        return yes_or_no(q->marks & does);
    if (q->before == TAG_IT || q->before == TAG_OTHER)
        return yes_or_no(q->marks & does || is_order(q->b, q->i));
    return PASS;
}

/* The first that does not pass decides. */
static enum verdict (*const orders[])(const struct asked *) = {
    goes_on_meanwhile, shows_it, would_happen, thing_does, after_the, is_noun, behind_thing,
};

enum verdict told_by_subject(const struct asked *q)
{
    enum verdict said = PASS;
    for (size_t n = 0; said == PASS && n < sizeof orders / sizeof *orders; n++)
        said = orders[n](q);
    return said;
}
