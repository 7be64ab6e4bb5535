/* tests/kitchen/test_calculate.c: lines of kitchen arithmetic. Weights: USDA SR28, by record
 * number; sizes of units: NIST
 * Handbook 44, Appendix C; temperatures: by definition.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/calculate.h"

struct sum_case {
    const char *input, *to, *kitchen, *line, *source;
};

static const struct sum_case cases[] = {
    {"2 cups flour", "gram", "us", "2 cups flour = 250 grams", "USDA SR28 20081: Wheat flour"},
    {"2 cups of flour", "g", "us", "2 cups flour = 250 grams", "USDA SR28 20081"},
    {"2 tablespoons paprika", "gram", "us", "2 tablespoons paprika = 14 grams", "USDA SR28 02028"},
    {"500 g flour", "cup", "us", "500 grams flour = 4 cups", "USDA SR28 20081"},
    {"3 eggs", "gram", "us", "3 eggs = 150 grams", "USDA SR28 01123"},
    {"1 dozen eggs", "gram", "us", "1 dozen eggs = 600 grams", "USDA SR28 01123"},
    {"1 cup", "ml", "us", "1 cup = 237 milliliters", "NIST Handbook 44"},
    {"1 cup", "ml", "au", "1 cup = 250 milliliters", ""},
    {"1 tablespoon", "teaspoon", "au", "1 tablespoon = 4 teaspoons", ""},
    {"1 pint", "ml", "uk", "1 pint = 568 milliliters", "UK SI 1995/1804"},
    {"1/3 cup", "tablespoon", "us", "⅓ cup = 5⅓ tablespoons", "NIST Handbook 44"},
    {"1½ cups", "tablespoon", "us", "1½ cups = 24 tablespoons", "NIST Handbook 44"},
    {"1 1/2 pounds", "gram", "us", "1½ pounds = 680 grams", "NIST Handbook 44"},
    {"2-3 tbsp butter", "gram", "us", "2 to 3 tablespoons butter = 28 to 43 grams",
     "USDA SR28 01001"},
    {"8 fl oz milk", "cup", "us", "8 fluid ounces milk = 1 cup", "NIST Handbook 44"},
    {"1 cup milk", "g", "us", "1 cup milk = 244 grams", "USDA SR28 01077"},
    {"350 F", "C", "us", "350 °F = 177 °C", ""},
    {"180 C", "F", "uk", "180 °C = 356 °F", ""},
    {"gas mark 4", "F", "uk", "gas mark 4 = 350 °F", ""},
    {"400 F", "gas mark", "uk", "400 °F = gas mark 6", ""},
    {"350-375 F", "C", "us", "350 to 375 °F = 177 to 191 °C", ""}, /* (F - 32) * 5 / 9 */
    {"180–200 C", "", "uk", "180 to 200 °C = 356 to 392 °F", ""},
    {"gas mark 4-5", "F", "uk", "gas mark 4 to 5 = 350 to 375 °F", ""},
    {"350-350 F", "C", "us", "350 °F = 177 °C", ""},
    {"160-180 C fan", "", "uk", "160 to 180 °C fan = 180 to 200 °C", "NSW Health"},
    {"350 F", "", "us", "350 °F = 177 °C", ""},
    {"180 C", "", "uk", "180 °C = 356 °F", ""},
    {"gas mark 4", "", "uk", "gas mark 4 = 177 °C", ""},
    {"2 c", "", "us", "2 cups = 2 cups", ""},
    {"180 C fan", "", "uk", "180 °C fan = 200 °C", "NSW Health"},
    {"180 C in a fan oven", "F", "us", "180 °C fan = 392 °F", "NSW Health"},
    {"200 C", "C fan", "uk", "200 °C = 180 °C fan", "NSW Health"},
    {"400 F", "C fan", "us", "400 °F = 184 °C fan", "NSW Health"},
    {"180 C fan", "C fan", "uk", "180 °C fan = 180 °C fan", "NSW Health"},
    {"20 oz", "", "us", "20 ounces = 1¼ pounds", ""},
    {"12 tsp", "", "us", "12 teaspoons = ¼ cup", ""},
    {"1/2 c sugar", "gram", "us", "½ cup sugar = 100 grams", "USDA SR28 19335"},
};

static void test_lines(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct calculation c;
        const struct profile *profile =
            profile_find(&o->kitchen->units, text_from(cases[i].kitchen));
        if (!calculate(o->kitchen, &o->arena, profile, text_from(cases[i].input),
                       text_from(cases[i].to), &c, &o->problems))
            fail_msg("%s: %s", cases[i].input, o->problems.at[o->problems.count - 1].message);
        assert_string_equal(open_string(o, c.line), cases[i].line);
        if (!text_starts(c.source, cases[i].source))
            fail_msg("%s: source %.*s", cases[i].input, TEXT(c.source));
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
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        struct problems p = {0};
        struct calculation c = {.line = TEXT_OF("untouched")};
        assert_false(calculate(o->kitchen, &o->arena, NULL, text_from(wrong[i][0]),
                               text_from(wrong[i][1]), &c, &p));
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
        bool good = calculate(o->kitchen, &o->arena, NULL, input, text_from(bits[(seed >> 9) % 17]),
                              &c, &p);
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
