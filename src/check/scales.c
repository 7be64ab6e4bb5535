/* check/scales.c: an oven's number that is possible in both scales.
 * SPDX-License-Identifier: MIT */
#include "check/ambiguous.h"

/* Ovens are set to these in either scale; lower is Celsius, higher Fahrenheit (common practice, no
 * source). */
#define EITHER_SCALE_LEAST 200
#define EITHER_SCALE_MOST 259

static bool has_scale(const struct recording *r, struct span words)
{
    return span_has_tag(r, words, TAG_SCALE) || span_has_tag(r, words, TAG_GAS);
}

static bool tells_no_scale(const struct recording *r, const struct temperature *t)
{
    double value = ratio_double(t->value);
    return !has_scale(r, t->words) && t->unit != 'G' && value >= EITHER_SCALE_LEAST
           && value <= EITHER_SCALE_MOST;
}

/* Whether another heat of the recording tells which scale the cook speaks of. */
static bool scale_known(const struct recording *r)
{
    for (size_t d = 0; d < r->dishes.count; d++)
        for (size_t i = 0; i < r->dishes.at[d].steps.count; i++) {
            const struct step *s = &r->dishes.at[d].steps.at[i];
            for (size_t n = 0; n < s->temperatures.count; n++)
                if (!tells_no_scale(r, &s->temperatures.at[n]))
                    return true;
        }
    return false;
}

/* "Celsius, yeah?", said of any heat of the recording. */
static bool scale_said(const struct recording *r)
{
    for (size_t i = 0; i < r->words.count; i++)
        if (r->words.at[i].tag == TAG_SCALE || r->words.at[i].tag == TAG_GAS)
            return true;
    return false;
}

/* Who weighs all in grams has an oven in Celsius (common practice, no source). */
#define GRAMS_LEAST 3
static bool weighs_in_grams(const struct recording *r)
{
    size_t grams = 0;
    for (size_t d = 0; d < r->dishes.count; d++)
        for (size_t i = 0; i < r->dishes.at[d].ingredients.count; i++) {
            struct text unit = r->dishes.at[d].ingredients.at[i].amount.unit;
            if (text_is(unit, "cup") || text_is(unit, "ounce") || text_is(unit, "pound"))
                return false;
            grams +=
                text_is(unit, "gram") || text_is(unit, "kilogram") || text_is(unit, "milliliter");
        }
    return grams >= GRAMS_LEAST;
}

void find_scales(struct checker *c)
{
    for (size_t i = 0; i < c->dish->steps.count; i++)
        for (size_t n = 0; n < c->dish->steps.at[i].temperatures.count; n++) {
            const struct temperature *t = &c->dish->steps.at[i].temperatures.at[n];
            if (!text_is(t->of, "oven") || !tells_no_scale(c->r, t) || scale_known(c->r)
                || scale_said(c->r) || weighs_in_grams(c->r))
                continue;
            struct text value = shown_number(c, ratio_double(t->value));
            ask_which(c, t->words, WORDING(c, "fahrenheit", value), WORDING(c, "celsius", value));
            return;
        }
}
