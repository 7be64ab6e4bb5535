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
    same_text(ref_text(a->form), ref_text(b->form));
    same_unit(a->measure, b->measure);
    assert_memory_equal(&a->grams, &b->grams, sizeof a->grams);
    assert_int_equal(a->use, b->use);
    same_text(ref_text(a->usda_amount), ref_text(b->usda_amount));
    same_text(ref_text(a->usda_measure), ref_text(b->usda_measure));
    same_text(ref_text(a->usda_grams), ref_text(b->usda_grams));
    same_text(ref_text(a->source), ref_text(b->source));
}

static void same_food(const struct food *a, const struct food *b)
{
    same_text(a->name, b->name);
    same_text(a->group, b->group);
    same_text(a->also, b->also);
    same_text(a->usual, b->usual);
    same_text(ref_text(a->ndb), ref_text(b->ndb));
    same_text(ref_text(a->usda), ref_text(b->usda));
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

static void same_aisles(const struct aisles *a, const struct aisles *b)
{
    assert_int_equal(a->all.count, b->all.count);
    for (size_t i = 0; i < a->all.count; i++) {
        same_text(a->all.at[i].name, b->all.at[i].name);
        assert_int_equal(a->all.at[i].order, b->all.at[i].order);
        assert_int_equal(a->all.at[i].pantry, b->all.at[i].pantry);
        assert_int_equal(a->all.at[i].skip, b->all.at[i].skip);
    }
    same_text(a->other.name, b->other.name);
    assert_int_equal(a->other.order, b->other.order);
    same_names(&a->by_food, &b->by_food);
    same_names(&a->by_group, &b->by_group);
    same_names(&a->by_mark, &b->by_mark);
}

static void same_allergens(const struct allergens *a, const struct allergens *b)
{
    assert_int_equal(a->foods.count, b->foods.count);
    for (size_t i = 0; i < a->foods.count; i++) {
        const struct allergen_food *one = &a->foods.at[i], *other = &b->foods.at[i];
        same_text(ref_text(one->us), ref_text(other->us));
        same_text(ref_text(one->eu), ref_text(other->eu));
        same_text(ref_text(one->us_check), ref_text(other->us_check));
        same_text(ref_text(one->eu_check), ref_text(other->eu_check));
        assert_int_equal(one->ask, other->ask);
    }
    same_names(&a->names, &b->names);
    assert_int_equal(a->list.count, b->list.count);
    for (size_t i = 0; i < a->list.count; i++) {
        same_text(a->list.at[i].us, b->list.at[i].us);
        same_text(a->list.at[i].eu, b->list.at[i].eu);
        same_text(a->list.at[i].shown, b->list.at[i].shown);
        assert_int_equal(a->list.at[i].food, b->list.at[i].food);
    }
}

static void same_cautions(const struct cautions *a, const struct cautions *b)
{
    assert_int_equal(a->rules.count, b->rules.count);
    for (size_t i = 0; i < a->rules.count; i++) {
        const struct caution_rule *one = &a->rules.at[i], *other = &b->rules.at[i];
        same_text(one->id, other->id);
        same_text(one->foods, other->foods);
        same_text(one->actions, other->actions);
        assert_true(one->marks == other->marks);
        assert_true(one->food_shapes == other->food_shapes);
        assert_true(one->action_shapes == other->action_shapes);
        assert_int_equal(one->marked, other->marked);
        assert_int_equal(one->uncooked, other->uncooked);
        same_text(one->words, other->words);
        same_text(one->source, other->source);
        assert_int_equal(one->memory, other->memory);
    }
}

static void same_ladders(const struct ladders *a, const struct ladders *b)
{
    assert_int_equal(a->rungs.count, b->rungs.count);
    for (size_t i = 0; i < a->rungs.count; i++) {
        const struct rung *one = &a->rungs.at[i], *other = &b->rungs.at[i];
        same_text(one->ladder, other->ladder);
        same_unit(one->unit, other->unit);
        same_unit(one->step_unit, other->step_unit);
        assert_true(ratio_equal(one->least, other->least));
        assert_true(ratio_equal(one->step, other->step));
        assert_int_equal(one->parts_count, other->parts_count);
        assert_memory_equal(one->parts, other->parts, sizeof one->parts);
        assert_int_equal(one->decimal, other->decimal);
    }
}

static void same_profiles(const struct units *a, const struct units *b)
{
    assert_int_equal(a->profiles.count, b->profiles.count);
    for (size_t i = 0; i < a->profiles.count; i++) {
        same_text(a->profiles.at[i].name, b->profiles.at[i].name);
        assert_int_equal(a->profiles.at[i].meanings.count, b->profiles.at[i].meanings.count);
        for (size_t n = 0; n < a->profiles.at[i].meanings.count; n++) {
            same_unit(a->profiles.at[i].meanings.at[n].said, b->profiles.at[i].meanings.at[n].said);
            same_unit(a->profiles.at[i].meanings.at[n].meant,
                      b->profiles.at[i].meanings.at[n].meant);
        }
    }
}

/* What is said of a dish that is scaled, how long actions take, what a kitchen measures by. */
static void same_rules(const struct kitchen *a, const struct kitchen *b)
{
    assert_int_equal(a->scale_rules.count, b->scale_rules.count);
    for (size_t i = 0; i < a->scale_rules.count; i++) {
        const struct scale_rule *one = &a->scale_rules.at[i], *other = &b->scale_rules.at[i];
        same_text(one->by, other->by);
        same_text(one->what, other->what);
        same_text(one->note, other->note);
        assert_int_equal(one->whole, other->whole);
        assert_true(ratio_equal(one->from, other->from) && ratio_equal(one->to, other->to));
    }
    assert_int_equal(a->time_rules.count, b->time_rules.count);
    for (size_t i = 0; i < a->time_rules.count; i++) {
        same_text(a->time_rules.at[i].by, b->time_rules.at[i].by);
        same_text(a->time_rules.at[i].word, b->time_rules.at[i].word);
        assert_int_equal(a->time_rules.at[i].counts, b->time_rules.at[i].counts);
        assert_int_equal(a->time_rules.at[i].times, b->time_rules.at[i].times);
    }
    assert_int_equal(a->households.count, b->households.count);
    for (size_t i = 0; i < a->households.count; i++) {
        same_unit(a->households.at[i].unit, b->households.at[i].unit);
        same_unit(a->households.at[i].metric, b->households.at[i].metric);
        assert_true(ratio_equal(a->households.at[i].amount, b->households.at[i].amount));
    }
    assert_int_equal(a->marks.count, b->marks.count);
    for (size_t i = 0; i < a->marks.count; i++)
        assert_memory_equal(&a->marks.at[i], &b->marks.at[i], sizeof a->marks.at[i]);
}

static void same_kitchen(const struct kitchen *a, const struct kitchen *b)
{
    assert_int_equal(a->units.all.count, b->units.all.count);
    for (size_t i = 0; i < a->units.all.count; i++)
        same_unit(&a->units.all.at[i], &b->units.all.at[i]);
    same_names(&a->units.names, &b->units.names);
    same_names(&a->units.words, &b->units.words);
    same_foods(&a->foods, &b->foods);
    same_profiles(&a->units, &b->units);
    same_aisles(&a->aisles, &b->aisles);
    same_allergens(&a->allergens, &b->allergens);
    same_cautions(&a->cautions, &b->cautions);
    same_titles(&a->titles, &b->titles);
    same_ladders(&a->ladders, &b->ladders);
    same_rules(a, b);
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
