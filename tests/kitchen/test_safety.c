/* tests/kitchen/test_safety.c: allergens, cautions and the nutrition estimate of a dish.
 * Allergen lists: 21 USC 321(qq) and Regulation (EU) No 1169/2011, Annex II. Form of the line:
 * common practice, no source. Temperatures: USDA FSIS and FoodSafety.gov, by row of
 * safe-temperatures.tsv. Nutrients: USDA SR28 records, multiplied by hand.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include <math.h>
#include <stdlib.h>

#include "kitchen/nutrition.h"
#include "kitchen/weight.h"

static struct ingredient *add(struct open_kitchen *o, struct dish *d, const char *food)
{
    struct ingredient *line = LIST_ADD(&o->arena, &d->ingredients);
    line->id = d->ingredients.count * 10;
    line->food = text_from(food);
    return line;
}

static void act(struct open_kitchen *o, struct dish *d, const char *action)
{
    struct step *step = LIST_ADD(&o->arena, &d->steps);
    *LIST_ADD(&o->arena, &step->actions) = text_from(action);
}

static const char *contains(struct open_kitchen *o, struct dish *d, unsigned laws)
{
    find_allergens(o->kitchen, &o->arena, d, NULL);
    return open_string(o, print_contains(o->kitchen, &o->arena, d, laws));
}

static void test_contains(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    add(o, &d, "whole milk");
    add(o, &d, "plain flour");
    add(o, &d, "egg");
    add(o, &d, "anchovy");
    add(o, &d, "almond");
    add(o, &d, "celery");
    assert_string_equal(contains(o, &d, LAW_US),
                        "Contains: milk, wheat, eggs, fish (anchovy), tree nuts (almond)");
    assert_string_equal(contains(o, &d, LAW_EU),
                        "Contains: milk, wheat, eggs, fish (anchovy), tree nuts (almond), celery");
    assert_string_equal(open_string(o, d.allergens.at[0].law), "US and EU");
    assert_string_equal(open_string(o, d.allergens.at[d.allergens.count - 1].law), "EU");
    assert_int_equal(d.allergens.at[0].because.at[0], 10);
}

/* "Butter or cream": one line, named once, though both of its foods are milk. */
static void test_one_line_is_named_once(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    struct ingredient *line = add(o, &d, "butter");
    *LIST_ADD(&o->arena, &line->alternatives) = TEXT_OF("double cream");
    find_allergens(o->kitchen, &o->arena, &d, NULL);
    assert_int_equal(d.allergens.count, 1);
    assert_int_equal(d.allergens.at[0].because.count, 1);
}

