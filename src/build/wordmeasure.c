/* build/wordmeasure.c: lengths of time and amounts that cooks say otherwise than recipes print
 * them.
 * SPDX-License-Identifier: MIT */
#include "build/wordmeasure.h"

#include "build/stepwords.h"
#include "kitchen/plural.h"
#include "kitchen/print.h"
#include "match/capture.h"
#include "match/clause.h"
#include "match/matches.h"

/* A measure that begins at a word, and what it counts. */
struct measure {
    const struct match *match;
    const struct entry *unit;
    struct ratio low, high; /* of that unit */
};

/* The length of time or the amount that begins at word `i` and ends by `last`; NULL when there is
 * none. */
static const struct match *match_from(const struct builder *b, size_t i, size_t last)
{
    struct matches there = matches_of(b->r, b->sentence, KIND_OF(duration) | KIND_OF(amount));
    there.begins = (struct span){i, i};
    for (const struct match *m; (m = matches_next(&there));)
        if (m->words.last <= last && ratio_finite(m->low) && ratio_finite(m->high))
            return m;
    return NULL;
}

/* "Three tablespoon of oil": said by who has no plural there, or captioned so. */
static bool lacks_plural(const struct builder *b, const struct measure *m, size_t last)
{
    const size_t end = match_slot(m->match, SLOT_unit).last;
    return !(m->unit->marks & MARK_OF(plural)) && ratio_compare(m->high, RATIO(1)) > 0
           && (end == last || word_tag(b->r, b->sentence, end + 1) == TAG_OF);
}

static bool is_odd_amount(const struct builder *b, size_t last, struct measure *m)
{
    struct span unit = match_slot(m->match, SLOT_unit);
    m->unit = entry_at(b->r, unit);
    if (!m->unit || m->unit->tag != TAG_UNIT || unit.first != unit.last)
        return false;
    m->low = m->match->low;
    m->high = m->match->high;
    bool exact = ratio_equal(m->low, m->high);
    return (exact && !span_is_empty(match_slot(m->match, SLOT_part))) || lacks_plural(b, m, last);
}

/* "An hour to ninety minutes" has two. */
static bool has_one_unit(const struct builder *b, const struct measure *m)
{
    struct span other = match_slot(m->match, SLOT_time2);
    return span_is_empty(other)
           || text_equal(entry_value(entry_at(b->r, other)), entry_value(m->unit));
}

/* "An hour and a half", "half an hour", "a minute or two". */
static bool is_odd_length(const struct builder *b, struct measure *m)
{
    struct span unit = match_slot(m->match, SLOT_time);
    m->unit = entry_at(b->r, unit);
    if (!m->unit || m->unit->tag != TAG_TIME || !has_one_unit(b, m))
        return false;
    struct ratio size = ratio_read(entry_value(m->unit).at, entry_value(m->unit).length);
    m->low = ratio_divide(m->match->low, size);
    m->high = ratio_divide(m->match->high, size);
    return ratio_finite(m->low) && !span_has_tag(b->r, m->match->words, TAG_ATLEAST)
           && (!span_is_empty(match_slot(m->match, SLOT_part))
               || ratio_compare(m->low, RATIO(1)) < 0
               || span_has_tag(b->r, m->match->words, TAG_OR));
}

/* The unit's word. Half of an hour is 30 minutes, where both ends are whole. */
static struct text count_in(const struct builder *b, struct measure *m)
{
    struct text unit = entry_shown(m->unit), smaller = step_text(b->k, "sixtieth", unit);
    struct ratio low = ratio_multiply(m->low, RATIO(60)), high = ratio_multiply(m->high, RATIO(60));
    if (m->match->rule->kind == RULE_duration && ratio_compare(m->low, RATIO(1)) < 0
        && smaller.length && low.under == 1 && high.under == 1) {
        m->low = low;
        m->high = high;
        return smaller;
    }
    return ratio_compare(m->high, RATIO(1)) > 0 ? plural_of(b->k, b->r->arena, unit) : unit;
}

static bool is_behind_number(const struct match *m, size_t word)
{
    struct span number = match_slot(m, SLOT_number);
    return !span_is_empty(number) && word > number.last;
}

/* "Another", "about" before the number, and "more" behind it. */
static void say_around(const struct builder *b, struct prose *p, const struct match *m, bool behind)
{
    for (size_t i = m->words.first; i <= m->words.last; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_HEDGE && !behind)
            prose_word(p, step_word(b->k, "about"), true);
        else if (w->tag == TAG_MORE && is_behind_number(m, i) == behind)
            prose_word(p, w->key, true);
    }
}

static void say_count(const struct builder *b, struct prose *p, int64_t count, struct text unit)
{
    prose_word(p, print_number(b->r->arena, RATIO(count), false), false);
    prose_word(p, unit, false);
}

/* "An hour and ten": the unit of the second number is not said. */
static bool say_hours(const struct builder *b, struct prose *p, const struct match *m)
{
    const struct entry *unit = entry_at(b->r, match_slot(m, SLOT_time));
    if (!text_is(m->rule->option, "hours") || !unit || m->low.under != 1
        || !ratio_equal(m->low, m->high))
        return false;
    struct text smaller = step_text(b->k, "sixtieth", entry_shown(unit));
    struct ratio size = ratio_read(entry_value(unit).at, entry_value(unit).length);
    if (!smaller.length || size.under != 1 || size.over <= 0)
        return false;
    say_around(b, p, m, false);
    int64_t whole = m->low.over / size.over;
    say_count(b, p, whole,
              whole == 1 ? entry_shown(unit) : plural_of(b->k, b->r->arena, entry_shown(unit)));
    say_count(b, p, m->low.over % size.over * 60 / size.over, smaller);
    return true;
}

bool say_measure(const struct builder *b, struct prose *p, size_t *i, size_t last)
{
    struct measure m = {.match = match_from(b, *i, last)};
    if (m.match && say_hours(b, p, m.match)) {
        *i = m.match->words.last;
        return true;
    }
    if (!m.match
        || !(m.match->rule->kind == RULE_duration ? is_odd_length(b, &m)
                                                  : is_odd_amount(b, last, &m)))
        return false;
    struct text unit = count_in(b, &m);
    say_around(b, p, m.match, false);
    prose_word(p, print_number(b->r->arena, m.low, false), false);
    if (!ratio_equal(m.low, m.high)) {
        prose_word(p, step_word(b->k, "to"), true);
        prose_word(p, print_number(b->r->arena, m.high, false), false);
    }
    say_around(b, p, m.match, true);
    prose_word(p, unit, false);
    *i = m.match->words.last;
    return true;
}
