/* kitchen/food_rows.c: the tables that foods are read from.
 * SPDX-License-Identifier: MIT */
#include "kitchen/food.h"

#include <math.h>

static struct food_name *add_name(struct foods *f, struct arena *a, struct text name,
                                  const struct food *food)
{
    names_add(a, &f->names, name_kept(a, name), f->named.count);
    struct food_name *named = LIST_ADD(a, &f->named);
    named->food = food;
    return named;
}

enum {
    FOOD_NAME,
    FOOD_GROUP,
    FOOD_KEPT,
    FOOD_USUAL,
    FOOD_ALSO,
    FOOD_NDB,
    FOOD_USDA,
    FOOD_NUTRIENTS
};

static void add_group(struct foods *f, struct arena *a, struct text group)
{
    for (size_t i = f->groups.count; i-- > 0;) /* most often the last one */
        if (text_equal(f->groups.at[i], group))
            return;
    *LIST_ADD(a, &f->groups) = group;
}

static bool load_food(struct foods *f, struct arena *a, const struct rows *r, size_t row,
                      struct problems *p)
{
    struct food *food = LIST_ADD(a, &f->all);
    food->name = rows_cell(r, row, FOOD_NAME);
    food->group = rows_cell(r, row, FOOD_GROUP);
    add_group(f, a, food->group);
    food->liquid = text_is(rows_cell(r, row, FOOD_KEPT), "liquid");
    food->dry = text_is(rows_cell(r, row, FOOD_KEPT), "dry");
    food->usual = rows_cell(r, row, FOOD_USUAL);
    food->also = rows_cell(r, row, FOOD_ALSO);
    food->ndb = rows_ref(r, row, FOOD_NDB);
    food->usda = rows_ref(r, row, FOOD_USDA);
    for (size_t i = 0; i < NUTRIENTS; i++) {
        struct ratio value;
        if (!rows_number(r, row, FOOD_NUTRIENTS + i, &value, p))
            return false;
        food->per_100g[i] = ratio_finite(value) ? ratio_double(value) : NAN;
    }
    return true;
}

/* With its other names. */
#define NAMES_A_FOOD 3

static bool load_foods(struct foods *f, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "foods",
                   "food group kept usual also ndb usda_description "
#define NUTRIENT(name, column) column " "
#include "kitchen/nutrients.def"
#undef NUTRIENT
                   "food",
                   p))
        return false;
    LIST_RESERVE(a, &f->all, r.count);
    for (size_t row = 0; row < r.count; row++)
        if (!load_food(f, a, &r, row, p))
            return false;
    LIST_RESERVE(a, &f->named, f->all.count * NAMES_A_FOOD);
    LIST_RESERVE(a, &f->names.rows, f->all.count * NAMES_A_FOOD);
    for (size_t i = 0; i < f->all.count; i++) /* the list no longer moves */
        add_name(f, a, f->all.at[i].name, &f->all.at[i])->fit = FIT_SAME;
    return true;
}

/* The words that a column may have. */
struct choice {
    const char *const *words;
    size_t count;
};

static bool read_word(const struct rows *r, size_t row, size_t column, struct choice of,
                      size_t *value, struct problems *p)
{
    for (size_t i = 0; i < of.count; i++)
        if (text_is(rows_cell(r, row, column), of.words[i])) {
            *value = i;
            return true;
        }
    return problem(p, rows_place(r, row), "\"%.*s\" is not one of the words for this column",
                   TEXT(rows_cell(r, row, column)));
}

/* The food of that name; foods stand in the order of their table, whose first column is the name.
 */
static struct food *named_food(const struct foods *f, const struct table *foods, struct text name)
{
    size_t row = table_find(foods, name);
    return row < f->all.count && text_equal(f->all.at[row].name, name) ? &f->all.at[row] : NULL;
}

enum {
    ROW_FOOD,
    ROW_FORM,
    ROW_MEASURE,
    ROW_GRAMS,
    ROW_USE,
    ROW_AMOUNT,
    ROW_WORDS,
    ROW_WEIGHT,
    ROW_SOURCE
};

