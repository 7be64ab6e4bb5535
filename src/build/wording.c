/* build/wording.c
 * SPDX-License-Identifier: MIT */
#include "build/wording.h"

#include <string.h>

#include "build/wordheat.h"
#include "build/wordmeasure.h"
#include "kitchen/print.h"
#include "match/capture.h"
#include "match/clause.h"
#include "match/matches.h"

/* The number that the rules put together from word `i` on; NULL when there is none. */
static const struct match *number_from(const struct builder *b, size_t i)
{
    struct matches numbers = matches_of(b->r, b->sentence, KIND_OF(number));
    numbers.begins = (struct span){i, i};
    for (const struct match *m; (m = matches_next(&numbers));)
        if (ratio_finite(m->low) && ratio_known(m->high))
            return m;
    return NULL;
}

static void say_number(const struct builder *b, struct prose *p, const struct match *m)
{
    prose_word(p, print_number(b->r->arena, m->low, false), false);
    if (ratio_equal(m->low, m->high) || !ratio_finite(m->high))
        return;
    prose_word(p, step_word(b->k, "to"), true);
    prose_word(p, print_number(b->r->arena, m->high, false), false);
}

/* Without the capital that only began a sentence. */
static struct text small(const struct builder *b, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    bool begins = i == b->sentence->first || b->r->words.at[i - 1].after >= AFTER_STOP;
    if (!w->capital || !begins || !w->text.length)
        return w->text;
    char *copy = arena_alloc(b->r->arena, w->text.length);
    memcpy(copy, w->text.at, w->text.length);
    if (*copy >= 'A' && *copy <= 'Z')
        *copy = (char) (*copy - 'A' + 'a');
    return (struct text){copy, w->text.length};
}

static bool joins(const struct word *w)
{
    return w->entry && w->entry->marks & MARK_OF(joins);
}

/* What a misheard entry that begins at word `*i` was read as; `*i` becomes its last word. NULL
 * where it is as heard. */
static const struct entry *heard_from(const struct builder *b, size_t *i, size_t last)
{
    size_t end = *i;
    while (end < last && b->r->words.at[end].tag == TAG_INSIDE)
        end++;
    const struct entry *heard = b->r->words.at[end].rare->heard_as;
    if (heard)
        *i = end;
    return heard;
}

static bool is_measure(unsigned char tag)
{
    return tag == TAG_UNIT || tag == TAG_TIME || tag == TAG_LENGTH || tag == TAG_DEGREE;
}

static bool is_counted(unsigned char tag)
{
    return is_measure(tag) || tag == TAG_COUNTER || tag == TAG_CONTAINER || tag == TAG_VAGUE;
}

/* "With the back of a spoon": no measure, of which there would be something. */
static bool is_spoon(const struct builder *b, size_t i)
{
    const struct entry *unit = b->r->words.at[i].entry;
    const unsigned char after = i < b->sentence->last ? b->r->words.at[i + 1].tag : TAG_SO;
    return unit && unit->marks & MARK_OF(generic) && after != TAG_OF && after != TAG_FOOD;
}

/* "each one", "half of it", "a ball": said as a word, not counted. */
static bool is_pronoun_one(const struct builder *b, const struct match *number)
{
    size_t next = number->words.last + 1;
    const struct word *first = &b->r->words.at[number->words.first];
    if (first->tag == TAG_FRACTION && !(first->text.at[0] >= '0' && first->text.at[0] <= '9'))
        return next > b->sentence->last || !is_counted(word_tag(b->r, b->sentence, next));
    if (!ratio_equal(number->low, RATIO(1)) || !ratio_equal(number->high, RATIO(1))
        || next > b->sentence->last)
        return ratio_equal(number->low, RATIO(1));
    if (b->r->words.at[number->words.first].tag == TAG_ARTICLE) /* "a ball", but "1 cup" */
        return !is_measure(word_tag(b->r, b->sentence, next)) || is_spoon(b, next);
    unsigned char behind = word_tag(b->r, b->sentence, next);
    return !is_counted(behind) && behind != TAG_AND;
}

