/* tests/published/test_nist.c: sizes of units against NIST SP 811 (2008), Appendix B.8, factors to
 * seven figures (quoted from memory), and the household equivalents of NIST's Cooking Measurement
 * Equivalencies (text seen at
 * nist.gov/pml/owm/cooking-measurement-equivalencies) against kitchen-metric.tsv.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

static const struct {
    const char *unit;
    double factor; /* mL, g or cm; SP 811 gives m3, kg and m */
} sp811[] = {
    {"cup", 236.5882},
    {"fluid-ounce", 29.57353},
    {"gallon", 3785.412},
    {"pint", 473.1765},
    {"quart", 946.3529},
    {"tablespoon", 14.78676},
    {"teaspoon", 4.928922},
    {"gill", 118.2941},
    {"dry-pint", 550.6105},
    {"dry-quart", 1101.221},
    {"cubic-inch", 16.38706},
    {"imperial-gallon", 4546.09},
    {"imperial-fluid-ounce", 28.41306},
    {"imperial-gill", 142.0653},
    {"ounce", 28.34952},
    {"pound", 453.5924},
    {"grain", 0.06479891},
    {"inch", 2.54},
    {"foot", 30.48},
    {"liter", 1000},
};

static void test_factors(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof sp811 / sizeof *sp811; i++) {
        const struct unit *unit = unit_find(&o->kitchen->units, text_from(sp811[i].unit));
        assert_non_null(unit);
        char ours[40], theirs[40];
        snprintf(ours, sizeof ours, "%.7g", ratio_double(unit->factor));
        snprintf(theirs, sizeof theirs, "%.7g", sp811[i].factor);
        assert_string_equal(ours, theirs);
    }
}

/* By definition, exactly: NIST Handbook 44, Appendix C. */
static void test_definitions(void **state)
{
    static const struct {
        const char *many, *one;
        int64_t count;
    } cases[] = {{"tablespoon", "teaspoon", 3}, {"fluid-ounce", "tablespoon", 2},
                 {"cup", "fluid-ounce", 8},     {"pint", "cup", 2},
                 {"quart", "pint", 2},          {"gallon", "quart", 4},
                 {"gallon", "cubic-inch", 231}, {"pound", "ounce", 16},
                 {"dry-quart", "dry-pint", 2},  {"imperial-gallon", "imperial-fluid-ounce", 160},
                 {"stone", "pound", 14},        {"pound", "grain", 7000},
                 {"ounce", "dram", 16},         {"foot", "inch", 12}};
    struct open_kitchen *o = *state;
    const struct units *u = &o->kitchen->units;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct ratio n = ratio_divide(unit_find(u, text_from(cases[i].many))->factor,
                                      unit_find(u, text_from(cases[i].one))->factor);
        assert_true(ratio_equal(n, RATIO(cases[i].count)));
    }
}

/* NIST's kitchen equivalents: 5 mL, 15 mL, 30 mL, 240 mL, 480 mL, 950 mL; 28 g, 454 g. */
static void test_household(void **state)
{
    static const char *const cases[][2] = {
        {"teaspoon", "5"}, {"tablespoon", "15"}, {"fluid-ounce", "30"}, {"cup", "240"},
        {"pint", "480"},   {"quart", "950"},     {"ounce", "28"},       {"pound", "454"}};
    struct open_kitchen *o = *state;
    const struct table *t = pack_table(o->pack, "kitchen-metric");
    size_t found = 0;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
        for (size_t row = 0; row < t->rows; row++)
            if (text_is(table_cell(t, row, table_column(t, "unit")), cases[i][0])) {
                assert_string_equal(open_string(o, table_cell(t, row, table_column(t, "amount"))),
                                    cases[i][1]);
                found++;
            }
    assert_int_equal(found, 8);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_factors),
        cmocka_unit_test(test_definitions),
        cmocka_unit_test_teardown(test_household, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
