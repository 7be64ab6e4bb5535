/* build/impliedsalt.c: salt, spice and pepper in a sentence without a verb.
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"

#include "build/stepwords.h"
#include "match/capture.h"

/* "Black pepper, plenty." It seasons as salt does, but half a teaspoon of it is one of a list. */
static bool is_pepper(const struct builder *b, const struct chunk *c, const struct entry *food)
{
    if (!step_words_list(b->k, "pepper", entry_value(food)))
        return false;
    for (size_t n = b->dish->ingredients.count; n-- > 0;) {
        const struct ingredient *line = &b->dish->ingredients.at[n];
        if (line->id >= c->first && line->id <= c->last)
            return !line->amount.known || line->vague;
    }
    return true;
}

/* "On those", "over them": chunk `i` leads to what it goes on, and its clause ends there. */
static bool is_over_it(const struct builder *b, size_t i)
{
    unsigned char next = chunk_tag(&b->chunks, i + 1);
    return b->chunks.at[i].tag == TAG_INTO && (next == TAG_IT || next == TAG_THE)
           && (i + 2 >= b->chunks.count
               || b->r->words.at[b->chunks.at[i + 1].last].after >= AFTER_COMMA);
}

/* "A teaspoon of baking soda. A pinch of salt.": it goes on with the list of what is baked. */
static bool lists_dough(const struct builder *b)
{
    const struct dish *d = b->dish;
    if (!b->list_step || b->list_step != d->steps.count)
        return false;
    for (size_t i = d->ingredients.count; i-- > 0;) {
        const struct ingredient *line = &d->ingredients.at[i];
        if (line->id < d->steps.at[b->list_step - 1].words.first)
            return false;
        if (line->entry && line->entry->marks & (MARK_OF(flour) | MARK_OF(leavening)))
            return true;
    }
    return false;
}

bool is_seasoning(const struct builder *b)
{
    bool salt = false, alone = true, over = find_done(b, TAG_FINISH) != NOWHERE;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        const struct entry *food = chunk_food(b->r, c);
        uint64_t marks = food ? food->marks : 0;
        if (food && is_pepper(b, c, food))
            marks |= MARK_OF(salt);
        over |= c->tag == TAG_SIDE || is_over_it(b, i);
        salt |= (marks & MARK_OF(salt)) != 0;
        alone &= (marks & MARK_OF(salt)) != 0 || c->tag != TAG_LINE;
        if (c->tag == TAG_LINE && !(marks & (MARK_OF(salt) | MARK_OF(spice))))
            return false;
    }
    return salt && (over || (alone && last_heat(b) & MARK_OF(heats) && !lists_dough(b)));
}
