/* build/yieldplace.c
 * SPDX-License-Identifier: MIT */
#include "build/yieldplace.h"

#include "match/matches.h"

/* So near its end nothing more goes into a dish: "Two loaves." */
#define END_SENTENCES 4
/* Nor where no amount is said in so many sentences. */
#define QUIET_SENTENCES 40
/* So many sentences before "so that's sixteen squares" say that it is cut. */
#define CUT_SENTENCES 2

size_t cut_from(const struct builder *b)
{
    const struct sentence *s = b->sentence;
    for (size_t back = 0; back < CUT_SENTENCES && s > b->r->sentences.at; back++)
        s--;
    return s->first;
}

bool is_cut_before(const struct builder *b, const struct match *m)
{
    for (size_t i = cut_from(b); i < m->words.first; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & MARK_OF(cuts))
            return true;
    }
    return false;
}

bool is_at_end(const struct builder *b)
{
    const struct span *last =
        b->dish->spans.count ? &b->dish->spans.at[b->dish->spans.count - 1] : &b->dish->words;
    const struct sentence *s = b->sentence, *end = b->r->sentences.at + b->r->sentences.count;
    for (size_t n = 0; n < END_SENTENCES && s < end; n++, s++)
        if (s->last >= last->last)
            return b->dish->steps.count > 0;
    return false;
}

bool dish_is_filled(const struct builder *b)
{
    const struct sentence *s = b->sentence, *end = b->r->sentences.at + b->r->sentences.count;
    for (size_t n = 0; n < QUIET_SENTENCES && ++s < end; n++)
        if (dish_has_sentence(b->dish, s) && match_in(b->r, s, KIND_OF(line)))
            return false;
    return b->dish->steps.count > 0;
}

bool is_named(const struct builder *b)
{
    const struct sentence *s = b->sentence;
    return s->names || (s > b->r->sentences.at && s[-1].names);
}

bool is_at_start(const struct builder *b)
{
    size_t before = 0;
    for (size_t i = 0; i < b->dish->ingredients.count; i++)
        before += b->dish->ingredients.at[i].words.first < b->sentence->first;
    return before < 2 && b->dish->steps.count < 2;
}
