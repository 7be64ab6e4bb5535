/* tests/kitchen/test_scale.c: scaled amounts stay exact, are written as a kitchen can measure them,
 * and what does not scale is said. Expected measures: 3 teaspoons a tablespoon, 16 tablespoons a
 * cup (NIST Handbook 44, Appendix C); which
 * measures exist is common practice, no source.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/scale.h"

static void test_measures(void **state)
{
    static const struct {
        const char *amount, *unit, *factor, *written, *note;
    } cases[] = {
        {"1", "teaspoon", "3", "1 tablespoon", ""},
        {"4", "teaspoon", "1", "1 tablespoon plus 1 teaspoon", ""},
        {"1", "tablespoon", "4", "¼ cup", ""},
        {"1", "tablespoon", "5", "¼ cup plus 1 tablespoon", ""},
        {"1", "tablespoon", "1/2", "1½ teaspoons", ""},
        {"1/3", "cup", "3", "1 cup", ""},
        {"1", "cup", "1/8", "2 tablespoons", ""},
        {"13/16", "cup", "1", "¾ cup plus 1 tablespoon", ""},
        {"1/4", "teaspoon", "1/2", "⅛ teaspoon", ""},
        {"1/4", "teaspoon", "1/10", "⅛ teaspoon", "rounded from 0.025 teaspoon"},
        {"1", "teaspoon", "0.7", "¾ teaspoon", "rounded from 0.7 teaspoon"},
        {"2", "cup", "2.6", "5¼ cups", "rounded from 5.2 cups"},
        {"3", "", "1/2", "1½", ""},
        {"1", "", "0.3", "¼", "rounded from 0.3"},
        {"20", "ounce", "1", "1¼ pounds", ""},
        {"1", "pound", "1/2", "8 ounces", ""},
        {"500", "gram", "2.5", "1.25 kilograms", ""},
        {"100", "gram", "1/3", "33 grams", "rounded from 33.3333 grams"},
        {"250", "milliliter", "6", "1.5 liters", ""},
        {"1", "clove", "1.5", "1½ cloves", ""},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct text note;
        struct amount a = open_amount(cases[i].amount, cases[i].amount, cases[i].unit);
        a.min = a.max = ratio_multiply(a.min, open_ratio(cases[i].factor));
        struct text t = print_measurable(o->kitchen, &o->arena, NULL, &a, &note);
        assert_string_equal(open_string(o, t), cases[i].written);
        assert_string_equal(open_string(o, note), cases[i].note);
    }
    struct amount range = open_amount("2", "3", "tablespoon");
    assert_string_equal(open_string(o, print_measurable(o->kitchen, &o->arena, NULL, &range, NULL)),
                        "2 to 3 tablespoons");
    range.max = RATIO(4);
    range.approx = true;
    assert_string_equal(open_string(o, print_measurable(o->kitchen, &o->arena, NULL, &range, NULL)),
                        "about 2 tablespoons to ¼ cup");
}

/* An Australian tablespoon is four teaspoons (NSW Health). */
static void test_australia(void **state)
{
    struct open_kitchen *o = *state;
    const struct profile *au = profile_find(&o->kitchen->units, TEXT_OF("au"));
    struct amount a = open_amount("4", "4", "teaspoon");
    assert_string_equal(open_string(o, print_measurable(o->kitchen, &o->arena, au, &a, NULL)),
                        "1 tablespoon");
}

static uint32_t seed = 20260102;
static uint32_t draw(uint32_t below)
{
    seed = seed * 1664525u + 1013904223u; /* Numerical Recipes' generator */
    return (seed >> 8) % below;
}

static struct amount random_amount(void)
{
    static const char *const units[] = {"cup",   "tablespoon", "teaspoon",   "gram",
                                        "ounce", "pound",      "milliliter", "liter",
                                        "",      "clove",      "pint"};
    struct amount a = {.known = true,
                       .min = ratio_make((int64_t) draw(60) + 1, (int64_t) draw(16) + 1),
                       .unit = text_from(units[draw(11)])};
    a.max = draw(4) ? a.min : ratio_add(a.min, ratio_make(1, (int64_t) draw(4) + 1));
    if (!draw(20))
        a.max = RATIO_UPWARDS;
    return a;
}

