/* tests/kitchen/test_weight.c: grams by food, with the row that they come from.
 * Expected figures are USDA SR28 (2015) gram weights, read in the record that each case names,
 * multiplied by hand.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/weight.h"

struct weight_case {
    const char *min, *max, *unit, *food, *prep, *size;
    double grams_min, grams_max; /* 0: no weight is known */
    const char *source;          /* begins with */
};

static const struct weight_case cases[] = {
    {"2", "2", "cup", "flour", "", "", 250, 250, "USDA SR28 20081: "},
    {"2", "2", "tablespoon", "paprika", "", "", 13.6, 13.6, "USDA SR28 02028: "},
    {"1", "1", "cup", "brown sugar", "", "", 220, 220, "USDA SR28 19334: "},
    {"1", "1", "cup", "brown sugar", "lightly packed", "", 145, 145, "USDA SR28 19334: "},
    {"1", "1", "cup", "powdered sugar", "sifted", "", 100, 100, "USDA SR28 19336: "},
    {"3", "3", "", "egg", "", "", 150, 150, "USDA SR28 01123: "},
    {"2", "2", "", "egg", "", "jumbo", 126, 126, "USDA SR28 01123: "},
    {"1", "1", "dozen", "egg", "", "", 600, 600, "USDA SR28 01123: "},
    {"4", "4", "clove", "garlic", "minced", "", 12, 12, "USDA SR28 11215: "},
    {"1", "1", "stick", "unsalted butter", "", "", 113, 113, "USDA SR28 01145: "},
    {"1/2", "1/2", "", "lemon", "juiced", "", 24, 24, "USDA SR28 09152: "},
    {"1", "1", "cup", "cheddar", "grated", "", 113, 113, "USDA SR28 01009: "},
    {"1", "1", "cup", "onion", "chopped", "", 160, 160, "USDA SR28 11282: "},
    {"2", "2", "", "large ripe onion", "", "", 220, 220, "USDA SR28 11282: "},
    {"2", "3", "", "onion", "", "large", 300, 450, "USDA SR28 11282: "},
    {"2", "2", "stalk", "celery", "chopped", "", 80, 80, "USDA SR28 11143: "},
    {"3", "3", "", "scallion", "sliced", "", 45, 45, "USDA SR28 11291: "},
    {"500", "500", "gram", "venison", "", "", 500, 500, "the weight that was said"},
    {"1", "1", "pound", "venison", "", "", 453.59237, 453.59237,
     "1 pound = 453.5924 g (NIST Handbook 44"},
    {"1", "1", "pinch", "salt", "", "", 0.375, 0.375, "USDA SR28 02047: "},
    {"1", "1", "cup", "venison", "", "", 0, 0, "no published weight found for venison"},
    {"1", "1", "teaspoon", "flaky salt", "", "", 2.8, 2.8,
     "GNU Units 2.22, definitions file, from a package label: flaky salt"},
    {"1", "1", "teaspoon", "kosher salt", "", "", 0, 0,
     "kosher salt by the teaspoon weighs differently"},
    {"1", "1", "cup", "panko", "", "", 0, 0,
     "panko by volume weighs differently from dry breadcrumbs"},
    {"2", "2", "stick", "celery", "", "", 80, 80, "USDA SR28 11143: "},
    {"2", "2", "", "cherry tomato", "", "", 34, 34, "USDA SR28 11529: "},
    {"3", "3", "", "ripe tomato", "", "", 369, 369, "USDA SR28 11529: "},
    {"2", "2", "", "chicken thigh", "", "", 386, 386, "USDA SR28 05091: "},
    {"1", "1", "can", "canned tomatoes", "", "", 0, 0,
     "no published weight found for canned tomatoes by the can"},
    {"1", "1", "handful", "flour", "", "", 0, 0,
     "no published weight found for flour by the handful"},
    {"1", "1", "cup", "spinach leaf", "", "", 30, 30, "USDA SR28 11457: "},
};

static struct ingredient case_line(struct arena *a, const struct weight_case *c)
{
    struct ingredient line = {.food = text_from(c->food),
                              .amount = open_amount(c->min, c->max, c->unit),
                              .size = text_from(c->size)};
    if (*c->prep)
        *LIST_ADD(a, &line.prep) = text_from(c->prep);
    return line;
}

static void test_weights(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct text why = TEXT_EMPTY;
        struct ingredient line = case_line(&o->arena, &cases[i]);
        struct weight w = weigh(o->kitchen, &o->arena, NULL, &line, &why);
        struct text told = w.known ? w.source : why;
        if (w.known != (cases[i].grams_min > 0) || !text_starts(told, cases[i].source)
            || (w.known
                && (w.min - cases[i].grams_min > 1e-9 || cases[i].grams_min - w.min > 1e-9
                    || w.max - cases[i].grams_max > 1e-9 || cases[i].grams_max - w.max > 1e-9)))
            fail_msg("%s %s %s %s: %g to %g g, %.*s", cases[i].min, cases[i].unit, cases[i].food,
                     cases[i].prep, w.min, w.max, TEXT(told));
    }
}

/* A teaspoon of 5 mL holds 5/4.92892159375 of what USDA's holds; Australia's tablespoon is 20 mL.
 */
static void test_kitchens(void **state)
{
    struct open_kitchen *o = *state;
    struct ingredient line = {.food = TEXT_OF("salt"),
                              .amount = open_amount("1", "1", "tablespoon")};
    const struct profile *au = profile_find(&o->kitchen->units, TEXT_OF("au"));
    struct weight w = weigh(o->kitchen, &o->arena, au, &line, NULL);
    assert_true(w.known);
    assert_true(w.min > 24.3 && w.min < 24.4); /* 18 g * 20 / 14.78676478125 = 24.346 */
    assert_null(profile_find(&o->kitchen->units, TEXT_OF("mars")));
}

static void test_package(void **state)
{
    struct open_kitchen *o = *state;
    struct ingredient line = {.food = TEXT_OF("chickpea"),
                              .amount = open_amount("2", "2", "can"),
                              .package = open_amount("400", "400", "gram")};
    struct weight w = weigh(o->kitchen, &o->arena, NULL, &line, NULL);
    assert_true(w.known && w.min == 800 && w.max == 800);
    assert_string_equal(open_string(o, print_packed(o->kitchen, &o->arena, &line.amount,
                                                    &line.package, WORDS_WHOLE)),
                        "2 cans (400 g)");
}

/* No infinity, no overflow, no not-a-number. */
static void test_bad(void **state)
{
    struct open_kitchen *o = *state;
    struct text why = TEXT_EMPTY;
    struct ingredient line = {.food = TEXT_OF("flour"), .amount = open_amount("2", "2", "cup")};
    line.amount.max = RATIO_UPWARDS;
    assert_false(weigh(o->kitchen, &o->arena, NULL, &line, &why).known);
    assert_string_equal(open_string(o, why), "the amount has no upper end");
    line.amount = open_amount("900000000000000000", "900000000000000000", "cup");
    assert_false(weigh(o->kitchen, &o->arena, NULL, &line, &why).known);
    assert_string_equal(open_string(o, why), "the amount is beyond what can be worked out");
    line.amount.known = false;
    assert_false(weigh(o->kitchen, &o->arena, NULL, &line, &why).known);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_weights, open_reset),
        cmocka_unit_test_teardown(test_kitchens, open_reset),
        cmocka_unit_test_teardown(test_package, open_reset),
        cmocka_unit_test_teardown(test_bad, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
