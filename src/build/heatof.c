/* build/heatof.c: what a temperature is of.
 * SPDX-License-Identifier: MIT */
#include "build/heatof.h"

#include "build/context.h"
#include "build/heat.h"
#include "build/heatinside.h"
#include "build/heatlimits.h"
#include "build/heattime.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/wording.h"
#include "match/capture.h"

/* A verb or a fat near the number tells less than "oven" or "middle": as if so many words farther
 * off. */
#define MARK_TRUST 6
/* "Oven on. One eighty.": what a number without a thing is of may stand so many sentences before.
 */
#define HEATED_SENTENCES 2
#define OIL_LEAST 150 /* in Celsius; less is read in what is fried */
/* "Preheat": the verb names the oven itself. */
static bool is_preheating(const struct entry *e)
{
    const uint64_t both = MARK_OF(ovens) | MARK_OF(changes);
    return e->tag == TAG_ACTION && (e->marks & both) == both;
}

/* "Put a thermometer in it", "if you want to check it". */
static bool is_checking(const struct builder *b, const struct entry *e)
{
    return e->tag == TAG_ACTION
           && text_equal(entry_value(e), implied_heat(b->k, TEXT_OF("inside")));
}

/* A dial, or a stove: may be that of a griddle as well. */
static bool is_dial(const struct entry *e)
{
    return e && e->tag == TAG_OVEN && !(e->marks & (MARK_OF(ovens) | MARK_OF(grills)));
}

/* "Two spoons of oil, and two hundred for forty minutes": so little oil is hot by itself nowhere.
 */
static bool is_spoonful(const struct builder *b, const struct chunk *k)
{
    for (size_t i = k->first; k->match && i <= k->last; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_UNIT && w->entry
            && step_words_list(b->k, "spoonful", entry_value(w->entry)))
            return true;
    }
    return false;
}

/* What an entry says a temperature is of, and how far that word is trusted, in words of distance.
 * A pan is trusted least: most pans stand in or on what has the heat. */
static struct text thing_of(const struct builder *b, const struct entry *e, size_t *away)
{
    static const char *const things[] = {"oil", "inside", "water"};
    for (size_t n = 0; n < sizeof things / sizeof *things; n++)
        if (text_is(entry_value(e), things[n]) && e->tag != TAG_ACTION)
            return text_from(things[n]);
    if (e->tag == TAG_OVEN || is_preheating(e))
        return TEXT_OF("oven");
    *away += MARK_TRUST;
    if ((e->tag == TAG_ACTION && e->marks & (MARK_OF(ovens) | MARK_OF(changes)))
        || (e->tag == TAG_PLACE && e->marks & MARK_OF(ovens))) /* "one eighty, middle shelf" */
        return TEXT_OF("oven");
    if (e->tag == TAG_ACTION && e->marks & MARK_OF(deep))
        return TEXT_OF("oil");
    if (e->tag == TAG_FOOD && e->marks & MARK_OF(fat) && !(e->marks & MARK_OF(dairy)))
        return TEXT_OF("oil");
    if (e->tag == TAG_FOOD && e->marks & MARK_OF(water))
        return TEXT_OF("water");
    *away += MARK_TRUST;
    if (is_checking(b, e))
        return TEXT_OF("inside");
    return e->tag == TAG_VESSEL && (e->marks & MARK_OF(fries) || text_is(entry_value(e), "pan"))
               ? TEXT_OF("pan")
               : TEXT_EMPTY;
}

/* What chunk `k` may be the heat of. */
static struct text thing_at(const struct builder *b, const struct chunk *k, size_t *away)
{
    const struct entry *e = k->match ? match_entry(b->r, k->match, SLOT_food) : k->entry;
    return e && !is_spoonful(b, k) ? thing_of(b, e, away) : TEXT_EMPTY;
}

/* The chunk nearest to `c` that tells what the heat is of; NULL where none does. With `possible`
 * set, only of what can have that heat. */
