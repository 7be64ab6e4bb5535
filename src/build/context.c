/* build/context.c: what a weak action means where the dish is: the pack's table context-actions.
 * SPDX-License-Identifier: MIT */
#include "build/context.h"

#include "build/cooling.h"
#include "build/implied.h"
#include "build/inoven.h"
#include "build/instruction.h"
#include "build/resting.h"
#include "build/wetpan.h"
#include "build/wording.h"
#include "match/capture.h"
#include "match/clause.h"

/* A dish that is heated at all is so within so many steps. */
#define HEAT_STEPS 200

/* The dish's last step that heats anything, and the marks of its action; NULL when nothing was
 * heated. */
static const struct step *heated_last(const struct builder *b, uint64_t *marks)
{
    const uint64_t heating = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits);
    const size_t count = b->dish->steps.count;
    for (size_t i = count; i-- > 0 && count - i <= HEAT_STEPS;) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = s->actions.count; n-- > 0;) {
            const struct entry *e = action_entry(b->k, s->actions.at[n]);
            if (e && e->marks & heating) {
                *marks = e->marks;
                return s;
            }
        }
    }
    return NULL;
}

uint64_t last_heat(const struct builder *b)
{
    uint64_t marks = 0;
    (void) heated_last(b, &marks);
    return marks;
}

/* Whether food cooks in a frying pan now. */
static bool is_frying(const struct builder *b, uint64_t heat)
{
    const uint64_t others = MARK_OF(boils) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(grills);
    bool in_pan = b->pan && b->pan->marks & MARK_OF(fries);
    if (bakes_in_tin(b))
        return false;
    return heat & MARK_OF(fries) || (in_pan && heat & MARK_OF(heats) && !(heat & others));
}

/* Whether the dish is over direct heat now. */
static bool is_grilling(const struct builder *b, uint64_t heat)
{
    const uint64_t other = MARK_OF(boils) | MARK_OF(fries) | MARK_OF(deep);
    uint64_t marks = 0;
    const struct step *last = heated_last(b, &marks);
    bool since = !(heat & other) || (last && b->grill_at > last->words.last);
    return heat & MARK_OF(grills)
           || (since && is_after_pan(b, b->grill_at) && b->grill_at > b->oven_at);
}

/* Whether chunks `i` and `n` stand in one clause with no other verb between. */
static bool is_together(const struct builder *b, size_t i, size_t n)
{
    size_t first = i < n ? i : n, last = i < n ? n : i;
    for (size_t k = first; k < last; k++)
        if (clause_ends(b->r, b->sentence, b->chunks.at[k].last)
            || (k > first && b->chunks.at[k].tag == TAG_ACTION))
            return false;
    return true;
}

/* A Dutch oven is a pot. */
static bool is_vessel_of_words(const struct chunk *c)
{
    return c->tag == TAG_VESSEL && c->entry && c->entry->words_count > 1;
}

/* Whether the sentence names the thing, by one word; for the verb in chunk `verb`, if that is one.
 */
static bool names(const struct builder *b, struct text thing, size_t verb)
{
    if (!(b->chunks.shapes & text_shape(thing)))
        return false;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        bool here = c->entry && text_equal(entry_value(c->entry), thing);
        for (size_t n = c->first; n <= c->last && !here && !is_vessel_of_words(c); n++)
            here = text_equal(b->r->words.at[n].key, thing);
        if (here && (verb == NOWHERE || is_together(b, verb, i)))
            return true;
    }
    return false;
}

/* "Back in goes the meat", "it goes back to the pot", but not "on the back burner", "stand back".
 */
static bool is_returned(const struct builder *b, size_t verb)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        unsigned char next = chunk_tag(&b->chunks, i + 1);
        if ((next == TAG_INTO || next == TAG_ACTION)
            && is_step_word(b, &b->chunks.at[i], "returned")
            && (verb == NOWHERE || is_together(b, verb, i)))
            return true;
    }
    return false;
}

/* "Over the top", but not "on top of it"; of the verb in chunk `verb`, if that is one. */
static bool ends_on_top(const struct builder *b, size_t verb)
{
    size_t top = find_done(b, TAG_FINISH);
    return top != NOWHERE && !(top + 1 < b->chunks.count && b->chunks.at[top + 1].tag == TAG_OF)
           && (verb == NOWHERE || is_together(b, verb, top));
}

static bool says_vague(const struct builder *b, const struct chunk *c)
{
    for (size_t i = c->first; i <= c->last; i++)
        if (b->r->words.at[i].tag == TAG_VAGUE)
            return true;
    return false;
}

bool is_poured(const struct builder *b)
{
    size_t line = find_done(b, TAG_LINE);
    const struct match *m = line == NOWHERE ? NULL : b->chunks.at[line].match;
    const struct entry *food = match_entry(b->r, m, SLOT_food);
    bool little = line != NOWHERE && says_vague(b, &b->chunks.at[line]); /* "a bit of milk" */
    return food && !little && !(food->marks & MARK_OF(produce))          /* nor "tomatoes on top" */
           && step_words_list(b->k, "liquid", text_last_word(entry_value(food)));
}