static struct dish random_dish(struct open_kitchen *o)
{
    static const char *const foods[] = {"flour",     "egg",           "salt",
                                        "olive oil", "baking powder", "moon dust"};
    struct dish d = {
        .id = 1,
        .yield = {.known = true, .min = RATIO(4), .max = RATIO(6), .of = TEXT_OF("serving")}};
    for (size_t i = draw(15); i > 0; i--) {
        struct ingredient *line = LIST_ADD(&o->arena, &d.ingredients);
        *line = (struct ingredient){.id = i, .food = text_from(foods[draw(6)])};
        if (draw(6))
            line->amount = random_amount();
    }
    return d;
}

static bool same_amount(const struct amount *a, const struct amount *b)
{
    return a->known == b->known && ratio_equal(a->min, b->min) && ratio_equal(a->max, b->max)
           && text_equal(a->unit, b->unit);
}

#define RANDOM_RECIPES 3000

/* By any factor and back is the same dish, exactly. */
static void test_there_and_back(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t n = 0; n < RANDOM_RECIPES; n++) {
        struct dish before = random_dish(o), dish = before;
        dish.ingredients.at =
            arena_alloc(&o->arena, before.ingredients.count * sizeof *before.ingredients.at + 1);
        if (before.ingredients.count)
            memcpy(dish.ingredients.at, before.ingredients.at,
                   before.ingredients.count * sizeof *before.ingredients.at);
        struct ratio factor =
            n % 2 ? RATIO(2) : ratio_make((int64_t) draw(30) + 1, (int64_t) draw(30) + 1);
        assert_true(scale_dish(o->kitchen, &o->arena, &dish, factor, NULL, &o->problems));
        assert_true(ratio_equal(dish.yield.min, ratio_multiply(RATIO(4), factor)));
        assert_true(scale_dish(o->kitchen, &o->arena, &dish, ratio_divide(RATIO(1), factor), NULL,
                               &o->problems));
        for (size_t i = 0; i < dish.ingredients.count; i++)
            assert_true(
                same_amount(&dish.ingredients.at[i].amount, &before.ingredients.at[i].amount));
        assert_true(ratio_equal(dish.yield.max, before.yield.max));
        arena_reset(&o->arena);
    }
}

/* What is written is never more than 1/8 teaspoon or an eighth of the amount away, and adds up to
 * what it says. */
static void test_measurable_is_near(void **state)
{
    struct open_kitchen *o = *state;
    const struct units *u = &o->kitchen->units;
    for (size_t n = 0; n < 20000; n++) {
        struct ratio amount = ratio_make((int64_t) draw(5000) + 1, (int64_t) draw(300) + 1);
        static const char *const spoons[] = {"teaspoon", "tablespoon", "cup"};
        const struct unit *unit = unit_find(u, text_from(spoons[draw(3)]));
        struct measurable m = measurable_number(o->kitchen, NULL, amount, unit);
        assert_true(m.count >= 1 && m.count <= 3);
        double sum = 0, said = ratio_double(amount) * ratio_double(unit->factor);
        for (size_t i = 0; i < m.count; i++) {
            assert_true(m.parts[i].min.over > 0);
            sum +=
                ratio_double(m.parts[i].min) * ratio_double(unit_find(u, m.parts[i].unit)->factor);
        }
        double off = sum > said ? sum - said : said - sum, spoon = 4.92892159375 / 8;
        if (off > spoon + 1e-9 && off > said / 8)
            fail_msg("%g %.*s became %g mL", ratio_double(amount), TEXT(unit->name), sum);
        if (!m.rounded && off > 1e-9)
            fail_msg("%g %.*s: rounded without saying so", ratio_double(amount), TEXT(unit->name));
    }
}

