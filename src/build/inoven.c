/* build/inoven.c
 * SPDX-License-Identifier: MIT */
#include "build/inoven.h"

#include "build/implied.h"
#include "build/wording.h"

bool is_after_pan(const struct builder *b, size_t at)
{
    return at && (!b->pan || b->pan_at < at);
}

/* What is in a tin bakes where it takes so long. */
#define TIN_SECONDS 1200.0
#define TIN_SECONDS_MOST (3.0 * 3600)

bool bakes_in_tin(const struct builder *b)
{
    size_t time = is_after_pan(b, b->tin_at) ? find_done(b, TAG_DURATION) : NOWHERE;
    if (time == NOWHERE || !b->chunks.at[time].match)
        return false;
    double low = ratio_double(b->chunks.at[time].match->low);
    return low >= TIN_SECONDS && low <= TIN_SECONDS_MOST;
}

bool is_in_oven(const struct builder *b, uint64_t heat)
{
    /* "Eight minutes on medium", "the lowest flame" are said of a hob. */
    return find_done(b, TAG_HEAT) == NOWHERE
           && (heat & MARK_OF(ovens) || (b->oven_at && is_after_pan(b, b->tin_at))
               || bakes_in_tin(b));
}

/* Nothing is baked that soon, but for what gets a last colour ("two more minutes"). */
#define BAKED_SECONDS 300.0

bool is_too_short(const struct builder *b)
{
    size_t time = find_done(b, TAG_DURATION);
    return time != NOWHERE && b->chunks.at[time].match
           && ratio_double(b->chunks.at[time].match->low) < BAKED_SECONDS;
}

/* "In it goes", "goes in", "back in". */
static bool says_in(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    bool in = false, goes = false;
    if (is_step_word(b, c, "returned"))
        return chunk_tag(&b->chunks, i + 1) == TAG_INTO;
    for (size_t n = c->first; c->tag == TAG_ACTION && n <= c->last; n++) {
        const struct word *w = &b->r->words.at[n];
        in |= w->alone && w->alone->tag == TAG_INTO;
        goes |= step_words_list(b->k, "moves", w->key);
    }
    return in && goes;
}

/* What bakes is in the oven so long at least; what goes into a pot or into oil is soon done. */
#define GOES_IN_SECONDS 600.0

bool goes_in_oven(const struct builder *b, uint64_t heat)
{
    size_t time = find_done(b, TAG_DURATION);
    if (time == NOWHERE || !b->chunks.at[time].match || find_done(b, TAG_VESSEL) != NOWHERE
        || find_done(b, TAG_HEAT) != NOWHERE || says_cold(b)
        || ratio_double(b->chunks.at[time].match->low) < GOES_IN_SECONDS
        || !(heat & MARK_OF(ovens) || (b->oven_at && is_after_pan(b, b->oven_at))
             || is_after_pan(b, b->tin_at)))
        return false;
    for (size_t i = 0; i < time; i++)
        if (says_in(b, i))
            return true;
    return false;
}
