/* words/sentence.c
 * SPDX-License-Identifier: MIT */
#include "words/sentence.h"

#include "words/ending.h"
#include "words/entry.h"
#include "words/limits.h"
#include "words/listing.h"

struct cutter {
    struct recording *r;
    const struct pack *k;
    bool punctuated;     /* the captions have full stops */
    struct endings ends; /* where they have none: what speaks for one */
    int points_least;    /* that an end must have more than */
    bool lines;          /* each cue is an utterance: commas stand in it, and never end it */
    bool capitals;       /* each cue is one or more sentences, the last of which has no stop */
    size_t unit;         /* of `ends`: the one in which the word at hand stands */
    size_t unit_first;   /* the one with which the sentence begins */
};

static uint64_t marks_of(const struct cutter *c, size_t i)
{
    const struct entry *e = c->r->words.at[i].alone;
    return e ? e->marks : 0;
}

/* "½ tsp. of salt": the dot belongs to a short unit, not to the sentence. */
static bool is_abbreviation(const struct cutter *c, size_t i)
{
    const struct word *w = &c->r->words.at[i];
    const struct entry *e = w->alone;
    return e && e->tag == TAG_UNIT && w->key.length <= 4
           && !text_equal(entry_shown(e), entry_value(e)) && i + 1 < c->r->words.count
           && !c->r->words.at[i + 1].capital;
}

/* Whether word `i` is the last one of its unit; goes on to the unit where it stands. */
static bool ends_unit(struct cutter *c, size_t i)
{
    while (c->unit < c->ends.units.count && c->ends.units.at[c->unit].last < i)
        c->unit++;
    return c->unit < c->ends.units.count && c->ends.units.at[c->unit].last == i;
}

/* The class of the longest entry that begins at word `i`; TAG_OTHER for none. */
static unsigned char tag_from(const struct cutter *c, size_t i)
{
    size_t last;
    const struct entry *e = entry_longest(c->r, c->k, i, c->r->words.count, &last);
    return e ? e->tag : (unsigned char) TAG_OTHER;
}

static bool is_measure(unsigned char tag)
{
    return tag == TAG_UNIT || tag == TAG_COUNTER || tag == TAG_CONTAINER;
}

static bool begins_amount(unsigned char tag)
{
    return tag == TAG_ARTICLE || tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS
           || tag == TAG_NUMBER || tag == TAG_FRACTION || tag == TAG_DOZEN;
}

/* "Two pounds of. Pork ribs", "two teaspoons. Of salt", "and. A pinch": a stop that machines put
 * where the cook only took breath. */
static bool is_false_stop(const struct cutter *c, size_t i)
{
    unsigned char tag = tag_from(c, i), next = tag_from(c, i + 1);
    bool food = next == TAG_FOOD || next == TAG_STATE || next == TAG_DONE || next == TAG_SIZE;
    switch (tag) {
    case TAG_OF:
        return food;
    case TAG_AND:
        return food || begins_amount(next);
    case TAG_UNTIL:
        return next == TAG_IT || next == TAG_THE || next == TAG_STATE || next == TAG_DONE;
    default: /* "three? tablespoons of marmalade" */
        return (is_measure(tag) && next == TAG_OF)
               || (begins_amount(tag) && is_measure(next) && tag_from(c, i + 2) == TAG_OF);
    }
}

/* Neither a capital nor a digit: "and then". */
static bool begins_small(const struct word *w)
{
    return !w->capital && !(w->text.at[0] >= '0' && w->text.at[0] <= '9');
}

