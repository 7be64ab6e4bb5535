/* build/noline.c: foods that are spoken of and do not go in.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"
#include "match/capture.h"

/* "The pan with some hot water", "stir the spices", "check your meat": water is on no shopping
 * list, and a word for all meat or all spices names none; they go in only by an amount. */
static bool is_too_vague(const struct entry *food, const struct said_amount *said, unsigned scope)
{
    const bool water = food && food->marks & MARK_OF(water); /* "boiling water over the leaves" */
    const unsigned meant =
        SCOPE_TASTE | SCOPE_OPTIONAL | (water ? 0U : SCOPE_BESIDE | SCOPE_GARNISH);
    if (!food || said->amount.known || said->vague || scope & meant)
        return false;
    const uint64_t sorts = MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish)
                           | MARK_OF(shellfish) | MARK_OF(spice);
    bool kind = food->marks & MARK_OF(generic) && food->marks & sorts;
    return kind || water;
}

/* "Put in one mustard seed, if it jumps, the oil is ready": of some foods one is only a test. */
static bool is_test(const struct builder *b, const struct chunk *c, const struct said_amount *said)
{
    struct span food = match_slot(c->match, SLOT_food);
    return said->amount.known && ratio_equal(said->amount.max, RATIO(1)) && !said->more
           && !said->amount.unit.length && entry_at(b->r, food)
           && !(entry_at(b->r, food)->marks & MARK_OF(plural))
           && step_words_list(b->k, "tests", entry_value(entry_at(b->r, food)));
}

/* "Two thighs each": the share of everyone who eats, of what is in the dish already. */
static bool is_share_of_each(const struct builder *b, size_t index, const struct ingredient *old,
                             const struct said_amount *said)
{
    const struct chunks *c = &b->chunks;
    return old && old->amount.known && said->amount.known && !said->amount.unit.length
           && index + 1 < c->count && c->at[index + 1].tag == TAG_EACH;
}

/* "A third of a cup of lemon juice, and that was two big lemons": what the line before was got
 * from.
 */
static bool tells_source(const struct builder *b, size_t index, const struct entry *food)
{
    const struct ingredient *line = last_line(b);
    if (!food || !line || !line->amount.known || !index || line->words.first < b->sentence->first
        || b->chunks.at[index - 1].tag != TAG_THERE)
        return false;
    struct text kind = entry_value(food);
    return line->food.length > kind.length && line->food.at[kind.length] == ' '
           && text_equal(text_slice(line->food, 0, kind.length), kind);
}

/* "On the shelf above the lamb": where something else is. */
static bool is_near(const struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    return index && b->chunks.at[index - 1].tag == TAG_OTHER && !said->amount.known && !said->vague
           && b->r->words.at[c->first].tag == TAG_THE
           && is_step_word(b, &b->chunks.at[index - 1], "near");
}

/* "That's four jars of plum jam": what was cooked. */
static bool is_jarred(const struct builder *b, size_t index, const struct entry *food,
                      const struct said_amount *said)
{
    const struct text unit = said->amount.known ? said->amount.unit : TEXT_EMPTY;
    if (!food || !unit.length || !index || chunk_tag(&b->chunks, index - 1) != TAG_THERE
        || !b->dish->steps.count || b->dish->ingredients.count < 2
        || !entry_as(pack_find(b->k, unit, NULL), TAG_CONTAINER))
        return false;
    return entry_as(pack_find(b->k, text_last_word(entry_words(food)), NULL), TAG_DISH);
}

/* "Sardines for the toast", "butter for the pancakes": what something else is for. */
static bool is_purpose(const struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    return index && b->chunks.at[index - 1].tag == TAG_FOR && !said->amount.known && !said->vague
           && b->r->words.at[c->first].tag == TAG_THE && !is_tasted_for(b, index);
}

/* "a carrot", of which no number nor measure says how many */
static bool is_article_one(const struct chunk *c)
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

/* "Fish out the bay leaves": what comes out was put in before, if nobody heard it. */
static bool is_taken_out(const struct builder *b, size_t index, const struct said_amount *said)
{
    while (index > 1 && chunk_tag(&b->chunks, index - 1) == TAG_AND
           && chunk_tag(&b->chunks, index - 2) == TAG_LINE)
        index -= 2;
    const struct chunk *verb = index ? &b->chunks.at[index - 1] : NULL;
    return verb && verb->tag == TAG_ACTION && chunk_marks(verb) & MARK_OF(takes)
           && !(chunk_marks(verb) & MARK_OF(prep)) && !said->amount.known;
}

/* "A cup of the pasta water": it was in the pot. */
static bool is_of_the_pot(const struct builder *b, size_t index, const struct entry *food)
{
    const struct chunk *c = &b->chunks.at[index];
    return food && food->marks & MARK_OF(water) && food->words_count > 1
           && span_has_tag(b->r, c->match->words, TAG_THE);
}

/* "The butter", of which no amount is said, nor more than one. */
static bool is_the_one(const struct builder *b, const struct chunk *c)
{
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
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

/* Whether the dish has flour of its own, so that breads are what comes of it. */
static bool has_flour(const struct builder *b)
{
    for (size_t i = 0; i < b->dish->ingredients.count; i++) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->amount.known && line->entry && line->entry->marks & MARK_OF(flour))
            return true;
    }
    return false;
}

