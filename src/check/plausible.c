/* check/plausible.c: amounts and temperatures far outside of what dishes have: misheard or
 * misspoken. The ranges are rows of plausible.tsv. Nothing is corrected; a likelier unit is named
 * where exactly one fits.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/report.h"

enum range_column {
    RANGE_RULE,
    RANGE_FOODS,
    RANGE_PER,
    RANGE_LEAST,
    RANGE_MOST,
    RANGE_UNIT,
    RANGE_PER_UNIT,
    RANGE_GRAMS,
    RANGE_WITH
};

struct range {
    const struct table *table;
    size_t row;
};

static struct text cell(const struct range *g, enum range_column column)
{
    return table_cell(g->table, g->row, column);
}

static double number(const struct range *g, enum range_column column)
{
    struct text t = cell(g, column);
    return ratio_double(ratio_read(t.at, t.length));
}

/* ---- foods */

/* Foods, and marks of foods ("@spice"). */
struct foods {
    struct text list;
    uint64_t marks, shapes; /* bits of the marks; text_shape() of the foods */
};

static struct foods foods_in(struct text list)
{
    struct foods f = {list, 0, 0};
    struct text name;
    uint64_t mark;
    while (text_part(&list, '|', &name)) {
        if (!text_starts(name, "@"))
            f.shapes |= text_shape(name);
        else if (mark_find(text_slice(name, 1, name.length), &mark))
            f.marks |= mark;
    }
    return f;
}

static bool is_listed(const struct foods *f, struct text food)
{
    return f->shapes & text_shape(food) && text_has_part(f->list, '|', food);
}

static bool is_one_of(const struct ingredient *line, const struct foods *f)
{
    return (line->entry && line->entry->marks & f->marks) || is_listed(f, line->kind)
           || is_listed(f, line->food);
}

static bool holds(const struct checker *c, struct text list)
{
    const struct foods f = foods_in(list);
    for (size_t i = 0; i < c->dish->ingredients.count; i++)
        if (is_one_of(&c->dish->ingredients.at[i], &f))
            return true;
    return false;
}

/* All of the foods that the amount is measured by, in the rule's unit; 0 where there are none, or
 * one has no measure that can be counted in it: then nothing can be told. */
static double base_of(const struct checker *c, const struct range *g)
{
    struct text unit = cell(g, RANGE_PER_UNIT);
    const struct foods per = foods_in(cell(g, RANGE_PER));
    double sum = 0;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (!is_one_of(line, &per) || line->role != ROLE_INGREDIENT)
            continue;
        double count = amount_in(c, &line->amount, line->amount.unit, unit);
        if (count < 0)
            count = amount_in(c, &line->amount, line->amount.unit, TEXT_OF("gram"))
                    / number(g, RANGE_GRAMS);
        if (!(count > 0))
            return 0;
        sum += count;
    }
    return sum;
}

/* ---- amounts */

/* The one unit with which the same number would be in range ("teaspoon" for "tablespoon"); empty
 * when none or several. */
static struct text likelier(const struct checker *c, const struct range *g,
                            const struct ingredient *line, double most)
{
    const struct table *t = pack_table(c->k, "unit-swaps");
    struct text found = TEXT_EMPTY;
    for (size_t row = 0; t && row < t->rows; row++) {
        double count = amount_in(c, &line->amount, table_cell(t, row, 1), cell(g, RANGE_UNIT));
        if (!text_equal(table_cell(t, row, 0), line->amount.unit) || count < 0 || count > most)
            continue;
        if (found.length)
            return TEXT_EMPTY;
        found = table_cell(t, row, 1);
    }
    return found;
}

/* Whether the line's words have its amount: one that was taken from a sentence nearby ("two cups of
 * it") may be of something else. The cook's own words are not looked at. */
static bool amount_said(const struct checker *c, const struct ingredient *line)
{
    static const unsigned char TAGS[] = {TAG_NUMBER,   TAG_ONES,    TAG_TEENS,    TAG_TENS,
                                         TAG_HUNDRED,  TAG_DOZEN,   TAG_ARTICLE,  TAG_UNIT,
                                         TAG_FRACTION, TAG_COUNTER, TAG_CONTAINER};
    if (line->edited || line->words.last >= c->r->words.count)
        return true;
    for (size_t i = line->words.first; i <= line->words.last; i++)
        if (memchr(TAGS, c->r->words.at[i].tag, sizeof TAGS))
            return true;
    return false;
}

static void check_line(struct checker *c, const struct range *g, const struct ingredient *line,
                       double most)
{
    double count = amount_in(c, &line->amount, line->amount.unit, cell(g, RANGE_UNIT));
    if (count <= most || line->vague || !amount_said(c, line))
        return;
    struct text unit = likelier(c, g, line, most);
    struct finding *f =
        unit.length
            ? REPORT(c, implausible_unit, subject_line(line), said_words(c->r, line->words), unit)
            : REPORT(c, implausible, subject_line(line), said_words(c->r, line->words));
    if (f)
        f->source = table_cell(g->table, g->row, table_column(g->table, "source"));
}

/* A spoon of flour thickens a dish, or is on the board, and tells nothing of its salt. */
#define BASE_LEAST 0.5

static void check_amounts(struct checker *c, const struct range *g)
{
    double base = cell(g, RANGE_PER).length ? base_of(c, g) : 1;
    if (!(base >= BASE_LEAST) || (cell(g, RANGE_WITH).length && !holds(c, cell(g, RANGE_WITH))))
        return;
    const struct foods foods = foods_in(cell(g, RANGE_FOODS));
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (is_one_of(line, &foods) && line->role == ROLE_INGREDIENT)
            check_line(c, g, line, number(g, RANGE_MOST) * base);
    }
}

/* ---- temperatures */

static bool in_range(const struct range *g, double f)
{
    return f >= number(g, RANGE_LEAST) && f <= number(g, RANGE_MOST);
}

/* Whether the number is usual for anything, in either scale: then what is wrong may be what we took
 * it for. */
static bool usual_somewhere(const struct range *any, double value)
{
    struct range g = *any;
    for (g.row = 0; g.row < g.table->rows; g.row++)
        if (text_is(cell(&g, RANGE_UNIT), "F")
            && (in_range(&g, value) || in_range(&g, value * 1.8 + 32)))
            return true;
    return false;
}

static void check_heat(struct checker *c, const struct range *g, const struct temperature *t)
{
    if (t->unit == 'G' || usual_somewhere(g, ratio_double(t->value)))
        return;
    struct text said = said_words(c->r, t->words);
    struct finding *finding =
        REPORT(c, implausible_heat, ((struct subject_of){t->at, t->words, said}), t->of);
    if (finding)
        finding->source = table_cell(g->table, g->row, table_column(g->table, "source"));
}

static void check_heats(struct checker *c, const struct range *g)
{
    for (size_t i = 0; i < c->dish->steps.count; i++)
        for (size_t n = 0; n < c->dish->steps.at[i].temperatures.count; n++) {
            const struct temperature *t = &c->dish->steps.at[i].temperatures.at[n];
            if (text_equal(t->of, cell(g, RANGE_FOODS)))
                check_heat(c, g, t);
        }
}

void find_implausible(struct checker *c)
{
    struct range g = {pack_table(c->k, "plausible"), 0};
    for (; g.table && g.row < g.table->rows; g.row++) {
        if (text_is(cell(&g, RANGE_UNIT), "F"))
            check_heats(c, &g);
        else
            check_amounts(c, &g);
    }
}