static bool says_time(const struct builder *b)
{
    return find_done(b, TAG_DURATION) != NOWHERE;
}

static bool names_optional(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE && c->match && is_done(c) && c->scope & SCOPE_OPTIONAL)
            return true;
    }
    return false;
}

/* The marks of what was done last: "lid on, and leave it alone for an hour", "lay them in and leave
 * them". */
static uint64_t last_marks(const struct builder *b)
{
    const struct step *s =
        b->dish->steps.count ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
    const struct entry *e =
        s && s->actions.count ? action_entry(b->k, s->actions.at[s->actions.count - 1]) : NULL;
    return e ? e->marks : 0;
}

/* "Skin side up", "on the hot side", but not "a minute a side", "on both sides". */
static bool is_laid(const struct builder *b, size_t verb)
{
    for (size_t i = 1; verb != NOWHERE && i < b->chunks.count; i++) {
        unsigned char before = b->chunks.at[i - 1].tag;
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_SIDE && !(chunk_marks(c) & MARK_OF(plural)) && before != TAG_ARTICLE
            && before != TAG_EACH && before != TAG_DURATION && before != TAG_NUMBER
            && is_together(b, verb, i))
            return true;
    }
    return false;
}

/* "Until it's stone cold", "once it's cool". */
static bool gets_cold(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].scope & SCOPE_UNTIL && is_step_word(b, &b->chunks.at[i], "cooled"))
            return true;
    return false;
}

/* Yeast needs longer than this; a shorter wait is for something else. */
#define RISING_SECONDS 900.0

static bool says_rising_time(const struct builder *b)
{
    size_t time = find_done(b, TAG_DURATION);
    return time != NOWHERE && b->chunks.at[time].match
           && ratio_double(b->chunks.at[time].match->low) > RISING_SECONDS;
}

bool is_proving(const struct builder *b)
{
    const uint64_t cooked = MARK_OF(ovens) | MARK_OF(fries) | MARK_OF(deep) | MARK_OF(grills);
    bool yeast = false;
    if (!says_rising_time(b) || says_cold(b))
        return false;
    for (size_t i = 0; i < b->dish->ingredients.count && !yeast; i++)
        yeast = b->dish->ingredients.at[i].entry
                && b->dish->ingredients.at[i].entry->marks & MARK_OF(leavening)
                && step_words_list(b->k, "yeast", entry_value(b->dish->ingredients.at[i].entry));
    for (size_t i = 0; yeast && i < b->dish->steps.count; i++)
        for (size_t n = 0; n < b->dish->steps.at[i].actions.count; n++) {
            const struct entry *e = action_entry(b->k, b->dish->steps.at[i].actions.at[n]);
            if (e && e->marks & cooked && !(e->marks & MARK_OF(changes)))
                return false;
        }
    return yeast;
}

/* What a place begins with that is a condition, and no thing that the sentence names. */
#define CONDITION '@'

/* Whether the dish is in such a place now: what heats it, the part that is made, or a thing that
 * the sentence names by one word. */
static bool is_place(const struct builder *b, struct text place, uint64_t heat, size_t verb)
{
    if (!place.length || place.at[0] != CONDITION)
        return text_equal(place, b->group) || names(b, place, verb);
    place = text_slice(place, 1, place.length);
#define PLACE(name, holds)    \
    if (text_is(place, name)) \
        return holds;
#include "build/place.def"
    return false;
}

/* The row's action for `said` here; `said` itself when none fits. */
static struct text look_up(const struct builder *b, struct text said, size_t verb)
{
    const struct table *t = pack_table(b->k, "context-actions");
    if (!t)
        return said;
    size_t row = table_find(t, said);
    /* Only where there is a row: a dish that is never heated has all its steps gone through. */
    uint64_t heat = row < t->rows ? last_heat(b) : 0;
    uint64_t parts = row < t->rows ? part_shapes(b) : 0;
    for (; row < t->rows; row = table_next(t, row)) {
        struct text where = table_cell(t, row, CONTEXT_WHERE);
        if (is_place(b, where, heat, verb) || ((parts & text_shape(where)) && lies_in(b, where)))
            return table_cell(t, row, CONTEXT_ACTION);
    }
    return said;
}

/* "Return it to the oven and bake it": another verb, behind chunk `verb`, says it itself. */
static bool is_said_later(const struct builder *b, struct text action, size_t verb)
{
    for (size_t i = verb == NOWHERE ? verb : verb + 1; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_ACTION && b->chunks.at[i].entry
            && !(b->chunks.at[i].scope & SCOPE_UNTIL)
            && text_equal(entry_value(b->chunks.at[i].entry), action))
            return true;
    return false;
}

struct text action_in_context(const struct builder *b, struct text said, size_t verb)
{
    struct text means = look_up(b, said, verb);
    /* What is put in the fridge in a marinade is marinated. */
    if (text_equal(means, said) || is_said_later(b, means, verb))
        return said;
    return look_up(b, means, verb);
}
