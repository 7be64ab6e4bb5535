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

/* "Two bay leaves" is a count, though herbs are measured by the spoon; "110 of butter" is none. */
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
           && (one || (said && said->marks & (MARK_OF(plural) | MARK_OF(fish))));
}

/* "Two tablespoons of vinegar, and three of oil": the unit is the one before; "110 of butter" has
 * none. */
#define UNIT_WORDS 6
#define UNITS_MOST 10
static bool unit_before(const struct checker *c, const struct ingredient *line)
{
    const struct sentence *s = sentence_of(c->r, line->words.first);
    for (size_t n = 0; s && n < s->match_count; n++) {
        const struct match *m = &c->r->matches.at[s->match_first + n];
        if (m->rule->kind == RULE_amount && ratio_finite(m->low)
            && !span_is_empty(match_slot(m, SLOT_unit))
            && ratio_compare(line->amount.min, RATIO(UNITS_MOST)) < 0
            && m->words.last < line->words.first && m->words.last + UNIT_WORDS >= line->words.first)
            return span_has_tag(c->r, line->words, TAG_OF);
    }
    return false;
}

/* "Water, two hundred. Two hundred mils": the same number with its unit, soon behind. */
#define UNIT_SOON_WORDS 8
static bool unit_behind(const struct checker *c, const struct ingredient *line)
{
    const size_t until = sentence_until(c->r, line->words.last + UNIT_SOON_WORDS);
    for (size_t i = sentence_from(c->r, line->words.last); i < until; i++) {
        const struct sentence *s = &c->r->sentences.at[i];
        for (size_t n = s->match_first; n < s->match_first + s->match_count; n++) {
            const struct match *m = &c->r->matches.at[n];
            if (m->rule->kind == RULE_amount && !span_is_empty(match_slot(m, SLOT_unit))
                && m->words.first > line->words.last
                && m->words.first <= line->words.last + UNIT_SOON_WORDS && ratio_finite(m->low)
                && ratio_equal(m->low, line->amount.min))
                return true;
        }
    }
    return false;
}

bool lacks_unit(const struct checker *c, const struct ingredient *line)
{
    return !counted(c, line) && !unit_before(c, line) && !unit_behind(c, line)
           && !said_with(c, "in_parts", line->words)
           && !said_with(c, "written_amount", line->words);
}
