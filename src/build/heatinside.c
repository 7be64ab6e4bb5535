/* build/heatinside.c
 * SPDX-License-Identifier: MIT */
#include "build/heatinside.h"

#include <math.h>

#include "build/heatof.h"
#include "build/instruction.h"
#include "build/wording.h"

#define BARE_LEAST 50
/* A bare number below it is no heat that a Fahrenheit thermometer is waited for. */
#define INSIDE_F_LEAST 110

bool may_be_inside(const struct builder *b, const struct chunk *c)
{
    double value = ratio_double(c->match->low);
    return value >= (b->scale == 'F' ? INSIDE_F_LEAST : BARE_LEAST) && value <= INSIDE_F_MOST;
}

bool is_thermometer(const struct entry *e)
{
    return e && e->tag == TAG_TOOL && text_is(entry_value(e), "inside");
}

bool tells_of_inside(const struct builder *b, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++) {
        const struct word *w = &b->r->words.at[i];
        if ((w->entry && text_is(entry_value(w->entry), "inside")) || is_thermometer(w->alone))
            return true;
    }
    return false;
}

static bool has_meat(const struct dish *d)
{
    const uint64_t meat = MARK_OF(meat) | MARK_OF(poultry) | MARK_OF(fish) | MARK_OF(shellfish);
    for (size_t i = 0; i < d->ingredients.count; i++)
        if (d->ingredients.at[i].entry && d->ingredients.at[i].entry->marks & meat)
            return true;
    return false;
}

/* A dial is set in fives. */
#define DIAL_STEP 5

/* "Beef's out. Fifty-six, so I missed it": a sentence that begins with the number, and says no more
 * of it. */
static bool is_all_said(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *next = c + 1;
    while (c > begin && (c - 1)->tag == TAG_SO)
        c--;
    return c == begin && (next == begin + b->chunks.count || next->tag == TAG_SO);
}

bool is_no_dial(const struct builder *b, const struct chunk *c)
{
    double value = ratio_double(c->match->low);
    unsigned char lead = c > b->chunks.at ? (c - 1)->tag : (unsigned char) TAG_SO;
    return text_is(c->match->rule->option, "bare") && may_be_inside(b, c) && has_meat(b->dish)
           && fmod(value, DIAL_STEP) != 0.0
           && (lead == TAG_THERE || lead == TAG_BE || lead == TAG_IT || is_all_said(b, c));
}

/* What may stand between "at" or "reads" and the number, or between a verb and "at": "them", "the
 * chops". */
static bool is_passed_over(const struct chunk *c)
{
    return c->tag == TAG_AT || c->tag == TAG_IT || c->tag == TAG_THE || c->tag == TAG_HEDGE
           || c->tag == TAG_OTHER || c->tag == TAG_LINE || c->tag == TAG_PART;
}

/* "It reads one forty-five", "pull it at 135", "take the chops off at 140": a heat that a food has
 * inside. */
static bool is_told_inside(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *before = c;
    double value = ratio_double(c->match->low);
    if (value < BARE_LEAST || value > INSIDE_F_MOST)
        return false;
    while (before > begin && is_passed_over(before - 1))
        before--;
    if (before-- == begin)
        return false;
    if (before->tag == TAG_BE)
        return chunk_marks(before) & MARK_OF(tells);
    const struct entry *does =
        (c - 1)->tag == TAG_AT ? action_entry(b->k, said_verb(b, (size_t) (before - begin)).action)
                               : NULL;
    return does && does->marks & MARK_OF(takes) && may_be_inside(b, c);
}

/* "It's one sixty-five in there", "one eighty in the breast". */
static bool is_within(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *end = begin + b->chunks.count, *at = c + 1;
    if (c == begin || at == end || at->tag != TAG_INTO || !may_be_inside(b, c)
        || ((c - 1)->tag != TAG_THERE && (c - 1)->tag != TAG_BE && (c - 1)->tag != TAG_AT
            && !is_step_word(b, c - 1, "wants")))
        return false;
    at++;
    while (at < end && at->tag == TAG_THE)
        at++;
    return at < end && (at->tag == TAG_LINE || at->tag == TAG_PART || is_step_word(b, at, "there"));
}

bool is_read_inside(const struct builder *b, const struct chunk *c)
{
    return is_told_inside(b, c) || is_within(b, c) || is_no_dial(b, c);
}

bool is_inside_too(const struct builder *b, const struct chunk *c)
{
    if (c == b->chunks.at || ((c - 1)->tag != TAG_AT && (c - 1)->tag != TAG_THERE)
        || !may_be_inside(b, c))
        return false;
    for (const struct chunk *k = c - 1; k >= b->chunks.at; k--)
        if (k->tag == TAG_HEATED && k->match)
            return text_is(temperature_of(b, k), "inside");
    return false;
}