/* Each allergen of both laws is found by a food of its name, under the law that lists it. */
static void test_laws(void **state)
{
    static const struct {
        const char *food, *shown, *law;
    } cases[] = {
        {"butter", "milk", "US and EU"},
        {"egg yolk", "eggs", "US and EU"},
        {"cod", "fish (cod)", "US and EU"},
        {"shrimp", "crustacean shellfish (shrimp)", "US and EU"},
        {"walnut", "tree nuts (walnut)", "US and EU"},
        {"pine nut", "tree nuts (pine nut)", "US"},
        {"peanut butter", "peanuts", "US and EU"},
        {"firm tofu", "soybeans", "US and EU"},
        {"tahini", "sesame", "US and EU"},
        {"bread flour", "wheat", "US and EU"},
        {"rye flour", "gluten (rye)", "EU"},
        {"pearl barley", "gluten (barley)", "EU"},
        {"celery root", "celery", "EU"},
        {"dijon mustard", "mustard", "EU"},
        {"white wine", "sulphites", "EU"},
        {"lupin flour", "lupin", "EU"},
        {"mussel", "molluscs (mussel)", "EU"},
        {"double cream", "milk", "US and EU"},
        {"oat", "gluten (oats)", "EU"},
        {"aburaage", "soybeans", "US and EU"},
        {"salted egg", "eggs", "US and EU"},
        {"cashew paste", "tree nuts (cashew)", "US and EU"},
        {"anchovy stock", "fish (anchovy stock)", "US and EU"},
        {"dried scallop", "molluscs (dried scallop)", "EU"},
        {"lassi", "milk", "US and EU"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct dish d = {.id = 1};
        add(o, &d, cases[i].food);
        find_allergens(o->kitchen, &o->arena, &d, NULL);
        if (!d.allergens.count)
            fail_msg("%s: nothing found", cases[i].food);
        assert_string_equal(open_string(o, d.allergens.at[0].name), cases[i].shown);
        assert_string_equal(open_string(o, d.allergens.at[0].law), cases[i].law);
        assert_false(d.allergens.at[0].check_label);
    }
}

/* The law wants the kinds of fish and nuts named (21 USC 343(w)(2), from memory): one list of each.
 */
static void test_kinds_stand_together(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    add(o, &d, "cod");
    add(o, &d, "walnut");
    add(o, &d, "haddock");
    add(o, &d, "almond");
    assert_string_equal(contains(o, &d, LAW_US),
                        "Contains: fish (cod, haddock), tree nuts (walnut, almond)");
}

/* common practice: what a food is the sort of counts, though the lexicon lists only the plain one.
 */
static void test_sorts(void **state)
{
    static const struct {
        const char *food, *listed, *contains;
    } cases[] = {
        {"walnut mayonnaise", "mayonnaise", "Contains: eggs, tree nuts (walnut)"},
        {"prawn ice cream", "ice cream", "Contains: milk, crustacean shellfish (prawn)"},
        {"plum mayonnaise", "mayonnaise", "Contains: eggs"},
        {"mayonnaise", "mayonnaise", "Contains: eggs"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct dish d = {.id = 1};
        struct ingredient *line = add(o, &d, cases[i].food);
        line->entry = pack_find(o->pack, text_from(cases[i].listed), NULL);
        line->kind = text_from(cases[i].listed);
        assert_non_null(line->entry);
        assert_string_equal(contains(o, &d, LAW_US), cases[i].contains);
    }
}

/* common practice: both foods of an alternative count, a kind is asked about; what is only served
 * beside does not count. */
static void test_alternatives_and_kinds(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    id_list ask = {NULL, 0, 0};
    struct ingredient *line = add(o, &d, "peanut butter");
    *LIST_ADD(&o->arena, &line->alternatives) = TEXT_OF("tahini");
    add(o, &d, "nuts");
    add(o, &d, "stock");
    add(o, &d, "butter")->role = ROLE_SERVE_WITH;
    add(o, &d, "egg")->role = ROLE_GARNISH;
    find_allergens(o->kitchen, &o->arena, &d, &ask);
    assert_string_equal(open_string(o, print_contains(o->kitchen, &o->arena, &d, LAW_US)),
                        "Contains: peanuts, sesame, tree nuts, eggs");
    assert_int_equal(ask.count, 2);
    assert_int_equal(ask.at[0], 20);
    assert_int_equal(ask.at[1], 30);
    bool celery = false;
    for (size_t i = 0; i < d.allergens.count; i++)
        celery |= text_is(d.allergens.at[i].name, "celery") && d.allergens.at[i].check_label;
    assert_true(celery);
    struct dish none = {.id = 2};
    add(o, &none, "moon dust");
    add(o, &none, "cider"); /* weighed as beer, but it is not beer */
    add(o, &none, "gin");   /* weighed as vodka */
    add(o, &none, "marmalade");
    assert_string_equal(contains(o, &none, LAW_US | LAW_EU), "");
}

/* A food that is only weighed as another takes no allergen from it, so it needs a row of its own.
 */
static void test_near_foods_have_rows(void **state)
{
    struct open_kitchen *o = *state;
    const struct kitchen *k = o->kitchen;
    size_t checked = 0, n;
    for (size_t i = 0; i < k->foods.names.rows.count; i++) {
        const struct name_row *row = &k->foods.names.rows.at[i];
        const struct food_name *named = &k->foods.named.at[row->value];
        if (named->fit == FIT_SAME
            || !food_name_in(&k->foods, &k->allergens.names, named->food->name, &n))
            continue;
        const struct allergen_food *food = &k->allergens.foods.at[n];
        if (!ref_text(food->us).length && !ref_text(food->eu).length)
            continue;
        checked++;
        if (!food_name_in(&k->foods, &k->allergens.names, row->name, &n))
            fail_msg("%.*s has no row in allergens.tsv", TEXT(row->name));
    }
    assert_true(checked > 40);
}

/* common practice: no such word may stand in any phrase, caution or note of the language. */
static void test_never_free_from(void **state)
{
    static const char *const never[] = {"free from", "free of",    "may contain", "gluten-free",
                                        "vegan",     "vegetarian", "kosher",      "halal",
                                        "nut-free",  " safe to "};
    static const char *const tables[] = {"kitchen-words", "caution-words", "scaling-notes",
                                         "allergen-names"};
    struct open_kitchen *o = *state;
    size_t cells = 0;
    for (size_t t = 0; t < 4; t++) {
        const struct table *table = pack_table(o->pack, tables[t]);
        assert_non_null(table);
        for (size_t i = 0; i < table->rows * table->columns; i++)
            for (size_t n = 0; n < sizeof never / sizeof *never; n++, cells++)
                if (strstr(open_string(o, ref_text(&table->cells[i])), never[n]))
                    fail_msg("%s.tsv says \"%.*s\"", tables[t], TEXT(ref_text(&table->cells[i])));
    }
    assert_true(cells > 1000);
}

static bool has_caution(const struct dish *d, const char *rule)
{
    for (size_t i = 0; i < d->cautions.count; i++)
        if (text_is(d->cautions.at[i].rule, rule))
            return true;
    return false;
}

static void test_cautions(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    add(o, &d, "chicken thigh");
    add(o, &d, "honey");
    act(o, &d, "roast");
    find_cautions(o->kitchen, &o->arena, &d);
    assert_int_equal(d.cautions.count, 2);
    assert_true(has_caution(&d, "S014") && has_caution(&d, "S090"));
    assert_string_equal(
        open_string(o, d.cautions.at[0].text),
        "Poultry: check the thickest part, away from bone: 165°F (74°C) on a food thermometer. "
        "Follow your local food-safety authority where its advice differs.");
    assert_string_equal(open_string(o, d.cautions.at[0].source),
                        "FoodSafety.gov, Cook to a Safe Minimum Internal Temperature");
    assert_int_equal(d.cautions.at[0].because.at[0], 10);

    struct dish mousse = {.id = 2};
    add(o, &mousse, "egg");
    act(o, &mousse, "whisk");
    find_cautions(o->kitchen, &o->arena, &mousse);
    assert_true(mousse.cautions.count == 1 && has_caution(&mousse, "S086"));
    act(o, &mousse, "bake");
    find_cautions(o->kitchen, &o->arena, &mousse);
    assert_int_equal(mousse.cautions.count, 0);
}

/* With the lexicon's mark alone, for a food that no table lists. */
static void test_marks(void **state)
{
    struct open_kitchen *o = *state;
    struct entry entry = {.marks = MARK_OF(poultry)};
    struct dish d = {.id = 1};
    add(o, &d, "ptarmigan")->entry = &entry;
    act(o, &d, "marinate");
    find_cautions(o->kitchen, &o->arena, &d);
    assert_true(has_caution(&d, "S014") && has_caution(&d, "S075") && has_caution(&d, "S078"));
}

/* A caution says no lower temperature than the row that it names. */
static void test_temperatures_agree(void **state)
{
    struct open_kitchen *o = *state;
    const struct table *words = pack_table(o->pack, "caution-words"),
                       *table = pack_table(o->pack, "safe-temperatures");
    size_t f = table_column(table, "temp_f"), where = table_column(table, "where"), checked = 0;
    for (size_t i = 0; i < words->rows; i++)
        for (size_t j = 0; j < table->rows; j++) {
            const char *sign = strstr(open_string(o, table_cell(words, i, 1)), "°F");
            if (!text_equal(table_cell(words, i, 0), table_cell(table, j, 0)) || !sign)
                continue;
            assert_string_equal(open_string(o, table_cell(table, j, where)), "home");
            assert_int_equal(strtol(sign - 3, NULL, 10),
                             strtol(open_string(o, table_cell(table, j, f)), NULL, 10));
            checked++;
        }
    assert_int_equal(checked, 7);
}

/* USDA SR28: sugar 387 kcal (19335), butter 717 kcal (01001) in 100 g. */
static void test_nutrition(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {
        .id = 1,
        .yield = {.known = true, .min = RATIO(4), .max = RATIO(4), .of = TEXT_OF("serving")}};
    add(o, &d, "granulated sugar")->amount = open_amount("200", "200", "gram");
    add(o, &d, "butter")->amount = open_amount("100", "100", "gram");
    add(o, &d, "salt")->to_taste = true;
    for (size_t i = 0; i < d.ingredients.count; i++)
        d.ingredients.at[i].weight = weigh(o->kitchen, &o->arena, NULL, &d.ingredients.at[i], NULL);
    struct nutrition n = estimate_nutrition(o->kitchen, &o->arena, &d);
    assert_true(n.known && n.share == 1);
    assert_true(fabs(n.of_serving[NUTRIENT_ENERGY] - (774.0 + 717) / 4) < 1e-9);
    assert_true(strstr(open_string(o, n.about), "Estimate for one of 4 servings, from 100 %")
                != NULL);

    add(o, &d, "moon dust")->amount =
        open_amount("1", "1", "cup"); /* a third line, of unknown weight */
    n = estimate_nutrition(o->kitchen, &o->arena, &d);
    assert_false(n.known);
    assert_true(n.share > 0.66 && n.share < 0.67 && isnan(n.of_serving[NUTRIENT_ENERGY]));
    d.yield.of = TEXT_OF("cookie");
    assert_false(estimate_nutrition(o->kitchen, &o->arena, &d).known);
    d.yield.known = false;
    assert_false(estimate_nutrition(o->kitchen, &o->arena, &d).known);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_contains, open_reset),
        cmocka_unit_test_teardown(test_one_line_is_named_once, open_reset),
        cmocka_unit_test_teardown(test_laws, open_reset),
        cmocka_unit_test_teardown(test_kinds_stand_together, open_reset),
        cmocka_unit_test_teardown(test_sorts, open_reset),
        cmocka_unit_test_teardown(test_alternatives_and_kinds, open_reset),
        cmocka_unit_test(test_near_foods_have_rows),
        cmocka_unit_test_teardown(test_never_free_from, open_reset),
        cmocka_unit_test_teardown(test_cautions, open_reset),
        cmocka_unit_test_teardown(test_marks, open_reset),
        cmocka_unit_test_teardown(test_temperatures_agree, open_reset),
        cmocka_unit_test_teardown(test_nutrition, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