/* "Let's say", "roughly", "like" before a number: all are "about". `*i` becomes the last word of
 * it.
 */
static bool say_hedge(const struct builder *b, struct prose *p, size_t *i, size_t last)
{
    size_t end = *i;
    while (end < last && b->r->words.at[end].tag == TAG_INSIDE)
        end++;
    if (end == last || b->r->words.at[end].tag != TAG_HEDGE || !number_from(b, end + 1))
        return false;
    prose_word(p, step_word(b->k, "about"), true);
    *i = end;
    return true;
}

/* Only such words are written as others. */
static bool is_grammar_word(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_UNTIL || tag == TAG_IT;
}

/* "The bacon's" of "the bacon's next": a food with a verb behind it. */
static bool is_clipped(const struct word *w)
{
    return w->tag == TAG_FOOD && w->entry && w->entry->words_count == 1 && !(w->scope & SCOPE_UNTIL)
           && text_find(w->text, '\'', 0) + 2 == w->text.length;
}

/* "Thirty-five forty minutes", "six, seven minutes": from the number to the one behind it. */
static bool is_range(const struct builder *b, const struct match *number, size_t last)
{
    size_t next = number->words.last + 1;
    const struct match *second = next <= last ? number_from(b, next) : NULL;
    return second && second->words.last < last && ratio_compare(number->low, second->low) < 0
           && b->r->words.at[second->words.last + 1].tag == TAG_TIME;
}

/* The hyphen or comma behind word `i`. */
static void say_join(const struct builder *b, struct prose *p, size_t i, size_t last)
{
    if (i < last && b->r->words.at[i].after == AFTER_HYPHEN)
        prose_hyphen(p);
    else if (i < last && b->r->words.at[i].after == AFTER_COMMA)
        prose_comma(p);
}

void say_words(const struct builder *b, struct prose *p, size_t first, size_t last)
{
    for (size_t i = first; i <= last; i++) {
        const struct word *w = &b->r->words.at[i];
        const struct match *number = number_from(b, i);
        if (w->filler || say_hedge(b, p, &i, last))
            continue;
        if (say_measure(b, p, &i, last)) {
            say_join(b, p, i, last);
            continue;
        }
        const struct entry *heard = heard_from(b, &i, last);
        if (heard) {
            prose_word(p, entry_shown(heard), false);
        } else if (number && number->words.last <= last && !is_pronoun_one(b, number)) {
            say_number(b, p, number);
            i = number->words.last;
            if (is_range(b, number, last)) {
                prose_word(p, step_word(b->k, "to"), true);
                continue;
            }
        } else {
            struct text other = is_grammar_word(w->tag) ? step_text(b->k, "instead", w->key)
                                                        : TEXT_EMPTY; /* "your" */
            if (i == last && is_clipped(w))
                other = entry_words(w->entry);
            prose_word(p, other.length ? other : small(b, i), joins(w));
        }
        say_join(b, p, i, last);
    }
}

static const struct ingredient *line_at(const struct builder *b, const struct chunk *c)
{
    for (size_t i = 0; i < b->dish->ingredients.count; i++) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->id >= c->first && line->id <= c->last)
            return line;
    }
    return NULL;
}

/* Whether the food goes in at several points, so that each step must say how much of it. */
static bool is_divided(const struct builder *b, const struct ingredient *line)
{
    if (!line || !line->amount.known)
        return false;
    for (size_t i = 0; i < b->dish->ingredients.count; i++) {
        const struct ingredient *other = &b->dish->ingredients.at[i];
        if (other != line && text_equal(other->kind, line->kind) && other->amount.known)
            return true;
    }
    return false;
}