/* Of that food, which may be NULL, measured so, which may be NULL too. */
static bool load_weight(struct food *food, const struct unit *measure, struct arena *a,
                        const struct rows *r, size_t row, struct problems *p)
{
    static const char *const uses[] = {"", "own", "no"};
    size_t use = 0;
    if (!food || !measure)
        return problem(p, rows_place(r, row),
                       "a food that is not in foods.tsv, or a measure not in units.tsv");
    struct food_row *made = LIST_ADD(a, &food->rows);
    made->form = rows_ref(r, row, ROW_FORM);
    made->measure = measure;
    made->usda_amount = rows_ref(r, row, ROW_AMOUNT);
    made->usda_measure = rows_ref(r, row, ROW_WORDS);
    made->usda_grams = rows_ref(r, row, ROW_WEIGHT);
    made->source = rows_ref(r, row, ROW_SOURCE);
    if (!rows_number(r, row, ROW_GRAMS, &made->grams, p)
        || !read_word(r, row, ROW_USE, (struct choice){uses, 3}, &use, p))
        return false;
    made->use = (enum row_use) use;
    return true;
}

/* Room for each food's rows, which stand together. */
static void reserve_rows(struct foods *f, struct arena *a, const struct table *foods,
                         const struct rows *r)
{
    for (size_t row = 0, end; row < r->count; row = end) {
        struct text name = rows_cell(r, row, ROW_FOOD);
        struct food *food = named_food(f, foods, name);
        for (end = row + 1; end < r->count && text_equal(rows_cell(r, end, ROW_FOOD), name);)
            end++;
        if (food && !food->rows.at)
            LIST_RESERVE(a, &food->rows, end - row);
    }
}

static bool load_weights(struct foods *f, const struct units *u, struct arena *a,
                         const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "food-weights",
                   "food form measure grams use usda_amount usda_measure usda_grams source", p))
        return false;
    const struct table *foods = pack_table(k, "foods");
    reserve_rows(f, a, foods, &r);
    for (size_t row = 0; row < r.count; row++)
        if (!load_weight(named_food(f, foods, rows_cell(&r, row, ROW_FOOD)),
                         unit_find(u, rows_cell(&r, row, ROW_MEASURE)), a, &r, row, p))
            return false;
    return true;
}

static bool load_aliases(struct foods *f, struct arena *a, const struct pack *k, struct problems *p)
{
    static const char *const fits[] = {"same", "near", "ask", "by-weight"};
    struct rows r;
    size_t fit = 0;
    if (!rows_open(&r, k, "food-aliases", "alias food form fit", p))
        return false;
    const struct table *foods = pack_table(k, "foods");
    for (size_t row = 0; row < r.count; row++) {
        const struct food *food = named_food(f, foods, rows_cell(&r, row, 1));
        if (!food)
            return problem(p, rows_place(&r, row), "\"%.*s\" is not in foods.tsv",
                           TEXT(rows_cell(&r, row, 1)));
        if (!read_word(&r, row, 3, (struct choice){fits, 4}, &fit, p))
            return false;
        struct food_name *named = add_name(f, a, rows_cell(&r, row, 0), food);
        named->form = rows_cell(&r, row, 2);
        named->fit = (enum fit) fit;
    }
    return names_ready(a, &f->names, r.table->file, p);
}

static bool load_forms(struct foods *f, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "food-forms", "word forms", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        names_add(a, &f->forms, name_kept(a, rows_cell(&r, row, 0)), f->form_list.count);
        *LIST_ADD(a, &f->form_list) = rows_cell(&r, row, 1);
    }
    return names_ready(a, &f->forms, r.table->file, p);
}

static bool load_modifiers(struct foods *f, struct arena *a, const struct pack *k,
                           struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "food-modifiers", "word", p))
        return false;
    for (size_t row = 0; row < r.count; row++)
        names_add(a, &f->modifiers, name_kept(a, rows_cell(&r, row, 0)), row);
    return names_ready(a, &f->modifiers, r.table->file, p);
}

static bool load_parts(struct foods *f, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    char room[2 * FOLD_BYTES];
    if (!rows_open(&r, k, "food-parts", "food done part", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct text key = food_part_key(rows_cell(&r, row, 0), rows_cell(&r, row, 1), room);
        names_add(a, &f->parts, arena_text(a, key), f->part_list.count);
        *LIST_ADD(a, &f->part_list) = rows_cell(&r, row, 2);
    }
    return names_ready(a, &f->parts, r.table->file, p);
}

bool foods_load(struct foods *f, const struct units *u, struct arena *a, const struct pack *k,
                struct problems *p)
{
    return load_foods(f, a, k, p) && load_weights(f, u, a, k, p) && load_aliases(f, a, k, p)
           && load_forms(f, a, k, p) && load_modifiers(f, a, k, p) && load_parts(f, a, k, p);
}
