/* build/listed.c: foods that stand in a list.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "build/wording.h"
#include "match/capture.h"

/* Words between a food with its amount and the other one that a sentence begins with. */
#define OR_WORDS 10

/* "Lingonberries, a cup. Or cranberries, if you have them." */
static bool is_or_first(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct ingredient *line = last_line(b);
    return index == 1 && c->at[0].tag == TAG_OR && line && line->entry && line->amount.known
           && b->r->punctuated && c->at[0].first - told_end(b, line) <= OR_WORDS
           && span_is_empty(match_slot(c->at[1].match, SLOT_amount))
           && span_is_empty(match_slot(c->at[1].match, SLOT_number));
}

bool is_alternative(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (is_or_first(b, index))
        return true;
    return index >= 2 && c->at[index - 1].tag == TAG_OR && c->at[index - 2].tag == TAG_LINE
           && b->last_line;
}

/* Words between a food and the one that is offered in its place. */
#define OFFER_WORDS 8

/* Whether chunk `i` offers another food for the one before: "you could use", "works too". */
static bool offers(const struct builder *b, size_t i)
{
    return i < b->chunks.count && b->chunks.at[i].tag == TAG_INSTEAD && b->chunks.at[i].entry
           && text_equal(entry_value(b->chunks.at[i].entry), step_word(b->k, "offer"));
}

bool is_offered(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct ingredient *line = last_line(b);
    const struct chunk *food = &c->at[index];
    if (!line || !line->amount.known || food->first <= line->words.last
        || food->scope & SCOPE_SUPPOSED || food->first - line->words.last > OFFER_WORDS)
        return false;
    bool before = index && offers(b, index - 1);
    bool behind = offers(b, index + 1); /* "breadcrumbs work too" */
    bool comma = b->r->words.at[line->words.last].after >= AFTER_COMMA
                 || b->r->words.at[line->words.last + 1].tag == TAG_OR
                 || b->r->words.at[line->words.last + 1].tag == TAG_SO;
    return comma && (before || behind);
}

/* The food that `first` is with the last word of `food`: "red" of "white wine", "lemon" of "lime
 * juice". */
static const struct entry *sharing(const struct builder *b, struct text first, struct text food)
{
    struct text last = text_last_word(food);
    if (last.length == food.length)
        return NULL;
    struct text words = arena_format(b->r->arena, "%.*s %.*s", TEXT(first), TEXT(last));
    return entry_as(pack_find(b->k, words, NULL), TAG_FOOD);
}

void name_line(struct ingredient *line, struct span food, const struct entry *entry,
               struct text name)
{
    line->id = food.last;
    line->food = name;
    line->kind = entry ? entry_value(entry) : name;
    line->entry = entry;
}

/* "scallions or chives"; in "lemon or lime juice" the first one shares the last word. */
void add_alternative(struct builder *b, struct ingredient *line, struct text name)
{
    const struct entry *whole = sharing(b, line->food, name);
    if (whole)
        name_line(line, (struct span){line->id, line->id}, whole, entry_shown(whole));
    *LIST_ADD(b->r->arena, &line->alternatives) = name;
}

/* "A teaspoon each of ginger and garlic paste": the first food shares the last word. */
void share_last_word(struct builder *b, size_t index, struct text name)
{
    const struct chunk *c = &b->chunks.at[index];
    struct ingredient *line = last_line(b);
    bool each = index > 1 && c[-1].tag == TAG_AND && c[-2].tag == TAG_LINE && c[-2].match
                && !span_is_empty(match_slot(c[-2].match, SLOT_each));
    const struct entry *whole =
        each && line && line->id == c[-2].last ? sharing(b, line->food, name) : NULL;
    if (whole)
        name_line(line, (struct span){line->id, line->id}, whole, entry_shown(whole));
}

/* "With a big green salad", "alongside some slaw": what stands before the dish. */
static unsigned char lead_of(const struct builder *b, size_t i)
{
    while (i > 0
           && (b->chunks.at[i - 1].tag == TAG_ARTICLE || b->chunks.at[i - 1].tag == TAG_SIZE
               || b->chunks.at[i - 1].tag == TAG_STATE || b->chunks.at[i - 1].tag == TAG_AMOUNT
               || b->chunks.at[i - 1].tag == TAG_VAGUE || b->chunks.at[i - 1].tag == TAG_THE
               || b->chunks.at[i - 1].tag == TAG_OF))
        i--;
    return i ? b->chunks.at[i - 1].tag : (unsigned char) TAG_SO;
}

void build_dish_beside(struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    unsigned char lead = lead_of(b, index);
    if (lead != TAG_WITH && lead != TAG_BESIDE && lead != TAG_INTO)
        return;
    if (!(c->scope & SCOPE_BESIDE) || is_left_out(c) || c->match || !c->entry)
        return;
    struct text name = entry_shown(c->entry);
    for (size_t i = 0; i < b->dish->ingredients.count; i++)
        if (text_equal(b->dish->ingredients.at[i].food, name))
            return;
    struct ingredient *line = add_line(b, c, chunk_words(c), c->entry, name);
    line->role = ROLE_SERVE_WITH;
    line->used = true;
}

void add_first_of_both(struct builder *b, const struct chunk *c, const struct said_amount *said)
{
    struct span state = match_slot(c->match, SLOT_state), food = match_slot(c->match, SLOT_food);
    const struct entry *first = entry_at(b->r, state), *second = entry_at(b->r, food),
                       *whole = first && second
                                    ? sharing(b, entry_words(first), entry_shown(second))
                                    : NULL;
    if (!whole)
        return;
    struct ingredient *line = add_line(b, c, state, whole, entry_shown(whole));
    set_said(line, said);
}

void name_either(struct builder *b, struct ingredient *line, struct span state)
{
    const struct entry *said = entry_at(b->r, state),
                       *whole = said ? sharing(b, entry_words(said), line->food) : NULL;
    struct text other = line->food;
    bool kind_only = text_find(line->kind, ' ', 0)
                     == line->kind.length; /* "canned or fresh pineapple": one food */
    if (!whole || kind_only)
        return;
    name_line(line, (struct span){line->id, line->id}, whole, entry_shown(whole));
    LIST_CUT(&line->state, 0);
    LIST_CUT(&line->prep, 0);
    *LIST_ADD(b->r->arena, &line->alternatives) = other;
}
