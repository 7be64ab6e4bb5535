/* build/article.c: foods with no number but "a" that put nothing in: what something is, or is like.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"
#include "match/capture.h"

bool is_article_one(const struct chunk *c)
{
    return c->match && text_is(c->match->rule->option, "one")
           && span_is_empty(match_slot(c->match, SLOT_extract));
}

/* "Half of an onion", "the juice of a lemon" */
static bool measures(unsigned char tag)
{
    return tag == TAG_NUMBER || tag == TAG_FRACTION || tag == TAG_AMOUNT || tag == TAG_EXTRACT
           || tag == TAG_UNIT || tag == TAG_COUNTER || tag == TAG_REST || tag == TAG_SIDE
           || tag == TAG_LINE || tag == TAG_WHOLE || tag == TAG_VAGUE;
}

/* "That is the whole point of a potato": what a food is like, or has. */
static bool is_possessed(const struct builder *b, size_t index)
{
    const struct chunk *c = b->chunks.at + index;
    if (index < 2 || !is_article_one(c))
        return false;
    if (c[-1].tag == TAG_FOR && c[-2].tag == TAG_DURATION)
        return true; /* "forty minutes for a chicken" */
    if (c[-1].tag == TAG_TO)
        return true; /* "till it melts to a syrup" */
    return c[-1].tag == TAG_OF && !measures(c[-2].tag);
}

/* A food that is not counted, or that is also what something made is called. */
static bool is_seldom_one(const struct builder *b, const struct entry *food)
{
    return food->marks & MARK_OF(uncounted)
           || entry_as(pack_find(b->k, entry_words(food), NULL), TAG_DISH)
           || entry_as(pack_find(b->k, entry_words(food), NULL), TAG_PART);
}

/* "Shape it into a sausage", "which is a cheese", "I need a coffee cream", "it's a white sauce":
 * what something becomes or is. */
static bool is_told_of(const struct builder *b, size_t index, const struct entry *food)
{
    if (!food || !index || !is_article_one(&b->chunks.at[index]))
        return false;
    switch (b->chunks.at[index - 1].tag) {
    case TAG_BE:
    case TAG_INTO:
        return true;
    case TAG_THERE:
    case TAG_HAVE:
    case TAG_WILL:
    case TAG_OTHER:
        return is_seldom_one(b, food);
    default:
        return false;
    }
}

/* "The butter", of which no amount is said, nor more than one. */
static bool is_the_one(const struct builder *b, const struct chunk *c)
{
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    return c->match->rule->kind != RULE_line && b->r->words.at[c->first].tag == TAG_THE && food
           && !(food->marks & MARK_OF(plural)) && c->last == c->first + food->words_count;
}

/* "Thin as a beer mat", "a bread bin", "the butter dish": with the word behind it another
 * thing.
 */
static bool names_a_thing(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index], *next = c + 1;
    if (index + 1 >= b->chunks.count)
        return false;
    if (!is_article_one(c))
        return next->tag == TAG_VESSEL && next->first == c->last + 1
               && b->r->words.at[c->last].after == AFTER_SPACE && is_the_one(b, c);
    bool vessel = next->tag == TAG_VESSEL || next->tag == TAG_TOOL;
    return (vessel || (next->tag == TAG_OTHER && !next->entry))
           && b->r->words.at[c->last].after < AFTER_COMMA && next->first == c->last + 1
           && !step_text(b->k, "particle", b->r->words.at[next->first].key).length;
}

/* The word "one" by itself, before a comma or stop. */
static bool is_one_word(const struct builder *b, size_t word)
{
    const struct word *w = &b->r->words.at[word];
    return w->tag == TAG_ONES && w->entry && ratio_equal(entry_number(w->entry), RATIO(1))
           && w->after >= AFTER_COMMA;
}

/* "A smoothie, a blueberry one", "a leek and potato one": which sort the dish is. */
static bool tells_sort(const struct builder *b, size_t index)
{
    const struct chunk *at = b->chunks.at;
    size_t first = index, last = index;
    while (first > 1 && at[first - 1].tag == TAG_AND && at[first - 2].tag == TAG_LINE)
        first -= 2;
    while (chunk_tag(&b->chunks, last + 1) == TAG_AND
           && chunk_tag(&b->chunks, last + 2) == TAG_LINE)
        last += 2;
    if (!is_article_one(&at[first]))
        return false;
    const bool behind = chunk_tag(&b->chunks, last + 1) == TAG_NUMBER;
    return is_one_word(b, behind ? at[last + 1].last : at[last].last);
}

bool is_idle_one(const struct builder *b, size_t index, const struct entry *food)
{
    return is_possessed(b, index) || is_told_of(b, index, food) || names_a_thing(b, index)
           || tells_sort(b, index);
}
