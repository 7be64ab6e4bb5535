/* build/foodname.c: the words of a food, and what the lexicon makes of them.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "build/wording.h"
#include "match/capture.h"

/* Whether the words are one entry of the lexicon. */
static bool is_one_entry(const struct builder *b, struct span food)
{
    return entry_at(b->r, food) && b->r->words.at[food.last].entry_first == food.first;
}

/* "Butter milk" and "buttermilk": the same letters. */
static bool is_written_apart(struct text apart, struct text whole)
{
    size_t n = 0;
    for (size_t i = 0; i < apart.length; i++)
        if (apart.at[i] != ' ' && (n == whole.length || apart.at[i] != whole.at[n++]))
            return false;
    return n == whole.length && apart.length > whole.length;
}

/* "Russets" for russet potatoes, "soy": the name without what it is a sort of. */
static bool lacks_kind(const struct builder *b, struct text shown, struct text whole)
{
    const size_t n = shown.length;
    return whole.length > n && whole.at[n] == ' ' && text_equal(text_slice(whole, 0, n), shown)
           && step_words_list(b->k, "sorts", text_slice(whole, n + 1, whole.length));
}

/* As it was said, but in one word what captions only write apart, and with what it is a sort of. */
static struct text shown_food(const struct builder *b, const struct entry *food)
{
    const struct text shown = entry_shown(food), whole = entry_value(food);
    return is_written_apart(shown, whole) || lacks_kind(b, shown, whole) ? whole : shown;
}

struct text name_of_food(struct builder *b, struct span food)
{
    const struct entry *last = entry_at(b->r, food);
    size_t begin = last ? b->r->words.at[food.last].entry_first : food.last;
    struct text name = last ? shown_food(b, last) : b->r->words.at[food.last].key;
    for (size_t i = begin; i-- > food.first;)
        name = arena_format(b->r->arena, "%.*s %.*s", TEXT(b->r->words.at[i].key), TEXT(name));
    return name;
}

struct span food_slot(const struct builder *b, const struct match *m)
{
    struct span food = match_slot(m, SLOT_food);
    bool compound = text_is(m->rule->option, "compound");
    for (size_t i = food.first; compound && i < food.last; i++)
        if (b->r->words.at[i].after >= AFTER_COMMA)
            food.last = i;
    return food;
}

/* "boneless chicken" + "thighs": the last or first word of a food and the next food together are
 * one that the lexicon knows; NULL where they are not. */
static const struct entry *joined_food(struct builder *b, struct span food,
                                       const struct chunk *next)
{
    struct span second = match_slot(next->match, SLOT_food);
    if (second.first < second.last && is_one_entry(b, second))
        return NULL; /* "turmeric chili powder": two foods */
    for (size_t i = food.first; i <= food.last; i++) {
        struct text words = arena_format(b->r->arena, "%.*s %.*s", TEXT(b->r->words.at[i].key),
                                         TEXT(b->r->words.at[second.last].key));
        const struct entry *e = entry_as(pack_find(b->k, words, NULL), TAG_FOOD);
        if (e)
            return e;
    }
    return NULL;
}

/* "Damson" + "jam": what is made of the first food, which nobody names by itself behind another. */
static const struct entry *product(const struct builder *b, const struct chunk *next)
{
    const struct entry *e = match_entry(b->r, next->match, SLOT_food);
    return e && next->match->rule->kind != RULE_line
                   && step_words_list(b->k, "products", entry_value(e))
               ? e
               : NULL;
}

/* Takes a food that stands right behind this one as its last word; `*entry` becomes both. */
static void take_next_food(struct builder *b, size_t index, struct span *food,
                           const struct entry **entry)
{
    struct chunk *next = &b->chunks.at[index + 1];
    if (index + 1 >= b->chunks.count || next->tag != TAG_LINE || !*entry
        || b->r->words.at[food->last].after >= AFTER_COMMA
        || next->first != match_slot(next->match, SLOT_food).first || next->first != food->last + 1)
        return;
    const struct entry *both = joined_food(b, *food, next);
    const bool apart =
        !b->r->punctuated && b->r->words.at[food->last].cue != b->r->words.at[next->first].cue;
    if (!both && !apart) /* "look at the beef | oil comes out now" */
        both = product(b, next);
    if (!both)
        return;
    food->last = next->last;
    *entry = both;
    next->match = NULL;
    next->tag = TAG_OTHER;
}

const struct entry *food_entry(struct builder *b, size_t index, struct span *food)
{
    const struct entry *entry = is_one_entry(b, *food) ? entry_at(b->r, *food) : NULL;
    take_next_food(b, index, food, &entry);
    return entry;
}
