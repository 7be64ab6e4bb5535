/* tests/kitchen/test_print.c: how amounts are written (common practice,
 * no source), conversion and rounding.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include <math.h>

#include "kitchen/convert.h"

static void test_numbers(void **state)
{
    static const struct {
        const char *number;
        bool decimal;
        const char *written;
    } cases[] = {
        {"1/2", false, "½"},        {"3/2", false, "1½"},        {"1/3", false, "⅓"},
        {"11/4", false, "2¾"},      {"1/8", false, "⅛"},         {"2", false, "2"},
        {"0", false, "0"},          {"0.35", false, "0.35"},     {"3/2", true, "1.5"},
        {"1/3", true, "0.3333"},    {"1000.25", false, "1000¼"}, {"0.0000321", true, "0.0000321"},
        {"13/16", false, "0.8125"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
        assert_string_equal(
            open_string(o, print_number(&o->arena, open_ratio(cases[i].number), cases[i].decimal)),
            cases[i].written);
    assert_int_equal(print_number(&o->arena, RATIO_NONE, false).length, 0);
}

static void test_amounts(void **state)
{
    static const struct {
        const char *min, *max, *unit;
        bool approx;
        const char *whole, *brief;
    } cases[] = {
        {"3/2", "3/2", "cup", false, "1½ cups", "1½ cups"},
        {"2", "3", "tablespoon", false, "2 to 3 tablespoons", "2 to 3 Tbsp"},
        {"1/2", "1/2", "teaspoon", false, "½ teaspoon", "½ tsp"},
        {"200", "200", "gram", true, "about 200 grams", "about 200 g"},
        {"1.5", "1.5", "kilogram", false, "1.5 kilograms", "1.5 kg"},
        {"3", "3", "", false, "3", "3"},
        {"2", "2", "leaf", false, "2 leaves", "2 leaves"},
        {"3", "3", "fluid-ounce", false, "3 fluid ounces", "3 fl oz"},
        {"2", "2", "glug of an unlisted kind", false, "2 glug of an unlisted kind",
         "2 glug of an unlisted kind"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct amount a = open_amount(cases[i].min, cases[i].max, cases[i].unit);
        a.approx = cases[i].approx;
        assert_string_equal(open_string(o, print_amount(o->kitchen, &o->arena, &a, WORDS_WHOLE)),
                            cases[i].whole);
        assert_string_equal(open_string(o, print_amount(o->kitchen, &o->arena, &a, WORDS_BRIEF)),
                            cases[i].brief);
    }
    struct amount open_ended = open_amount("2", "2", "cup");
    open_ended.max = RATIO_UPWARDS;
    assert_string_equal(
        open_string(o, print_amount(o->kitchen, &o->arena, &open_ended, WORDS_WHOLE)),
        "at least 2 cups");
}

static void test_times(void **state)
{
    static const struct {
        double min, max;
        const char *written;
    } cases[] = {
        {300, 300, "5 minutes"},
        {1500, 1800, "25 to 30 minutes"},
        {5400, 5400, "1 hour 30 minutes"},
        {3600, 5400, "1 to 1½ hours"},
        {60, 60, "1 minute"},
        {90, 120, "1½ to 2 minutes"},
        {28800, 43200, "8 to 12 hours"},
        {0, 0, "0 seconds"},
        {45, 45, "45 seconds"},
        {7200, INFINITY, "at least 2 hours"},
        {86400, 86400, "1 day"},
        {30000, 44400, "8 hours 20 minutes to 12 hours 20 minutes"},
        {5700, 6000, "1 hour 35 minutes to 1 hour 40 minutes"},
        {9790, 10390, "2 hours 43 minutes 10 seconds to 2 hours 53 minutes 10 seconds"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
        assert_string_equal(open_string(o, print_time(o->kitchen, &o->arena, cases[i].min,
                                                      cases[i].max, WORDS_WHOLE)),
                            cases[i].written);
}

/* Nobody plans a dinner by half minutes; what is short keeps its seconds. */
static void test_sums_of_times(void **state)
{
    static const struct {
        double min, max;
        const char *written;
    } cases[] = {
        {2130, 2190, "36 to 37 minutes"},
        {9790, 10390, "2 hours 44 minutes to 2 hours 54 minutes"},
        {150, 150, "2 minutes 30 seconds"},
        {30, 45, "30 to 45 seconds"},
        {630, INFINITY, "at least 11 minutes"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct time_sum sum = {.known = true, .min = cases[i].min, .max = cases[i].max};
        assert_string_equal(open_string(o, print_sum_of_times(o->kitchen, &o->arena, &sum)),
                            cases[i].written);
    }
}

/* "2 tablespoons of paprika is 14 g, not 13.6077." */
static void test_figures(void **state)
{
    static const char *const cases[][2] = {
        {"13.6077", "14"}, {"4.6", "4.6"},    {"453.59237", "454"}, {"1077.28", "1080"},
        {"99.6", "100"},   {"0.375", "0.38"}, {"0", "0"},           {"236.588", "237"},
        {"100", "100"},    {"1.25", "1.3"}};
    (void) state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        int figures;
        assert_true(
            ratio_equal(round_figures(open_ratio(cases[i][0]), &figures), open_ratio(cases[i][1])));
    }
}

