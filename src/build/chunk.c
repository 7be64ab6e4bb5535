/* build/chunk.c
 * SPDX-License-Identifier: MIT */
#include "build/chunk.h"

#include "match/capture.h"
#include "match/clause.h"
#include "match/matches.h"

unsigned char chunk_tag(const struct chunks *c, size_t i)
{
    return i < c->count ? c->at[i].tag : (unsigned char) TAG_SO;
}

uint64_t chunk_marks(const struct chunk *c)
{
    return c->entry ? c->entry->marks : 0;
}

const struct entry *chunk_food(const struct recording *r, const struct chunk *c)
{
    return c && c->tag == TAG_LINE ? match_entry(r, c->match, SLOT_food) : NULL;
}

/* "Cut it into eight pieces", "divide it in twelve": how much it makes is told with what is done.
 */
static bool hides_verb(const struct recording *r, const struct sentence *s, const struct match *m)
{
    unsigned char tag = r->words.at[entry_last(r, s, m->words.first)].tag;
    return (m->rule->kind == RULE_yield || m->rule->kind == RULE_count)
           && (tag == TAG_ACTION || tag == TAG_DONE);
}

/* "So, six potatoes": counted only where the dish is such a thing, else an ingredient like any. */
static bool hides_food(const struct match *m)
{
    return m->rule->kind == RULE_count && text_is(m->rule->option, "dish");
}

/* The longest match that begins at word `i`; of equal ones the later stage's. */
static const struct match *best_at(const struct recording *r, const struct sentence *s, size_t i)
{
    const struct match *best = NULL;
    struct matches there = matches_of(r, s, KINDS_ALL);
    there.begins = (struct span){i, i};
    for (const struct match *m; (m = matches_next(&there));) {
        if (m->rule->stage == STAGE_PHRASE || hides_verb(r, s, m) || hides_food(m))
            continue;
        if (!best || m->words.last >= best->words.last)
            best = m;
    }
    return best;
}

void chunks_make(struct chunks *c, const struct recording *r, const struct sentence *s)
{
    c->count = 0;
    c->shapes = 0;
    c->sentence = s;
    for (size_t i = s->first; i <= s->last && c->count < SENTENCE_WORDS; i++) {
        if (r->words.at[i].filler)
            continue;
        struct chunk *k = &c->at[c->count++];
        const struct match *m = best_at(r, s, i);
        size_t last = m ? m->words.last : entry_last(r, s, i);
        *k = (struct chunk){.first = i, .last = last, .match = m};
        k->entry = m ? NULL : r->words.at[last].entry;
        k->tag = m && m->rule->tag ? m->rule->tag : r->words.at[last].tag;
        if (m && k->tag == TAG_ACTION)
            k->tag = TAG_OTHER; /* a verb within a match is none of its own */
        c->shapes |= k->entry ? entry_shape(k->entry) : 0;
        for (; i <= last; i++) {
            k->scope |= r->words.at[i].scope;
            c->shapes |= word_shape(&r->words.at[i]);
        }
        i = last;
    }
}

const struct match *chunk_match(const struct recording *r, const struct sentence *s,
                                struct span words, enum rule_kind kind)
{
    for (size_t n = s->match_count; n-- > 0;) {
        const struct match *m = &r->matches.at[s->match_first + n];
        if (m->rule->kind == kind && m->words.first == words.first && m->words.last == words.last)
            return m;
    }
    return NULL;
}
