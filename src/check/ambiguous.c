/* check/ambiguous.c: words that the grammar can read in two ways, both of them possible in a
 * kitchen. Each finder lists the readings of the same words, strikes those that no kitchen has
 * (number-ranges.tsv), and asks only where two are left, or the one that is left is not the
 * grammar's. What captions divide (a comma, a hyphen, "and", "to") is not asked about.
 * SPDX-License-Identifier: MIT */
#include "check/ambiguous.h"
#include "match/capture.h"

struct text reading_words(const struct checker *c, const char *reading, const struct text *blanks,
                          size_t count)
{
    const struct table *t = pack_table(c->k, "readings");
    for (size_t row = 0; t && row < t->rows; row++)
        if (text_is(table_cell(t, row, 0), reading))
            return filled(c, table_cell(t, row, 1), blanks, count);
    return TEXT_EMPTY;
}
void ask_which(struct checker *c, struct span words, struct text one, struct text other)
{
    if (one.length && other.length && !text_equal(one, other))
        REPORT(c, ambiguous, subject_words(c, words), one, other);
}

struct text shown_number(const struct checker *c, double n)
{
    return arena_format(c->r->arena, "%g", n);
}

/* ---- numbers that ran together */

/* A row of number-ranges.tsv: what may follow a number, and which numbers it can have. */
struct number_range {
    bool time;
    double least, most, count, spread;
};

static double cell_number(const struct table *t, size_t row, size_t column)
{
    struct text cell = table_cell(t, row, column);
    return ratio_double(ratio_read(cell.at, cell.length));
}

/* The range of what word `i` measures: minutes, or the ounces of a can that follows. */
static bool range_of(const struct checker *c, size_t i, size_t last, struct number_range *g)
{
    const struct table *t = pack_table(c->k, "number-ranges");
    const struct word *w = &c->r->words.at[i];
    bool package = w->tag == TAG_UNIT && i < last && c->r->words.at[i + 1].tag == TAG_CONTAINER;
    for (size_t row = 0; t && w->entry && row < t->rows; row++) {
        bool time = text_is(table_cell(t, row, 0), "time");
        if (time ? w->tag != TAG_TIME
                       || ratio_double(entry_number(w->entry)) != cell_number(t, row, 1)
                 : !package || !text_equal(table_cell(t, row, 1), entry_value(w->entry)))
            continue;
        *g = (struct number_range){time, cell_number(t, row, 2), cell_number(t, row, 3),
                                   cell_number(t, row, 4), cell_number(t, row, 5)};
        return true;
    }
    return false;
}

static bool fits(const struct number_range *g, double n)
{
    return n >= g->least && n <= g->most;
}

static bool fits_range(const struct number_range *g, double low, double high)
{
    return g->time && low < high && high <= low * g->spread && fits(g, low) && fits(g, high);
}

static bool fits_each(const struct number_range *g, double count, double each)
{
    return count >= 2 && count <= g->count && fits(g, each);
}

/* Two numbers of which `low` stands first: the way to read them apart; empty when there is none. */
static struct text apart(const struct checker *c, const struct number_range *g, double low,
                         double high, struct text unit)
{
    if (fits_range(g, low, high))
        return WORDING(c, "range", shown_number(c, low), shown_number(c, high), unit);
    if (fits_each(g, low, high))
        return WORDING(c, "each", shown_number(c, low), shown_number(c, high), unit);
    return TEXT_EMPTY;
}

