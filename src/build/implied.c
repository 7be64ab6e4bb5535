/* build/implied.c
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"

#include "build/instruction.h"
#include "match/capture.h"

enum implied_kind {
#define IMPLIED(name, row, part, marks) IMPLIED_##name,
#include "build/implied.def"
#undef IMPLIED
    IMPLIED_COUNT
};

static const struct {
    const char *row;
    bool clause; /* only verbs of the same clause say it */
    uint64_t said_by;
} kinds[] = {
#define IMPLIED(name, row, part, marks) {row, part, marks},
#include "build/implied.def"
#undef IMPLIED
};

#define NOWHERE SENTENCE_WORDS
/* A sentence that comes this soon after a step may go on with it. */
#define NEAR_SECONDS 6.0

static struct text action_of(const struct pack *k, enum implied_kind kind)
{
    const struct table *t = pack_table(k, "implied-actions");
    if (!t)
        return TEXT_EMPTY;
    size_t when = table_column(t, "when"), action = table_column(t, "action");
    for (size_t row = 0; row < t->rows; row++)
        if (text_is(table_cell(t, row, when), kinds[kind].row))
            return table_cell(t, row, action);
    return TEXT_EMPTY;
}

struct text implied_list(const struct pack *k)
{
    return action_of(k, IMPLIED_LINE);
}

struct text implied_heat(const struct pack *k, struct text of)
{
    if (text_is(of, "inside"))
        return action_of(k, IMPLIED_INSIDE_HEAT);
    return text_is(of, "oven") ? action_of(k, IMPLIED_OVEN_HEAT) : TEXT_EMPTY;
}

static bool is_done(const struct chunk *c)
{
    return !(c->scope & (SCOPE_NOT_DONE | SCOPE_TITLE | SCOPE_YIELD));
}

/* The first chunk with `tag` that is done here; NOWHERE when there is none. */
static size_t find_tag(const struct builder *b, unsigned char tag)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == tag && is_done(&b->chunks.at[i]))
            return i;
    return NOWHERE;
}

/* The first food with this scope; with `plain`, the first one that has no scope and an amount. */
static size_t find_line(const struct builder *b, unsigned scope, bool plain)
{
    const unsigned aside = SCOPE_GARNISH | SCOPE_BESIDE | SCOPE_TASTE | SCOPE_UNTIL;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_LINE || !c->match || !is_done(c))
            continue;
        if (plain ? c->match->rule->kind == RULE_line && !(c->scope & aside) : c->scope & scope)
            return i;
    }
    return NOWHERE;
}

/* Where no verb says what waits, a longer time is how long it keeps ("three days in the fridge").
 */
#define VERBLESS_SECONDS_MOST (12.0 * 3600)

static size_t find_time(const struct builder *b)
{
    size_t time = find_tag(b, TAG_DURATION);
    if (time == NOWHERE || !b->chunks.at[time].match)
        return time;
    return ratio_double(b->chunks.at[time].match->low) > VERBLESS_SECONDS_MOST ? NOWHERE : time;
}

static bool is_cold_place(const struct builder *b, size_t i)
{
    return i != NOWHERE && b->chunks.at[i].entry && b->chunks.at[i].entry->marks & MARK_OF(cold);
}

/* The dish's last step, when it ends shortly before chunk `i`. */
static const struct step *step_before(const struct builder *b, size_t i)
{
    const struct step *last =
        b->dish->steps.count ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
    bool near = last && i != NOWHERE
                && b->r->words.at[b->chunks.at[i].first].start - last->end < NEAR_SECONDS;
    return near ? last : NULL;
}

/* "Stir it in. About two minutes.": the time is of the step before, which has none yet. "An onion,
 * and that takes five minutes" is not. */
static bool waits_for_time(const struct builder *b, size_t time)
{
    const struct step *last = find_line(b, 0, true) == NOWHERE ? step_before(b, time) : NULL;
    const struct entry *e = last && last->actions.count
                                ? action_entry(b->k, last->actions.at[last->actions.count - 1])
                                : NULL;
    return last && last->durations.count == 0
           && !(e && e->marks & (MARK_OF(brief) | MARK_OF(changes)));
}

/* One amount after another is one step: nothing when the step before has just put something in. */
static size_t goes_on(const struct builder *b, size_t line)
{
    const struct step *last = step_before(b, line);
    struct text add = action_of(b->k, IMPLIED_LINE);
    bool adding =
        last && last->actions.count && text_equal(last->actions.at[last->actions.count - 1], add);
    return adding && last->durations.count == 0 ? NOWHERE : line;
}

