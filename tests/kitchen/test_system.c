/* tests/kitchen/test_system.c: amounts in the other system. Weights: USDA SR28; volumes: NIST,
 * Cooking Measurement
 * Equivalencies (1 cup 240 mL).
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/measure.h"
#include "kitchen/system.h"

static void test_lines(void **state)
{
    static const struct {
        const char *amount, *unit, *food;
        enum system system;
        const char *written; /* empty: as it was said */
    } cases[] = {
        {"2", "cup", "flour", SYSTEM_METRIC, "250 grams"},
        {"1", "cup", "milk", SYSTEM_METRIC, "240 milliliters"},
        {"1/3", "cup", "olive oil", SYSTEM_METRIC, "80 milliliters"},
        {"2", "tablespoon", "butter", SYSTEM_METRIC, "28 grams"},
        {"1", "teaspoon", "salt", SYSTEM_METRIC, ""},
        {"2", "tablespoon", "olive oil", SYSTEM_METRIC, ""},
        {"1", "pound", "venison", SYSTEM_METRIC, "454 grams"},
        {"3", "", "egg", SYSTEM_METRIC, ""},
        {"1", "cup", "moon dust", SYSTEM_METRIC, ""},
        {"200", "gram", "flour", SYSTEM_METRIC, ""},
        {"250", "gram", "flour", SYSTEM_US, "2 cups"},
        {"100", "gram", "granulated sugar", SYSTEM_US, "½ cup"},
        {"500", "gram", "venison", SYSTEM_US, "1 pound plus 1¾ ounces"},
        {"1", "kilogram", "potato", SYSTEM_US, "2 pounds plus 3¼ ounces"},
        {"240", "milliliter", "milk", SYSTEM_US, "1 cup"},
        {"2", "cup", "flour", SYSTEM_US, ""},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct text source;
        struct ingredient line = {.food = text_from(cases[i].food),
                                  .amount =
                                      open_amount(cases[i].amount, cases[i].amount, cases[i].unit)};
        struct amount a =
            amount_in_system(o->kitchen, &o->arena, NULL, &line, cases[i].system, &source);
        assert_int_equal(a.known, *cases[i].written != 0);
        assert_int_equal(source.length > 0, a.known);
        assert_string_equal(open_string(o, print_measurable(o->kitchen, &o->arena, NULL, &a, NULL)),
                            cases[i].written);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test_teardown(test_lines, open_reset)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
