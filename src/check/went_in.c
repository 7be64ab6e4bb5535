/* check/went_in.c: how much of a food was told before, for who tells it again.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/again.h"

/* The lamb is the leg of lamb that was bought; "oil" is any oil. */
static bool same_food(const struct ingredient *line, const struct entry *food)
{
    return text_equal(line->kind, entry_value(food))
           || one_names_both(line->kind, entry_value(food));
}

/* "The card says 250 of butter": more is no count, but measured as before. */
#define COUNT_MOST 20

/* So many of the said unit are one of the line's; not above 0 where they measure different things.
 */
static double units_in(const struct checker *c, const struct ingredient *line,
                       const struct amount *said)
{
    const struct amount once = {true, RATIO(1), RATIO(1), TEXT_EMPTY, false};
    bool same = text_equal(line->amount.unit, said->unit)
                || (!said->unit.length && ratio_compare(said->min, RATIO(COUNT_MOST)) > 0);
    double times = same ? 1 : amount_in(c, &once, line->amount.unit, said->unit);
    if (times <= 0 && line->package.known) /* "a 500 gram bag" */
        times = amount_in(c, &line->package, line->package.unit, said->unit);
    return times;
}

/* Adds what one line tells; true where it, or all lines together, is as much as was said. */
static bool add_line(const struct checker *c, const struct ingredient *line,
                     const struct amount *said, double *least, struct went_in *out)
{
    const double low = ratio_double(said->min), high = ratio_double(said->max),
                 times = units_in(c, line, said), one = ratio_double(line->amount.min) * times,
                 most = ratio_double(line->amount.max) * times;
    out->told = true;
    if (times <= 0)
        return false;
    *least += one;
    out->most += most;
    out->other = line;
    return overlap(low, high, one, most) || overlap(low, high, *least, out->most);
}

bool went_in(const struct checker *c, const struct entry *food, size_t before,
             const struct amount *said, struct went_in *out)
{
    double least = 0;
    *out = (struct went_in){.dish = c->number};
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id < before && line->amount.known && !line->vague && same_food(line, food)
            && add_line(c, line, said, &least, out))
            return true;
    }
    return false;
}

/* "Remember it was the five cups of flour", "all six of the thighs": not of the dish it stands in,
 * where that has none. */
static bool looks_far_back(const struct checker *c, size_t word)
{
    struct span words = {word, word};
    return said_with(c, "remembers", words) || said_with(c, "definite", words)
           || said_with(c, "recap_count", words);
}

/* The last line that tells of the food in another dish: "remember it was the five cups of flour",
 * when all is fried. False where one tells of as much. */
static bool told_elsewhere(const struct checker *c, const struct entry *food, size_t before,
                           const struct amount *said, struct went_in *out)
{
    *out = (struct went_in){0};
    for (size_t d = 0; d < c->r->dishes.count; d++) {
        struct went_in in = {.dish = d};
        double least = 0;
        for (size_t i = 0; d != c->number && i < c->r->dishes.at[d].ingredients.count; i++) {
            const struct ingredient *line = &c->r->dishes.at[d].ingredients.at[i];
            if (line->id < before && line->amount.known && !line->vague
                && text_equal(line->kind, entry_value(food))
                && add_line(c, line, said, &least, &in))
                return false;
        }
        if (in.other && (!out->other || in.other->id > out->other->id))
            *out = in;
    }
    return out->other != NULL;
}

bool told_otherwise(const struct checker *c, const struct entry *food, size_t before,
                    const struct amount *said, struct went_in *out)
{
    if (went_in(c, food, before, said, out))
        return false;
    return out->told ? out->other != NULL
                     : looks_far_back(c, before) && told_elsewhere(c, food, before, said, out);
}

static bool has_number(const struct checker *c, struct span words)
{
    static const unsigned char TAGS[] = {TAG_NUMBER, TAG_ONES,    TAG_TEENS,   TAG_TENS,
                                         TAG_DOZEN,  TAG_HUNDRED, TAG_ARTICLE, TAG_FRACTION};
    for (size_t i = words.first; i <= words.last && i < c->r->words.count; i++)
        if (memchr(TAGS, c->r->words.at[i].tag, sizeof TAGS))
            return true;
    return false;
}

struct text amount_words(const struct checker *c, const struct ingredient *line)
{
    struct span words = line->words;
    size_t nearest = SIZE_MAX;
    if (has_number(c, line->words))
        return said_words(c->r, line->words);
    struct matches amounts = matches_all(c->r, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));) {
        size_t far =
            m->words.first > line->id ? m->words.first - line->id : line->id - m->words.first;
        if (far >= nearest || !ratio_equal(m->low, line->amount.min)
            || !ratio_equal(m->high, line->amount.max))
            continue;
        nearest = far;
        words = m->words;
    }
    return said_words(c->r, words);
}

void report_otherwise(struct checker *c, struct span words, struct text about, size_t dish,
                      const struct ingredient *other)
{
    struct subject_of what = {c->r->words.at[words.first].start, words, about};
    struct finding *f =
        REPORT(c, amount_otherwise, what, said_words(c->r, words), amount_words(c, other));
    if (f)
        f->dish = dish;
}