/* "1012 minutes", "215 ounce cans": digits that are two numbers without the space between. */
#define GLUED_LEAST 100
#define GLUED_MOST 9999
static void check_digits(struct checker *c, size_t i, size_t last)
{
    const struct word *w = &c->r->words.at[i];
    struct number_range g;
    double n = ratio_double(w->rare->number);
    if (w->rare->number.under != 1 || n < GLUED_LEAST || n > GLUED_MOST
        || !range_of(c, i + 1, last, &g) || (i > 0 && c->r->words.at[i - 1].tag == TAG_ARTICLE))
        return;
    struct text unit = c->r->words.at[i + 1].key;
    for (int64_t cut = 10; cut < w->rare->number.over; cut *= 10) {
        int64_t low = w->rare->number.over / cut, high = w->rare->number.over % cut;
        struct text two =
            high * 10 < cut ? TEXT_EMPTY : apart(c, &g, (double) low, (double) high, unit);
        /* Round packages and times are said as they are: 400 grams, 120 minutes. */
        bool round =
            fits(&g, n) && (g.time ? high >= 60 || high % 10 == 0 : w->rare->number.over % 50 == 0);
        if (two.length && !round) {
            ask_which(c, (struct span){i, i + 1}, WORDING(c, "whole", w->text, unit), two);
            return;
        }
    }
}

/* The value of a number that is one word; NAN for other words. */
static double word_value(const struct word *w)
{
    bool spoken = w->tag == TAG_ONES || w->tag == TAG_TEENS || w->tag == TAG_TENS;
    if (spoken && w->entry)
        return ratio_double(entry_number(w->entry));
    return w->tag == TAG_NUMBER ? ratio_double(w->rare->number) : ratio_double(RATIO_NONE);
}

/* "two ten minutes", "two twenty gram packets": two numbers in a row that make one as well. */
static void check_pair(struct checker *c, size_t i, size_t last)
{
    const struct word *w = &c->r->words.at[i], *next = w + 1;
    double low = word_value(w), high = word_value(next), whole = low * 100 + high;
    struct number_range g;
    bool lone = i == 0 || !(word_value(w - 1) >= 0);
    if (!lone || w->after != AFTER_SPACE || !(low >= 1 && low < 10) || !(high >= 10 && high < 100)
        || !range_of(c, i + 2, last, &g))
        return;
    struct text unit = c->r->words.at[i + 2].key, two = apart(c, &g, low, high, unit);
    if (fits(&g, whole) && two.length)
        ask_which(c, (struct span){i, i + 2}, WORDING(c, "whole", shown_number(c, whole), unit),
                  two);
}

/* "two three quarter cups": 2 and 3/4, or 2 of 3/4. Digits ("2 3/4") are written for the sum. */
static void check_part(struct checker *c, size_t i, size_t last)
{
    const struct word *w = &c->r->words.at[i];
    double whole = word_value(w);
    if (w->tag != TAG_ONES || w->after != AFTER_SPACE || !(whole >= 2) || i + 3 > last
        || w[1].tag != TAG_ONES || w[1].after == AFTER_COMMA || w[2].tag != TAG_FRACTION
        || w[3].tag != TAG_UNIT || (i > 0 && word_value(w - 1) >= 0))
        return;
    struct text part = arena_format(c->r->arena, "%.*s %.*s", TEXT(w[1].key), TEXT(w[2].key));
    ask_which(c, (struct span){i, i + 3}, WORDING(c, "sum", w->key, part, w[3].key),
              WORDING(c, "each", w->key, part, w[3].key));
}

/* ---- clocks */

/* "for 1:50", "for one fifty": after "for" it is a time, of hours or of minutes; the grammar takes
 * the number for a heat. */
static void check_clock(struct checker *c, const struct sentence *s, const struct match *m)
{
    struct span number = match_slot(m, SLOT_number);
    bool clock = text_is(m->rule->option, "clock");
    if (span_is_empty(number) || number.first == s->first
        || c->r->words.at[number.first - 1].tag != TAG_FOR)
        return;
    const struct word *w = &c->r->words.at[number.first];
    double high = number.last == number.first + 1 ? word_value(w + 1) : -1, low = word_value(w);
    struct text rest = w->key, hours = TEXT_EMPTY;
    if (clock && text_part(&rest, ':', &hours))
        ask_which(c, number, WORDING(c, "hours", hours, rest), WORDING(c, "minutes", hours, rest));
    else if (!clock && low >= 1 && low < 10 && high >= 10 && high < 60)
        ask_which(c, number, WORDING(c, "hours", shown_number(c, low), shown_number(c, high)),
                  WORDING(c, "heat", shown_number(c, low * 100 + high)));
}

