/* check/bare_number.c: numbers before foods: counts, and those that lack their unit.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"
#include "match/capture.h"

/* "Eight thick beef ones". */
#define ONES_WORDS 2
static bool said_ones(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->words.last + 1, line->words.last + ONES_WORDS};
    return behind.last < c->r->words.count
           && said_find(&c->sayings, c->r, "counts_ones", behind, &where);
}

/* "A sesame oil", "half a stock cube": of one thing, whatever its name. */
static bool half_one(const struct checker *c, const struct ingredient *line)
{
    return span_has_tag(c->r, line->words, TAG_ARTICLE)
           && ratio_compare(line->amount.min, RATIO(1)) <= 0;
}

/* "Two bay leaves" is a count, though herbs are measured by the spoon, and so is "three garlic";
 * "110 of butter" is none. */
#define COUNT_MOST 20
static bool counted(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = line->id < c->r->words.count ? &c->r->words.at[line->id] : NULL;
    const struct entry *said = w ? w->entry : NULL;
    bool one = ratio_equal(line->amount.min, RATIO(1));
    if (w && (said_ones(c, line) || half_one(c, line)))
        return true;
    if (w && span_has_tag(c->r, line->words, TAG_VAGUE))
        return true; /* "some chicken ... eight of them" */
    for (size_t i = line->words.first; w && i < line->words.last; i++)
        if (c->r->words.at[i].tag == TAG_OF && c->r->words.at[i + 1].tag == TAG_IT)
            return true; /* "Stock cubes, two of them" */
    return ratio_compare(line->amount.min, RATIO(COUNT_MOST)) < 0
           && (one
               || (said
                   && (said->marks & (MARK_OF(plural) | MARK_OF(fish) | MARK_OF(produce))
                       || !(said->marks & MARK_OF(uncounted)))));
}

/* "Two tablespoons of vinegar, and three of oil": the unit is the one before; "110 of butter" has
 * none. */
#define UNIT_WORDS 6
#define UNITS_MOST 10
static bool unit_before(const struct checker *c, const struct ingredient *line)
{
    const struct sentence *s = sentence_of(c->r, line->words.first);
    struct matches amounts = matches_of(c->r, s, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));)
        if (ratio_finite(m->low) && !span_is_empty(match_slot(m, SLOT_unit))
            && ratio_compare(line->amount.min, RATIO(UNITS_MOST)) < 0
            && m->words.last < line->words.first && m->words.last + UNIT_WORDS >= line->words.first)
            return span_has_tag(c->r, line->words, TAG_OF);
    return false;
}

/* "Water, two hundred. Two hundred mils": the same number with its unit, soon behind. */
#define UNIT_SOON_WORDS 8
static bool unit_behind(const struct checker *c, const struct ingredient *line)
{
    const struct span soon = {line->words.last + 1, line->words.last + UNIT_SOON_WORDS};
    struct matches amounts = matches_among(c->r, soon, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));)
        if (!span_is_empty(match_slot(m, SLOT_unit)) && ratio_finite(m->low)
            && ratio_equal(m->low, line->amount.min))
            return true;
    return false;
}

/* "Three hundred of water, millilitres that is", "ginger two inch": the unit alone stands behind;
 * "water twenty minutes": the number is a time's. */
static bool measured_next(const struct checker *c, const struct ingredient *line)
{
    const size_t next = line->words.last + 1;
    const struct word *w = &c->r->words.at[next];
    if (next + 1 >= c->r->words.count)
        return false;
    const bool ends = w->after >= AFTER_COMMA || (w[1].tag != TAG_OF && w[1].tag != TAG_FOOD);
    return w->tag == TAG_TIME || w->tag == TAG_LENGTH || (w->tag == TAG_UNIT && ends);
}

/* "Five hundred grams of butter, then four hundred of flour": what is weighed in one breath is
 * weighed alike. Water after grams may be of either, and a small number is a count. */
#define METRIC_WORDS 25
#define METRIC_LEAST 20
static bool metric_before(const struct checker *c, const struct ingredient *line)
{
    const size_t first = line->words.first;
    struct span where;
    if (ratio_compare(line->amount.min, RATIO(METRIC_LEAST)) < 0
        || said_find(&c->sayings, c->r, "liquids", line->words, &where))
        return false;
    for (size_t i = first > METRIC_WORDS ? first - METRIC_WORDS : 0; i < first; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_UNIT && w->entry && text_is(entry_value(w->entry), "gram"))
            return true;
    }
    return false;
}

/* "And the ajvar. I said ten minutes": the number was said of something else, since it does not
 * stand beside the food. */
#define BESIDE_WORDS 8
static bool number_beside(const struct checker *c, const struct ingredient *line)
{
    static const unsigned char TAGS[] = {TAG_NUMBER, TAG_ONES,     TAG_TEENS,   TAG_TENS,
                                         TAG_DOZEN,  TAG_FRACTION, TAG_ARTICLE, TAG_HUNDRED};
    if (line->words.last >= line->words.first + BESIDE_WORDS)
        return false;
    for (size_t i = 0; i < sizeof TAGS; i++)
        if (span_has_tag(c->r, line->words, TAGS[i]))
            return true;
    return false;
}

bool lacks_unit(const struct checker *c, const struct ingredient *line)
{
    return number_beside(c, line) && !metric_before(c, line) && !counted(c, line)
           && !unit_before(c, line) && !unit_behind(c, line) && !measured_next(c, line)
           && !said_with(c, "in_parts", line->words)
           && !said_with(c, "written_amount", line->words);
}
