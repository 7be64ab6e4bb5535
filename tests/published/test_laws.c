/* tests/published/test_laws.c: the legal lists of allergens and the published safe temperatures,
 * typed here from the sources and compared with the tables. 21 USC 321(qq) as amended by the FASTER
 * Act 2021; Regulation (EU) No 1169/2011,
 * Annex II; FoodSafety.gov, Cook to a Safe Minimum Internal Temperature.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

static const char *const us_nine[] = {"milk",      "egg",   "fish",    "Crustacean shellfish",
                                      "tree nuts", "wheat", "peanuts", "soybeans",
                                      "sesame"};
static const char *const eu_fourteen[] = {"cereals containing gluten",
                                          "crustaceans",
                                          "eggs",
                                          "fish",
                                          "peanuts",
                                          "soybeans",
                                          "milk",
                                          "nuts",
                                          "celery",
                                          "mustard",
                                          "sesame seeds",
                                          "sulphur dioxide and sulphites",
                                          "lupin",
                                          "molluscs"};

static size_t count_law(const struct table *t, const char *law)
{
    size_t n = 0;
    for (size_t row = 0; row < t->rows; row++)
        n += text_is(table_cell(t, row, table_column(t, "law")), law);
    return n;
}

static bool has_row(const struct table *t, const char *law, const char *name)
{
    for (size_t row = 0; row < t->rows; row++)
        if (text_is(table_cell(t, row, table_column(t, "law")), law)
            && text_is(table_cell(t, row, table_column(t, "name")), name))
            return true;
    return false;
}

static void test_lists(void **state)
{
    struct open_kitchen *o = *state;
    const struct table *t = pack_table(o->pack, "allergen-laws");
    assert_int_equal(count_law(t, "US"), 9);
    assert_int_equal(count_law(t, "EU"), 14);
    for (size_t i = 0; i < 9; i++)
        assert_true(has_row(t, "US", us_nine[i]));
    for (size_t i = 0; i < 14; i++)
        assert_true(has_row(t, "EU", eu_fourteen[i]));
}

/* Every word in the table of foods is one of a law's, so that none is lost or misspelt. */
static void test_foods_use_the_lists(void **state)
{
    static const char *const us[] = {"milk",      "egg",   "fish",    "crustacean shellfish",
                                     "tree nuts", "wheat", "peanuts", "soybeans",
                                     "sesame"};
    static const char *const eu[] = {"gluten",   "crustaceans", "eggs",  "fish",    "peanuts",
                                     "soybeans", "milk",        "nuts",  "celery",  "mustard",
                                     "sesame",   "sulphites",   "lupin", "molluscs"};
    static const char *const heads[] = {"us", "eu", "us_check", "eu_check"};
    struct open_kitchen *o = *state;
    const struct table *t = pack_table(o->pack, "allergens");
    size_t words = 0;
    for (size_t row = 0; row < t->rows; row++)
        for (size_t h = 0; h < 4; h++) {
            struct text rest = table_cell(t, row, table_column(t, heads[h])), part;
            while (rest.length && text_part(&rest, ';', &part)) {
                struct text word =
                    text_trim(text_slice(text_trim(part), 0, text_find(text_trim(part), '(', 0)));
                bool known = false;
                for (size_t i = 0; i < (h % 2 ? 14u : 9u); i++)
                    known |= text_is(word, h % 2 ? eu[i] : us[i]);
                if (!known)
                    fail_msg("%.*s: \"%.*s\" is in no law", TEXT(table_cell(t, row, 0)),
                             TEXT(word));
                words++;
            }
        }
    assert_true(words > 500);
}

/* Row, °F; FoodSafety.gov's chart. */
static void test_temperatures(void **state)
{
    static const char *const chart[][2] = {
        {"S001", "145"}, {"S002", "145"}, {"S003", "145"}, {"S004", "145"}, {"S007", "160"},
        {"S008", "160"}, {"S009", "160"}, {"S010", "160"}, {"S012", "165"}, {"S013", "165"},
        {"S014", "165"}, {"S015", "165"}, {"S016", "165"}, {"S017", "165"}, {"S018", "145"},
        {"S022", "160"}, {"S024", "145"}, {"S027", "165"}, {"S028", "165"}};
    struct open_kitchen *o = *state;
    const struct table *t = pack_table(o->pack, "safe-temperatures");
    size_t found = 0;
    for (size_t i = 0; i < sizeof chart / sizeof *chart; i++)
        for (size_t row = 0; row < t->rows; row++)
            if (text_is(table_cell(t, row, 0), chart[i][0])) {
                assert_string_equal(open_string(o, table_cell(t, row, table_column(t, "temp_f"))),
                                    chart[i][1]);
                found++;
            }
    assert_int_equal(found, sizeof chart / sizeof *chart);
}

/* Celsius in the table is (F - 32) * 5/9 to a tenth, in every row. */
static void test_celsius(void **state)
{
    struct open_kitchen *o = *state;
    const struct table *t = pack_table(o->pack, "safe-temperatures");
    for (size_t row = 0; row < t->rows; row++) {
        struct text f = table_cell(t, row, table_column(t, "temp_f")),
                    c = table_cell(t, row, table_column(t, "temp_c"));
        if (!f.length)
            continue;
        double off =
            (strtod(open_string(o, f), NULL) - 32) * 5 / 9 - strtod(open_string(o, c), NULL);
        assert_true(off < 0.051 && off > -0.051);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_lists, open_reset),
        cmocka_unit_test_teardown(test_foods_use_the_lists, open_reset),
        cmocka_unit_test_teardown(test_temperatures, open_reset),
        cmocka_unit_test_teardown(test_celsius, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
