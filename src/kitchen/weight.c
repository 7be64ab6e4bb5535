/* kitchen/weight.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/weight.h"

#include "kitchen/print.h"

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
        if (form_has(row->form, w->forms[i]))
            return i;
    return row->form.length ? WANTED_MAX + 1 : WANTED_MAX;
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

/* The rows to take: those of the best form; of each form, the measure that is nearest. */
struct choice {
    size_t rank;
    struct ratio min, max, nearest;
    const struct food_row *row; /* the first one taken */
    bool mixed;                 /* rows of different forms */
};

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
    bool same = c->row && rank == c->rank && text_equal(row->form, c->row->form);
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

static bool too_wide(const struct choice *c)
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

static struct text row_source(const struct kitchen *k, struct arena *a, const struct food *food,
                              const struct food_row *row, enum fit fit)
{
    struct text source = row->source.length
                             ? PHRASE_TEXT(k, a, source_other, row->source, food->name,
                                           row->measure->one, print_number(a, row->grams, true))
                             : PHRASE_TEXT(k, a, source_row, food->ndb, food->usda,
                                           row->usda_amount, row->usda_measure, row->usda_grams);
    if (fit == FIT_NEAR)
        return PHRASE_TEXT(k, a, source_taken_as, source, food->name);
    return fit == FIT_ASK ? PHRASE_TEXT(k, a, source_ask, source, food->name) : source;
}

static struct measured not_known(struct text why)
{
    return (struct measured){.known = false, .source = TEXT_EMPTY, .why_not = why};
}

static struct choice choose_for(const struct kitchen *k, const struct ingredient *line,
                                const struct food_name *name, const struct unit *unit)
{
    struct wanted w = wanted_forms(k, line, name);
    struct choice c = text_is(unit->name, "each") ? choose_counted(k, name->food, line, unit, &w)
                                                  : choose(name->food, unit, &w);
    if (c.row && c.rank <= WANTED_MAX && !too_wide(&c))
        return c;
    want(&w, name->food->usual); /* nothing fitted well: as it usually is */
    struct choice usual = choose(name->food, unit, &w);
    return usual.row && usual.rank < WANTED_MAX ? usual : c;
}

/* "A stick of celery" is a stalk. */
static const struct unit *own_measure(const struct kitchen *k, const struct food *food,
                                      const struct unit *unit)
{
    size_t cut = text_find(food->also, '=', 0);
    bool meant = food->also.length && text_equal(text_slice(food->also, 0, cut), unit->name);
    const struct unit *own =
        meant ? unit_find(&k->units, text_slice(food->also, cut + 1, food->also.length)) : NULL;
    return own ? own : unit;
}

/* What is weighed of a food that only gives a part of itself, as long as a weight is known for it:
 * the juice of "an orange, zested and juiced". */
static const struct food_name *find_part(const struct kitchen *k, const struct ingredient *line,
                                         const struct unit *unit)
{
    const struct food_name *found = NULL;
    for (size_t i = 0; i < line->prep.count; i++) {
        const struct food_name *part =
            food_find(&k->foods, food_part(&k->foods, line->food, line->prep.at[i]));
        if (part && unit && choose_for(k, line, part, unit).row)
            return part;
        found = found ? found : part;
    }
    return found;
}

/* The part, else the food itself, else what the lexicon calls the same. */
static const struct food_name *find_line(const struct kitchen *k, const struct ingredient *line,
                                         const struct unit *unit)
{
    const struct food_name *name = find_part(k, line, unit);
    if (!name)
        name = food_find(&k->foods, line->food);
    return name ? name : food_find(&k->foods, line->kind);
}

const struct food *weighed_as(const struct kitchen *k, const struct ingredient *line)
{
    const struct food_name *name = find_line(k, line, unit_find(&k->units, line->amount.unit));
    return name ? name->food : NULL;
}

