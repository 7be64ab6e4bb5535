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

/* "Six cups of stock, I've just used a stock cube": what the line before is made of, in its
 * sentence or the next one. */
static bool is_made_from(const struct builder *b, const struct entry *food)
{
    const struct ingredient *line = last_line(b);
    const struct text made = food ? step_text(b->k, "source", entry_value(food)) : TEXT_EMPTY;
    const size_t from =
        b->sentence > b->r->sentences.at ? b->sentence[-1].first : b->sentence->first;
    return made.length && line && line->amount.known && line->words.first >= from
           && text_equal(text_last_word(line->kind), made);
}

/* "The pot with the onions in it", "spray with flour in it": what is in something already, though
 * "water with salt in it" puts it in. */
static bool is_inside(const struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunks *c = &b->chunks;
    const unsigned char before = index ? c->at[index - 1].tag : (unsigned char) TAG_SO;
    size_t with = before == TAG_THE && index > 1 ? index - 2 : index - 1;
    return index && !said->amount.known && !said->vague
           && (c->at[with].tag == TAG_WITH || c->at[with].tag == TAG_HAVE)
           && (!with || c->at[with - 1].tag != TAG_LINE) && chunk_tag(c, index + 1) == TAG_INTO
           && chunk_tag(c, index + 2) == TAG_IT
           && b->r->words.at[c->at[index].last].after < AFTER_COMMA;
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

/* "Fish out the bay leaves": what comes out was put in before, if nobody heard it. */
static bool is_taken_out(const struct builder *b, size_t index, const struct entry *food,
                         const struct said_amount *said)
{
    const bool off =
        food && food->marks & (MARK_OF(fat) | MARK_OF(water)); /* "drain off the fat" */
    while (index > 1 && chunk_tag(&b->chunks, index - 1) == TAG_AND
           && chunk_tag(&b->chunks, index - 2) == TAG_LINE)
        index -= 2;
    const struct chunk *verb = index ? &b->chunks.at[index - 1] : NULL;
    return verb && verb->tag == TAG_ACTION && chunk_marks(verb) & MARK_OF(takes)
           && (off || !(chunk_marks(verb) & MARK_OF(prep))) && !said->amount.known;
}

/* "A cup of the pasta water": it was in the pot. */
static bool is_of_the_pot(const struct builder *b, size_t index, const struct entry *food)
{
    const struct chunk *c = &b->chunks.at[index];
    return food && food->marks & MARK_OF(water) && food->words_count > 1
           && span_has_tag(b->r, c->match->words, TAG_THE);
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
                || is_jarred(b, index, food, said) || is_taken_out(b, index, food, said)
                || is_of_the_pot(b, index, food) || is_made_from(b, food)
                || is_inside(b, index, said)))
           || is_share_of_each(b, index, old, said) || tells_source(b, index, food)
           || is_idle_one(b, index, food) || is_made(b, index, food, said)
           || is_test(b, &b->chunks.at[index], said) || is_shared_out(b, index, old, said)
           || is_likened(b, index, said);
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
