/* kitchen/weight_row.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/weight_row.h"

#include <string.h>

/* When what was not said makes a measure differ more than this, it is asked instead of answered. */
static const struct ratio widest = {3, 2};
/* A spoon or cup counts as USDA's own while their sizes are this near: 15 mL and 14.8 mL. */
static const struct ratio own_size = {11, 10};

#define WANTED_MAX 12

/* The forms in which the food was said to be, best first. */
struct wanted {
    struct text forms[WANTED_MAX];
    size_t count;
};

static void want(struct wanted *w, struct text forms)
{
    struct text form;
    while (forms.length && text_part(&forms, '|', &form))
        if (w->count < WANTED_MAX && form.length)
            w->forms[w->count++] = form;
}

static struct wanted wanted_forms(const struct kitchen *k, const struct ingredient *line,
                                  const struct food_name *name)
{
    struct wanted w = {.count = 0};
    want(&w, name->form);
    for (size_t i = 0; i < line->prep.count; i++)
        want(&w, food_forms(&k->foods, line->prep.at[i]));
    for (size_t i = 0; i < line->state.count; i++)
        want(&w, food_forms(&k->foods, line->state.at[i]));
    want(&w, line->size);
    return w;
}

/* Whole words only: "chopped" is in "chopped or diced", "sliced" is not in "unsliced". */
static bool form_has(struct text form, struct text word)
{
    for (size_t i = 0; word.length && i + word.length <= form.length; i++) {
        bool begins = i == 0 || form.at[i - 1] == ' ' || form.at[i - 1] == '/';
        char after = i + word.length < form.length ? form.at[i + word.length] : ' ';
        if (begins && (after == ' ' || after == ',' || after == '/')
            && memcmp(form.at + i, word.at, word.length) == 0)
            return true;
    }
    return false;
}

/* 0 for the form wanted most; after the wanted ones the plain food, then every other form. */
static size_t form_rank(const struct food_row *row, const struct wanted *w)
{
    for (size_t i = 0; i < w->count; i++)
        if (form_has(ref_text(row->form), w->forms[i]))
            return i;
    return ref_text(row->form).length ? WANTED_MAX + 1 : WANTED_MAX;
}

static bool near_size(const struct unit *a, const struct unit *b)
{
    struct ratio times = ratio_divide(a->factor, b->factor);
    return ratio_compare(times, own_size) <= 0
           && ratio_compare(ratio_divide(RATIO(1), times), own_size) <= 0;
}

/* A row answers for its own measure, and by its density for every other volume. */
static bool row_answers(const struct food_row *row, const struct unit *unit)
{
    if (row->use == USE_NEVER)
        return false;
    if (row->measure == unit)
        return true;
    /* USDA's dash is 1/15 teaspoon, others' 1/8: a size of habit gives no density. */
    if (unit->dimension != DIMENSION_VOLUME || row->measure->dimension != DIMENSION_VOLUME
        || row->measure->habit)
        return false;
    return row->use == USE_FREELY || near_size(row->measure, unit);
}

/* How far the row's measure is from the unit: a spoon's row is better for spoons than a cup's. */
static struct ratio row_distance(const struct food_row *row, const struct unit *unit)
{
    struct ratio times =
        row->measure == unit ? RATIO(1) : ratio_divide(row->measure->factor, unit->factor);
    return ratio_compare(times, RATIO(1)) < 0 ? ratio_divide(RATIO(1), times) : times;
}

static struct ratio row_grams(const struct food_row *row, const struct unit *unit)
{
    return row->measure == unit
               ? row->grams
               : ratio_multiply(row->grams, ratio_divide(unit->factor, row->measure->factor));
}

static void take_row(struct choice *c, const struct food_row *row, const struct unit *unit,
                     size_t rank)
{
    struct ratio grams = row_grams(row, unit), far = row_distance(row, unit);
    bool better = !c->row || rank < c->rank;
    bool same =
        c->row && rank == c->rank && text_equal(ref_text(row->form), ref_text(c->row->form));
    if (!better && rank > c->rank)
        return;
    if (better || (same && ratio_compare(far, c->nearest) < 0 && !c->mixed)) {
        *c = (struct choice){.rank = rank, .min = grams, .max = grams, .nearest = far, .row = row};
    } else if (!same && ratio_compare(far, c->nearest) <= 0) {
        c->mixed = true;
        c->min = ratio_compare(grams, c->min) < 0 ? grams : c->min;
        c->max = ratio_compare(grams, c->max) > 0 ? grams : c->max;
    }
}

static struct choice choose(const struct food *food, const struct unit *unit,
                            const struct wanted *w)
{
    struct choice c = {.row = NULL};
    for (size_t i = 0; i < food->rows.count; i++)
        if (row_answers(&food->rows.at[i], unit))
            take_row(&c, &food->rows.at[i], unit, form_rank(&food->rows.at[i], w));
    return c;
}

bool is_too_wide(const struct choice *c)
{
    return c->row && ratio_compare(c->max, ratio_multiply(c->min, widest)) > 0;
}

/* A plain count is of whole things, of the size that was said, else of the usual one. */
static struct choice choose_counted(const struct kitchen *k, const struct food *food,
                                    const struct ingredient *line, const struct unit *each,
                                    const struct wanted *w)
{
    const struct unit *sized = unit_find(&k->units, line->size);
    const struct unit *usual = unit_find(&k->units, food->usual);
    struct choice c = {.row = NULL};
    if (line->size.length && sized)
        c = choose(food, sized, w);
    if (!c.row)
        c = choose(food, each, w);
    if (c.row && c.rank <= WANTED_MAX)
        return c;
    /* "Each" is only some kind of it (a cherry tomato): the usual size is more like what was said.
     */
    struct choice sizes = usual ? choose(food, usual, w) : c;
    return sizes.row ? sizes : c;
}

struct choice choose_row(const struct kitchen *k, const struct ingredient *line,
                         const struct food_name *name, const struct unit *unit)
{
    struct wanted w = wanted_forms(k, line, name);
    struct choice c = text_is(unit->name, "each") ? choose_counted(k, name->food, line, unit, &w)
                                                  : choose(name->food, unit, &w);
    if (c.row && c.rank <= WANTED_MAX && !is_too_wide(&c))
        return c;
    want(&w, name->food->usual); /* nothing fitted well: as it usually is */
    struct choice usual = choose(name->food, unit, &w);
    return usual.row && usual.rank < WANTED_MAX ? usual : c;
}