/* Whether a sentence ends after word `i`, of which `length` words are in it so far. */
static bool ends_after(struct cutter *c, size_t i, size_t length)
{
    const struct word *w = &c->r->words.at[i], *next = w + 1;
    bool open = marks_of(c, i) & MARK_OF(joins);
    double silence = next->start - w->end;
    if (next->new_speaker)
        return true;
    if ((w->after == AFTER_STOP || w->after == AFTER_QUESTION) && silence < LONG_PAUSE_SECONDS
        && is_false_stop(c, i)) {
        c->r->words.at[i].after = AFTER_SPACE;
        return false;
    }
    if (w->after >= AFTER_STOP)
        return next->capital || ((!open || !begins_small(next)) && !is_abbreviation(c, i));
    if (silence >= LONG_PAUSE_SECONDS)
        return !open;
    if (c->capitals && next->cue != w->cue && w->after == AFTER_SPACE && !begins_small(next))
        return !open;
    if (c->punctuated)
        return false;
    if (next->pause && !open)
        return true;
    bool line = c->lines && next->cue != w->cue;
    if (!ends_unit(c, i))
        return false;
    enum listing listing = listing_at(&c->ends, c->unit_first, c->unit);
    if (listing != LISTING_UNSURE)
        return listing == LISTING_ENDS;
    return ending_points(&c->ends, c->unit, length) > (line ? LINE_ENDING_POINTS : c->points_least);
}

/* The best place to cut words [first, last], which are too many: after a comma, else before an
 * "and", else anywhere; in the second half if there is one. */
static size_t cut_at(const struct cutter *c, size_t first, size_t last)
{
    size_t joined = 0;
    for (size_t i = last; i > first + (last - first) / 3; i--) {
        if (c->r->words.at[i].after == AFTER_COMMA)
            return i;
        if (!joined && marks_of(c, i + 1) & (MARK_OF(joins) | MARK_OF(starts))
            && !(marks_of(c, i) & MARK_OF(joins)))
            joined = i;
    }
    return joined ? joined : last;
}

/* How many words may stand before the word that asks: "and the oven, how hot". */
#define ASKING_WORDS 4
/* A question as short as this needs no word that asks: "Diced?" */
#define SHORT_QUESTION_WORDS 3

static unsigned char tag_alone(const struct cutter *c, size_t i)
{
    const struct entry *e = c->r->words.at[i].alone;
    return e ? e->tag : (unsigned char) TAG_OTHER;
}

/* "Does it get rinsed", "and will I check it": the verb stands before the one who does it. */
static bool is_turned_round(const struct cutter *c, size_t i)
{
    unsigned char tag = tag_alone(c, i), next = tag_alone(c, i + 1);
    return (tag == TAG_WILL || tag == TAG_BE || tag == TAG_HAVE || tag == TAG_SERVE)
           && (next == TAG_YOU || next == TAG_ME || next == TAG_IT || next == TAG_THE);
}

/* "And then you dry it, right?" Somebody else answers, and no food or amount was said, which is a
 * helper's echo: "And a pinch of salt?" */
static bool is_answered(const struct cutter *c, size_t first, size_t last)
{
    if (last + 1 >= c->r->words.count || !c->r->words.at[last + 1].new_speaker)
        return false;
    for (size_t i = first; i <= last; i++) {
        unsigned char tag = tag_alone(c, i);
        if (begins_amount(tag) || tag == TAG_FOOD)
            return false;
    }
    return true;
}

/* Machines put question marks behind plain steps: a question also begins like one, or is short, or
 * is answered. */
static bool asks(const struct cutter *c, size_t first, size_t last)
{
    if (last - first < SHORT_QUESTION_WORDS || is_answered(c, first, last))
        return true;
    bool begins = true; /* what stands before says who does it: "and you have the flour" */
    for (size_t i = first; i < last && i < first + ASKING_WORDS; i++) {
        if (marks_of(c, i) & MARK_OF(asks) || (begins && is_turned_round(c, i)))
            return true;
        unsigned char tag = tag_alone(c, i);
        begins = tag == TAG_AND || tag == TAG_SO || tag == TAG_OTHER;
    }
    return false;
}

static void add_sentence(const struct cutter *c, size_t first, size_t last)
{
    while (last - first + 1 > SENTENCE_WORDS) {
        size_t cut = cut_at(c, first, first + SENTENCE_WORDS - 1);
        struct sentence *s = LIST_ADD(c->r->arena, &c->r->sentences);
        *s = (struct sentence){.first = first, .last = cut};
        first = cut + 1;
    }
    struct sentence *s = LIST_ADD(c->r->arena, &c->r->sentences);
    *s = (struct sentence){.first = first, .last = last};
    if (c->r->words.at[last].after == AFTER_QUESTION && asks(c, first, last))
        s->flags |= SENTENCE_QUESTION;
}

