/* split/passing.c
 * SPDX-License-Identifier: MIT */
#include "split/passing.h"

/* So near its end a dish's word of several words names by itself. */
#define PASSING_SENTENCES 8

static bool may_stand_before(unsigned char tag)
{
    return tag == TAG_FOOD || tag == TAG_DONE || tag == TAG_STATE || tag == TAG_PART
           || tag == TAG_INSIDE;
}

/* "And" of "squash and kale salad". */
static bool joins_foods(const struct recording *r, struct span words, size_t i)
{
    return r->words.at[i].tag == TAG_AND && i > words.first && r->words.at[i - 1].tag == TAG_FOOD
           && r->words.at[i - 1].after < AFTER_COMMA && r->words.at[i + 1].tag == TAG_FOOD;
}

/* The words before the dish's word at `i` that go with it; empty when there is no food among them.
 * "Stir-fry" and "rhubarb crumble" are one entry each: such a one names near the stretch's ends
 * only.
 */
static struct span name_before(const struct recording *r, struct span words, size_t i, bool near)
{
    size_t first = r->words.at[i].entry_first;
    bool food = near && first < i;
    while (first > words.first
           && (may_stand_before(r->words.at[first - 1].tag) || joins_foods(r, words, first - 1))
           && r->words.at[first - 1].after < AFTER_COMMA)
        food |= r->words.at[--first].tag == TAG_FOOD;
    return food ? (struct span){first, i} : (struct span){1, 0};
}

struct span named_in_passing(const struct recording *r, struct stretch s, size_t *sentence)
{
    struct span none = {1, 0};
    struct span all = {r->sentences.at[s.first].first, r->sentences.at[s.last].last};
    for (size_t k = s.last + 1; k-- > s.first;)
        for (size_t i = r->sentences.at[k].last + 1; i-- > r->sentences.at[k].first;) {
            const struct word *w = &r->words.at[i];
            if (w->tag != TAG_DISH || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE))
                continue;
            struct span name = name_before(r, all, i, k + PASSING_SENTENCES > s.last);
            *sentence = k;
            if (name.first <= name.last)
                return name;
        }
    return none;
}
