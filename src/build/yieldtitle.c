/* build/yieldtitle.c: an amount of what the title says is how much the dish makes.
 * SPDX-License-Identifier: MIT */
#include "build/yieldof.h"
#include "build/yieldplace.h"
#include "match/capture.h"

/* So many words may stand between the number and what is counted: "eighteen oat and orange
 * biscuits". */
#define WORDS_BETWEEN 4

/* Whether a sentence begins at the chunk, or "that's" and the like lead to it. */
static bool is_presented(const struct builder *b, size_t index)
{
    unsigned char before = index ? b->chunks.at[index - 1].tag : (unsigned char) TAG_SO;
    return before == TAG_SO || before == TAG_THERE || before == TAG_AND || before == TAG_SERVE
           || before == TAG_BE;
}

static bool same_noun(const struct entry *a, const struct entry *b)
{
    return text_equal(text_last_word(entry_shown(a)), text_last_word(entry_shown(b)));
}

/* The word of the title's last noun that is counted, from word `first` on; NULL: something else is.
 */
static const struct entry *counted_piece(const struct builder *b, size_t first,
                                         const struct entry *piece)
{
    for (size_t i = first; i <= b->sentence->last && i <= first + WORDS_BETWEEN; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_INSIDE)
            continue;
        if (w->entry && w->entry->marks & MARK_OF(plural) && same_noun(w->entry, piece))
            return w->entry;
        if ((w->tag != TAG_FOOD && w->tag != TAG_AND && w->tag != TAG_DONE)
            || w->after >= AFTER_COMMA)
            return NULL;
    }
    return NULL;
}

/* "Jam", of "strawberry jam", which may begin with a capital. */
static bool is_title_noun(const struct builder *b, const struct entry *food)
{
    struct text said = text_last_word(entry_shown(food)), title = text_last_word(b->dish->title);
    return said.length == title.length && said.length > 1
           && text_equal(text_slice(said, 1, said.length), text_slice(title, 1, title.length));
}

/* Jars and bottles; of a dish that is named first, whatever it comes in: "rye bread, two loaves".
 */
static bool holds_dish(const struct builder *b, const struct chunk *c, struct text unit)
{
    const struct entry *e = pack_find(b->k, unit, NULL);
    bool named = match_slot(c->match, SLOT_food).first < match_slot(c->match, SLOT_amount).first;
    return entry_as(e, TAG_CONTAINER)
           || (named && (entry_as(e, TAG_COUNTER) || entry_as(e, TAG_UNIT)));
}

/* What is counted: jars or bottles of what the title names, or the pieces that it names; empty
 * where it is neither. */
static struct text counted_of_title(const struct builder *b, const struct chunk *c,
                                    const struct entry *food, const struct amount *said)
{
    if (said->unit.length)
        return food && is_title_noun(b, food) && dish_is_filled(b) && holds_dish(b, c, said->unit)
                   ? said->unit
                   : TEXT_EMPTY;
    const struct entry *piece = dish_piece(b);
    const struct entry *counted = piece ? counted_piece(b, c->first + 1, piece) : NULL;
    return counted ? text_last_word(entry_shown(counted)) : TEXT_EMPTY;
}

bool yields_title(struct builder *b, const struct chunk *c, size_t index, const struct entry *food,
                  const struct amount *said)
{
    const struct dish *d = b->dish;
    if (!d->title_said || !d->steps.count || !said->known || !is_presented(b, index)
        || !ratio_finite(said->max))
        return false;
    struct text of = counted_of_title(b, c, food, said);
    if (!of.length)
        return false;
    if (b->yield_sure <= YIELD_COUNTED)
        b->dish->yield = (struct yield){true, said->min,           said->max,
                                        of,   {c->first, c->last}, YIELD_OF_WHAT_IS_SAID};
    return true;
}
