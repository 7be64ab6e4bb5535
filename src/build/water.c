/* build/water.c: water, which is on no shopping list, goes in only by an amount, or to cover.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"
#include "match/capture.h"

/* "Water over them, about three quarters of a litre": so many chunks behind it at most. */
#define AMOUNT_CHUNKS 6

static bool is_cover(const struct builder *b, const struct chunk *c)
{
    return c->tag == TAG_ACTION && c->entry && !is_left_out(c)
           && step_words_list(b->k, "immerses", entry_value(c->entry));
}

/* "Cover it with cold water", "fresh water just to cover". */
static bool covers(const struct builder *b, size_t index)
{
    size_t i = index, next = index + 1;
    for (bool with = false; i > 0; i--) {
        const unsigned char tag = b->chunks.at[i - 1].tag;
        with |= tag == TAG_WITH || tag == TAG_INTO;
        if (tag != TAG_WITH && tag != TAG_IT && tag != TAG_THE && tag != TAG_INTO
            && !(with && tag == TAG_LINE)) /* "cover the lentils with water" */
            break;
    }
    if (i > 0 && is_cover(b, &b->chunks.at[i - 1]))
        return true;
    while (chunk_tag(&b->chunks, next) == TAG_WILL || chunk_tag(&b->chunks, next) == TAG_TO
           || chunk_tag(&b->chunks, next) == TAG_OTHER)
        next++;
    return next > index + 1 && next < b->chunks.count && is_cover(b, &b->chunks.at[next]);
}

/* An amount of something wet: "two litres", and no "200 grams". */
static bool is_wet(const struct builder *b, const struct chunk *c)
{
    const struct match *m = c->match;
    const struct entry *unit = match_entry(b->r, m, SLOT_unit);
    return m && c->tag == TAG_AMOUNT && m->rule->kind == RULE_amount && unit
           && unit->tag == TAG_UNIT && !(unit->marks & MARK_OF(weighs));
}

/* "Big pot of water on. Three quarts.", "and water. A cup and a half.": nothing else stands behind
 * it. */
static bool ends(const struct builder *b, size_t i)
{
    while (i < b->chunks.count
           && (b->chunks.at[i].tag == TAG_INTO || b->chunks.at[i].tag == TAG_SO))
        i++;
    return i == b->chunks.count;
}

enum water water_goes_in(const struct builder *b, size_t index)
{
    if (covers(b, index))
        return WATER_COVERS;
    for (size_t i = index + 1; i < b->chunks.count && i <= index + AMOUNT_CHUNKS; i++)
        if (b->chunks.at[i].tag == TAG_LINE)
            return WATER_NONE;
        else if (is_wet(b, &b->chunks.at[i]))
            return WATER_ANNOUNCED;
    return ends(b, index + 1) ? WATER_ANNOUNCED : WATER_NONE;
}
