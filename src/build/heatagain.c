/* build/heatagain.c: temperatures that are said more than once.
 * SPDX-License-Identifier: MIT */
#include "build/heatagain.h"

#include "build/heat.h"
#include "build/heatof.h"
#include "build/wording.h"
#include "match/subject.h"

/* "Four hundred. Hang on, no, three seventy-five.": so many words between them at most. */
#define CORRECTION_WORDS 14

static bool took_back(const struct builder *b, size_t first, size_t last)
{
    for (size_t i = first; i <= last; i++)
        if ((b->r->words.at[i].tag == TAG_SORRY && !b->r->words.at[i].filler)
            || is_no_by_itself(b->r, i))
            return true;
    return false;
}

static bool is_bare(const struct chunk *c)
{
    return text_is(c->match->rule->option, "bare");
}

/* The same heat of the same thing; a number alone is the one that it was before, whatever the
 * sentence speaks of: "back in, three seventy-five". */
static bool is_same_heat(const struct builder *b, const struct chunk *c,
                         const struct temperature *old, const struct temperature *t)
{
    if (!ratio_equal(old->value, t->value))
        return false;
    if (text_equal(old->of, t->of) && old->unit == t->unit)
        return true;
    return is_bare(c) && !says_heated(b, c);
}

/* "It's at one forty, and you want one sixty-five": the first is only where it is now. */
static bool is_not_there_yet(const struct builder *b, const struct chunk *c,
                             const struct temperature *old, const struct temperature *t)
{
    return c > b->chunks.at && is_step_word(b, c - 1, "wants") && text_is(t->of, "inside")
           && old->words.first >= b->sentence->first && ratio_compare(old->value, t->value) < 0;
}

static bool takes_place(const struct builder *b, const struct chunk *c,
                        const struct temperature *old, const struct temperature *t)
{
    if (!text_equal(old->of, t->of) || old->unit != t->unit || t->words.first <= old->words.last)
        return false;
    return is_not_there_yet(b, c, old, t)
           || (t->words.first - old->words.last < CORRECTION_WORDS
               && took_back(b, old->words.last, t->words.first));
}

bool is_heat_again(struct builder *b, const struct chunk *c, const struct temperature *t)
{
    for (size_t i = b->dish->steps.count; i-- > 0;) {
        struct step *s = &b->dish->steps.at[i];
        for (size_t n = 0; n < s->temperatures.count; n++) {
            struct temperature *old = &s->temperatures.at[n];
            if (is_same_heat(b, c, old, t))
                return true;
            if (takes_place(b, c, old, t)) {
                *old = *t;
                return true;
            }
        }
    }
    return false;
}

bool has_heat_of(const struct dish *d, struct text of)
{
    for (size_t i = 0; i < d->steps.count; i++)
        for (size_t n = 0; n < d->steps.at[i].temperatures.count; n++)
            if (text_equal(d->steps.at[i].temperatures.at[n].of, of))
                return true;
    return false;
}
