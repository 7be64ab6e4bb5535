/* kitchen/weight.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/weight.h"

#include "kitchen/print.h"
#include "kitchen/weight_row.h"

static struct text row_source(const struct kitchen *k, struct arena *a, const struct food *food,
                              const struct food_row *row, enum fit fit)
{
    struct text other = ref_text(row->source);
    struct text source = other.length
                             ? PHRASE_TEXT(k, a, source_other, other, food->name, row->measure->one,
                                           print_number(a, row->grams, true))
                             : PHRASE_TEXT(k, a, source_row, ref_text(food->ndb),
                                           ref_text(food->usda), ref_text(row->usda_amount),
                                           ref_text(row->usda_measure), ref_text(row->usda_grams));
    if (fit == FIT_NEAR)
        return PHRASE_TEXT(k, a, source_taken_as, source, food->name);
    return fit == FIT_ASK ? PHRASE_TEXT(k, a, source_ask, source, food->name) : source;
}

static struct measured not_known(struct text why)
{
    return (struct measured){.known = false, .source = TEXT_EMPTY, .why_not = why};
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
        if (part && unit && choose_row(k, line, part, unit).row)
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
    struct choice c = choose_row(k, line, name, unit);
    struct text word = unit->one.length ? unit->one : k->phrases[PHRASE_piece];
    if (!c.row)
        return not_known(PHRASE_TEXT(k, a, no_measure, word, line->food));
    if (is_too_wide(&c))
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
