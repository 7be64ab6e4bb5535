/* split/said.c: what stands around a name where it is said.
 * SPDX-License-Identifier: MIT */
#include "match/capture.h"
#include "split/candidate.h"

/* So many sentences are a dish's first or last ones. */
#define EDGE_SENTENCES 4

/* The bit of each tag before a name, and behind one; 0 is AFTER_START, which no word has. */
static const unsigned char before_name[256] = {
    [TAG_SO] = SAID_AFTER_SO,           [TAG_AND] = SAID_AFTER_AND,
    [TAG_THE] = SAID_AFTER_THE,         [TAG_ARTICLE] = SAID_AFTER_ARTICLE,
    [TAG_OF] = SAID_AFTER_OF,           [TAG_THERE] = SAID_AFTER_THERE,
    [TAG_BE] = SAID_AFTER_BE,           [TAG_NAMED] = SAID_AFTER_NAMED,
    [TAG_OPENER] = SAID_AFTER_OPENER,   [TAG_ACTION] = SAID_AFTER_ACTION,
    [TAG_HAVE] = SAID_AFTER_HAVE,       [TAG_INTO] = SAID_AFTER_INTO,
    [TAG_FOR] = SAID_AFTER_FOR,         [TAG_WITH] = SAID_AFTER_WITH,
    [TAG_ME] = SAID_AFTER_ME,           [TAG_YOU] = SAID_AFTER_ME,
    [TAG_IT] = SAID_AFTER_ME,           [TAG_NUMBER] = SAID_AFTER_NUMBER,
    [TAG_ONES] = SAID_AFTER_NUMBER,     [TAG_TEENS] = SAID_AFTER_NUMBER,
    [TAG_TENS] = SAID_AFTER_NUMBER,     [TAG_DOZEN] = SAID_AFTER_NUMBER,
    [TAG_UNIT] = SAID_AFTER_NUMBER,     [TAG_VAGUE] = SAID_AFTER_NUMBER,
    [TAG_FRACTION] = SAID_AFTER_NUMBER, [TAG_MORE] = SAID_AFTER_MORE,
    [TAG_REST] = SAID_AFTER_MORE,       [TAG_WHOLE] = SAID_AFTER_MORE,
    [TAG_NOT] = SAID_AFTER_NOT,         [TAG_OTHER] = SAID_AFTER_OTHER,
};
static const unsigned char behind_name[256] = {
    [TAG_BE] = SAID_BEFORE_BE,         [TAG_STATE] = SAID_BEFORE_STATE,
    [TAG_AND] = SAID_BEFORE_AND,       [TAG_SO] = SAID_BEFORE_SO,
    [TAG_WITH] = SAID_BEFORE_WITH,     [TAG_FOR] = SAID_BEFORE_FOR,
    [TAG_INTO] = SAID_BEFORE_INTO,     [TAG_OF] = SAID_BEFORE_OF,
    [TAG_ACTION] = SAID_BEFORE_ACTION, [TAG_IT] = SAID_BEFORE_IT,
    [TAG_ME] = SAID_BEFORE_IT,         [TAG_YOU] = SAID_BEFORE_IT,
    [TAG_OTHER] = SAID_BEFORE_OTHER,
};

static void add(struct said_bits *b, enum said bit)
{
    b->at[bit / 64] |= (uint64_t) 1 << bit % 64;
}

static bool is_span(struct span a, struct span b)
{
    return a.first == b.first && a.last == b.last;
}

static bool touches(struct span a, struct span b)
{
    return a.first <= b.last && b.first <= a.last;
}

static void add_edges(size_t i, struct stretch within, struct said_bits *b)
{
    size_t after = i - within.first, left = within.last - i;
    if (i < within.first) {
        add(b, SAID_AHEAD);
        return;
    }
    if (i > within.last) {
        add(b, SAID_BEHIND);
        return;
    }
    if (after < EDGE_SENTENCES)
        add(b, after ? SAID_BEGIN : SAID_FIRST);
    if (left < EDGE_SENTENCES)
        add(b, left ? SAID_END : SAID_LAST);
    if (after >= EDGE_SENTENCES && left >= EDGE_SENTENCES)
        add(b, SAID_MIDDLE);
}

static void add_slot(struct surrounding *here, struct span words, enum said said)
{
    if (span_is_empty(words) || here->count == SLOTS_MOST)
        return;
    here->slots[here->count].words = words;
    here->slots[here->count++].said = said;
}

/* What the sentence's phrases say of it, and the words that they name or put in. */
static void add_matches(const struct candidates *c, const struct sentence *s,
                        struct surrounding *here)
{
    for (size_t n = 0; n < s->match_count; n++) {
        const struct match *m = &c->r->matches.at[s->match_first + n];
        switch (m->rule->kind) {
        case RULE_line:
            add_slot(here, match_slot(m, SLOT_food), SAID_LINE);
            break;
        case RULE_opening:
            add(&here->said, SAID_BY_OPENING);
            add_slot(here, match_slot(m, SLOT_title), SAID_IN_OPENING);
            break;
        case RULE_naming:
            add(&here->said, SAID_BY_NAMING);
            add_slot(here, match_slot(m, SLOT_title), SAID_IN_NAMING);
            break;
        case RULE_closing:
            add(&here->said, SAID_BY_CLOSING);
            break;
        case RULE_yield:
        case RULE_count:
            add(&here->said, SAID_BY_YIELD);
            break;
        default:
            break;
        }
    }
}

