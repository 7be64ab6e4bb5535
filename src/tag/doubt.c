/* tag/doubt.c: which words may be wrong, and how much speaks against it.
 * SPDX-License-Identifier: MIT */
#include "tag/doubt.h"

#define JOINED_COST 5 /* words put together, for each word after the first */

static const bool DOUBTFUL[TAG_CODES] = {
    [TAG_OTHER] = true,   [TAG_ACTION] = true,  [TAG_DOING] = true,    [TAG_DONE] = true,
    [TAG_COUNTER] = true, [TAG_TOOL] = true,    [TAG_FULLNESS] = true, [TAG_VESSEL] = true,
    [TAG_PLACE] = true,   [TAG_EXTRACT] = true, [TAG_FOOD] = true,     [TAG_PART] = true,
    [TAG_DISH] = true};

bool may_be_wrong(const struct word *w)
{
    return DOUBTFUL[w->tag] && w->key.length > 2 && !ratio_known(w->rare->number);
}

bool never_wrong(const struct hearing *h, size_t row)
{
    if (row >= h->ear->pairs->rows)
        return false;
    struct text strength = table_cell(h->ear->pairs, row, 2);
    return !table_cell(h->ear->pairs, row, 1).length || text_is(strength, "weak")
           || text_is(strength, "faint");
}

/* Whether the word belongs in a kitchen by itself or in a name: "paper" as in paper towel. */
static bool of_the_kitchen(const struct word *w)
{
    return w->tag != TAG_OTHER || w->begins;
}

/* "Them" and "ones" stand for something; "a", "you" and "it" are put together by captions. */
#define SMALL_LETTERS 3

bool is_small(const struct word *w)
{
    static const bool small[TAG_CODES] = {
        [TAG_ARTICLE] = true, [TAG_YOU] = true, [TAG_ME] = true, [TAG_BE] = true, [TAG_IT] = true,
        [TAG_INTO] = true,    [TAG_OF] = true,  [TAG_OR] = true, [TAG_THE] = true};
    return (w->key.length <= SMALL_LETTERS && small[w->tag]) || w->key.length == 1
           || (w->key.length == 2 && w->tag == TAG_OTHER);
}

bool small_among(const struct hearing *h, const struct sentence_units *u, size_t begin, size_t end)
{
    bool part = false;
    for (size_t i = begin; i < end; i++)
        part |= end - begin > 1 && is_small(&h->r->words.at[u->last[i]]);
    return part;
}

bool small_begins(const struct word *w)
{
    return is_small(w) && (w->tag == TAG_BE || w->tag == TAG_ME || w->tag == TAG_OTHER);
}

bool units_doubtful(const struct hearing *h, const struct sentence_units *u, size_t begin,
                    size_t end)
{
    bool odd = false;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &h->r->words.at[u->last[i]];
        bool part = end - begin > 1 && is_small(w);
        if (part ? i == begin && !small_begins(w) : !may_be_wrong(w))
            return false;
        if (i > begin && w->tag == TAG_IT && h->r->words.at[u->last[i - 1]].tag == TAG_ACTION)
            return false; /* "melted, and stir it through" is whole */
        odd |= w->tag == TAG_OTHER && !part;
    }
    return odd && h->r->words.at[u->last[end - 1]].tag != TAG_FOOD;
}

bool strange_among(const struct hearing *h, const struct sentence_units *u, size_t begin,
                   size_t end)
{
    for (size_t i = begin; i < end; i++) {
        struct text key = h->r->words.at[u->last[i]].key;
        if (!text_ends(key, "'s") && !ear_knows(h->ear, key))
            return true;
    }
    return false;
}

int doubt_cost(const struct hearing *h, const struct sentence_units *u, size_t begin, size_t end)
{
    int cost = JOINED_COST * (int) (end - begin - 1);
    for (size_t i = begin; i < end; i++)
        cost += of_the_kitchen(&h->r->words.at[u->last[i]]) ? KNOWN_COST : 0;
    return cost;
}

bool units_divided(const struct hearing *h, const struct sentence_units *u, size_t begin,
                   size_t end)
{
    for (size_t i = begin; i + 1 < end; i++)
        if (h->r->words.at[u->last[i]].after >= AFTER_COMMA)
            return true;
    return false;
}
