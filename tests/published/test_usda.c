/* tests/published/test_usda.c: every USDA SR28 row of food-weights.tsv through the kitchen: the
 * food by its name, said in the row's form and measure, weighs what USDA's own words in the row say
 * (usda_grams / usda_amount).
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include <math.h>

#include "kitchen/weight.h"

static void test_rows(void **state)
{
    struct open_kitchen *o = *state;
    const struct foods *f = &o->kitchen->foods;
    size_t rows = 0, inside = 0, by_hand = 0;
    for (size_t i = 0; i < f->all.count; i++)
        for (size_t j = 0; j < f->all.at[i].rows.count; j++) {
            const struct food_row *row = &f->all.at[i].rows.at[j];
            if (row->use == USE_NEVER || ref_text(row->source).length)
                continue;
            double usda = strtod(open_string(o, ref_text(row->usda_grams)), NULL);
            usda /= strtod(open_string(o, ref_text(row->usda_amount)), NULL);
            if (fabs(usda - ratio_double(row->grams)) > 0.0051) {
                /* USDA's words hold another number: "1 serving 1/2 cup", "1/2 breast". */
                by_hand++;
                usda = ratio_double(row->grams);
            }
            struct ingredient line = {.food = f->all.at[i].name};
            *LIST_ADD(&o->arena, &line.prep) = ref_text(row->form);
            struct measured m = weigh_one(o->kitchen, &o->arena, NULL, &line, row->measure);
            rows++;
            inside += m.known && ratio_double(m.min) <= usda + 0.0051
                      && ratio_double(m.max) >= usda - 0.0051;
            arena_reset(&o->arena);
        }
    print_message("figure: %zu of %zu USDA rows are found again by food, form and measure\n",
                  inside, rows);
    assert_true(by_hand <= 10); /* of the 1,683 rows 1,673 are plain divisions */
    assert_true(rows > 1600);
    assert_true(inside * 100 >= rows * 97);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test_teardown(test_rows, open_reset)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
