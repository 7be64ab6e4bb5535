/* build/preheat.c: "oven on, four twenty-five", said before the dish that bakes.
 * SPDX-License-Identifier: MIT */
#include "build/preheat.h"

#include "match/matches.h"
#include "pack/pack.h"

/* Seconds from the oven's heat to the dish that it is for. */
#define SOON_SECONDS 45.0
/* "Now the oven. A hundred and fifty. Or with hot air, one thirty.": so many sentences after the
 * one that names the oven. */
#define NAMED_SENTENCES 2

static bool is_oven_word(const struct word *w)
{
    const uint64_t preheats = MARK_OF(ovens) | MARK_OF(changes);
    if (!w->entry || w->scope & SCOPE_NOT_DONE)
        return false;
    return (w->tag == TAG_OVEN && w->entry->marks & MARK_OF(ovens))
           || (w->tag == TAG_ACTION && (w->entry->marks & preheats) == preheats);
}

static bool names_oven(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++)
        if (is_oven_word(&r->words.at[i]))
            return true;
    return false;
}

static bool says_heat(const struct recording *r, const struct sentence *s)
{
    return match_in(r, s, KIND_OF(temperature));
}

/* Names the oven, or gives a heat just behind its name. */
static bool sets_oven(const struct recording *r, size_t n)
{
    const struct sentence *s = &r->sentences.at[n];
    if (s->flags & (SENTENCE_QUESTION | SENTENCE_STORY))
        return false;
    for (size_t i = 0; i <= NAMED_SENTENCES && i <= n; i++)
        if ((!i || says_heat(r, s)) && names_oven(r, s - i))
            return true;
    return false;
}

/* Whether something of the dish goes into an oven. */
static bool bakes(const struct recording *r, const struct dish *d)
{
    for (size_t i = 0; i < d->spans.count; i++)
        for (size_t w = d->spans.at[i].first; w <= d->spans.at[i].last; w++) {
            const struct word *word = &r->words.at[w];
            if (word->entry && word->entry->marks & MARK_OF(ovens)
                && (word->tag == TAG_OVEN || word->tag == TAG_ACTION || word->tag == TAG_DOING))
                return true;
        }
    return false;
}

const struct dish *preheated_dish(const struct recording *r, size_t n)
{
    const struct sentence *s = &r->sentences.at[n];
    const struct dish *next = NULL, *baked = NULL;
    if (!sets_oven(r, n))
        return NULL;
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        if (dish_has_sentence(d, s))
            return NULL;
        bool soon = d->words.first > s->last
                    && r->words.at[d->words.first].start - r->words.at[s->last].end < SOON_SECONDS;
        if (soon && (!next || d->words.first < next->words.first))
            next = d;
        if (soon && (!baked || d->words.first < baked->words.first) && bakes(r, d))
            baked = d;
    }
    return baked ? baked : next;
}
