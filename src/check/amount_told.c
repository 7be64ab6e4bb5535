/* check/amount_told.c: whether talk near a food tells how much of it, in words that the grammar
 * does not put together.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/unmeasured.h"
#include "match/capture.h"

/* "Beer. Three quarters of a cup", "sunflower oil, about a centimeter deep": the amount stands
 * behind the food, in words that the grammar does not put together. */
#define BEHIND_WORDS 9
#define NEXT_WORDS 4

/* Whether words (from, to] name a food that is not the line's. */
static bool other_food(const struct checker *c, const struct ingredient *line, size_t from,
                       size_t to)
{
    for (size_t i = from + 1; i <= to && i <= c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_FOOD && w->entry && !(w->entry->marks & MARK_OF(generic))
            && !text_share_part(entry_shown(w->entry), line->food, ' '))
            return true;
    }
    return false;
}

/* "And corn. Two cups of beans": what follows an amount is another food, if only a kind of food. */
static bool counts_other(const struct checker *c, const struct ingredient *line, size_t last)
{
    size_t i = last + 1;
    if (i < c->r->words.count && c->r->words.at[i].tag == TAG_OF)
        i++;
    const struct word *w = i < c->r->words.count ? &c->r->words.at[i] : NULL;
    return w && w->tag == TAG_FOOD && w->entry
           && !text_share_part(entry_shown(w->entry), line->food, ' ');
}

bool amount_behind(const struct checker *c, const struct ingredient *line)
{
    const size_t end = c->r->words.count - 1;
    const size_t most = line->id + BEHIND_WORDS < end ? line->id + BEHIND_WORDS : end;
    struct span where, behind = {line->id + 1, most};
    const bool fat = line->entry && line->entry->marks & MARK_OF(fat);
    if ((said_find(&c->sayings, c->r, "amount_behind", behind, &where)
         || (fat && said_find(&c->sayings, c->r, "oil_depth", behind, &where)))
        && !other_food(c, line, line->id, where.first))
        return true;
    struct matches amounts = matches_among(c->r, behind, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));)
        if (ratio_finite(m->low))
            return !other_food(c, line, line->id, m->words.last + NEXT_WORDS)
                   && !counts_other(c, line, m->words.last);
    return false;
}

/* "Put in that teaspoon of salt", "four grains of allspice": a measure that was spoken of before,
 * or one that no rule knows. */
static bool measured(const struct checker *c, const struct ingredient *line)
{
    for (size_t i = line->id; i > 1 && i + NEXT_WORDS > line->id; i--) {
        if (c->r->words.at[i].tag == TAG_OF)
            return i + 1 == line->words.first || c->r->words.at[i - 1].tag == TAG_UNIT;
        if (i < line->id && c->r->words.at[i].after >= AFTER_COMMA)
            return false;
        if (i < line->id && c->r->words.at[i].tag == TAG_FOOD)
            return false;
    }
    return false;
}

/* "Do you put chilli in?": nobody does yet. "Garlic. How many is that? Four cloves": it is told. */
#define ASKED_WORDS 20
static bool is_asked(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->id + 1, line->id + ASKED_WORDS};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_with(c, "asked", line->words)
           || (said_find(&c->sayings, c->r, "asks_amount", behind, &where)
               && said_find(&c->sayings, c->r, "answers",
                            (struct span){where.last + 1, behind.last}, &where));
}

/* "Butter them while they're hot": a verb; "salt them" puts in how much, but for
 * "shall I salt it?" */
static bool is_verb(const struct checker *c, const struct ingredient *line)
{
    const struct sentence *s = sentence_of(c->r, line->id);
    if (line->entry && line->entry->marks & MARK_OF(salt))
        return (s && s->flags & SENTENCE_QUESTION) || said_with(c, "to_taste", line->words)
               || tasted_behind(c, line->words);
    return line->id < c->dish->words.last && c->r->words.at[line->id].after < AFTER_COMMA
           && c->r->words.at[line->id + 1].tag == TAG_IT;
}

