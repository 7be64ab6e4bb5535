/* build/eachof.c: amounts for each of several foods, or of what a food is put on.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"

/* "A spoon of each": of so many foods at most. */
#define EACH_FOODS 8

bool is_for_each(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index < c->count && c->at[index].tag == TAG_OF)
        index++;
    return index < c->count && c->at[index].tag == TAG_EACH;
}

bool is_sum(const struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    size_t k = index;
    while (k > 0
           && (b->chunks.at[k - 1].tag == TAG_OTHER || b->chunks.at[k - 1].tag == TAG_BE
               || b->chunks.at[k - 1].tag == TAG_THE))
        k--; /* "so that's, what is that, half a cup" */
    bool sums = (k && b->chunks.at[k - 1].tag == TAG_THERE)
                || (index + 1 < b->chunks.count && is_step_word(b, c + 1, "sums"));
    if (!sums || line->words.first < b->sentence->first || c->first <= line->words.last)
        return false;
    for (size_t i = b->sentence->first; i < c->first; i++)
        if (b->r->words.at[i].alone && b->r->words.at[i].alone->tag == TAG_EACH)
            return true;
    return false;
}

/* Gives the amount to the foods of a sentence that have none, where there are so many; how many
 * there are. */
static size_t give_each_in(struct builder *b, const struct sentence *s, size_t least,
                           const struct said_amount *said)
{
    struct ingredient *found[EACH_FOODS];
    size_t count = 0;
    for (size_t i = 0; i < b->dish->ingredients.count && count < EACH_FOODS; i++) {
        struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->id >= s->first && line->id <= s->last && !line->amount.known)
            found[count++] = line;
    }
    for (size_t i = 0; count >= least && i < count; i++) {
        set_said(found[i], said);
        found[i]->questioned = false;
    }
    return count;
}

void give_each(struct builder *b, const struct said_amount *said)
{
    if (!give_each_in(b, b->sentence, 1, said) && b->sentence > b->r->sentences.at)
        give_each_in(b, b->sentence - 1, 2, said);
}
