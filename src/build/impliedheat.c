/* build/impliedheat.c: pans and thermometers that imply what is done: "big pot, medium heat."
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"
#include "build/heatinside.h"
#include "build/stepjoin.h"
#include "build/instruction.h"
#include "build/wording.h"
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
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    return food && food->marks & MARK_OF(fat);
}

/* Butter goes into many things; oil that comes first is for frying. */
static bool is_oil(const struct builder *b, const struct chunk *c)
{
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    return food && food->marks & MARK_OF(fat) && !(food->marks & MARK_OF(dairy));
}

/* "Vegetable oil in the pan, and it must be hot" */
static bool says_hot(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_STATE && is_step_word(b, &b->chunks.at[i], "heated-up"))
            return true;
    return false;
}

/* The pan that was named just before: "Biggest skillet. Two tablespoons of oil." */
static bool is_pan_near(const struct builder *b)
{
    return b->pan && b->pan_at < b->sentence->first
           && b->r->words.at[b->sentence->first].start - b->r->words.at[b->pan_at].end
                  < NEAR_SECONDS
           && !is_filled(b);
}

/* "Two tablespoons of oil in the big pan", "oil in the pan, then the seeds", "a small pan, some oil
 * and garlic": the pan in which a fat is, by itself or first; the fat's chunk where the pan was
 * named before. */
size_t find_fat_pan(const struct builder *b)
{
    size_t vessel = find_done(b, TAG_VESSEL), fat = NOWHERE;
    bool amount = find_line(b, 0, true) != NOWHERE;
    if (b->rundown || !(amount || says_hot(b))
        || (vessel == NOWHERE ? !is_pan_near(b)
                              : !(chunk_marks(&b->chunks.at[vessel]) & MARK_OF(wet))))
        return NOWHERE;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if ((c->tag == TAG_SO || c->tag == TAG_WHEN) && fat != NOWHERE
            && (vessel == NOWHERE || i > vessel))
            break;
        if (c->tag != TAG_LINE || !c->match)
            continue;
        if (!is_fat(b, c)) /* "a small pan, two spoons of oil, and garlic" */
            return fat != NOWHERE && vessel < fat && is_oil(b, &b->chunks.at[fat]) ? vessel
                                                                                   : NOWHERE;
        fat = fat == NOWHERE ? i : fat;
    }
    return fat != NOWHERE && vessel != NOWHERE ? vessel : fat;
}

/* "The thermometer says one sixty-five." "If you've got a probe, seventy-four" is for who has one:
 * its heat is of the step before. */
size_t find_thermometer(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_TOOL && is_thermometer(c->entry) && !(c->scope & SCOPE_NOT_DONE))
            return find_done(b, TAG_HEATED);
    }
    return NOWHERE;
}

/* "Then down to one seventy", "oven down to one eighty": a heat that is less than before, with no
 * verb that says so. */
size_t find_lowered(const struct builder *b)
{
    for (size_t i = 0; i + 2 < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_OTHER || c[1].tag != TAG_TO || !is_step_word(b, c, "lowers"))
            continue;
        const unsigned char before = i ? c[-1].tag : (unsigned char) TAG_SO;
        const bool begins = before == TAG_SO || before == TAG_AND || before == TAG_OVEN
                            || b->r->words.at[c[-1].last].after >= AFTER_COMMA;
        size_t n = i + 2;
        while (n + 1 < b->chunks.count
               && (b->chunks.at[n].tag == TAG_HEDGE || b->chunks.at[n].tag == TAG_ARTICLE))
            n++;
        const unsigned char heat = b->chunks.at[n].tag;
        if (begins && (heat == TAG_HEATED || heat == TAG_HEAT) && is_done(&b->chunks.at[n]))
            return last_heat(b) ? i : NOWHERE;
    }
    return NOWHERE;
}
