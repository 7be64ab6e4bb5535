/* build/heatlimits.c
 * SPDX-License-Identifier: MIT */
#include "build/heatlimits.h"

#include "build/heat.h"

#include <math.h>

#include "build/context.h"
#include "build/heatinside.h"
#include "match/capture.h"

#define WATER_F_MOST 212
#define OIL_C_LEAST 110
/* A griddle for pancakes is hotter. */
#define PAN_C_LEAST 80
#define DIAL_STEP 5
/* Sugar is boiled up to caramel (common practice, no source). */
#define CARAMEL_C_MOST 180

static bool counts_celsius(const struct builder *b, const struct entry *scale)
{
    return scale ? is_celsius(scale) : b->scale == 'C';
}

bool may_have_heat(const struct builder *b, const struct chunk *c, struct text thing)
{
    const struct entry *scale = match_entry(b->r, c->match, SLOT_scale);
    double value = ratio_double(c->match->low);
    bool celsius = counts_celsius(b, scale);
    if (text_is(thing, "water"))
        return value <= (celsius ? WATER_C_MOST : WATER_F_MOST);
    if (!text_is(thing, "inside") || !celsius)
        return true;
    return value <= (last_heat(b) & MARK_OF(boils) ? CARAMEL_C_MOST : SUGAR_C_MOST);
}

/* Heats that a kitchen has, by what is hot: a bare number outside of them counts something else.
 * Water boils at 100 Celsius at most; fats fry from about 120 to 230 (common practice, no source).
 */
bool is_possible(const struct temperature *t)
{
    double value = ratio_double(t->value);
    double celsius = t->unit == 'F' ? (value - 32) / 1.8 : value;
    if (text_is(t->of, "water"))
        return celsius <= WATER_C_MOST;
    if (text_is(t->of, "pan"))
        return celsius >= PAN_C_LEAST;
    if (text_is(t->of, "oven") && t->unit != 'G' && fmod(value, DIAL_STEP) != 0.0)
        return false;
    return !text_is(t->of, "oil") || (celsius >= OIL_C_LEAST && celsius <= OIL_C_MOST);
}
