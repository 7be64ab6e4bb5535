/* build/line.c: what an ingredient line is made of.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "match/capture.h"

double said_at(const struct builder *b, size_t word)
{
    return b->r->words.at[word].start;
}

bool is_left_out(const struct chunk *c)
{
    unsigned never = SCOPE_NOT_DONE | SCOPE_TITLE | SCOPE_YIELD | SCOPE_UNTIL;
    if (c->match
        && (!span_is_empty(match_slot(c->match, SLOT_amount))
            || !span_is_empty(match_slot(c->match, SLOT_number))))
        never &= ~(unsigned) SCOPE_TITLE; /* "so it's two cloves of garlic" names no dish */
    if (c->scope & SCOPE_OPTIONAL)
        never &= ~(unsigned) SCOPE_UNREAL; /* "if you like" is a condition too */
    return c->scope & never;
}

struct ingredient *last_line(const struct builder *b)
{
    return b->last_line ? &b->dish->ingredients.at[b->last_line - 1] : NULL;
}

/* "Six walnuts" and "two trout" are counts, though nuts and fish are weighed too; so many are none:
 * "400 lentils" lacks its grams. */
#define PIECES_MOST 20
static bool counts_pieces(const struct ingredient *line)
{
    const uint64_t pieces = MARK_OF(plural) | MARK_OF(fish) | MARK_OF(poultry);
    return line->entry->marks & pieces && ratio_finite(line->amount.max)
           && ratio_compare(line->amount.max, RATIO(PIECES_MOST)) < 0;
}

void set_said(struct ingredient *line, const struct said_amount *said)
{
    line->amount = said->amount;
    line->package = said->package;
    line->vague = said->vague;
    bool uncounted = line->entry && line->entry->marks & MARK_OF(uncounted) && !counts_pieces(line);
    line->no_unit = said->unsized || (said->amount.known && !said->amount.unit.length && uncounted);
}

/* Herbs that go on top adorn the dish, however much of them; cheese and bread crumbs are part of
 * it.
 */
static bool adorns(const struct ingredient *line)
{
    return line->entry && line->entry->marks & MARK_OF(herb);
}

void set_scope(struct ingredient *line, unsigned scope)
{
    line->optional |= (scope & SCOPE_OPTIONAL) != 0;
    line->to_taste |= (scope & SCOPE_TASTE) != 0;
    if (scope & SCOPE_BESIDE && !(scope & SCOPE_GARNISH)) /* "over the top to serve" */
        line->role = ROLE_SERVE_WITH;
    else if (scope & SCOPE_GARNISH
             && (!line->amount.known || line->vague || scope & (SCOPE_OPTIONAL | SCOPE_ADORNS)
                 || adorns(line)))
        line->role = ROLE_GARNISH;
}

void say_line(const struct builder *b, struct ingredient *line, const struct chunk *c)
{
    struct text first = b->r->words.at[c->first].text, last = b->r->words.at[c->last].text;
    line->words = chunk_words(c);
    line->at = said_at(b, c->first);
    line->said = c->first == c->last || first.at > last.at
                     ? first
                     : (struct text){first.at, (size_t) (last.at + last.length - first.at)};
    if (b->r->words.at[c->first].cue != b->r->words.at[c->last].cue)
        line->said = last;
}

/* "Chickens" may be weighed as chicken, and "sauces" are of one bottle each; prawns are not. */
static bool are_several(const struct entry *food)
{
    const uint64_t stuff =
        MARK_OF(uncounted) | MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish);
    return food && food->marks & MARK_OF(plural) && !(food->marks & stuff);
}

/* "A stock cube", "one pandan leaf": its name ends in what counts. */
static bool is_one_piece(const struct builder *b, const struct ingredient *line)
{
    struct text last = text_last_word(line->food);
    const struct entry *counter = entry_as(pack_find(b->k, last, NULL), TAG_COUNTER);
    return counter && last.length < line->food.length && ratio_equal(line->amount.max, RATIO(1));
}

void note_pieces(const struct builder *b, struct ingredient *line, const struct entry *food,
                 const struct said_amount *said)
{
    line->several |= are_several(food);
    line->no_unit = line->no_unit && (said->unsized || !is_one_piece(b, line));
}

/* Once something is in, what the cook has and needs is for what is made now. */
static bool has_gone_in(const struct builder *b, const struct ingredient *line)
{
    for (const struct ingredient *old = b->dish->ingredients.at; old < line; old++)
        if (!old->announced && !old->laid_out && old->amount.known)
            return true;
    return false;
}

struct ingredient *add_line(struct builder *b, const struct chunk *c, struct span food,
                            const struct entry *entry, struct text name)
{
    struct ingredient *line = LIST_ADD(b->r->arena, &b->dish->ingredients);
    line->id = food.last;
    say_line(b, line, c);
    line->food = name;
    line->kind = entry ? entry_value(entry) : name;
    line->entry = entry;
    line->rule = c->match ? text_from(c->match->rule->name) : TEXT_OF("hidden in a verb");
    line->group = b->group;
    line->had = b->rundown && c->first > b->rundown_at && !b->cooks;
    line->announced = line->had && !has_gone_in(b, line);
    return line;
}

void note_told(struct builder *b, const struct ingredient *line, const struct chunk *c, bool amount)
{
    b->told_line = (size_t) (line - b->dish->ingredients.at) + 1;
    b->told_last = c->last;
    b->told_amount = amount;
}

size_t told_end(const struct builder *b, const struct ingredient *line)
{
    bool later = b->told_line == (size_t) (line - b->dish->ingredients.at) + 1
                 && b->told_last > line->words.last;
    return later ? b->told_last : line->words.last;
}

void use_again(struct builder *b, struct ingredient *old, const struct chunk *c, bool used)
{
    if (old->questioned && used)
        old->at = said_at(b, c->first);
    old->questioned = old->questioned && !used;
    b->last_said = said_at(b, c->first);
    old->used |= used || !old->laid_out; /* "the orange is still sat there" */
    old->again = c->last;
    old->announced = old->announced && b->rundown;
    set_scope(old, c->scope & SCOPE_TASTE);
    b->last_line = (size_t) (old - b->dish->ingredients.at) + 1;
    note_told(b, old, c, false);
}
