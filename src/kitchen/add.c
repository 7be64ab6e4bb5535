/* kitchen/add.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/add.h"

#include <stdlib.h>

/* The name under which lines are one food: the lexicon's kind (the food as said where it has none),
 * and the published food where that is known by just this name. "Spring onion" and "scallion" are
 * one, "butter" and "unsalted butter" two. */
static struct text food_key(const struct kitchen *k, const struct ingredient *line)
{
    struct text called = line->kind.length ? line->kind : line->food;
    const struct food_name *name = food_find(&k->foods, called);
    return name && name->fit == FIT_SAME && !name->form.length ? name->food->name : called;
}

/* One ingredient line on its way into a sum. */
struct addend {
    struct text key;
    const struct ingredient *line;
    struct shop_part from;
};

static int compare_numbers(size_t a, size_t b)
{
    return (a > b) - (a < b);
}

static int compare_parts(const struct shop_part *a, const struct shop_part *b)
{
    int order = compare_numbers(a->recording, b->recording);
    if (!order)
        order = compare_numbers(a->dish, b->dish);
    return order ? order : compare_numbers(a->line, b->line);
}

static int compare_addends(const void *left, const void *right)
{
    const struct addend *a = left, *b = right;
    int order = text_compare(a->key, b->key);
    return order ? order : compare_parts(&a->from, &b->from);
}

/* A sum of amounts that can be added: of one dimension, or of one thing that is counted. */
struct sum {
    const struct unit *unit; /* the largest one that was said */
    struct amount total, package;
};

struct sums {
    const struct profile *profile; /* says how large a cup is */
    LIST(struct sum) all;
    bool plus_more;
    size_t measured; /* lines that had an amount */
};

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

static bool addable(const struct sum *s, const struct unit *unit, const struct amount *package)
{
    if (!same_package(&s->package, package))
        return false;
    return s->unit == unit
           || (s->unit->dimension == unit->dimension && same_system(s->unit, unit)
               && ratio_finite(s->unit->factor) && ratio_finite(unit->factor));
}

static struct sum *sum_for(struct arena *a, struct sums *sums, const struct unit *unit,
                           const struct amount *package)
{
    for (size_t i = 0; i < sums->all.count; i++)
        if (addable(&sums->all.at[i], unit, package))
            return &sums->all.at[i];
    struct sum *made = LIST_ADD(a, &sums->all);
    *made = (struct sum){
        .unit = unit,
        .package = *package,
        .total = {.known = true, .min = RATIO(0), .max = RATIO(0), .unit = unit->name}};
    return made;
}

/* The amount counted in `to` of the same kitchen; none at both ends where that is too large. */
static struct amount in_unit(const struct sums *sums, const struct amount *amount,
                             const struct unit *from, const struct unit *to)
{
    struct amount out = {
        .known = true, .min = RATIO_NONE, .max = RATIO_NONE, .approx = amount->approx};
    convert_amount(amount, unit_meant(from, sums->profile), unit_meant(to, sums->profile), &out);
    out.unit = to->name;
    return out;
}

static bool is_larger(const struct sums *sums, const struct unit *a, const struct unit *b)
{
    return ratio_compare(unit_meant(a, sums->profile)->factor, unit_meant(b, sums->profile)->factor)
           > 0;
}

static void add_to(const struct sums *sums, struct sum *s, const struct amount *amount,
                   const struct unit *unit)
{
    if (s->unit != unit && is_larger(sums, unit, s->unit)) {
        s->total = in_unit(sums, &s->total, s->unit, unit);
        s->unit = unit;
    }
    struct amount more = in_unit(sums, amount, unit, s->unit);
    s->total.min = ratio_add(s->total.min, more.min);
    s->total.max = ratio_add(s->total.max, more.max);
    s->total.approx |= amount->approx;
}

/* The unit that a line adds up in; NULL when its amount cannot be added: none, "a splash". */
static const struct unit *line_unit(const struct kitchen *k, const struct ingredient *line)
{
    return line->amount.known && !line->vague ? unit_find(&k->units, line->amount.unit) : NULL;
}