static bool sentence_names(const struct builder *b, struct text thing)
{
    for (size_t i = b->sentence->first; i <= b->sentence->last; i++)
        if (text_equal(b->r->words.at[i].key, thing))
            return true;
    return false;
}

/* Whether food cooks in a frying pan now. */
static bool is_frying(const struct builder *b, uint64_t heat)
{
    const uint64_t others = MARK_OF(boils) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(grills);
    bool in_pan = b->pan && b->pan->marks & MARK_OF(fries);
    return heat & MARK_OF(fries) || (in_pan && heat & MARK_OF(heats) && !(heat & others));
}

/* The marks of the dish's last action that heats anything; 0 when nothing was heated. */
static uint64_t last_heat(const struct builder *b)
{
    const uint64_t heating = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits);
    for (size_t i = b->dish->steps.count; i-- > 0;) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = s->actions.count; n-- > 0;) {
            const struct entry *e = action_entry(b->k, s->actions.at[n]);
            if (e && e->marks & heating)
                return e->marks;
        }
    }
    return 0;
}

/* Whether the dish has such a component, and nothing was heated since: chicken stays in its
 * marinade.
 */
static bool was_made(const struct builder *b, struct text part, uint64_t heat)
{
    for (size_t i = 0; i < b->dish->ingredients.count && !(heat & MARK_OF(heats)); i++)
        if (text_equal(b->dish->ingredients.at[i].group, part))
            return true;
    return false;
}

/* "Over the top", but not "on top of it". */
static bool ends_on_top(const struct builder *b)
{
    size_t top = find_tag(b, TAG_FINISH);
    return top != NOWHERE && !(top + 1 < b->chunks.count && b->chunks.at[top + 1].tag == TAG_OF);
}

/* Whether the dish is in such a place now: what heats it, the part that is made, or a thing that
 * the sentence names by one word. */
static bool is_place(const struct builder *b, struct text place, uint64_t heat)
{
    if (text_is(place, "boils"))
        return heat & MARK_OF(boils);
    if (text_is(place, "ovens"))
        return heat & MARK_OF(ovens);
    if (text_is(place, "fries"))
        return is_frying(b, heat);
    if (text_is(place, "cold"))
        return is_cold_place(b, find_tag(b, TAG_PLACE));
    if (text_is(place, "rested"))
        return heat & MARK_OF(waits) && !(heat & MARK_OF(cold))
               && find_line(b, SCOPE_OPTIONAL, false) != NOWHERE;
    if (text_is(place, "finish"))
        return ends_on_top(b);
    return text_equal(place, b->group) || was_made(b, place, heat) || sentence_names(b, place);
}

/* The row's action for `said` here; `said` itself when none fits. */
static struct text look_up(const struct builder *b, struct text said)
{
    const struct table *t = pack_table(b->k, "context-actions");
    if (!t)
        return said;
    size_t is = table_column(t, "said"), where = table_column(t, "where"),
           action = table_column(t, "action");
    for (size_t row = 0; row < t->rows; row++) {
        struct text place = table_cell(t, row, where);
        /* The heat is looked for last: a dish that is never heated has all its steps gone through.
         */
        if (text_equal(table_cell(t, row, is), said) && is_place(b, place, last_heat(b)))
            return table_cell(t, row, action);
    }
    return said;
}

struct text action_in_context(const struct builder *b, struct text said)
{
    return look_up(b, look_up(b, said)); /* what is put in the fridge in a marinade is marinated */
}

/* Of two chunks that must both be there. */
static size_t earlier(size_t a, size_t b)
{
    return a == NOWHERE || b == NOWHERE ? NOWHERE : a < b ? a : b;
}

/* "Big pot, medium heat." "The big pot. Medium heat." */
static size_t find_pan_heat(const struct builder *b)
{
    size_t heat = find_tag(b, TAG_HEAT), vessel = find_tag(b, TAG_VESSEL);
    bool before =
        b->pan && heat != NOWHERE && b->pan_at < b->sentence->first
        && b->r->words.at[b->sentence->first].start - b->r->words.at[b->pan_at].end < NEAR_SECONDS
        && find_tag(b, TAG_OVEN) == NOWHERE;
    return before && vessel == NOWHERE ? heat : earlier(vessel, heat);
}

