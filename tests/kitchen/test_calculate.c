/* tests/kitchen/test_calculate.c: lines of kitchen arithmetic. Weights: USDA SR28, by record
 * number; sizes of units: NIST
 * Handbook 44, Appendix C; temperatures: by definition.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/calculate.h"

struct sum_case {
    const char *input, *to, *kitchen, *line, *source, *rounding; /* NULL: as it comes */
};

static const struct sum_case cases[] = {
    {"2 cups flour", "gram", "us", "2 cups flour = 250 grams", "USDA SR28 20081: Wheat flour",
     NULL},
    {"2 cups of flour", "g", "us", "2 cups flour = 250 grams", "USDA SR28 20081", NULL},
    {"2 tablespoons paprika", "gram", "us", "2 tablespoons paprika = 14 grams", "USDA SR28 02028",
     NULL},
    {"500 g flour", "cup", "us", "500 grams flour = 4 cups", "USDA SR28 20081", NULL},
    {"3 eggs", "gram", "us", "3 eggs = 150 grams", "USDA SR28 01123", NULL},
    {"1 dozen eggs", "gram", "us", "1 dozen eggs = 600 grams", "USDA SR28 01123", NULL},
    {"1 cup", "ml", "us", "1 cup = 237 milliliters", "NIST Handbook 44", NULL},
    {"1 cup", "ml", "au", "1 cup = 250 milliliters", "", NULL},
    {"1 tablespoon", "teaspoon", "au", "1 tablespoon = 4 teaspoons", "", NULL},
    {"1 pint", "ml", "uk", "1 pint = 568 milliliters", "UK SI 1995/1804", NULL},
    {"1/3 cup", "tablespoon", "us", "⅓ cup = 5⅓ tablespoons", "NIST Handbook 44", NULL},
    {"1½ cups", "tablespoon", "us", "1½ cups = 24 tablespoons", "NIST Handbook 44", NULL},
    {"1 1/2 pounds", "gram", "us", "1½ pounds = 680 grams", "NIST Handbook 44", NULL},
    {"2-3 tbsp butter", "gram", "us", "2 to 3 tablespoons butter = 28 to 43 grams",
     "USDA SR28 01001", NULL},
    {"8 fl oz milk", "cup", "us", "8 fluid ounces milk = 1 cup", "NIST Handbook 44", NULL},
    {"1 cup milk", "g", "us", "1 cup milk = 244 grams", "USDA SR28 01077", NULL},
    {"350 F", "C", "us", "350 °F = 177 °C", "", NULL},
    {"180 C", "F", "uk", "180 °C = 356 °F", "", NULL},
    {"gas mark 4", "F", "uk", "gas mark 4 = 350 °F", "", NULL},
    {"400 F", "gas mark", "uk", "400 °F = gas mark 6", "", NULL},
    {"350-375 F", "C", "us", "350 to 375 °F = 177 to 191 °C", "", NULL}, /* (F - 32) * 5 / 9 */
    {"180–200 C", "", "uk", "180 to 200 °C = 356 to 392 °F", "", NULL},
    {"gas mark 4-5", "F", "uk", "gas mark 4 to 5 = 350 to 375 °F", "", NULL},
    {"350-350 F", "C", "us", "350 °F = 177 °C", "", NULL},
    {"160-180 C fan", "", "uk", "160 to 180 °C fan = 180 to 200 °C", "NSW Health", NULL},
    {"350 F", "", "us", "350 °F = 177 °C", "", NULL},
    {"180 C", "", "uk", "180 °C = 356 °F", "", NULL},
    {"gas mark 4", "", "uk", "gas mark 4 = 177 °C", "", NULL},
    {"2 c", "", "us", "2 cups = 2 cups", "", NULL},
    {"180 C fan", "", "uk", "180 °C fan = 200 °C", "NSW Health", NULL},
    {"180 C in a fan oven", "F", "us", "180 °C fan = 392 °F", "NSW Health", NULL},
    {"200 C", "C fan", "uk", "200 °C = 180 °C fan", "NSW Health", NULL},
    {"400 F", "C fan", "us", "400 °F = 184 °C fan", "NSW Health", NULL},
    {"180 C fan", "C fan", "uk", "180 °C fan = 180 °C fan", "NSW Health", NULL},
    {"20 oz", "", "us", "20 ounces = 1¼ pounds", "", NULL},
    {"12 tsp", "", "us", "12 teaspoons = ¼ cup", "", NULL},
    {"1/2 c sugar", "gram", "us", "½ cup sugar = 100 grams", "USDA SR28 19335", NULL},
    /* a kitchen's fractions stay, one that is none is rounded, in a range both ends then */
    {"1 1/8 tbsp", "tsp", "us", "1⅛ tablespoons = 3⅜ teaspoons", "NIST Handbook 44", "exact"},
    {"1.25 cup", "tablespoon", "us", "1¼ cups = 20 tablespoons", "NIST Handbook 44", "exact"},
    {"1/7 cup", "tablespoon", "us", "0.1429 cup = 2.3 tablespoons", "NIST", "rounded to 2 figures"},
    {"1/8-1/7 cup", "tbsp", "us", "⅛ to 0.1429 cup = 2 to 2.3 tablespoons", "NIST",
     "rounded to 2 figures"},
    {"1/7-1/2 cup", "tbsp", "us", "0.1429 to ½ cup = 2.3 to 8 tablespoons", "NIST",
     "rounded to 2 figures"},
    /* spaces around the dash, of either kind */
    {"2 - 3 cups", "tbsp", "us", "2 to 3 cups = 32 to 48 tablespoons", "NIST", "exact"},
    {"2 –3 cups", "tbsp", "us", "2 to 3 cups = 32 to 48 tablespoons", "NIST", "exact"},
    {"2- 3 cups", "tbsp", "us", "2 to 3 cups = 32 to 48 tablespoons", "NIST", "exact"},
    {"3-3 cups", "ml", "us", "3 cups = 710 milliliters", "NIST", "rounded to 3 figures"},
    {"0 cups", "ml", "us", "0 cups = 0 milliliters", "NIST", "exact"},
    /* by the food's weight, there and back, and by the piece */
    {"1 lb flour", "cup", "us", "1 pound flour = 3.6 cups", "USDA SR28 20081",
     "rounded to 2 figures"},
    {"6 eggs", "cup", "us", "6 eggs = 1.2 cups", "USDA SR28 01123", "rounded to 2 figures"},
    {"12 eggs", "dozen", "us", "12 eggs = 1 dozen", "ordinary usage", "exact"},
    {"2 dozen eggs", "each", "us", "2 dozen eggs = 24", "ordinary usage", "exact"},
    {"3 cloves garlic", "g", "us", "3 cloves garlic = 9 grams", "USDA SR28 11215", "exact"},
    {"2 cups flour", "fl oz", "us", "2 cups flour = 16 fluid ounces", "NIST", "exact"},
    {"2 of eggs", "g", "us", "2 eggs = 100 grams", "USDA SR28 01123", "exact"},
    /* degrees */
    {"350 F", "F", "us", "350 °F = 350 °F", "", "exact"},
    {"100 C", "F", "us", "100 °C = 212 °F", "", "exact"},
    {"351 F", "C", "us", "351 °F = 177 °C", "", "rounded to the nearest 1°"},
    {"100-101 C", "F", "us", "100 to 101 °C = 212 to 214 °F", "", "rounded to the nearest 1°"},
    {"99-100 C", "F", "us", "99 to 100 °C = 210 to 212 °F", "", "rounded to the nearest 1°"},
    {"gas mark 4", "C fan", "uk", "gas mark 4 = 157 °C fan", "NSW Health",
     "rounded to the nearest 1°"},
    {"4 gas mark", "F fan", "uk", "gas mark 4 = 314 °F fan", "NSW Health", "exact"},
    {"350 F fan", "F", "us", "350 °F fan = 386 °F", "NSW Health", "exact"},
};