static const struct chunk *nearest_of(const struct builder *b, const struct chunk *c, bool possible,
                                      struct text *of)
{
    size_t best = SIZE_MAX;
    const struct chunk *nearest = NULL;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *k = &b->chunks.at[i];
        size_t away = k->first > c->last ? k->first - c->last : c->first - k->last;
        struct text thing = k == c ? TEXT_EMPTY : thing_at(b, k, &away);
        if (thing.length && away < best && (!possible || may_have_heat(b, c, thing))) {
            best = away;
            nearest = k;
            *of = thing;
        }
    }
    return nearest;
}

/* What can have the heat, before what cannot: "180, and it trembles only in the middle". With a
 * time beside it it is an oven's then. */
static const struct chunk *nearest_thing(const struct builder *b, const struct chunk *c,
                                         struct text *of)
{
    const struct chunk *nearest = nearest_of(b, c, true, of);
    return nearest || is_for_a_time(b, c) ? nearest : nearest_of(b, c, false, of);
}

bool says_heated(const struct builder *b, const struct chunk *c)
{
    struct text of = TEXT_EMPTY;
    const struct chunk *nearest = nearest_thing(b, c, &of);
    return nearest && !is_dial(nearest->entry);
}

/* Whether the sentence, or one just before it, speaks of a griddle or frying pan. */
static bool says_pan(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_VESSEL && chunk_marks(&b->chunks.at[i]) & MARK_OF(fries))
            return true;
    return text_is(b->heated, "pan") && b->heated_age <= HEATED_SENTENCES;
}

/* "The middle is ninety Celsius." */
static bool is_of_middle(const struct builder *b, const struct chunk *c)
{
    return c >= b->chunks.at + 2 && (c - 1)->tag == TAG_BE && (c - 2)->tag == TAG_PLACE;
}

/* Whether a number without a thing can be of what the sentences before spoke of: no oven is that
 * cool, no food that hot inside, and a bare number is told of it: "it's at 178". */
static bool goes_on(const struct builder *b, const struct chunk *c)
{
    double value = ratio_double(c->match->low);
    unsigned char lead = c > b->chunks.at ? (c - 1)->tag : (unsigned char) TAG_SO;
    if (!may_have_heat(b, c, b->heated))
        return false;
    if (text_is(b->heated, "oven"))
        return value >= OVEN_LEAST && !is_of_middle(b, c) && !is_no_dial(b, c);
    if (!text_is(b->heated, "inside") || !text_is(c->match->rule->option, "bare"))
        return true;
    return may_be_inside(b, c)
           && (lead == TAG_AT || lead == TAG_IT || lead == TAG_BE || lead == TAG_THERE
               || lead == TAG_ACTION || lead == TAG_DOING || lead == TAG_SO || lead == TAG_HEDGE
               || lead == TAG_TO || lead == TAG_FOR);
}

/* What the temperature is of, by the nearest word that tells; else what the sentences before spoke
 * of. */
static struct text heated_thing(const struct builder *b, const struct chunk *c)
{
    struct text of = TEXT_EMPTY;
    const struct chunk *nearest = nearest_thing(b, c, &of);
    bool before = b->heated.length && b->heated_age <= HEATED_SENTENCES;
    if (nearest && is_dial(nearest->entry) && says_pan(b))
        return TEXT_OF("pan");
    if (nearest && nearest->entry && is_checking(b, nearest->entry) && !may_be_inside(b, c))
        of = TEXT_EMPTY; /* the thermometer is in the oil */
    bool oil = before && text_is(b->heated, "oil");
    if (nearest && nearest->tag == TAG_TOOL && oil && ratio_double(c->match->low) >= OIL_LEAST)
        return TEXT_OF("oil");
    if (text_is(of, "pan") && before && text_is(b->heated, "oven"))
        return b->heated;
    return !of.length && before && goes_on(b, c) ? b->heated : of;
}

/* "Two inches of oil": so much is for frying in. */
static bool says_depth(const struct builder *b)
{
    for (size_t i = b->sentence->first; i <= b->sentence->last; i++)
        if (b->r->words.at[i].tag == TAG_LENGTH)
            return true;
    return false;
}

