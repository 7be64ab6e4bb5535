/* build/piecefood.c: a word that counts pieces of one food and names another: "four cloves", the
 * spice.
 * SPDX-License-Identifier: MIT */
#include "build/dangling.h"

#include "build/wording.h"
#include "match/capture.h"

/* Whether the unit counts pieces of the food: cloves those of garlic, and for garlic oil. */
static bool divides(struct text whole, struct text kind)
{
    struct text word;
    while (kind.length && text_part(&kind, ' ', &word))
        if (text_equal(word, whole))
            return true;
    return false;
}

static const struct entry *piece_food(const struct builder *b, const struct said_amount *said,
                                      struct text kind)
{
    const struct text unit = said->amount.known ? said->amount.unit : TEXT_EMPTY,
                      whole = unit.length ? step_text(b->k, "pieces-of", unit) : TEXT_EMPTY;
    if (!whole.length || divides(whole, kind))
        return NULL;
    return entry_as(pack_find(b->k, unit, NULL), TAG_FOOD);
}

/* Whether a food whose pieces the unit counts waits for its amount. */
static bool waits(const struct builder *b, const struct said_amount *said)
{
    const struct text whole = step_text(b->k, "pieces-of", said->amount.unit);
    for (size_t i = b->dish->ingredients.count; i-- > 0;) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->id < b->sentence->first)
            return false;
        if (!line->amount.known && divides(whole, line->kind))
            return true;
    }
    return false;
}

bool build_piece_food(struct builder *b, const struct chunk *c, struct span amount,
                      const struct said_amount *said)
{
    const struct ingredient *line = last_line(b);
    const struct entry *food = piece_food(b, said, line ? line->kind : TEXT_EMPTY);
    if (!food || waits(b, said))
        return false;
    struct ingredient *own = add_line(b, c, amount, food, entry_shown(food));
    own->words = amount;
    set_said(own, said);
    own->amount.unit = TEXT_EMPTY;
    b->last_said = said_at(b, c->first);
    b->last_line = b->dish->ingredients.count;
    return true;
}

bool is_piece_food(struct builder *b, const struct chunk *c, const struct entry *food,
                   const struct said_amount *said)
{
    return food && food->marks & MARK_OF(generic) && food->marks & MARK_OF(spice)
           && build_piece_food(b, c, chunk_words(c), said);
}

void take_piece_food(struct builder *b, const struct chunk *c, const struct entry *food,
                     struct said_amount *said)
{
    struct span first = match_slot(c->match, SLOT_amount),
                second = match_slot(c->match, SLOT_amount2);
    const struct match *m =
        span_is_empty(second) ? NULL : chunk_match(b->r, b->sentence, second, RULE_amount);
    if (!m || !food || !piece_food(b, said, entry_value(food)))
        return;
    if (build_piece_food(b, c, first, said))
        read_amount(b->r, b->sentence, m, said);
}
