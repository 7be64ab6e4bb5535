/* build/hidden.c: verbs that hide an ingredient.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

/* Whether the verb's object is a thing with that tag. */
static bool is_for(const struct builder *b, size_t index, enum tag tag)
{
    for (size_t i = index + 1; i < b->chunks.count && i < index + 4; i++)
        if (b->chunks.at[i].tag == tag)
            return true;
        else if (b->chunks.at[i].match || b->chunks.at[i].tag == TAG_AND)
            return false;
    return false;
}

/* "And salt it now": so many words behind its amount it is salted again. */
#define AGAIN_WORDS 25
/* "Get your loaf tin, and butter it": so many words before the verb, what "it" is. */
#define IT_WORDS 14

/* Whether the verb's "it" is a pan or tray: that was named last, no food since. */
static bool is_for_it(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    if (!is_for(b, index, TAG_IT) && !is_for(b, index, TAG_THE))
        return false;
    for (size_t i = c->first, n = 0; i-- > b->dish->words.first && n < IT_WORDS; n++) {
        unsigned char tag = b->r->words.at[i].tag;
        if (tag == TAG_VESSEL || tag == TAG_FOOD || tag == TAG_PART)
            return tag == TAG_VESSEL;
    }
    return false;
}

/* "Have a taste, and salt it". */
static bool is_tasted_before(const struct builder *b, size_t index)
{
    while (index-- > 0)
        if (b->chunks.at[index].tag == TAG_ACTION
            && chunk_marks(&b->chunks.at[index]) & MARK_OF(tastes))
            return true;
    return false;
}

/* The dish is buttered, the board floured: what goes there is not what went into the dough. */
static bool is_for_a_thing(const struct builder *b, size_t index)
{
    return is_for(b, index, TAG_VESSEL) || is_for(b, index, TAG_PLACE) || is_for(b, index, TAG_TOOL)
           || is_for_it(b, index);
}

/* A verb that hides an ingredient: "butter the dish". */
void build_hidden(struct builder *b, const struct chunk *c, size_t index)
{
    if (!(chunk_marks(c) & MARK_OF(seasons)) || is_left_out(c) || c->scope & SCOPE_UNTIL)
        return;
    const struct entry *food = entry_as(pack_find(b->k, entry_value(c->entry), NULL), TAG_FOOD);
    for (size_t i = index + 1; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_WITH)
            return;
    const struct ingredient *old = food ? find_food(b, food, entry_shown(food)) : NULL;
    bool again = old && old->amount.known
                 && (is_for_a_thing(b, index)
                     || (food->marks & MARK_OF(salt) && c->first - old->words.last > AGAIN_WORDS));
    if (!food || (old && !again))
        return;
    struct ingredient *line =
        add_line(b, c, (struct span){c->last, c->last}, food, entry_shown(food));
    set_scope(line, c->scope | (is_tasted_before(b, index) ? SCOPE_TASTE : 0U));
    if (!is_for(b, index, TAG_TOOL))
        b->last_line = b->dish->ingredients.count;
    b->last_said = said_at(b, c->first);
}
