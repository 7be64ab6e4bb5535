/* build/impliedheat.c: pans and thermometers that imply what is done: "big pot, medium heat."
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"
#include "build/stepjoin.h"
#include "build/instruction.h"
#include "match/capture.h"

/* Of two chunks that must both be there. */
static size_t earlier(size_t a, size_t b)
{
    return a == NOWHERE || b == NOWHERE ? NOWHERE : a < b ? a : b;
}

/* Whether a food that is no fat went into the pan. */
static bool is_filled(const struct builder *b)
{
    for (size_t i = b->dish->ingredients.count; b->pan && i-- > 0;) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->id > b->pan_at && line->id < b->sentence->first
            && !(line->entry && line->entry->marks & MARK_OF(fat)))
            return true;
    }
    return false;
}

/* "Big pot, medium heat." "The big pot. Medium heat." */
size_t find_pan_heat(const struct builder *b)
{
    size_t heat = find_done(b, TAG_HEAT), vessel = find_done(b, TAG_VESSEL);
    if (vessel != NOWHERE && find_done(b, TAG_DURATION) != NOWHERE
        && !(chunk_marks(&b->chunks.at[vessel]) & MARK_OF(wet)))
        return NOWHERE; /* "lid on, ten minutes on low" */
    if (vessel == NOWHERE
        && ((find_done(b, TAG_DURATION) != NOWHERE && !instruction_marks(b)) || is_filled(b)))
        return NOWHERE; /* what is in it cooks: "medium heat, ten minutes" */
    bool before =
        b->pan && heat != NOWHERE && b->pan_at < b->sentence->first
        && b->r->words.at[b->sentence->first].start - b->r->words.at[b->pan_at].end < NEAR_SECONDS
        && find_done(b, TAG_OVEN) == NOWHERE;
    return before && vessel == NOWHERE ? heat : earlier(vessel, heat);
}

static bool is_fat(const struct builder *b, const struct chunk *c)
{
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
    return food && food->marks & MARK_OF(fat);
}

/* "Two tablespoons of oil in the big pan", "oil in the pan, then the seeds": the pan in which a fat
 * and nothing else is. */
size_t find_fat_pan(const struct builder *b)
{
    size_t vessel = find_done(b, TAG_VESSEL);
    if (vessel == NOWHERE || find_line(b, 0, true) == NOWHERE || b->rundown
        || !(chunk_marks(&b->chunks.at[vessel]) & MARK_OF(wet)))
        return NOWHERE;
    bool fat = false;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if ((c->tag == TAG_SO || c->tag == TAG_WHEN) && fat && i > vessel)
            break;
        fat |= c->tag == TAG_LINE && c->match && is_fat(b, c);
        if (c->tag == TAG_LINE && c->match && !is_fat(b, c))
            return NOWHERE;
    }
    return vessel;
}

/* "The thermometer says one sixty-five." "If you've got a probe, seventy-four" is for who has one:
 * its heat is of the step before. */
size_t find_thermometer(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_TOOL && c->entry && text_is(entry_value(c->entry), "inside")
            && !(c->scope & SCOPE_NOT_DONE))
            return find_done(b, TAG_HEATED);
    }
    return NOWHERE;
}