static void test_lines(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct calculation c;
        const struct profile *profile =
            profile_find(&o->kitchen->units, text_from(cases[i].kitchen));
        const struct asked asked = {o->kitchen, &o->arena, profile, &o->problems};
        if (!calculate(&asked, text_from(cases[i].input), text_from(cases[i].to), &c))
            fail_msg("%s: %s", cases[i].input, o->problems.at[o->problems.count - 1].message);
        assert_string_equal(open_string(o, c.line), cases[i].line);
        if (!text_starts(c.source, cases[i].source))
            fail_msg("%s: source %.*s", cases[i].input, TEXT(c.source));
        if (cases[i].rounding && !text_is(c.rounding, cases[i].rounding))
            fail_msg("%s: %.*s", cases[i].input, TEXT(c.rounding));
    }
}

static void test_mistakes(void **state)
{
    static const char *const wrong[][3] = {
        {"1e300 cups", "ml", "does not begin with a number"},
        {"-2 cups flour", "gram", "does not begin with a number"},
        {"flour", "gram", "does not begin with a number"},
        {"", "gram", "does not begin with a number"},
        {"1/0 cups", "ml", "does not begin with a number"},
        {"99999999999999999999 cups", "ml", "does not begin with a number"},
        {"900000000000000000 gallons", "ml", "beyond what can be worked out"},
        {"3-2 cups", "ml", "the second number is the smaller one"},
        {"2 cups flour", "firkin", "the unit \"firkin\" is not known"},
        {"2 cups", "gram", "depends on the food"},
        {"2 cups moon dust", "gram", "no published weight found for moon dust"},
        {"1 cup panko", "gram", "by volume weighs differently"},
        {"gas mark 77", "F", "no such gas mark"},
        {"gas mark 4-77", "F", "no such gas mark"},
        {"2 inches ginger", "gram", "no published weight found for ginger by the inch"},
        {"2 hours", "cup", "depends on the food"},
        {"200 C", "grams", "a temperature is measured in F, C or gas mark"},
        {"4 gas mark fan", "C", "a gas oven's mark is not one of a fan oven"},
        {"200 C", "gas mark fan", "a gas oven's mark is not one of a fan oven"},
        {"2.3.4 cups", "ml", "does not begin with a number"},
        {"2/3/4 cups", "ml", "does not begin with a number"},
        {"1½2 cups", "ml", "does not begin with a number"},
        {"2 cups 3 flour", "g", "no published weight found for 3 flour"},
        {"3 - 2 cups", "ml", "the second number is the smaller one"},
        {"30 c", "firkin", "the unit \"firkin\" is not known"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        struct problems p = {0};
        struct calculation c = {.line = TEXT_OF("untouched")};
        const struct asked asked = {o->kitchen, &o->arena, NULL, &p};
        assert_false(calculate(&asked, text_from(wrong[i][0]), text_from(wrong[i][1]), &c));
        assert_int_equal(p.errors, 1);
        if (!strstr(p.at[0].message, wrong[i][2]))
            fail_msg("%s: %s", wrong[i][0], p.at[0].message);
        assert_true(text_is(c.line, "untouched"));
        problems_release(&p);
    }
}

/* Any bytes: an answer or a problem, never both, never a not-a-number. */
static void test_any_bytes(void **state)
{
    static const char *const bits[] = {"1",    "½", " ",          "/",     "0",       "cups",
                                       "-",    "e", ".",          "flour", "–",       "of",
                                       "\xff", "g", "9999999999", "F",     "gas mark"};
    struct open_kitchen *o = *state;
    uint32_t seed = 7;
    for (size_t n = 0; n < 20000; n++) {
        struct text input = TEXT_EMPTY;
        struct problems p = {0};
        struct calculation c;
        for (size_t i = seed % 9; i > 0; i--) {
            seed = seed * 1664525u + 1013904223u;
            input = arena_format(&o->arena, "%.*s%s", TEXT(input), bits[(seed >> 9) % 17]);
        }
        seed = seed * 1664525u + 1013904223u;
        const struct asked asked = {o->kitchen, &o->arena, NULL, &p};
        bool good = calculate(&asked, input, text_from(bits[(seed >> 9) % 17]), &c);
        assert_true(good == (p.errors == 0));
        if (good)
            assert_null(strstr(open_string(o, c.line), "nan"));
        problems_release(&p);
        arena_reset(&o->arena);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_lines, open_reset),
        cmocka_unit_test_teardown(test_mistakes, open_reset),
        cmocka_unit_test_teardown(test_any_bytes, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
