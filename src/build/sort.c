/* build/sort.c: "tomatoes, the cherry ones": what says which sort the food before is.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "match/capture.h"

/* So many words at most between a food and what says which sort of it is meant. */
#define SORT_WORDS 14

/* The words from `first` on as they are looked up, and the last word of the food: "cherry tomato".
 */
static const struct entry *sort_of(struct builder *b, size_t first, size_t last, struct text food)
{
    struct text words = b->r->words.at[first].key;
    for (size_t i = first + 1; i <= last; i++)
        words = arena_format(b->r->arena, "%.*s %.*s", TEXT(words), TEXT(b->r->words.at[i].key));
    words = arena_format(b->r->arena, "%.*s %.*s", TEXT(words), TEXT(text_last_word(food)));
    return entry_as(pack_find(b->k, words, NULL), TAG_FOOD);
}

bool is_sort(const struct chunk *c)
{
    return c->match && text_is(c->match->rule->option, "sort");
}

void build_sort(struct builder *b, const struct chunk *c)
{
    struct ingredient *line = last_line(b);
    struct span state = match_slot(c->match, SLOT_state);
    if (!line || is_left_out(c) || span_is_empty(state) || c->first <= line->words.last
        || c->first - line->words.last > SORT_WORDS)
        return;
    const struct entry *whole = NULL;
    for (size_t i = state.first; i <= state.last && !whole; i++)
        whole = sort_of(b, i, state.last, line->food);
    if (whole)
        name_line(line, (struct span){line->id, line->id}, whole, entry_shown(whole));
    line->words.last = c->last;
}