/* Whether the sentence says a heat, a pan, or a verb that heats. */
static bool gets_hot(const struct builder *b)
{
    const uint64_t cooks = MARK_OF(heats) | MARK_OF(fries) | MARK_OF(deep);
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *k = &b->chunks.at[i];
        if (k->tag == TAG_HEAT || k->tag == TAG_HEATED
            || (k->tag == TAG_VESSEL && chunk_marks(k) & (MARK_OF(wet) | MARK_OF(fries)))
            || ((k->tag == TAG_ACTION || k->tag == TAG_DOING) && chunk_marks(k) & cooks))
            return true;
    }
    return false;
}

static void set_heated(struct builder *b, struct text thing)
{
    b->heated = thing;
    b->heated_age = 0;
}

void note_heated(struct builder *b)
{
    b->heated_age++;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        size_t away = 0;
        struct text thing = thing_at(b, c, &away);
        if (text_is(thing, "pan") && text_is(b->heated, "oil") && b->heated_age <= 1)
            continue; /* "oil in the pan" */
        if (text_is(thing, "oil") && !gets_hot(b) && !says_depth(b))
            continue; /* "rub them with oil" */
        if (c->tag == TAG_ACTION && tells_of_inside(b, chunk_words(c)))
            set_heated(b, TEXT_OF("inside")); /* "put the thermometer in" */
        if (thing.length && (away == 0 || text_is(thing, "oil") || text_is(thing, "pan")))
            set_heated(b, thing);
    }
    for (size_t i = 0; i < b->chunks.count; i++) {
        struct temperature t;
        if (b->chunks.at[i].tag == TAG_HEATED && b->chunks.at[i].match
            && read_temperature(b, &b->chunks.at[i], &t))
            set_heated(b, t.of);
    }
}

/* What may stand between the two ovens of "two hundred, or one eighty if you have a fan". */
static bool leads_to_other(const struct chunk *c)
{
    return c->tag == TAG_OR || c->tag == TAG_AND || c->tag == TAG_HEDGE || c->tag == TAG_THERE
           || c->tag == TAG_IF || c->tag == TAG_SO;
}

/* "Regular two hundred, fan one eighty", "gas four, or 180": a bare number beside an oven's heat
 * that has its scale is an oven's too. */
static bool is_beside_oven(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *end = begin + b->chunks.count, *other = c + 1;
    while (other < end && leads_to_other(other))
        other++;
    if (other == end || other->tag != TAG_HEATED)
        for (other = c - 1; other > begin && leads_to_other(other);)
            other--;
    if (other < begin || other >= end || other->tag != TAG_HEATED || !other->match)
        return false;
    const struct entry *scale = match_entry(b->r, other->match, SLOT_scale);
    return scale && ratio_double(c->match->low) >= OVEN_LEAST;
}

/* Whether the sentence speaks of a grill or of its lid. */
static bool says_grill(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *k = &b->chunks.at[i];
        if ((k->tag == TAG_OVEN && chunk_marks(k) & MARK_OF(grills)) || is_step_word(b, k, "lid"))
            return true;
    }
    return false;
}

/* What the number is of, where no word by itself tells, or tells what cannot be. */
struct text temperature_of(const struct builder *b, const struct chunk *c)
{
    struct text of = heated_thing(b, c);
    bool cool_oil = text_is(of, "oil") && ratio_double(c->match->low) < OIL_LEAST; /* "fat end" */
    if (is_read_inside(b, c) && (cool_oil || !says_heated(b, c))
        && may_have_heat(b, c, TEXT_OF("inside")))
        return TEXT_OF("inside");
    if (!of.length && (is_beside_oven(b, c) || is_dialled(b, c)))
        return TEXT_OF("oven");
    if (!of.length && is_inside_too(b, c))
        return TEXT_OF("inside");
    if (!of.length && last_heat(b) & MARK_OF(deep))
        return TEXT_OF("oil");
    if (!text_is(of, "inside") || ratio_double(c->match->low) <= INSIDE_F_MOST)
        return of;
    if (says_grill(b))
        return TEXT_OF("oven"); /* the thermometer is in the lid */
    uint64_t heat = last_heat(b);
    bool jam = heat & MARK_OF(boils); /* "two twenty Fahrenheit" */
    if (heat & (MARK_OF(deep) | MARK_OF(fries)))
        return TEXT_OF("oil");
    return text_is(b->heated, "oil") || (text_is(b->heated, "oven") && !jam) ? b->heated : of;
}