static void test_notes(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    *LIST_ADD(&o->arena, &d.ingredients) =
        (struct ingredient){.id = 3, .food = TEXT_OF("egg"), .amount = open_amount("3", "3", "")};
    *LIST_ADD(&o->arena, &d.ingredients) = (struct ingredient){
        .id = 5, .food = TEXT_OF("baking powder"), .amount = open_amount("1", "1", "teaspoon")};
    struct step *step = LIST_ADD(&o->arena, &d.steps);
    step->id = 9;
    *LIST_ADD(&o->arena, &step->actions) = TEXT_OF("bake");
    scale_note_list notes = {NULL, 0, 0};
    assert_true(scale_dish(o->kitchen, &o->arena, &d, ratio_make(1, 2), &notes, &o->problems));
    assert_int_equal(notes.count, 4);
    assert_true(text_starts(notes.at[0].note, "Every amount is multiplied by ½;"));
    assert_true(text_starts(
        notes.at[1].note, "A pan of ½ times the area holds the same depth: each side times 0.71."));
    assert_int_equal(notes.at[1].because.at[0], 9);
    assert_true(text_starts(notes.at[2].note, "Leavening"));
    assert_int_equal(notes.at[2].because.at[0], 5);
    assert_string_equal(open_string(o, notes.at[3].note),
                        "Beat 2, and use as much as the line says.");
    assert_int_equal(notes.at[3].because.at[0], 3);
    assert_true(ratio_equal(d.ingredients.at[0].amount.min, ratio_make(3, 2)));
}

static void test_bad(void **state)
{
    struct open_kitchen *o = *state;
    struct problems p = {0};
    struct dish d = {.id = 1};
    *LIST_ADD(&o->arena, &d.ingredients) = (struct ingredient){
        .food = TEXT_OF("flour"),
        .amount = open_amount("900000000000000000", "900000000000000000", "cup")};
    static const struct ratio factors[] = {{0, 1},      {-1, 1},     {1, 0},  {0, 0},
                                           {100000, 1}, {1, 100000}, {500, 1}};
    for (size_t i = 0; i < sizeof factors / sizeof *factors; i++)
        assert_false(scale_dish(o->kitchen, &o->arena, &d, factors[i], NULL, &p));
    assert_true(ratio_equal(d.ingredients.at[0].amount.min, RATIO(900000000000000000)));
    assert_int_equal(p.errors, 7);
    assert_string_equal(p.at[6].message, "the amount of flour becomes too large");

    struct ratio f = RATIO(7);
    struct yield y = {.known = true, .min = RATIO(4), .max = RATIO(6), .of = TEXT_OF("serving")};
    assert_true(scale_to_yield(&y, RATIO(40), TEXT_OF("serving"), &f, &p));
    assert_true(ratio_equal(f, RATIO(8)));
    assert_false(scale_to_yield(&y, RATIO(40), TEXT_OF("cookie"), &f, &p));
    assert_false(scale_to_yield(&y, RATIO(0), TEXT_EMPTY, &f, &p));
    assert_false(scale_to_yield(&y, RATIO(-3), TEXT_EMPTY, &f, &p));
    y.min = y.max = RATIO(0);
    assert_false(scale_to_yield(&y, RATIO(4), TEXT_EMPTY, &f, &p));
    y.known = false;
    assert_false(scale_to_yield(&y, RATIO(4), TEXT_EMPTY, &f, &p));
    assert_true(ratio_equal(f, RATIO(8)));
    assert_int_equal(p.errors, 12);
    problems_release(&p);
}

static void test_factors_at_the_limit(void **state)
{
    static const struct {
        struct ratio factor;
        bool good;
    } rows[] = {{{1000, 1}, true}, {{1001, 1}, false}, {{1, 1000}, true}, {{1, 1001}, false},
                {{1, 1}, true},    {{1999, 2}, true},  {{2001, 2}, false}};
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct problems p = {0};
        struct dish d = {.id = 1};
        *LIST_ADD(&o->arena, &d.ingredients) =
            (struct ingredient){.food = TEXT_OF("flour"), .amount = open_amount("1", "1", "cup")};
        assert_int_equal(scale_dish(o->kitchen, &o->arena, &d, rows[i].factor, NULL, &p),
                         rows[i].good);
        assert_int_equal(p.errors, !rows[i].good);
        problems_release(&p);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_factors_at_the_limit, open_reset),
        cmocka_unit_test_teardown(test_measures, open_reset),
        cmocka_unit_test_teardown(test_australia, open_reset),
        cmocka_unit_test(test_there_and_back),
        cmocka_unit_test_teardown(test_measurable_is_near, open_reset),
        cmocka_unit_test_teardown(test_notes, open_reset),
        cmocka_unit_test_teardown(test_bad, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