struct surrounding said_there(const struct candidates *c, size_t i, struct stretch within)
{
    const struct sentence *s = &c->r->sentences.at[i];
    struct surrounding here;
    here.sentence = i;
    here.count = 0;
    here.said = (struct said_bits){{0, 0}};
    add_edges(i, within, &here.said);
    add_matches(c, s, &here);
    if (c->f[i].order)
        add(&here.said, SAID_ORDER);
    if (c->f[i].heading)
        add(&here.said, SAID_HEADING);
    if (s->flags & SENTENCE_QUESTION)
        add(&here.said, SAID_QUESTION);
    return here;
}

/* "So the", "and now, number two,": no more than leads to a name. */
static bool leads_to_name(const struct word *w)
{
    switch (w->tag) {
    case TAG_THE:
    case TAG_ARTICLE:
    case TAG_SO:
    case TAG_AND:
    case TAG_NUMBER:
    case TAG_ONES:
    case TAG_ORDINAL:
    case TAG_DOZEN:
    case TAG_THERE:
    case TAG_OPENER:
    case TAG_OTHER:
    case TAG_INSIDE:
    case TAG_STATE:
    case TAG_SIZE:
        return true;
    default:
        return w->filler;
    }
}

static void add_before(const struct recording *r, const struct sentence *s, struct span words,
                       struct said_bits *b)
{
    size_t i = words.first;
    while (i > s->first && r->words.at[i - 1].filler)
        i--;
    if (i == s->first)
        add(b, SAID_AFTER_START);
    else if (before_name[r->words.at[i - 1].tag])
        add(b, before_name[r->words.at[i - 1].tag]);
    if (i > s->first && r->words.at[i - 1].after >= AFTER_COMMA)
        add(b, SAID_AFTER_COMMA);
    while (i > s->first && leads_to_name(&r->words.at[i - 1]))
        i--;
    if (i == s->first)
        add(b, SAID_INITIAL);
}

static void add_behind(const struct recording *r, const struct sentence *s, struct span words,
                       struct said_bits *b)
{
    size_t i = words.last;
    if (i < s->last && r->words.at[i].after >= AFTER_COMMA) {
        add(b, SAID_BEFORE_COMMA);
        return;
    }
    while (i < s->last && r->words.at[i + 1].filler)
        i++;
    if (i == s->last)
        add(b, SAID_BEFORE_END);
    else if (behind_name[r->words.at[i + 1].tag])
        add(b, behind_name[r->words.at[i + 1].tag]);
    if (i == s->last && words.first == s->first)
        add(b, SAID_WHOLE);
}

/* Whether it is, or is part of, what a phrase names or what goes in. */
static void add_slots(const struct candidates *c, const struct surrounding *here, struct span words,
                      struct said_bits *b)
{
    const struct feature *f = &c->f[here->sentence];
    for (size_t n = 0; n < here->count; n++)
        if (touches(words, here->slots[n].words))
            add(b, here->slots[n].said);
    if (is_span(words, f->opening_title))
        add(b, SAID_OPENING);
    if (is_span(words, f->closing_title))
        add(b, SAID_CLOSING);
    if (is_span(words, f->told_title))
        add(b, SAID_TOLD);
    if (is_span(words, f->bare_title))
        add(b, SAID_BARE);
    if (is_span(words, f->foreign_title))
        add(b, SAID_FOREIGN);
}

static bool has(const struct said_bits *b, enum said bit)
{
    return b->at[bit / 64] >> bit % 64 & 1;
}

/* What is so in one place, where the bits of all places together would not tell. */
static void add_both(struct said_bits *b)
{
    bool named = has(b, SAID_IN_OPENING) || has(b, SAID_IN_NAMING) || has(b, SAID_OPENING)
                 || has(b, SAID_CLOSING);
    bool initial = has(b, SAID_INITIAL);
    if (has(b, SAID_FIRST) || has(b, SAID_AHEAD)) {
        if (named)
            add(b, SAID_FIRST_NAMED);
        if (initial)
            add(b, SAID_FIRST_INITIAL);
    }
    if (has(b, SAID_MIDDLE)) {
        if (named)
            add(b, SAID_MIDDLE_NAMED);
        if (initial)
            add(b, SAID_MIDDLE_INITIAL);
    }
    if (has(b, SAID_END) || has(b, SAID_LAST) || has(b, SAID_BEHIND)) {
        if (named)
            add(b, SAID_LAST_NAMED);
        if (initial)
            add(b, SAID_LAST_INITIAL);
    }
}

struct said_bits said_of(const struct candidates *c, const struct saying *p,
                         const struct surrounding *there)
{
    const struct recording *r = c->r;
    const struct sentence *s = &r->sentences.at[there->sentence];
    unsigned scope = r->words.at[p->words.last].scope;
    struct said_bits b = there->said;
    add_before(r, s, p->words, &b);
    add_behind(r, s, p->words, &b);
    add_slots(c, there, p->words, &b);
    if (r->words.at[p->words.last].capital && p->words.last > s->first)
        add(&b, SAID_CAPITAL);
    add_both(&b);
    if (scope & SCOPE_UNREAL)
        add(&b, SAID_UNREAL);
    if (scope & (SCOPE_SUPPOSED | SCOPE_INSTEAD))
        add(&b, SAID_SUPPOSED);
    if (scope & SCOPE_NEGATED)
        add(&b, SAID_NEGATED);
    if (scope & SCOPE_BESIDE)
        add(&b, SAID_BESIDE);
    if (p->words.first > p->phrase.first)
        add(&b, SAID_LONGER_BEFORE);
    if (p->words.last < p->phrase.last)
        add(&b, SAID_LONGER_BEHIND);
    return b;
}
