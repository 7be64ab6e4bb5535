/* build/hidden.c: verbs that hide an ingredient.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "match/capture.h"

/* "Oil an eight-inch round pan": so many chunks a verb has before its thing. */
#define THING_CHUNKS 6

/* Whether the verb's object is a thing with that tag. */
static bool is_for(const struct builder *b, size_t index, enum tag tag)
{
    for (size_t i = index + 1; i < b->chunks.count && i <= index + THING_CHUNKS; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == tag)
            return true;
        if ((c->match && c->tag != TAG_MEASURE && c->tag != TAG_NUMBER) || c->tag == TAG_AND
            || c->tag == TAG_ACTION)
            return false;
    }
    return false;
}

/* "It goes in a tin that I've buttered": the thing stands before who did it. */
static bool is_for_thing_before(const struct builder *b, size_t index)
{
    if (b->chunks.at[index].tag != TAG_DONE)
        return false;
    for (size_t i = index; i-- > 0;) {
        const unsigned char tag = b->chunks.at[i].tag;
        if (tag == TAG_VESSEL || tag == TAG_CONTAINER || tag == TAG_PLACE
            || (tag == TAG_AMOUNT && b->r->words.at[b->chunks.at[i].last].tag == TAG_CONTAINER))
            return true;
        if (tag != TAG_THE && tag != TAG_ME && tag != TAG_HAVE && tag != TAG_OTHER
            && tag != TAG_WILL)
            return false;
    }
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
        if (tag == TAG_VESSEL || tag == TAG_CONTAINER || tag == TAG_FOOD || tag == TAG_PART)
            return tag == TAG_VESSEL || tag == TAG_CONTAINER;
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
           || is_for_it(b, index) || is_for_thing_before(b, index);
}

/* "And salt that water": never the salt that went on the meat. */
static bool is_for_water(const struct builder *b, size_t index)
{
    const struct chunk *next = index + 1 < b->chunks.count ? &b->chunks.at[index + 1] : NULL;
    const struct entry *food = chunk_food(b->r, next);
    return food && food->marks & MARK_OF(water);
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
                     || (food->marks & MARK_OF(salt)
                         && (is_for_water(b, index) || c->first - old->words.last > AGAIN_WORDS)));
    if (!food || (old && !again))
        return;
    struct ingredient *line =
        add_line(b, c, (struct span){c->last, c->last}, food, entry_shown(food));
    set_scope(line, c->scope | (is_tasted_before(b, index) ? SCOPE_TASTE : 0U));
    if (!is_for(b, index, TAG_TOOL))
        b->last_line = b->dish->ingredients.count;
    b->last_said = said_at(b, c->first);
}
