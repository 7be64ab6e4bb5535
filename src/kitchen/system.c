/* kitchen/system.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/system.h"

#include "kitchen/convert.h"
#include "kitchen/weight.h"

static const struct amount as_said = {.known = false, .unit = {"", 0}};

/* Scales of a kitchen show whole grams, and less than this is better measured with a spoon. */
#define SPOON_GRAMS 10
/* Larger than any spoon, and smaller than any cup. */
#define SPOON_MILLILITERS 25

static struct amount rounded(struct amount amount)
{
    int figures;
    amount.min = round_figures(amount.min, &figures);
    amount.max = round_figures(amount.max, &figures);
    amount.known = ratio_finite(amount.min) && ratio_finite(amount.max);
    return amount;
}

static struct amount times(const struct amount *amount, struct ratio min, struct ratio max,
                           const struct unit *unit)
{
    return (struct amount){.known = true,
                           .min = ratio_multiply(amount->min, min),
                           .max = ratio_multiply(amount->max, max),
                           .unit = unit->name,
                           .approx = amount->approx};
}

static struct amount to_milliliters(const struct kitchen *k, const struct amount *amount,
                                    const struct unit *unit, struct text *source)
{
    for (size_t i = 0; i < k->households.count; i++)
        if (k->households.at[i].unit == unit) {
            const struct household *h = &k->households.at[i];
            *source = h->source;
            return rounded(times(amount, h->amount, h->amount, h->metric));
        }
    *source = unit->source;
    return rounded(
        times(amount, unit->factor, unit->factor, unit_find(&k->units, TEXT_OF("milliliter"))));
}

static struct amount to_grams(const struct kitchen *k, const struct amount *amount,
                              const struct measured *one)
{
    struct amount grams = times(amount, one->min, one->max, unit_find(&k->units, TEXT_OF("gram")));
    return ratio_compare(grams.max, RATIO(SPOON_GRAMS)) < 0 ? as_said : rounded(grams);
}

static struct amount to_metric(const struct kitchen *k, struct arena *a,
                               const struct profile *profile, const struct ingredient *line,
                               const struct unit *unit, struct text *source)
{
    const struct food *food = weighed_as(k, line);
    const struct unit *here = unit_meant(unit, profile);
    if (unit->metric)
        return as_said;
    if (unit->dimension == DIMENSION_MASS) {
        *source = unit->source;
        return rounded(times(&line->amount, unit->factor, unit->factor,
                             unit_find(&k->units, TEXT_OF("gram"))));
    }
    struct measured one = weigh_one(k, a, profile, line, unit);
    if (unit->dimension != DIMENSION_VOLUME || !one.known)
        return as_said;
    if (!food || !food->liquid) {
        *source = one.source;
        return to_grams(k, &line->amount, &one);
    }
    /* "1 tablespoon oil" is as metric as a recipe gets. */
    bool spoon = ratio_compare(here->factor, RATIO(SPOON_MILLILITERS)) < 0;
    return spoon ? as_said : to_milliliters(k, &line->amount, here, source);
}

static struct amount to_us(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                           const struct unit *unit, struct text *source)
{
    const struct food *food = weighed_as(k, line);
    const struct unit *cup = unit_find(&k->units, TEXT_OF("cup")),
                      *ounce = unit_find(&k->units, TEXT_OF("ounce"));
    struct amount out = as_said;
    *source = cup->source;
    if (!unit->metric)
        return as_said;
    if (unit->dimension == DIMENSION_VOLUME)
        return convert_amount(&line->amount, unit, cup, &out) ? out : as_said;
    if (unit->dimension != DIMENSION_MASS)
        return as_said;
    struct measured one = {.known = false};
    if (food && (food->liquid || food->dry))
        one = weigh_one(k, a, NULL, line, cup);
    if (!one.known)
        return convert_amount(&line->amount, unit, ounce, &out) ? out : as_said;
    *source = one.source;
    struct ratio grams = unit->factor;
    out = times(&line->amount, ratio_divide(grams, one.max), ratio_divide(grams, one.min), cup);
    out.known = ratio_finite(out.min) && ratio_finite(out.max);
    return out;
}

struct amount amount_in_system(const struct kitchen *k, struct arena *a,
                               const struct profile *profile, const struct ingredient *line,
                               enum system system, struct text *source)
{
    struct text from = TEXT_EMPTY;
    const struct unit *unit = line->amount.known ? unit_find(&k->units, line->amount.unit) : NULL;
    if (!unit || line->vague || !ratio_finite(line->amount.max))
        return as_said;
    struct amount out = system == SYSTEM_METRIC ? to_metric(k, a, profile, line, unit, &from)
                                                : to_us(k, a, line, unit, &from);
    if (source)
        *source = out.known ? from : TEXT_EMPTY;
    return out;
}