static void test_ovens(void **state)
{
    struct open_kitchen *o = *state;
    int step;
    static const char *const cases[][2] = {
        {"350", "175"}, {"400", "205"}, {"425", "220"}, {"450", "230"}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases;
         i++) { /* common practice: 350°F (175°C), to the nearest 5 */
        struct ratio celsius = convert_degrees(o->kitchen, open_ratio(cases[i][0]), 'F', 'C');
        assert_true(ratio_equal(round_degrees(celsius, 'C', true, &step), open_ratio(cases[i][1])));
        assert_int_equal(step, 5);
    }
    struct ratio f = convert_degrees(o->kitchen, RATIO(180), 'C', 'F');
    assert_true(ratio_equal(f, RATIO(356)));
    assert_true(ratio_equal(round_degrees(f, 'F', true, &step), RATIO(350)));
    assert_true(ratio_equal(convert_degrees(o->kitchen, RATIO(180), 'C', 'G'), RATIO(4)));
    assert_false(ratio_known(convert_degrees(o->kitchen, RATIO(165), 'F', 'G')));
    assert_false(ratio_known(convert_degrees(o->kitchen, RATIO(77), 'G', 'F')));
    assert_true(ratio_equal(degrees_for_fan(RATIO(180), 'C'), RATIO(160)));
    assert_true(
        ratio_equal(degrees_without_fan(degrees_for_fan(RATIO(350), 'F'), 'F'), RATIO(350)));
}

/* Every unit to every other of its dimension and back is exact, for a third of it too. */
static void test_there_and_back(void **state)
{
    struct open_kitchen *o = *state;
    const struct units *u = &o->kitchen->units;
    struct ratio n = ratio_make(7, 3);
    size_t pairs = 0;
    for (size_t i = 0; i < u->all.count; i++)
        for (size_t j = 0; j < u->all.count; j++) {
            const struct unit *a = &u->all.at[i], *b = &u->all.at[j];
            struct ratio there = convert_number(n, a, b);
            if (!ratio_finite(there)) {
                assert_true(a->dimension != b->dimension || !ratio_finite(a->factor)
                            || !ratio_finite(b->factor));
                continue;
            }
            assert_true(ratio_equal(convert_number(there, b, a), n));
            pairs++;
        }
    assert_true(pairs > 3000);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_numbers, open_reset),
        cmocka_unit_test_teardown(test_amounts, open_reset),
        cmocka_unit_test_teardown(test_times, open_reset),
        cmocka_unit_test_teardown(test_sums_of_times, open_reset),
        cmocka_unit_test(test_figures),
        cmocka_unit_test(test_ovens),
        cmocka_unit_test(test_there_and_back),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
