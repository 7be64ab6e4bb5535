/* kitchen/aisle.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/aisle.h"

enum { AISLE_BY, AISLE_WHAT, AISLE_NAME, AISLE_HABIT };

/* The order of an aisle is that of the first row that names it. */
static size_t aisle_order(const struct aisles *s, struct text name)
{
    size_t highest = 0;
    for (size_t i = 0; i < s->all.count; i++) {
        if (text_equal(s->all.at[i].name, name))
            return s->all.at[i].order;
        if (s->all.at[i].order >= highest)
            highest = s->all.at[i].order + 1;
    }
    return highest;
}

static void set_aisle(struct aisle *aisle, const struct rows *r, size_t row, size_t order)
{
    struct text habit = rows_cell(r, row, AISLE_HABIT);
    aisle->name = rows_cell(r, row, AISLE_NAME);
    aisle->order = order;
    aisle->pantry = text_is(habit, "pantry");
    aisle->skip = text_is(habit, "skip");
}

static bool load_aisle(struct aisles *s, struct arena *a, const struct rows *r, size_t row,
                       struct problems *p)
{
    struct text by = rows_cell(r, row, AISLE_BY), what = rows_cell(r, row, AISLE_WHAT);
    size_t order = aisle_order(s, rows_cell(r, row, AISLE_NAME));
    struct names *x = text_is(by, "food")    ? &s->by_food
                      : text_is(by, "group") ? &s->by_group
                      : text_is(by, "mark")  ? &s->by_mark
                                             : NULL;
    if (text_is(by, "other"))
        set_aisle(&s->other, r, row, order);
    else if (x)
        names_add(a, x, what, s->all.count);
    else
        return problem(p, rows_place(r, row),
                       "an aisle is given by food, group, mark or other, not by \"%.*s\"",
                       TEXT(by));
    set_aisle(LIST_ADD(a, &s->all), r, row, order);
    return true;
}

bool aisles_load(struct aisles *s, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "shop-aisles", "by what aisle habit", p))
        return false;
    for (size_t row = 0; row < r.count; row++)
        if (!load_aisle(s, a, &r, row, p))
            return false;
    return names_ready(a, &s->by_food, r.table->file, p)
           && names_ready(a, &s->by_group, r.table->file, p)
           && names_ready(a, &s->by_mark, r.table->file, p);
}

static const struct aisle *look_up(const struct aisles *s, const struct names *x, struct text what)
{
    size_t n;
    return names_find(x, what, &n) ? &s->all.at[n] : NULL;
}

const struct aisle *aisle_of(const struct aisles *s, struct text key, const struct food *food,
                             const struct entry *entry)
{
    const struct aisle *hit = look_up(s, &s->by_food, key);
    if (!hit && food)
        hit = look_up(s, &s->by_food, food->name);
    if (!hit && food)
        hit = look_up(s, &s->by_group, food->group);
    for (size_t bit = 0; !hit && entry && bit < MARK_COUNT; bit++)
        if (entry->marks >> bit & 1)
            hit = look_up(s, &s->by_mark, text_from(mark_name((enum mark_bit) bit)));
    return hit ? hit : &s->other;
}

bool entry_has_mark(const struct entry *entry, struct text mark)
{
    return entry && mark_named(entry->marks, mark);
}