/* Whether the word is a number of no line, and counts no time. */
static bool is_loose(const struct checker *c, size_t word)
{
    static const unsigned char NUMBERS[] = {TAG_NUMBER, TAG_ONES,  TAG_TEENS,
                                            TAG_TENS,   TAG_DOZEN, TAG_FRACTION};
    const struct word *w = &c->r->words.at[word];
    if (!memchr(NUMBERS, w->tag, sizeof NUMBERS))
        return false;
    for (size_t i = 0; i < c->dish->ingredients.count; i++)
        if (c->dish->ingredients.at[i].words.first <= word
            && word <= c->dish->ingredients.at[i].words.last)
            return false;
    const struct span behind = {word + 1, word + 2};
    return behind.last >= c->r->words.count
           || !(span_has_tag(c->r, behind, TAG_TIME) || span_has_tag(c->r, behind, TAG_DEGREE));
}

/* Whether a loose number stands at word `next`, or behind one word that tells of a food or a
 * measure; `step` is 1 or -1. */
static bool number_from(const struct checker *c, size_t next, size_t step)
{
    static const unsigned char BETWEEN[] = {TAG_UNIT, TAG_COUNTER, TAG_STATE,   TAG_DONE,
                                            TAG_SIZE, TAG_HEDGE,   TAG_FULLNESS};
    const struct word *words = c->r->words.at;
    for (size_t i = next; i < c->r->words.count && i != next + 2 * step; i += step) {
        if (words[step == 1 ? i - 1 : i].after >= AFTER_STOP)
            return false;
        if (is_loose(c, i))
            return true;
        if (!memchr(BETWEEN, words[i].tag, sizeof BETWEEN))
            return false;
    }
    return false;
}

/* "Half teaspoon roasted fennel", "curry leaf two": a number beside the food, which no rule put to
 * it: how much goes in was said. */
static bool number_beside(const struct checker *c, const struct ingredient *line)
{
    return number_from(c, line->words.first - 1, (size_t) -1) || number_from(c, line->id + 1, 1);
}

/* "In go the peppers", that were spoken of before: how many there are was said then, or is missed
 * there. */
#define BEFORE_WORDS 400
static bool known_before(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    size_t first = line->words.first;
    if (!w || !w->entry
        || (c->r->words.at[first].tag != TAG_THE
            && (!first || c->r->words.at[first - 1].tag != TAG_THE)))
        return false;
    for (size_t i = first > BEFORE_WORDS ? first - BEFORE_WORDS : 0; i < first; i++) {
        const struct word *before = &c->r->words.at[i];
        if (before->tag == TAG_FOOD && before->entry
            && one_names_both(entry_value(before->entry), entry_value(w->entry)))
            return true;
    }
    return false;
}

/* "The": not "your", which cooks say of what nobody has seen yet. */
static bool says_the(const struct word *w)
{
    return w->tag == TAG_THE && w->entry && !(w->entry->marks & MARK_OF(names));
}

/* "The tomatoes": spoken of as known, if by another name; "the nutmeg" may be one that every
 * kitchen has. */
static bool spoken_as_known(const struct checker *c, const struct ingredient *line)
{
    const uint64_t shelf = MARK_OF(spice) | MARK_OF(salt) | MARK_OF(herb) | MARK_OF(fat);
    const size_t first = line->words.first;
    return !(line->entry && line->entry->marks & shelf)
           && (says_the(&c->r->words.at[first]) || (first && says_the(&c->r->words.at[first - 1])));
}

/* "Peanuts if nobody minds": the eaters settle it. */
static bool where_wanted(const struct checker *c, const struct ingredient *line)
{
    return line->id + 1 < c->r->words.count && c->r->words.at[line->id + 1].tag == TAG_IF
           && c->r->words.at[line->id].after < AFTER_STOP;
}

/* Whether the talk around the food tells how much of it, or that none goes in. */
bool amount_told(const struct checker *c, const struct ingredient *line)
{
    return is_verb(c, line) || resumed(c, line->id) || is_asked(c, line) || measured(c, line)
           || known_elsewhere(c, line) || known_before(c, line) || amount_behind(c, line)
           || number_beside(c, line) || spoken_as_known(c, line) || where_wanted(c, line)
           || (line->id && c->r->words.at[line->id - 1].tag == TAG_NOT);
}
