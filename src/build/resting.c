/* build/resting.c
 * SPDX-License-Identifier: MIT */
#include "build/resting.h"

#include "build/implied.h"
#include "build/instruction.h"
#include "build/wording.h"

/* A thermometer was read in the food. */
static bool tells_inside(const struct step *s)
{
    for (size_t n = 0; n < s->temperatures.count; n++)
        if (text_is(s->temperatures.at[n].of, "inside"))
            return true;
    return false;
}

static bool heats(const struct builder *b, const struct step *s)
{
    if (tells_inside(s))
        return true;
    for (size_t n = 0; n < s->actions.count; n++) {
        const struct entry *e = action_entry(b->k, s->actions.at[n]);
        if (e && e->marks & MARK_OF(heats) && !(e->marks & MARK_OF(changes)))
            return true;
    }
    return false;
}

/* The last word with which something was heated: a verb said so, or it went on a grill; 0 for none.
 */
static size_t heated_at(const struct builder *b)
{
    const struct dish *d = b->dish;
    for (size_t i = d->steps.count; i-- > 0;) {
        size_t last = d->steps.at[i].words.last;
        if (last <= b->grill_at || heats(b, &d->steps.at[i]))
            return last > b->grill_at ? last : b->grill_at;
    }
    return b->grill_at;
}

/* A part of the dish that waits was made of the last so many foods. */
#define PART_LINES 12

uint64_t part_shapes(const struct builder *b)
{
    const size_t count = b->dish->ingredients.count;
    uint64_t shapes = 0;
    for (size_t i = count; i-- > 0 && count - i <= PART_LINES;)
        if (b->dish->ingredients.at[i].group.length)
            shapes |= text_shape(b->dish->ingredients.at[i].group);
    return shapes;
}

bool lies_in(const struct builder *b, struct text part)
{
    const size_t count = b->dish->ingredients.count;
    for (size_t i = count; i-- > 0 && count - i <= PART_LINES;)
        if (text_equal(b->dish->ingredients.at[i].group, part))
            return heated_at(b) <= b->dish->ingredients.at[i].id;
    return false;
}

#define RAW (MARK_OF(meat) | MARK_OF(poultry) | MARK_OF(fish) | MARK_OF(shellfish))

/* The last food that is bought raw, and lies as it is; NULL for none. */
static const struct ingredient *raw_meat(const struct dish *d)
{
    for (size_t i = d->ingredients.count; i-- > 0;) {
        const struct entry *e = d->ingredients.at[i].entry;
        if (e && e->marks & RAW && !(e->marks & (MARK_OF(ground) | MARK_OF(cooked))))
            return &d->ingredients.at[i];
    }
    return NULL;
}

bool has_raw_meat(const struct dish *d)
{
    return raw_meat(d) != NULL;
}

#define MARINADE_FOODS 3 /* salt apart */

bool lies_raw(const struct builder *b)
{
    const struct ingredient *meat = raw_meat(b->dish);
    size_t tasty = 0;
    for (size_t i = 0; meat && i < b->dish->ingredients.count; i++) {
        const struct entry *e = b->dish->ingredients.at[i].entry;
        tasty += !e || !(e->marks & (RAW | MARK_OF(salt)));
    }
    return meat && tasty + 1 >= MARINADE_FOODS && heated_at(b) <= meat->id;
}

/* Whether words [first, last] pour water or milk over something, or cover it with them. */
static bool says_soaking(const struct builder *b, size_t first, size_t last)
{
    bool wet = false, over = false;
    for (size_t i = first; i <= last; i++) {
        const struct word *w = &b->r->words.at[i];
        wet |= step_words_list(b->k, "soaks", w->key);
        over |= step_words_list(b->k, "poured", w->key);
    }
    return wet && over;
}

bool is_soaking(const struct builder *b)
{
    size_t time = find_done(b, TAG_DURATION), steps = b->dish->steps.count;
    const struct step *last = steps ? &b->dish->steps.at[steps - 1] : NULL;
    if (time == NOWHERE || last_heat(b) & (MARK_OF(heats) | MARK_OF(ovens)))
        return false;
    size_t first = b->sentence->first;
    if (last && last->words.first < first && b->r->words.at[first].start - last->end < NEAR_SECONDS)
        first = last->words.first;
    return says_soaking(b, first, b->chunks.at[time].first);
}

/* So many chunks stand at most between the time and the verb: "before you even think of cutting".
 */
#define KNIFE_CHUNKS 5

bool waits_for_knife(const struct builder *b)
{
    size_t time = find_done(b, TAG_DURATION), before = NOWHERE;
    for (size_t i = time; i < b->chunks.count && i <= time + KNIFE_CHUNKS; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (before == NOWHERE && is_step_word(b, c, "until-then"))
            before = i;
        else if (before != NOWHERE
                 && (chunk_marks(c) & (MARK_OF(cuts) | MARK_OF(serves))
                     || is_step_word(b, c, "knife")))
            return true;
    }
    return false;
}

bool is_taken_off(const struct builder *b)
{
    size_t time = find_done(b, TAG_DURATION), steps = b->dish->steps.count;
    const struct step *last = steps ? &b->dish->steps.at[steps - 1] : NULL;
    if (time == NOWHERE || !last || find_done(b, TAG_HEAT) != NOWHERE)
        return false;
    for (size_t i = steps; i-- > 0 && i + 3 > steps;) {
        const struct step *s = &b->dish->steps.at[i];
        if (b->r->words.at[b->chunks.at[time].first].start - s->end > NEAR_SECONDS)
            return false;
        for (size_t n = s->actions.count; n-- > 0;) {
            const struct entry *e = action_entry(b->k, s->actions.at[n]);
            if (step_words_list(b->k, "taken-off", s->actions.at[n]))
                return true;
            if (!e || !(e->marks & (MARK_OF(brief) | MARK_OF(changes))))
                return false;
        }
    }
    return false;
}

bool is_on_paper(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        for (size_t n = i + 1; b->chunks.at[i].tag == TAG_INTO && n < b->chunks.count && n < i + 4;
             n++)
            if (is_step_word(b, &b->chunks.at[n], "drains-on"))
                return b->chunks.at[n].first == b->chunks.at[n].last;
    return false;
}