struct measured weigh_one(const struct kitchen *k, struct arena *a, const struct profile *profile,
                          const struct ingredient *line, const struct unit *unit)
{
    const struct food_name *name = find_line(k, line, unit);
    if (!name)
        return not_known(PHRASE_TEXT(k, a, no_food, line->food));
    unit = own_measure(k, name->food, unit_meant(unit, profile));
    if (name->fit == FIT_BY_WEIGHT && unit->dimension == DIMENSION_VOLUME)
        return not_known(PHRASE_TEXT(k, a, no_volume, line->food, name->food->name));
    struct choice c = choose_for(k, line, name, unit);
    struct text word = unit->one.length ? unit->one : k->phrases[PHRASE_piece];
    if (!c.row)
        return not_known(PHRASE_TEXT(k, a, no_measure, word, line->food));
    if (too_wide(&c))
        return not_known(PHRASE_TEXT(k, a, no_form, word, line->food));
    struct text source = row_source(k, a, name->food, c.row, name->fit);
    if (unit->habit && unit->source.length)
        source = PHRASE_TEXT(k, a, source_habit, source,
                             arena_format(a, "%.*s (%.*s)", TEXT(unit->one), TEXT(unit->source)));
    return (struct measured){
        .known = true, .min = c.min, .max = c.max, .source = source, .food = name->food};
}

static struct weight no_weight(struct text *why_not, struct text why)
{
    if (why_not)
        *why_not = why;
    return (struct weight){.known = false, .source = TEXT_EMPTY};
}

static struct weight made_weight(const struct kitchen *k, struct arena *a, struct ratio min,
                                 struct ratio max, struct text source, struct text *why_not)
{
    if (!ratio_finite(min) || !ratio_finite(max))
        return no_weight(why_not, PHRASE_PLAIN(k, a, too_big));
    return (struct weight){
        .known = true, .min = ratio_double(min), .max = ratio_double(max), .source = source};
}

static struct weight weigh_mass(const struct kitchen *k, struct arena *a,
                                const struct amount *amount, const struct unit *unit,
                                struct text *why_not)
{
    struct text grams = print_number(a, unit->factor, true);
    struct text source = text_is(unit->name, "gram")
                             ? PHRASE_PLAIN(k, a, source_said)
                             : PHRASE_TEXT(k, a, source_unit, unit->one, grams, unit->source);
    return made_weight(k, a, ratio_multiply(amount->min, unit->factor),
                       ratio_multiply(amount->max, unit->factor), source, why_not);
}

/* "2 cans (400 g)" is an amount of 800 g; what is packed by volume or by count likewise. */
static struct amount unpacked(const struct ingredient *line)
{
    struct amount whole = line->amount;
    if (!line->package.known)
        return whole;
    whole.min = ratio_multiply(whole.min, line->package.min);
    whole.max = ratio_multiply(whole.max, line->package.max);
    whole.unit = line->package.unit;
    return whole;
}

struct weight weigh(const struct kitchen *k, struct arena *a, const struct profile *profile,
                    const struct ingredient *line, struct text *why_not)
{
    struct amount amount = unpacked(line);
    if (!amount.known)
        return no_weight(why_not, PHRASE_PLAIN(k, a, no_amount));
    if (ratio_known(amount.max) && !ratio_finite(amount.max))
        return no_weight(why_not, PHRASE_PLAIN(k, a, no_open));
    const struct unit *unit = unit_find(&k->units, amount.unit);
    if (!unit)
        return no_weight(why_not, PHRASE_TEXT(k, a, no_measure, amount.unit, line->food));
    if (unit->dimension == DIMENSION_MASS)
        return weigh_mass(k, a, &amount, unit, why_not);
    struct ratio pieces = RATIO(1);
    if (unit->dimension == DIMENSION_COUNT && ratio_finite(unit->factor)) {
        pieces = unit->factor; /* a dozen */
        unit = unit_find(&k->units, TEXT_EMPTY);
    }
    struct measured one = weigh_one(k, a, profile, line, unit);
    if (!one.known)
        return no_weight(why_not, one.why_not);
    return made_weight(k, a, ratio_multiply(ratio_multiply(amount.min, pieces), one.min),
                       ratio_multiply(ratio_multiply(amount.max, pieces), one.max), one.source,
                       why_not);
}
