/* build/prepaside.c: what may stand between a food and what was done to it.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

static unsigned char tag_at(const struct builder *b, size_t i)
{
    return i < b->chunks.count ? b->chunks.at[i].tag : (unsigned char) TAG_SO;
}

static bool describes(unsigned char tag)
{
    return tag == TAG_STATE || tag == TAG_SIZE || tag == TAG_FULLNESS || tag == TAG_MANNER
           || tag == TAG_HEDGE;
}

/* "a sour one", "a big one" */
static size_t one_like_that(const struct builder *b, size_t i)
{
    if (tag_at(b, i) != TAG_ARTICLE || !describes(tag_at(b, i + 1)))
        return 0;
    while (describes(tag_at(b, i + 1)))
        i++;
    return tag_at(b, i + 1) == TAG_IT ? i + 1 : 0;
}

/* "out of the can", "from the freezer" */
static size_t from_a_place(const struct builder *b, size_t i)
{
    if (tag_at(b, i) != TAG_FROM)
        return 0;
    i += tag_at(b, i + 1) == TAG_THE || tag_at(b, i + 1) == TAG_ARTICLE ? 2 : 1;
    unsigned char tag = tag_at(b, i);
    bool can =
        tag == TAG_WILL && i < b->chunks.count
        && entry_as(pack_find(b->k, b->r->words.at[b->chunks.at[i].last].key, NULL), TAG_CONTAINER);
    return can || tag == TAG_CONTAINER || tag == TAG_PLACE || tag == TAG_VESSEL ? i : 0;
}

/* "about six ounces each", "so that's two sheets, thawed" */
static size_t so_much_each(const struct builder *b, size_t i)
{
    while (tag_at(b, i) == TAG_HEDGE || tag_at(b, i) == TAG_THERE || tag_at(b, i) == TAG_BE
           || (tag_at(b, i) == TAG_SO && i < b->chunks.count))
        i++;
    if (tag_at(b, i) != TAG_AMOUNT)
        return 0;
    bool ends = b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA;
    if (tag_at(b, i + 1) == TAG_EACH)
        return i + 1;
    return ends && tag_at(b, i + 1) == TAG_DONE ? i : 0;
}

/* "Four cloves of garlic in there too, grated." */
static size_t in_there(const struct builder *b, size_t i)
{
    bool there = tag_at(b, i) == TAG_INTO && tag_at(b, i + 1) == TAG_OTHER;
    return there && tag_at(b, i + 2) == TAG_DONE ? i + 1 : 0;
}

/* "each one quartered" */
static size_t each_one(const struct builder *b, size_t i)
{
    return tag_at(b, i) == TAG_EACH && tag_at(b, i + 1) == TAG_NUMBER ? i + 1 : 0;
}

size_t aside_end(const struct builder *b, size_t i)
{
    size_t end = one_like_that(b, i);
    if (!end)
        end = from_a_place(b, i);
    if (!end)
        end = so_much_each(b, i);
    if (!end)
        end = each_one(b, i);
    return end ? end : in_there(b, i);
}
