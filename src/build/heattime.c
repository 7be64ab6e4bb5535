/* build/heattime.c
 * SPDX-License-Identifier: MIT */
#include "build/heattime.h"

#include "build/heat.h"
#include "build/heatagain.h"
#include "build/heatlimits.h"
#include "match/matches.h"

/* An oven's dial is set in fives. */
#define DIAL_STEP 5
#define DIAL_C_LEAST 100
#define DIAL_C_MOST 250
#define DIAL_F_LEAST 200
#define DIAL_F_MOST 500

static bool leads_to_time(unsigned char tag)
{
    return tag == TAG_FOR || tag == TAG_AND || tag == TAG_SO || tag == TAG_THE || tag == TAG_IT
           || tag == TAG_WILL || tag == TAG_BE || tag == TAG_THERE || tag == TAG_OTHER
           || tag == TAG_HEDGE;
}

/* Whether the next sentence begins with a time. */
static bool is_next_time(const struct builder *b)
{
    const struct recording *r = b->r;
    const struct sentence *s = b->sentence + 1;
    if (s >= r->sentences.at + r->sentences.count)
        return false;
    size_t first = s->first;
    while (first < s->last && leads_to_time(r->words.at[first].tag))
        first++;
    return match_at(r, s, first, KIND_OF(duration));
}

static bool is_time_next_to(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *end = begin + b->chunks.count, *next = c + 1;
    while (next < end && leads_to_time(next->tag))
        next++;
    return (next == end ? is_next_time(b) : next->tag == TAG_DURATION)
           || (c >= begin + 2 && (c - 1)->tag == TAG_AT && (c - 2)->tag == TAG_DURATION);
}

/* What stands between an oven and its heat. */
static bool leads_to_heat(unsigned char tag)
{
    return tag == TAG_AT || tag == TAG_INTO || tag == TAG_TO || tag == TAG_BE || tag == TAG_ATMOST
           || tag == TAG_HEDGE || tag == TAG_OTHER;
}

bool is_oven_set(const struct builder *b, const struct chunk *c)
{
    while (c > b->chunks.at && leads_to_heat((c - 1)->tag))
        c--;
    return c > b->chunks.at
           && ((c - 1)->tag == TAG_OVEN
               || ((c - 1)->tag == TAG_VESSEL && chunk_marks(c - 1) & MARK_OF(fries)));
}

/* Ovens are marked in tens of Celsius, in steps of 25 Fahrenheit. */
static bool is_on_dial(const struct builder *b, struct ratio value)
{
    bool celsius = b->scale == 'C';
    return value.under == 1 && value.over % (celsius ? 10 : 25) == 0
           && value.over >= (celsius ? DIAL_C_LEAST : DIAL_F_LEAST)
           && value.over <= (celsius ? DIAL_C_MOST : DIAL_F_MOST);
}

bool is_dialled(const struct builder *b, const struct chunk *c)
{
    unsigned char lead = c > b->chunks.at ? (c - 1)->tag : (unsigned char) TAG_SO;
    return (lead == TAG_TO || lead == TAG_ATMOST || (lead == TAG_OTHER && (c - 1)->entry == NULL))
           && b->oven_at && is_on_dial(b, c->match->low);
}

bool is_for_a_time(const struct builder *b, const struct chunk *c)
{
    struct ratio value = c->match->low;
    return ratio_double(value) >= OVEN_LEAST && value.under == 1 && value.over % DIAL_STEP == 0
           && is_time_next_to(b, c);
}

/* "If it says eighty-five it's raw, and at ninety-six it's bread": the sentence has a heat without
 * a condition. */
static bool has_sure_heat(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_HEATED && b->chunks.at[i].match
            && !(b->chunks.at[i].scope & SCOPE_NOT_DONE))
            return true;
    return false;
}

bool is_heat_here(const struct builder *b, const struct chunk *c)
{
    unsigned scope = b->r->words.at[c->first].scope;
    if (scope & (SCOPE_UNREAL | SCOPE_NEGATED | SCOPE_INSTEAD))
        return c->match && (is_oven_set(b, c) || (!(scope & SCOPE_NEGATED) && is_for_a_time(b, c)));
    struct temperature t;
    return !(scope & SCOPE_SUPPOSED)
           || (read_temperature(b, c, &t)
               && (text_is(t.of, "inside") || text_is(t.of, "oil")
                       ? !has_sure_heat(b)
                       : has_scale(b, c) || !has_heat_of(b->dish, t.of)));
}