/* ---- one of two measures */

/* The number said before the unit at word `i`; 1 where there is none. */
static double number_before(const struct checker *c, const struct sentence *s, size_t i)
{
    struct matches numbers = matches_of(c->r, s, KIND_OF(number));
    for (const struct match *m; (m = matches_next(&numbers));)
        if (m->words.last + 1 == i && ratio_finite(m->low))
            return ratio_double(m->low);
    double value = i > s->first ? word_value(&c->r->words.at[i - 1]) : -1;
    return value > 0 ? value : 1;
}

/* A cup and 240 milliliters are the same said twice. */
#define SAME_MEASURE 1.2
static bool same_measure(const struct checker *c, const struct sentence *s, size_t i, size_t n)
{
    const struct entry *one = c->r->words.at[i].entry, *other = c->r->words.at[n].entry;
    struct amount a = {true, RATIO(1), RATIO(1), entry_value(one), false};
    double in_other = amount_in(c, &a, entry_value(one), entry_value(other));
    double share = in_other * number_before(c, s, i) / number_before(c, s, n);
    return in_other < 0 || (share < SAME_MEASURE && share > 1 / SAME_MEASURE);
}

/* "a teaspoon or a tablespoon". */
#define OR_WORDS 3
static void check_either(struct checker *c, const struct sentence *s, size_t i)
{
    const struct word *w = c->r->words.at;
    if (w[i].tag != TAG_UNIT || i == s->last || w[i + 1].tag != TAG_OR)
        return;
    for (size_t n = i + 2; n <= s->last && n <= i + 1 + OR_WORDS; n++) {
        if (w[n].tag != TAG_UNIT)
            continue;
        if (w[n].entry && w[i].entry
            && !text_equal(entry_value(w[n].entry), entry_value(w[i].entry))
            && !same_measure(c, s, i, n))
            ask_which(c, (struct span){i, n},
                      WORDING(c, "whole", shown_number(c, number_before(c, s, i)),
                              entry_value(w[i].entry)),
                      WORDING(c, "whole", shown_number(c, number_before(c, s, n)),
                              entry_value(w[n].entry)));
        return;
    }
}

/* "Then another half.": of a measure, or of all of it. */
static void check_share(struct checker *c, const struct sentence *s)
{
    struct span where;
    if (!said_in(c, "open_share", s, &where))
        return;
    for (size_t i = c->dish->ingredients.count; i-- > 0;) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id > where.first || !line->amount.known || !line->amount.unit.length)
            continue;
        for (size_t n = where.first; n <= where.last; n++)
            if (c->r->words.at[n].tag == TAG_FRACTION)
                ask_which(c, where, WORDING(c, "part", c->r->words.at[n].key, line->amount.unit),
                          WORDING(c, "share", c->r->words.at[n].key));
        return;
    }
}

static void find_in(struct checker *c, const struct sentence *s)
{
    for (size_t i = s->first; i < s->last; i++) {
        if (c->r->words.at[i].scope & SCOPE_NOT_DONE || c->r->words.at[i].filler)
            continue;
        check_either(c, s, i);
        if (!(word_value(&c->r->words.at[i]) >= 0))
            continue;
        check_digits(c, i, s->last);
        check_part(c, i, s->last);
        if (i + 2 <= s->last)
            check_pair(c, i, s->last);
    }
    struct matches heats = matches_of(c->r, s, KIND_OF(temperature));
    for (const struct match *m; (m = matches_next(&heats));)
        check_clock(c, s, m);
    check_share(c, s);
}

void find_ambiguous(struct checker *c)
{
    for (size_t n = 0; n < c->parts.count; n++)
        for (const struct sentence *s = NULL; (s = sentence_next(c->r, c->parts.at[n], s));)
            if (!(s->flags & SENTENCE_QUESTION))
                find_in(c, s);
}
