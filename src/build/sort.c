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

/* Whether another food was named since: what is said of a sort is of that one. */
static bool is_named_since(const struct builder *b, const struct ingredient *line, size_t end)
{
    for (size_t i = line->words.last + 1; i < end; i++)
        if (b->r->words.at[i].tag == TAG_FOOD)
            return true;
    return false;
}

void build_sort(struct builder *b, const struct chunk *c)
{
    struct ingredient *line = last_line(b);
    struct span state = match_slot(c->match, SLOT_state);
    if (!line || is_named_since(b, line, c->first) || is_left_out(c) || span_is_empty(state)
        || c->first <= line->words.last || c->first - line->words.last > SORT_WORDS)
        return;
    const struct entry *whole = NULL;
    for (size_t i = state.first; i <= state.last && !whole; i++)
        whole = sort_of(b, i, state.last, line->food);
    if (whole && text_find(line->food, ' ', 0) == line->food.length) /* cooking apples stay so */
        name_line(line, (struct span){line->id, line->id}, whole, entry_shown(whole));
    line->words.last = c->last;
}

/* "One red pepper, one green one": the state that makes another food of the line's. */
static const struct entry *other_sort(struct builder *b, const struct chunk *c,
                                      const struct ingredient *line)
{
    for (size_t i = c->first; i <= c->last; i++) {
        bool state = b->r->words.at[i].tag == TAG_STATE || b->r->words.at[i].tag == TAG_FOOD;
        const struct entry *sort = state ? sort_of(b, i, i, line->food) : NULL;
        if (sort)
            return sort;
    }
    return NULL;
}

bool build_other_sort(struct builder *b, const struct chunk *c, size_t index,
                      const struct said_amount *said)
{
    struct ingredient *line = last_line(b);
    bool near = line && line->amount.known && c->first > line->words.last
                && c->first - line->words.last <= 2;
    const struct entry *food = near ? other_sort(b, c, line) : NULL;
    if (!food || text_equal(entry_value(food), line->kind))
        return false;
    struct ingredient *added =
        add_line(b, c, (struct span){c->last, c->last}, food, entry_shown(food));
    set_said(added, said);
    read_prep_after(b, added, index);
    b->last_said = said_at(b, c->first);
    b->last_line = b->dish->ingredients.count;
    return true;
}

/* The food that the word makes with the line's: "chicken broth", "vegetable stock cube". */
static const struct entry *kind_named(struct builder *b, size_t word, struct text food)
{
    struct text said = b->r->words.at[word].key, last = text_last_word(food);
    struct text whole = arena_format(b->r->arena, "%.*s %.*s", TEXT(said), TEXT(food)),
                head = arena_format(b->r->arena, "%.*s %.*s", TEXT(said), TEXT(last));
    const struct entry *kind = entry_as(pack_find(b->k, whole, NULL), TAG_FOOD);
    return kind ? kind : entry_as(pack_find(b->k, head, NULL), TAG_FOOD);
}

bool names_kind(struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    struct ingredient *line = last_line(b);
    if (!index || (said->amount.known && line && line->amount.known) || said->vague || !line
        || !line->entry || line->words.last != b->chunks.at[index - 1].last
        || (c->first != c->last && !said->amount.known)
        || b->r->words.at[line->words.last].after != AFTER_COMMA)
        return false;
    struct span food = match_slot(c->match, SLOT_food);
    const struct entry *kind = kind_named(b, food.last, line->food), *other = entry_at(b->r, food);
    if (!kind)
        return false;
    bool same = other && text_equal(entry_value(other), line->kind) && !said->amount.known;
    if (!same) /* "gram flour, besan": the same by another name */
        name_line(line, (struct span){line->id, line->id}, kind, entry_shown(kind));
    if (said->amount.known) {
        set_said(line, said); /* "stock cubes, vegetable, two of them" */
        line->questioned = false;
    }
    line->words.last = c->last;
    return true;
}
