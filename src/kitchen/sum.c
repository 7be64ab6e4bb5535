/* kitchen/sum.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/sum.h"

#include <stdlib.h>

static bool same_package(const struct amount *a, const struct amount *b)
{
    if (a->known != b->known)
        return false;
    return !a->known
           || (ratio_equal(a->min, b->min) && ratio_equal(a->max, b->max)
               && text_equal(a->unit, b->unit));
}

/* Milliliters and cups of one food stay apart: no one measures 17.907 tablespoons. Spoons are in
 * both kitchens. */
static bool same_system(const struct unit *a, const struct unit *b)
{
    return a->metric == b->metric;
}

/* Nor is a pinch, whose size is habit, so much of a teaspoon. */
static bool addable(const struct sum *s, const struct unit *unit, const struct amount *package)
{
    if (!same_package(&s->package, package))
        return false;
    return s->unit == unit
           || (s->unit->dimension == unit->dimension && same_system(s->unit, unit)
               && !s->unit->habit && !unit->habit && ratio_finite(s->unit->factor)
               && ratio_finite(unit->factor));
}

static struct sum *sum_for(struct arena *a, struct sums *sums, const struct unit *unit,
                           const struct amount *package)
{
    for (size_t i = 0; i < sums->all.count; i++)
        if (addable(&sums->all.at[i], unit, package))
            return &sums->all.at[i];
    if (!sums->all.room) /* most often it is the only one */
        LIST_RESERVE(a, &sums->all, 1);
    struct sum *made = LIST_ADD(a, &sums->all);
    *made = (struct sum){
        .unit = unit,
        .package = *package,
        .total = {.known = true, .min = RATIO(0), .max = RATIO(0), .unit = unit->name}};
    return made;
}

/* The amount counted in `to` of the same kitchen; none at both ends where that is too large. */
static struct amount in_unit(const struct adder *with, const struct amount *amount,
                             const struct unit *from, const struct unit *to)
{
    struct amount out = {
        .known = true, .min = RATIO_NONE, .max = RATIO_NONE, .approx = amount->approx};
    convert_amount(amount, unit_meant(from, with->profile), unit_meant(to, with->profile), &out);
    out.unit = to->name;
    return out;
}

static bool is_larger(const struct adder *with, const struct unit *a, const struct unit *b)
{
    return ratio_compare(unit_meant(a, with->profile)->factor, unit_meant(b, with->profile)->factor)
           > 0;
}

static void add_to(const struct adder *with, struct sum *s, const struct amount *amount,
                   const struct unit *unit)
{
    if (s->unit != unit && is_larger(with, unit, s->unit)) {
        s->total = in_unit(with, &s->total, s->unit, unit);
        s->unit = unit;
    }
    struct amount more = in_unit(with, amount, unit, s->unit);
    s->total.min = ratio_add(s->total.min, more.min);
    s->total.max = ratio_add(s->total.max, more.max);
    s->total.approx |= amount->approx;
}

/* The unit that a line adds up in; NULL when its amount cannot be added: none, "a splash". */
static const struct unit *line_unit(const struct kitchen *k, const struct ingredient *line)
{
    return line->amount.known && !line->vague ? unit_find(&k->units, line->amount.unit) : NULL;
}

static void add_line(const struct adder *with, const struct ingredient *line, struct sums *sums)
{
    const struct unit *unit = line_unit(with->k, line);
    if (!unit) {
        sums->plus_more = true;
        return;
    }
    sums->measured++;
    add_to(with, sum_for(with->a, sums, unit, &line->package), &line->amount, unit);
}

/* Too large for a number: what is left of it is "plus more". */
static void drop_unknown(struct sums *sums)
{
    size_t kept = 0;
    for (size_t i = 0; i < sums->all.count; i++)
        if (ratio_finite(sums->all.at[i].total.min) && ratio_known(sums->all.at[i].total.max))
            sums->all.at[kept++] = sums->all.at[i];
        else
            sums->plus_more = true;
    LIST_CUT(&sums->all, kept);
}

static struct sum *sum_of(struct sums *sums, enum dimension d)
{
    for (size_t i = 0; i < sums->all.count; i++)
        if (sums->all.at[i].unit->dimension == d && !sums->all.at[i].package.known)
            return &sums->all.at[i];
    return NULL;
}

/* The grams of every line that was measured by volume; false when one of them has no published
 * weight. */
static bool volumes_weigh(const struct adder *with, const struct ingredient *const *lines,
                          size_t count, struct amount *grams)
{
    *grams = (struct amount){
        .known = true, .min = RATIO(0), .max = RATIO(0), .unit = TEXT_OF("gram"), .approx = true};
    for (size_t i = 0; i < count; i++) {
        const struct unit *unit = line_unit(with->k, lines[i]);
        if (!unit || unit->dimension != DIMENSION_VOLUME || lines[i]->package.known)
            continue;
        struct measured one = weigh_one(with->k, with->a, with->profile, lines[i], unit);
        if (!one.known)
            return false;
        grams->min = ratio_add(grams->min, ratio_multiply(lines[i]->amount.min, one.min));
        grams->max = ratio_add(grams->max, ratio_multiply(lines[i]->amount.max, one.max));
    }
    return ratio_finite(grams->min) && ratio_known(grams->max);
}

/* What was measured by volume joins what was weighed, where a published weight is known for all of
 * it. */
static void merge_by_weight(const struct adder *with, struct sums *sums,
                            const struct ingredient *const *lines, size_t count)
{
    struct sum *mass = sum_of(sums, DIMENSION_MASS), *volume = sum_of(sums, DIMENSION_VOLUME);
    const struct unit *gram = unit_find(&with->k->units, TEXT_OF("gram"));
    struct amount grams;
    int figures;
    if (!mass || !volume || !gram || !volumes_weigh(with, lines, count, &grams))
        return;
    struct amount all = in_unit(with, &mass->total, mass->unit, gram);
    all.min = round_figures(ratio_add(all.min, grams.min), &figures);
    all.max = round_figures(ratio_add(all.max, grams.max), &figures);
    all.approx = true;
    if (!ratio_finite(all.min) || !ratio_known(all.max))
        return;
    mass->total = all;
    mass->unit = gram;
    *volume = sums->all.at[sums->all.count - 1];
    LIST_CUT(&sums->all, sums->all.count - 1);
}

/* The larger part first, as it is read: "half a teaspoon and a pinch". */
static int compare_sizes(const struct sum *a, const struct sum *b)
{
    if (a->unit->dimension != b->unit->dimension)
        return a->unit->dimension < b->unit->dimension ? -1 : 1;
    int order = ratio_compare(ratio_multiply(b->total.min, b->unit->factor),
                              ratio_multiply(a->total.min, a->unit->factor));
    return order ? order : text_compare(a->unit->name, b->unit->name);
}

/* By size, then by what it is packed in: the same for any order of the lines. */
static int compare_sums(const void *left, const void *right)
{
    const struct sum *a = left, *b = right;
    int order = compare_sizes(a, b);
    if (!order)
        order = ratio_compare(a->package.min, b->package.min);
    return order ? order : text_compare(a->package.unit, b->package.unit);
}

struct sums sum_lines(const struct adder *with, const struct ingredient *const *lines, size_t count)
{
    struct sums sums = {.plus_more = false};
    for (size_t i = 0; i < count; i++)
        add_line(with, lines[i], &sums);
    drop_unknown(&sums);
    merge_by_weight(with, &sums, lines, count);
    if (sums.all.count)
        qsort(sums.all.at, sums.all.count, sizeof *sums.all.at, compare_sums);
    return sums;
}
