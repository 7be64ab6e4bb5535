/* build/noline.c: foods that are spoken of and do not go in.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

/* "The pan with some hot water", "stir the spices", "check your meat": water is on no shopping
 * list, and a word for all meat or all spices names none; they go in only by an amount. */
static bool is_too_vague(const struct entry *food, const struct said_amount *said, unsigned scope)
{
    const unsigned meant = SCOPE_BESIDE | SCOPE_GARNISH | SCOPE_TASTE | SCOPE_OPTIONAL;
    if (!food || said->amount.known || said->vague || scope & meant)
        return false;
    const uint64_t sorts = MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish)
                           | MARK_OF(shellfish) | MARK_OF(spice);
    bool kind = food->marks & MARK_OF(generic) && food->marks & sorts;
    return kind || food->marks & MARK_OF(water);
}

/* "Two thighs each": the share of everyone who eats, of what is in the dish already. */
static bool is_share_of_each(const struct builder *b, size_t index, const struct ingredient *old,
                             const struct said_amount *said)
{
    const struct chunks *c = &b->chunks;
    return old && old->amount.known && said->amount.known && !said->amount.unit.length
           && index + 1 < c->count && c->at[index + 1].tag == TAG_EACH;
}

/* "A third of a cup of lemon juice, and that was two big lemons": what the line before was got
 * from.
 */
static bool tells_source(const struct builder *b, size_t index, const struct entry *food)
{
    const struct ingredient *line = last_line(b);
    if (!food || !line || !line->amount.known || !index || line->words.first < b->sentence->first
        || b->chunks.at[index - 1].tag != TAG_THERE)
        return false;
    struct text kind = entry_value(food);
    return line->food.length > kind.length && line->food.at[kind.length] == ' '
           && text_equal(text_slice(line->food, 0, kind.length), kind);
}

/* "Sardines for the toast", "butter for the pancakes": what something else is for. */
static bool is_purpose(const struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    return index && b->chunks.at[index - 1].tag == TAG_FOR && !said->amount.known && !said->vague
           && b->r->words.at[c->first].tag == TAG_THE && !is_tasted_for(b, index);
}

bool is_no_line(const struct builder *b, size_t index, const struct entry *food,
                const struct ingredient *old, const struct said_amount *said)
{
    return (!old
            && (is_too_vague(food, said, b->chunks.at[index].scope) || is_purpose(b, index, said)))
           || is_share_of_each(b, index, old, said) || tells_source(b, index, food);
}