static bool is_fat(const struct builder *b, const struct chunk *c)
{
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
    return food && food->marks & MARK_OF(fat);
}

/* "Two tablespoons of oil in the big pan": the pan in which a fat and nothing else is. */
static size_t find_fat_pan(const struct builder *b)
{
    size_t vessel = find_tag(b, TAG_VESSEL);
    if (vessel == NOWHERE || find_line(b, 0, true) == NOWHERE || b->rundown
        || !(chunk_marks(&b->chunks.at[vessel]) & MARK_OF(wet)))
        return NOWHERE;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_LINE && b->chunks.at[i].match
            && !is_fat(b, &b->chunks.at[i]))
            return NOWHERE;
    return vessel;
}

/* The first temperature, also of "if you have a thermometer, one sixty-five". */
static size_t find_heated(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_HEATED
            && !(b->chunks.at[i].scope & (SCOPE_NOT_DONE & ~SCOPE_SUPPOSED)))
            return i;
    return NOWHERE;
}

/* "The thermometer says one sixty-five." "If you've got a probe, seventy-four." */
static size_t find_thermometer(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_TOOL && c->entry && text_is(entry_value(c->entry), "inside")
            && !(c->scope & (SCOPE_NOT_DONE & ~SCOPE_SUPPOSED)))
            return find_heated(b);
    }
    return NOWHERE;
}

static size_t place_of(const struct builder *b, enum implied_kind kind)
{
    size_t oven = find_tag(b, TAG_OVEN), time = find_time(b), heat = find_tag(b, TAG_HEATED);
    bool cold = is_cold_place(b, find_tag(b, TAG_PLACE));
    switch (kind) {
    case IMPLIED_OVEN_HEAT:
        return oven != NOWHERE && heat != NOWHERE && time == NOWHERE ? oven : NOWHERE;
    case IMPLIED_VESSEL_HEAT:
        return find_pan_heat(b);
    case IMPLIED_FAT_HEAT:
        return find_fat_pan(b);
    case IMPLIED_INSIDE_HEAT:
        return find_thermometer(b);
    case IMPLIED_OVEN_TIME:
        return oven != NOWHERE ? time : NOWHERE;
    case IMPLIED_COLD_TIME:
        return cold ? time : NOWHERE;
    case IMPLIED_TIME:
        return oven == NOWHERE && !cold && !waits_for_time(b, time) ? time : NOWHERE;
    case IMPLIED_PUT_TIME:
        return time != NOWHERE && oven == NOWHERE && !cold && last_heat(b) & MARK_OF(ovens)
                   ? time
                   : NOWHERE;
    case IMPLIED_LINE:
        return b->rundown ? NOWHERE : goes_on(b, find_line(b, 0, true));
    case IMPLIED_GARNISH:
        return find_line(b, SCOPE_GARNISH, false);
    case IMPLIED_BESIDE:
        return find_line(b, SCOPE_BESIDE, false);
    case IMPLIED_TASTE:
        return find_line(b, SCOPE_TASTE, false);
    default:
        return NOWHERE;
    }
}

static bool ends_part(const struct builder *b, size_t i)
{
    return b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA;
}

/* The marks of the verbs between the commas around chunk `i`. */
static uint64_t clause_marks(const struct builder *b, size_t i)
{
    size_t first = i, last = i;
    while (first && !ends_part(b, first - 1))
        first--;
    while (last + 1 < b->chunks.count && !ends_part(b, last))
        last++;
    uint64_t marks = 0;
    for (; first <= last; first++)
        if (is_verb(b, first))
            marks |= chunk_marks(&b->chunks.at[first]);
    return marks;
}

size_t implied_actions(const struct builder *b, uint64_t said, struct implied *out)
{
    size_t count = 0;
    if (b->sentence->flags & SENTENCE_QUESTION)
        return 0;
    for (int i = 0; i < IMPLIED_COUNT && count < IMPLIED_MOST; i++) {
        enum implied_kind kind = (enum implied_kind) i;
        size_t chunk = place_of(b, kind);
        if (chunk != NOWHERE
            && kinds[kind].said_by & (kinds[kind].clause ? clause_marks(b, chunk) : said))
            continue;
        struct text action =
            chunk == NOWHERE ? TEXT_EMPTY : action_in_context(b, action_of(b->k, kind));
        if (action.length)
            out[count++] = (struct implied){action, chunk};
    }
    return count;
}