static void add_line(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                     struct sums *sums)
{
    const struct unit *unit = line_unit(k, line);
    if (!unit) {
        sums->plus_more = true;
        return;
    }
    sums->measured++;
    add_to(sums, sum_for(a, sums, unit, &line->package), &line->amount, unit);
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
    sums->all.count = kept;
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
static bool volumes_weigh(const struct kitchen *k, struct arena *a, const struct sums *sums,
                          const struct addend *lines, size_t count, struct amount *grams)
{
    *grams = (struct amount){
        .known = true, .min = RATIO(0), .max = RATIO(0), .unit = TEXT_OF("gram"), .approx = true};
    for (size_t i = 0; i < count; i++) {
        const struct unit *unit = line_unit(k, lines[i].line);
        if (!unit || unit->dimension != DIMENSION_VOLUME || lines[i].line->package.known)
            continue;
        struct measured one = weigh_one(k, a, sums->profile, lines[i].line, unit);
        if (!one.known)
            return false;
        grams->min = ratio_add(grams->min, ratio_multiply(lines[i].line->amount.min, one.min));
        grams->max = ratio_add(grams->max, ratio_multiply(lines[i].line->amount.max, one.max));
    }
    return ratio_finite(grams->min) && ratio_known(grams->max);
}

/* What was measured by volume joins what was weighed, where a published weight is known for all of
 * it. */
static void merge_by_weight(const struct kitchen *k, struct arena *a, struct sums *sums,
                            const struct addend *lines, size_t count)
{
    struct sum *mass = sum_of(sums, DIMENSION_MASS), *volume = sum_of(sums, DIMENSION_VOLUME);
    const struct unit *gram = unit_find(&k->units, TEXT_OF("gram"));
    struct amount grams;
    int figures;
    if (!mass || !volume || !gram || !volumes_weigh(k, a, sums, lines, count, &grams))
        return;
    struct amount all = in_unit(sums, &mass->total, mass->unit, gram);
    all.min = round_figures(ratio_add(all.min, grams.min), &figures);
    all.max = round_figures(ratio_add(all.max, grams.max), &figures);
    all.approx = true;
    if (!ratio_finite(all.min) || !ratio_known(all.max))
        return;
    mass->total = all;
    mass->unit = gram;
    *volume = sums->all.at[--sums->all.count];
}

/* By the unit's name, then by what it is packed in: the same for any order of the lines. */
static int compare_sums(const void *left, const void *right)
{
    const struct sum *a = left, *b = right;
    int order = text_compare(a->unit->name, b->unit->name);
    if (!order)
        order = ratio_compare(a->package.min, b->package.min);
    return order ? order : text_compare(a->package.unit, b->package.unit);
}

static struct sums add_lines(const struct kitchen *k, struct arena *a,
                             const struct profile *profile, const struct addend *lines,
                             size_t count)
{
    struct sums sums = {.profile = profile};
    for (size_t i = 0; i < count; i++)
        add_line(k, a, lines[i].line, &sums);
    drop_unknown(&sums);
    merge_by_weight(k, a, &sums, lines, count);
    if (sums.all.count)
        qsort(sums.all.at, sums.all.count, sizeof *sums.all.at, compare_sums);
    return sums;
}

/* Lines of one food stand together in `lines`; the end of those that begin at `begin`. */
static size_t run_end(const struct addend *lines, size_t count, size_t begin)
{
    size_t end = begin + 1;
    while (end < count && text_equal(lines[end].key, lines[begin].key))
        end++;
    return end;
}

static void make_shopping_line(const struct kitchen *k, struct arena *a,
                               const struct profile *profile, const struct addend *lines,
                               size_t count, struct dish *dish)
{
    struct sums sums = add_lines(k, a, profile, lines, count);
    struct shopping_line made = {.food = lines[0].line->food,
                                 .plus_more = sums.plus_more && sums.measured};
    for (size_t i = 0; i < count; i++)
        *LIST_ADD(a, &made.lines) = lines[i].from.line;
    for (size_t i = 0; i < sums.all.count; i++)
        *LIST_ADD(a, &made.parts) =
            (struct packed_amount){sums.all.at[i].total, sums.all.at[i].package};
    if (sums.all.count == 1) {
        made.amount = sums.all.at[0].total;
        made.package = sums.all.at[0].package;
    }
    made.divided = count > 1 && !sums.plus_more; /* every portion has an amount */
    *LIST_ADD(a, &dish->shopping) = made;
}

static int compare_first(const void *left, const void *right)
{
    const struct shopping_line *a = left, *b = right;
    return compare_numbers(a->lines.at[0], b->lines.at[0]);
}

struct addends {
    LIST(struct addend) all;
};

static void take_lines(const struct kitchen *k, struct arena *a, const struct dish *dish,
                       size_t recording, struct addends *lines)
{
    for (size_t i = 0; i < dish->ingredients.count; i++) {
        const struct ingredient *line = &dish->ingredients.at[i];
        if (line->role != ROLE_SERVE_WITH)
            *LIST_ADD(a, &lines->all) =
                (struct addend){food_key(k, line), line, {recording, dish->id, line->id}};
    }
}

static void sort_lines(struct addends *lines)
{
    if (lines->all.count)
        qsort(lines->all.at, lines->all.count, sizeof *lines->all.at, compare_addends);
}

void add_dish(const struct kitchen *k, struct arena *a, const struct profile *profile,
              struct dish *dish)
{
    struct addends lines = {.all = {NULL, 0, 0}};
    take_lines(k, a, dish, 0, &lines);
    sort_lines(&lines);
    dish->shopping.count = 0;
    for (size_t begin = 0, end; begin < lines.all.count; begin = end) {
        end = run_end(lines.all.at, lines.all.count, begin);
        make_shopping_line(k, a, profile, &lines.all.at[begin], end - begin, dish);
    }
    if (dish->shopping.count)
        qsort(dish->shopping.at, dish->shopping.count, sizeof *dish->shopping.at, compare_first);
}

static void make_item(const struct kitchen *k, struct arena *a, const struct profile *profile,
                      const struct addend *lines, size_t count, const struct aisle *aisle,
                      struct shop_list *list)
{
    struct sums sums = add_lines(k, a, profile, lines, count);
    struct shop_item made = {.key = lines[0].key,
                             .food = arena_text(a, lines[0].line->food),
                             .aisle = aisle->name,
                             .aisle_order = aisle->order,
                             .pantry = aisle->pantry,
                             .plus_more = sums.plus_more};
    for (size_t i = 0; i < sums.all.count; i++) {
        struct packed_amount *part = LIST_ADD(a, &made.amounts);
        *part = (struct packed_amount){sums.all.at[i].total, sums.all.at[i].package};
        part->package.unit = arena_text(a, part->package.unit);
    }
    made.key = arena_text(a, made.key);
    for (size_t i = 0; i < count; i++)
        *LIST_ADD(a, &made.parts) = lines[i].from;
    *LIST_ADD(a, &list->items) = made;
}

static int compare_items(const void *left, const void *right)
{
    const struct shop_item *a = left, *b = right;
    int order = (int) a->pantry - (int) b->pantry;
    if (!order)
        order = compare_numbers(a->aisle_order, b->aisle_order);
    return order ? order : text_compare(a->key, b->key);
}

void add_dishes(const struct kitchen *k, struct arena *a, const struct profile *profile,
                const struct shop_dish *dishes, size_t count, struct shop_list *list)
{
    struct addends lines = {.all = {NULL, 0, 0}};
    for (size_t i = 0; i < count; i++)
        take_lines(k, a, dishes[i].dish, dishes[i].recording, &lines);
    sort_lines(&lines);
    for (size_t begin = 0, end; begin < lines.all.count; begin = end) {
        end = run_end(lines.all.at, lines.all.count, begin);
        const struct ingredient *line = lines.all.at[begin].line;
        const struct aisle *aisle =
            aisle_of(&k->aisles, lines.all.at[begin].key, weighed_as(k, line), line->entry);
        if (!aisle->skip)
            make_item(k, a, profile, &lines.all.at[begin], end - begin, aisle, list);
    }
    if (list->items.count)
        qsort(list->items.at, list->items.count, sizeof *list->items.at, compare_items);
}
