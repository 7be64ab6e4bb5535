/* kitchen/add.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/add.h"

#include <stdlib.h>

#include "kitchen/sum.h"

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

/* Lines of one food stand together in `lines`; the end of those that begin at `begin`. */
static size_t run_end(const struct addend *lines, size_t count, size_t begin)
{
    size_t end = begin + 1;
    while (end < count && text_equal(lines[end].key, lines[begin].key))
        end++;
    return end;
}

static struct sums sum_run(const struct adder *with, const struct addend *lines, size_t count)
{
    const struct ingredient **all = arena_alloc(with->a, count * sizeof *all);
    for (size_t i = 0; i < count; i++)
        all[i] = lines[i].line;
    return sum_lines(with, all, count);
}

static void make_shopping_line(const struct adder *with, const struct addend *lines, size_t count,
                               struct dish *dish)
{
    struct arena *a = with->a;
    struct sums sums = sum_run(with, lines, count);
    struct shopping_line made = {.food = lines[0].line->food,
                                 .plus_more = sums.plus_more && sums.measured};
    LIST_RESERVE(a, &made.lines, count);
    for (size_t i = 0; i < count; i++)
        *LIST_ADD(a, &made.lines) = lines[i].from.line;
    if (sums.all.count)
        LIST_RESERVE(a, &made.parts, sums.all.count);
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
    if (!lines->all.room && dish->ingredients.count)
        LIST_RESERVE(a, &lines->all, dish->ingredients.count);
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
    const struct adder with = {k, a, profile};
    struct addends lines = {.all = {NULL, 0, 0}};
    take_lines(k, a, dish, 0, &lines);
    sort_lines(&lines);
    LIST_CUT(&dish->shopping, 0);
    if (lines.all.count > dish->shopping.room)
        LIST_RESERVE(a, &dish->shopping, lines.all.count);
    for (size_t begin = 0, end; begin < lines.all.count; begin = end) {
        end = run_end(lines.all.at, lines.all.count, begin);
        make_shopping_line(&with, &lines.all.at[begin], end - begin, dish);
    }
    if (dish->shopping.count)
        qsort(dish->shopping.at, dish->shopping.count, sizeof *dish->shopping.at, compare_first);
}

static void make_item(const struct adder *with, const struct addend *lines, size_t count,
                      const struct aisle *aisle, struct shop_list *list)
{
    struct arena *a = with->a;
    struct sums sums = sum_run(with, lines, count);
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
    const struct adder with = {k, a, profile};
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
            make_item(&with, &lines.all.at[begin], end - begin, aisle, list);
    }
    if (list->items.count)
        qsort(list->items.at, list->items.count, sizeof *list->items.at, compare_items);
}