/* Whether the captions have such signs, or weightier ones, as often as sentences end. */
static bool has_signs(const struct recording *r, enum word_after least)
{
    size_t signs = 0;
    for (size_t i = 0; i < r->words.count; i++)
        signs += r->words.at[i].after >= least;
    return signs * WORDS_PER_STOP_MOST >= r->words.count;
}

/* "Two teaspoons. Of salt", "until. It's thick": a stop behind a word that goes on, or before "of".
 */
static bool is_astray(const struct cutter *c, size_t i)
{
    const struct word *w = &c->r->words.at[i];
    if (w->after != AFTER_STOP || i + 1 == c->r->words.count)
        return false;
    const struct entry *e = w->alone, *next = w[1].alone;
    if (next && next->tag == TAG_OF && !is_abbreviation(c, i))
        return true;
    return e
           && (e->tag == TAG_OF || e->tag == TAG_AND || e->tag == TAG_OR || e->tag == TAG_ARTICLE
               || e->tag == TAG_UNTIL);
}

/* Machines that set stops put some a word off; a person breaks off now and then, but not so often.
 */
static void mend_stops(const struct cutter *c)
{
    size_t astray = 0;
    for (size_t i = 0; i < c->r->words.count; i++)
        astray += is_astray(c, i);
    for (size_t i = 0; i < c->r->words.count && astray >= ASTRAY_STOPS_LEAST; i++)
        if (is_astray(c, i))
            c->r->words.at[i].after = AFTER_SPACE;
}

/* Whether somebody wrote one utterance a cue, with commas but no full stops: then commas stand
 * inside of cues, and none ends one. */
static bool has_utterances(const struct recording *r)
{
    size_t commas = 0, ending = 0;
    for (size_t i = 0; i + 1 < r->words.count; i++) {
        bool comma = r->words.at[i].after == AFTER_COMMA;
        commas += comma;
        ending += comma && r->words.at[i + 1].cue != r->words.at[i].cue;
    }
    return commas >= UTTERANCE_COMMAS_LEAST && ending * UTTERANCE_COMMAS_LEAST < commas;
}

/* Whether somebody set full stops inside of cues and none at their ends, where the capital that
 * begins the next one stands for it. */
static bool has_capitals(const struct recording *r)
{
    size_t bare = 0, other = 0;
    for (size_t i = 0; i + 1 < r->words.count; i++) {
        const struct word *w = &r->words.at[i], *next = w + 1;
        if (next->cue == w->cue)
            continue;
        bare += w->after == AFTER_SPACE && next->capital;
        other += w->after >= AFTER_STOP || (w->after == AFTER_SPACE && begins_small(next));
    }
    return bare >= BARE_CAPITALS_LEAST && other * BARE_CAPITALS_LEAST < bare;
}

/* In most talk they are longer. */
#define WORDS_A_SENTENCE 6

void cut_sentences(struct recording *r, const struct pack *k)
{
    struct cutter c = {.r = r, .k = k, .punctuated = has_signs(r, AFTER_STOP)};
    r->punctuated = c.punctuated;
    bool unsure = r->words.count < WORDS_PER_STOP_MOST || has_signs(r, AFTER_COMMA);
    c.points_least = unsure ? SURE_ENDING_POINTS : ENDING_POINTS_LEAST;
    mend_stops(&c);
    c.capitals = c.punctuated && has_capitals(r);
    c.lines = !c.punctuated && has_utterances(r);
    if (!c.punctuated)
        endings_make(&c.ends, r, k);
    LIST_RESERVE(r->arena, &r->sentences, r->words.count / WORDS_A_SENTENCE + 1);
    size_t first = 0;
    for (size_t i = 0; i < r->words.count; i++) {
        if (i + 1 == r->words.count || ends_after(&c, i, i + 1 - first)) {
            add_sentence(&c, first, i);
            first = i + 1;
            c.unit_first = c.unit + 1;
        }
    }
}