/* Nobody makes these. */
#define RAW                                                                                  \
    (MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish) | MARK_OF(shellfish) \
     | MARK_OF(produce) | MARK_OF(egg))

/* "A minute or two and it's gravy": what it is by then. */
static bool becomes(const struct builder *b, size_t index, const struct entry *food,
                    const struct said_amount *said)
{
    return food && !(food->marks & RAW) && index && !said->amount.known && !said->vague
           && b->dish->steps.count && chunk_tag(&b->chunks, index - 1) == TAG_THERE
           && entry_as(pack_find(b->k, entry_words(food), NULL), TAG_DISH);
}

/* "So, six flatbreads, done", "I get about nine biscuits", "it's basically a truffle": what is
 * made. */
static bool is_made(const struct builder *b, size_t index, const struct entry *food,
                    const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    if (becomes(b, index, food, said))
        return true;
    if (!food || b->cooks || !said->amount.known || said->amount.unit.length
        || !b->dish->steps.count || !entry_as(pack_find(b->k, entry_words(food), NULL), TAG_DISH))
        return false;
    bool told = index && chunk_tag(&b->chunks, index - 1) == TAG_THERE && is_article_one(c);
    return told || (!is_article_one(c) && has_flour(b));
}

/* "Three prawns on each", "four or five prawns on a stick": what is there already, shared out. */
static bool is_shared_out(const struct builder *b, size_t index, const struct ingredient *old,
                          const struct said_amount *said)
{
    return old && old->amount.known && said->amount.known && !said->amount.unit.length
           && !is_article_one(&b->chunks.at[index]) && chunk_tag(&b->chunks, index + 1) == TAG_INTO
           && (chunk_tag(&b->chunks, index + 2) == TAG_EACH
               || chunk_tag(&b->chunks, index + 2) == TAG_ARTICLE);
}

/* "It's like decaf coffee", "they eat these like sunflower seeds": behind what is likened to the
 * food; "put in, like, cinnamon" puts it in. */
static bool compares(const struct builder *b, size_t like)
{
    size_t before = like;
    if (b->r->words.at[like].tag != TAG_OTHER || !b->r->words.at[like].entry)
        return false;
    while (before > b->sentence->first && b->r->words.at[before - 1].tag == TAG_INSIDE)
        before--;
    if (!step_words_list(b->k, "compares", b->r->words.at[like].key) || before == b->sentence->first
        || b->r->words.at[like - 1].after >= AFTER_COMMA
        || b->r->words.at[like].after >= AFTER_COMMA)
        return false;
    const unsigned char tag = b->r->words.at[before - 1].tag;
    return tag == TAG_THERE || tag == TAG_BE || tag == TAG_IT || tag == TAG_THE;
}

/* "It starts to smell kind of like | popcorn": the caption was cut before what it is like. */
static bool is_likened(const struct builder *b, size_t index, const struct said_amount *said)
{
    size_t first = b->chunks.at[index].first;
    if (said->amount.known || said->vague || !first)
        return false;
    if (first > b->sentence->first + 1 && !b->r->words.at[first - 1].entry)
        first--; /* "decaf coffee" */
    return b->r->words.at[first - 1].tag == TAG_LIKE
           || (first > b->sentence->first && compares(b, first - 1));
}

bool is_no_line(const struct builder *b, size_t index, const struct entry *food,
                const struct ingredient *old, const struct said_amount *said)
{
    return (!old
            && ((is_too_vague(food, said, b->chunks.at[index].scope)
                 && (!(food->marks & MARK_OF(water)) || water_goes_in(b, index) == WATER_NONE))
                || is_purpose(b, index, said) || is_near(b, index, said)
                || is_jarred(b, index, food, said) || is_taken_out(b, index, said)
                || is_of_the_pot(b, index, food)))
           || is_share_of_each(b, index, old, said) || tells_source(b, index, food)
           || is_possessed(b, index) || names_a_thing(b, index) || tells_sort(b, index)
           || is_made(b, index, food, said) || is_test(b, &b->chunks.at[index], said)
           || is_shared_out(b, index, old, said) || is_likened(b, index, said);
}

/* "Pour the custard over", "in that brown gravy": a part of a dish that was made of what went in.
 */
static bool is_the_part(const struct builder *b, size_t index, const struct entry *food)
{
    const struct chunk *c = &b->chunks.at[index];
    return b->r->words.at[c->first].tag == TAG_THE && b->dish->ingredients.count
           && (!(food->marks & MARK_OF(generic)) || food->marks & MARK_OF(fat)) /* "the stock" */
           && (entry_as(pack_find(b->k, entry_value(food), NULL), TAG_PART)
               || entry_as(pack_find(b->k, entry_words(food), NULL), TAG_PART));
}

bool is_made_here(struct builder *b, size_t index, const struct entry *food,
                  const struct said_amount *said)
{
    if (!food || food->marks & RAW || said->amount.known || said->vague)
        return false;
    if (is_the_part(b, index, food))
        return true;
    bool makes = index && chunk_tag(&b->chunks, index - 1) == TAG_OPENER
                 && is_step_word(b, &b->chunks.at[index - 1], "makes");
    if (makes && b->dish->ingredients.count) /* at its beginning it may be the dish's main food */
        b->made = food;
    return b->made == food;
}
