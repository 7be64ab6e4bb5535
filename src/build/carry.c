/* build/carry.c: amounts and units that hold for more than one food of a list.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "match/capture.h"
#include "match/matches.h"

void carry_back(struct builder *b, size_t index, const struct said_amount *said)
{
    for (size_t i = index; i-- > 0;) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_AND || c->tag == TAG_OR || c->tag == TAG_FRACTION)
            continue;
        if (c->tag != TAG_LINE)
            return;
        for (size_t n = 0; n < b->dish->ingredients.count; n++) {
            struct ingredient *line = &b->dish->ingredients.at[n];
            if (line->id < c->first || line->id > c->last)
                continue;
            if (line->amount.known)
                return;
            set_said(line, said);
        }
    }
}

void carry_each(struct builder *b, const struct chunk *c, size_t index, struct said_amount *said)
{
    const struct chunk *chunks = b->chunks.at;
    size_t end = index > 1 && chunks[index - 1].tag == TAG_AND ? index - 1 : index;
    bool follows = end > 0 && chunks[end - 1].tag == TAG_LINE;
    if (said->each && said->amount.known)
        b->each = c->match;
    else if (b->each && follows && !said->amount.known)
        line_amount(b->r, b->sentence, b->each, said);
    else
        b->each = NULL;
}

void carry_same(const struct builder *b, const struct chunk *c, struct said_amount *said)
{
    const struct ingredient *before = last_line(b);
    const struct match *m =
        said->vague ? chunk_match(b->r, b->sentence, match_slot(c->match, SLOT_amount), RULE_vague)
                    : NULL;
    const struct entry *unit = match_entry(b->r, m, SLOT_unit);
    if (!before || !before->amount.known || !unit || !(unit->marks & MARK_OF(again)))
        return;
    said->amount = before->amount;
    said->package = before->package;
    said->vague = before->vague;
}

void count_pieces(const struct entry *food, struct said_amount *said, struct text *name)
{
    if (!food || !said->amount.known || !said->amount.unit.length
        || !text_equal(text_last_word(entry_value(food)), said->amount.unit)
        || text_equal(entry_value(food), said->amount.unit))
        return;
    said->amount.unit = TEXT_EMPTY;
    *name = entry_value(food);
}

/* So many bare numbers before foods that are never counted are a habit; and so many words behind an
 * amount with its unit one of them still has that unit. */
#define DROPPED_UNITS 2
#define UNIT_WORDS 30

/* "seventy-five of sugar": a number, "of" and a food that nobody counts. */
static bool lacks_unit(const struct recording *r, const struct match *m, const struct entry *food)
{
    struct span number = match_slot(m, SLOT_number);
    if (m->rule->kind != RULE_line || span_is_empty(number) || number.last >= m->words.last)
        return false;
    return food && food->marks & MARK_OF(uncounted) && span_is_empty(match_slot(m, SLOT_unit))
           && r->words.at[number.last + 1].tag == TAG_OF;
}

bool drops_units(const struct recording *r)
{
    size_t dropped = 0;
    struct matches lines = matches_all(r, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&lines));)
        dropped += lacks_unit(r, m, match_entry(r, m, SLOT_food));
    return dropped >= DROPPED_UNITS;
}

/* After two kilograms of something, 500 of something else are grams, and no kilograms. */
#define SIZES_APART 10.0

static bool is_of_one_size(const struct amount *a, const struct amount *b)
{
    double times = ratio_double(a->min) / ratio_double(b->min);
    return times < SIZES_APART && times > 1 / SIZES_APART;
}

/* "Salt, two teaspoons. Pepper, one.": a number alone behind, or soon before, a food that nobody
 * counts has the unit that was said behind the food before. */
#define ECHO_WORDS 4
#define SHARED_WORDS 6
#define SHARED_WEIGHED_WORDS 14
/* Spoons and cups are few. So many more are weighed: in what the food before was, if it was. */
#define SHARED_MOST 10.0

static void echo_unit(const struct builder *b, const struct chunk *c, const struct entry *food,
                      struct said_amount *said)
{
    const struct ingredient *before = last_line(b);
    if (!before || !said->amount.known || said->amount.unit.length || !food
        || !(food->marks & MARK_OF(uncounted)) || !before->amount.known
        || !text_starts(before->rule, "line-after") || c->first <= before->words.last
        || c->first - before->words.last > ECHO_WORDS)
        return;
    if (entry_as(pack_find(b->k, before->amount.unit, NULL), TAG_UNIT)
        && is_of_one_size(&before->amount, &said->amount))
        said->amount.unit = before->amount.unit;
}

/* "One teaspoon of cumin, one of Aleppo pepper": a number with "of" in a list goes on in the unit
 * of the food before. */
static void share_unit(const struct builder *b, const struct chunk *c, struct said_amount *said)
{
    const struct ingredient *before = last_line(b);
    struct span number = match_slot(c->match, SLOT_number);
    if (!before || !said->amount.known || said->amount.unit.length || !before->amount.known
        || span_is_empty(number) || b->r->words.at[number.last + 1].tag != TAG_OF
        || b->r->words.at[number.last + 2].tag == TAG_THE
        || before->words.first < b->sentence->first || !text_starts(before->rule, "line"))
        return;
    const bool weighed = ratio_double(before->amount.min) >= SHARED_MOST,
               many = ratio_double(said->amount.min) >= SHARED_MOST;
    if ((many && !weighed)
        || c->first - before->words.last > (many ? SHARED_WEIGHED_WORDS : SHARED_WORDS))
        return;
    const struct entry *unit = pack_find(b->k, before->amount.unit, NULL);
    if ((entry_as(unit, TAG_UNIT) || entry_as(unit, TAG_CONTAINER))
        && is_of_one_size(&before->amount, &said->amount))
        said->amount.unit = before->amount.unit;
}

void carry_unit(const struct builder *b, const struct chunk *c, const struct entry *food,
                struct said_amount *said)
{
    echo_unit(b, c, food, said);
    share_unit(b, c, said);
    if (!b->drops_units || !said->amount.known || !lacks_unit(b->r, c->match, food))
        return;
    for (size_t i = b->dish->ingredients.count; i-- > 0;) {
        const struct ingredient *before = &b->dish->ingredients.at[i];
        if (before->id + UNIT_WORDS < c->first)
            return;
        const struct text unit = before->amount.known ? before->amount.unit : TEXT_EMPTY;
        if (!entry_as(pack_find(b->k, unit, NULL), TAG_UNIT))
            continue;
        if (is_of_one_size(&before->amount, &said->amount))
            said->amount.unit = unit;
        return;
    }
}