/* "A glug of" is one entry, and ends in the word that the portion is told by. */
static bool ends_in_of(const struct builder *b, size_t i)
{
    struct text of_the = step_word(b->k, "of-the");
    return b->r->words.at[i].tag == TAG_OF
           || text_equal(b->r->words.at[i].key, text_slice(of_the, 0, text_find(of_the, ' ', 0)));
}

/* "Teaspoon of salt" is one, but not "teaspoon and a half of". */
static bool lacks_one(const struct builder *b, struct span amount)
{
    const struct match *m = chunk_match(b->r, b->sentence, amount, RULE_amount);
    return b->r->words.at[amount.first].tag == TAG_UNIT
           && (!m || (ratio_equal(m->low, RATIO(1)) && ratio_equal(m->high, RATIO(1))));
}

void say_food(const struct builder *b, struct prose *p, const struct chunk *c, bool the)
{
    struct span food = match_slot(c->match, SLOT_food), amount = match_slot(c->match, SLOT_amount);
    bool whole = c->match->rule->kind != RULE_line || span_is_empty(food)
                 || text_is(c->match->rule->option, "length")
                 || !span_is_empty(match_slot(c->match, SLOT_extract)) || c->scope & SCOPE_OPTIONAL
                 || (c->scope & SCOPE_UNTIL && !span_is_empty(match_slot(c->match, SLOT_more)));
    if (whole) {
        if (the && b->r->words.at[c->first].tag == TAG_EXTRACT)
            prose_word(p, step_word(b->k, "the"), true);
        say_words(b, p, c->first, c->last);
        return;
    }
    if (is_divided(b, line_at(b, c)) && !span_is_empty(amount)) {
        struct span corrected = match_slot(c->match, SLOT_amount2);
        amount = span_is_empty(corrected) ? amount : corrected;
        struct text of_the = step_word(b->k, "of-the");
        size_t last = amount.last;
        while (last > amount.first && ends_in_of(b, last))
            last--;
        if (lacks_one(b, amount))
            prose_word(p, print_number(b->r->arena, RATIO(1), false), false);
        say_words(b, p, amount.first, last);
        prose_word(p, of_the, true);
    } else if (the) {
        prose_word(p, step_word(b->k, "the"), true);
    }
    say_words(b, p, food.first, food.last);
}

/* "Melt six tablespoons of butter and stir in four of them": four tablespoons, by the amount that
 * the sentence named before. The last word of that unit; 0 when there is none. */
static size_t unit_before(const struct builder *b, const struct chunk *c)
{
    for (size_t i = 0; i < b->chunks.count && &b->chunks.at[i] < c; i++) {
        const struct match *m = b->chunks.at[i].tag == TAG_LINE ? b->chunks.at[i].match : NULL;
        struct span amount = m ? match_slot(m, SLOT_amount) : NO_WORDS;
        for (size_t n = amount.first; n <= amount.last && !span_is_empty(amount); n++)
            if (b->r->words.at[n].tag == TAG_UNIT)
                return n;
    }
    return 0;
}

/* "4 tablespoons of it" */
static bool say_share(const struct builder *b, struct prose *p, const struct chunk *c)
{
    const struct match *number = number_from(b, c->first);
    size_t unit = unit_before(b, c);
    bool them = b->r->words.at[c->last].tag == TAG_IT;
    if (!unit || !number || !them)
        return false;
    say_number(b, p, number);
    say_words(b, p, unit, unit);
    prose_word(p, step_word(b->k, "of-it"), false);
    return true;
}

void say_chunk(const struct builder *b, const struct step *s, struct prose *p,
               const struct chunk *c)
{
    if (c->tag == TAG_LINE && c->match)
        say_food(b, p, c, true);
    else if (c->tag == TAG_HEATED)
        say_heat(b, s, p, c);
    else if (c->tag == TAG_AMOUNT && say_share(b, p, c))
        return;
    else
        say_words(b, p, c->first, c->last);
}
