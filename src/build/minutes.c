/* build/minutes.c
 * SPDX-License-Identifier: MIT */
#include "build/minutes.h"

#include "build/wording.h"
#include "match/capture.h"

/* Nobody leaves "minutes" out of fewer, nor of more. */
#define MINUTES_LEAST 1
#define MINUTES_MOST 90
#define MINUTE_SECONDS 60
/* So far behind a time its unit is still understood. */
#define UNIT_CHUNKS 14

static bool is_number(const struct chunk *c)
{
    return (c->tag == TAG_NUMBER || c->tag == TAG_HEATED) && c->match
           && (c->tag == TAG_NUMBER || text_is(c->match->rule->option, "bare"))
           && ratio_compare(c->match->low, RATIO(MINUTES_LEAST)) >= 0
           && ratio_compare(c->match->high, RATIO(MINUTES_MOST)) <= 0;
}

/* The rule by which "another ten" is minutes, or "at three fifty" a heat; NULL: the language has
 * none. */
static const struct rule *bare_rule(const struct pack *k, enum rule_kind kind)
{
    size_t count;
    const struct rule *rules = pack_rules(k, STAGE_AMOUNT, &count);
    for (size_t i = 0; i < count; i++)
        if (rules[i].kind == kind && text_is(rules[i].option, "bare"))
            return &rules[i];
    return NULL;
}

/* Whether nothing that is counted follows: the clause ends, or says until when. */
static bool ends_there(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    unsigned char next = chunk_tag(&b->chunks, i + 1);
    return i + 1 == b->chunks.count || b->r->words.at[c->last].after >= AFTER_COMMA
           || next == TAG_AND || next == TAG_SO || next == TAG_UNTIL || next == TAG_WHEN
           || (next == TAG_INTO && chunk_tag(&b->chunks, i + 2) == TAG_THE);
}

static bool is_waiting(const struct chunk *c)
{
    return (c->tag == TAG_ACTION || c->tag == TAG_DOING)
           && chunk_marks(c) & (MARK_OF(waits) | MARK_OF(idle));
}

/* A time in minutes that was said before in the sentence. */
static bool is_behind_minutes(const struct builder *b, size_t i)
{
    for (size_t n = i; n-- > 0 && i - n <= UNIT_CHUNKS;) {
        const struct chunk *c = &b->chunks.at[n];
        if (c->tag == TAG_DURATION && c->match && ratio_finite(c->match->low))
            return ratio_compare(c->match->low, RATIO(MINUTE_SECONDS)) >= 0
                   && ratio_compare(c->match->high, RATIO(MINUTES_MOST * MINUTE_SECONDS)) <= 0;
    }
    return false;
}

/* "Leave it ten", "it stands ten", "in a bowl for five", "for the last three". */
static bool is_wait(const struct builder *b, size_t i)
{
    const struct chunk *at = b->chunks.at, *before = &at[i - 1];
    if (is_step_word(b, before, "last"))
        return i > 1 && at[i - 2].tag == TAG_THE && is_behind_minutes(b, i);
    if (ratio_equal(at[i].match->low, RATIO(1)))
        return false; /* "eat one" */
    if (is_waiting(before))
        return true;
    if (before->tag == TAG_IT)
        return i > 1 && is_waiting(&at[i - 2]);
    for (size_t n = i - 1; before->tag == TAG_FOR && n-- > 0;)
        if (is_waiting(&at[n]))
            return true;
    return false;
}

/* "Six minutes one side and four on the other", "fifteen minutes, then leave it ten". */
static bool goes_on(const struct builder *b, size_t i)
{
    const struct chunk *before = &b->chunks.at[i - 1];
    unsigned char tag = before->tag;
    if (tag == TAG_AND && i > 1 && (before[-1].tag == TAG_DURATION || before[-1].tag == TAG_TIME))
        return false; /* "an hour and ten" */
    bool leads = tag == TAG_FOR || tag == TAG_AND || tag == TAG_SO || tag == TAG_DOWN;
    return leads && is_behind_minutes(b, i);
}

static void make_minutes(struct builder *b, struct chunk *c, const struct rule *bare)
{
    struct match *m = arena_alloc(b->r->arena, sizeof *m);
    *m = *c->match;
    m->rule = bare;
    m->low = ratio_multiply(c->match->low, RATIO(MINUTE_SECONDS));
    m->high = ratio_multiply(c->match->high, RATIO(MINUTE_SECONDS));
    c->match = m;
    c->tag = TAG_DURATION;
}

/* Oil is hotter than 120 Celsius, and cooler than 400 Fahrenheit (common practice, no source). */
#define OIL_LEAST 120
#define OIL_MOST 400

static bool says_length(const struct builder *b, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++)
        if (b->r->words.at[i].tag == TAG_LENGTH)
            return true;
    return false;
}

/* "Two inches of oil, three fifty", "oil, an inch, one eighty": fat by its depth is heated. */
static bool is_oil_heat(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i], *oil = c - 1;
    const struct match *m = oil->match;
    const struct entry *food = m ? entry_at(b->r, match_slot(m, SLOT_food)) : NULL;
    return c->tag == TAG_NUMBER && c->match && food && food->marks & MARK_OF(fat)
           && !(food->marks & MARK_OF(dairy)) && says_length(b, b->chunks.sentence)
           && ratio_compare(c->match->low, RATIO(OIL_LEAST)) >= 0
           && ratio_compare(c->match->high, RATIO(OIL_MOST)) <= 0 && ends_there(b, i);
}

static void make_heat(struct builder *b, struct chunk *c)
{
    const struct rule *bare = bare_rule(b->k, RULE_temperature);
    struct match *m = arena_alloc(b->r->arena, sizeof *m);
    *m = *c->match;
    m->rule = bare ? bare : m->rule;
    c->match = m;
    c->tag = bare ? TAG_HEATED : c->tag;
}

void read_chunks(struct builder *b, const struct sentence *s)
{
    if (b->chunks.sentence == s)
        return;
    chunks_make(&b->chunks, b->r, s);
    for (size_t i = 1; i < b->chunks.count; i++)
        if (is_oil_heat(b, i)) {
            make_heat(b, &b->chunks.at[i]);
        } else if (is_number(&b->chunks.at[i]) && ends_there(b, i)
                   && (is_wait(b, i) || goes_on(b, i))) {
            if (!b->bare)
                b->bare = bare_rule(b->k, RULE_duration);
            if (b->bare)
                make_minutes(b, &b->chunks.at[i], b->bare);
        }
}
