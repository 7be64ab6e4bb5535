/* check/two_measures.c: one amount, or one time, told in two measures in one breath.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* "A pound of beef, that's about 450 grams": the second stands within so many words, and labels
 * round by as much (common practice, no source). */
#define SAME_AMOUNT_WORDS 6
#define ROUNDED 1.25

/* Whether words between the two say that they are one: "that's", "or", "which is". */
static bool same_again(const struct checker *c, const char *set, const struct match *a,
                       const struct match *b)
{
    struct span where, between = {a->words.last + 1, b->words.first - 1};
    return b->words.first > a->words.last + 1 && b->words.first <= a->words.last + SAME_AMOUNT_WORDS
           && said_find(&c->sayings, c->r, set, between, &where) && where.last == between.last;
}

/* A quantity of what units measure: a pinch, or a can, is as much as it is. */
static bool measured_in(const struct checker *c, const struct match *m, struct amount *said)
{
    const struct entry *unit = match_entry(c->r, m, SLOT_unit);
    if (!unit || unit->tag != TAG_UNIT || !ratio_finite(m->low) || !ratio_finite(m->high))
        return false;
    *said = (struct amount){true, m->low, m->high, entry_value(unit), false};
    return true;
}

/* The food of the amount, right behind it; NULL: none is named. */
#define OF_WORDS 4
static const struct entry *food_behind(const struct checker *c, const struct match *m)
{
    for (size_t i = m->words.last + 1; i <= m->words.last + OF_WORDS && i < c->r->words.count
                                       && c->r->words.at[i - 1].after < AFTER_STOP;
         i++)
        if (c->r->words.at[i].tag == TAG_FOOD)
            return c->r->words.at[i].entry;
    return NULL;
}

/* "350 grams of water, that's about a pound of flour". */
static bool of_two_foods(const struct checker *c, const struct match *a, const struct match *b)
{
    const struct entry *x = food_behind(c, a), *y = food_behind(c, b);
    return x && y && !one_names_both(entry_value(x), entry_value(y));
}

/* "Three pounds of beef, about three kilos. Two cans ...": hedged, and of no other food. */
static bool restated(const struct checker *c, const struct match *a, const struct match *b)
{
    const struct word *w = c->r->words.at;
    size_t foods = 0;
    if (b->words.first <= a->words.last + 1 || b->words.first > a->words.last + SAME_AMOUNT_WORDS)
        return false;
    for (size_t i = a->words.last + 1; i < b->words.first; i++)
        foods += w[i].tag == TAG_FOOD; /* "a pinch of salt, and cold water, about 100 mil" */
    return foods <= 1 && w[b->words.first].tag == TAG_HEDGE
           && w[b->words.first - 1].after >= AFTER_COMMA && w[b->words.last].after >= AFTER_COMMA
           && food_behind(c, a);
}

/* The ingredient line that has the amount; NULL: there is none. */
static const struct ingredient *line_of(const struct checker *c, const struct match *m)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->words.first <= m->words.first && line->words.last >= m->words.last)
            return line;
    }
    return NULL;
}

/* "Two cups of flour, that's 600 grams": by the published weight, which depends on how a cup is
 * filled. */
#define FILLED 1.5
static bool other_weight(const struct checker *c, const struct match *a, const struct amount *other)
{
    const struct ingredient *line = line_of(c, a);
    double grams = amount_in(c, other, other->unit, TEXT_OF("gram"));
    return line && line->weight.known && grams > 0
           && (grams > line->weight.max * FILLED || grams * FILLED < line->weight.min);
}

static void check_measures(struct checker *c, const struct match *a, const struct match *b)
{
    struct amount one, other;
    if (!(same_again(c, "same_amount", a, b) || restated(c, a, b)) || !measured_in(c, a, &one)
        || !measured_in(c, b, &other) || text_equal(one.unit, other.unit) || of_two_foods(c, a, b)
        || stands_behind(c, "apiece", b->words)) /* "two kilos, that's 500 grams a tin" */
        return;
    double as = amount_in(c, &one, one.unit, other.unit), said = ratio_double(other.min);
    if (as > 0 ? said > 0 && (as > said * ROUNDED || said > as * ROUNDED)
               : other_weight(c, a, &other))
        REPORT(c, two_measures, subject_words(c, b->words), said_words(c->r, a->words));
}

/* ---- one time in hours and in minutes */

/* The unit of a time; NULL: none is named. */
static const struct entry *time_unit(const struct checker *c, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (c->r->words.at[i].tag == TAG_TIME)
            return c->r->words.at[i].entry;
    return NULL;
}

/* "An hour, so thirty minutes without the lid and thirty with it" tells its parts. */
#define PART_WORDS 12

static void check_times(struct checker *c, const match_list *times, size_t n)
{
    const struct match *a = times->at[n - 1], *b = times->at[n];
    const struct entry *x = time_unit(c, a), *y = time_unit(c, b);
    if (!x || !y || text_equal(entry_value(x), entry_value(y)) || !ratio_finite(a->high)
        || !same_again(c, "same_time", a, b)
        || stands_behind(c, "time_of", b->words) /* "two hours. So ten minutes on the onions" */
        || (n + 1 < times->count && times->at[n + 1]->words.first <= b->words.last + PART_WORDS))
        return;
    if (!overlap(ratio_double(a->low) / ROUNDED, ratio_double(a->high) * ROUNDED,
                 ratio_double(b->low), ratio_double(b->high)))
        REPORT(c, said_otherwise, subject_words(c, b->words), said_words(c->r, a->words));
}

static void find_two_times(struct checker *c)
{
    match_list times = {0};
    add_matches(c, KIND_OF(duration), SCOPE_NOT_DONE, &times);
    for (size_t n = 1; n < times.count; n++)
        check_times(c, &times, n);
}

void find_two_measures(struct checker *c)
{
    match_list amounts = {0};
    add_matches(c, KIND_OF(amount), SCOPE_NOT_DONE, &amounts);
    for (size_t n = 1; n < amounts.count; n++)
        check_measures(c, amounts.at[n - 1], amounts.at[n]);
    find_two_times(c);
}
