/* kitchen/test_builtin.c: the kitchen that is built in is the one that is made of the pack's
 * tables, and two of it are independent of each other.
 * SPDX-License-Identifier: MIT */
#include "open.h"

static void same_text(struct text a, struct text b)
{
    if (!text_equal(a, b))
        fail_msg("\"%.*s\" is not \"%.*s\"", TEXT(a), TEXT(b));
}

/* Also that each name leads to the same thing. */
static void same_names(const struct names *a, const struct names *b)
{
    assert_int_equal(a->rows.count, b->rows.count);
    assert_true(a->rows.count > 0);
    for (size_t i = 0; i < a->rows.count; i++) {
        size_t value = SIZE_MAX;
        same_text(a->rows.at[i].name, b->rows.at[i].name);
        assert_true(names_find(b, a->rows.at[i].name, &value));
        assert_int_equal(value, a->rows.at[i].value);
    }
}

static void same_unit(const struct unit *a, const struct unit *b)
{
    same_text(a->name, b->name);
    same_text(a->source, b->source);
    same_text(a->one, b->one);
    same_text(a->many, b->many);
    same_text(a->brief, b->brief);
    assert_int_equal(a->dimension, b->dimension);
    assert_memory_equal(&a->factor, &b->factor, sizeof a->factor);
    assert_int_equal(a->metric, b->metric);
}

static void same_row(const struct food_row *a, const struct food_row *b)
{
    same_text(a->form, b->form);
    same_unit(a->measure, b->measure);
    assert_memory_equal(&a->grams, &b->grams, sizeof a->grams);
    assert_int_equal(a->use, b->use);
    same_text(a->usda_amount, b->usda_amount);
    same_text(a->usda_measure, b->usda_measure);
    same_text(a->usda_grams, b->usda_grams);
    same_text(a->source, b->source);
}

static void same_food(const struct food *a, const struct food *b)
{
    same_text(a->name, b->name);
    same_text(a->group, b->group);
    same_text(a->also, b->also);
    same_text(a->usual, b->usual);
    same_text(a->ndb, b->ndb);
    same_text(a->usda, b->usda);
    assert_int_equal(a->liquid, b->liquid);
    assert_int_equal(a->dry, b->dry);
    assert_memory_equal(a->per_100g, b->per_100g, sizeof a->per_100g);
    assert_int_equal(a->rows.count, b->rows.count);
    for (size_t i = 0; i < a->rows.count; i++)
        same_row(&a->rows.at[i], &b->rows.at[i]);
}

static void same_foods(const struct foods *a, const struct foods *b)
{
    assert_int_equal(a->all.count, b->all.count);
    for (size_t i = 0; i < a->all.count; i++)
        same_food(&a->all.at[i], &b->all.at[i]);
    assert_int_equal(a->named.count, b->named.count);
    for (size_t i = 0; i < a->named.count; i++) {
        same_text(a->named.at[i].food->name, b->named.at[i].food->name);
        same_text(a->named.at[i].form, b->named.at[i].form);
        assert_int_equal(a->named.at[i].fit, b->named.at[i].fit);
    }
    same_names(&a->names, &b->names);
    same_names(&a->modifiers, &b->modifiers);
    same_names(&a->forms, &b->forms);
    same_names(&a->parts, &b->parts);
}

static void same_conditions(const condition_list *a, const condition_list *b)
{
    assert_int_equal(a->count, b->count);
    for (size_t i = 0; i < a->count; i++) {
        assert_int_equal(a->at[i].count, b->at[i].count);
        assert_true(a->at[i].grams == b->at[i].grams);
        for (size_t n = 0; n < a->at[i].count; n++) {
            same_text(a->at[i].at[n].word, b->at[i].at[n].word);
            assert_true(a->at[i].at[n].mark == b->at[i].at[n].mark);
        }
    }
}

static void same_titles(const struct titles *a, const struct titles *b)
{
    assert_int_equal(a->foods.count, b->foods.count);
    assert_int_equal(a->rules.count, b->rules.count);
    for (size_t i = 0; i < a->rules.count; i++) {
        same_text(a->rules.at[i].said, b->rules.at[i].said);
        same_conditions(&a->rules.at[i].foods, &b->rules.at[i].foods);
        same_conditions(&a->rules.at[i].actions, &b->rules.at[i].actions);
        for (size_t n = 0; n <= TITLE_FOODS; n++)
            same_text(a->rules.at[i].titles[n], b->rules.at[i].titles[n]);
    }
}

static void same_kitchen(const struct kitchen *a, const struct kitchen *b)
{
    assert_int_equal(a->units.all.count, b->units.all.count);
    for (size_t i = 0; i < a->units.all.count; i++)
        same_unit(&a->units.all.at[i], &b->units.all.at[i]);
    same_names(&a->units.names, &b->units.names);
    same_names(&a->units.words, &b->units.words);
    same_foods(&a->foods, &b->foods);
    same_names(&a->aisles.by_food, &b->aisles.by_food);
    same_names(&a->allergens.names, &b->allergens.names);
    assert_int_equal(a->cautions.rules.count, b->cautions.rules.count);
    same_titles(&a->titles, &b->titles);
    assert_int_equal(a->ladders.rungs.count, b->ladders.rungs.count);
    assert_int_equal(a->scale_rules.count, b->scale_rules.count);
    assert_int_equal(a->time_rules.count, b->time_rules.count);
    for (size_t i = 0; i < PHRASES; i++)
        same_text(a->phrases[i], b->phrases[i]);
}

static void built_in_is_what_is_made(void **state)
{
    struct open_kitchen *o = *state;
    struct problems p = {0};
    struct kitchen *made = kitchen_new(o->pack, &p);
    assert_non_null(made);
    assert_int_equal(p.errors, 0);
    same_kitchen(made, o->kitchen);
    kitchen_free(made);
    problems_release(&p);
}

static void two_are_independent(void **state)
{
    struct open_kitchen *o = *state;
    struct kitchen *second = kitchen_builtin(o->pack), *third = kitchen_builtin(o->pack);
    assert_non_null(second);
    assert_ptr_not_equal(second->foods.all.at, o->kitchen->foods.all.at);
    kitchen_free(second);
    same_kitchen(o->kitchen, third);
    kitchen_free(third);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(built_in_is_what_is_made),
                                       cmocka_unit_test(two_are_independent)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
