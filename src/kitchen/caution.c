/* kitchen/caution.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/caution.h"

#include "kitchen/kitchen.h"
#include "kitchen/time.h"
#include "kitchen/weight.h"

static bool find_row(const struct rows *r, struct text id, size_t *row)
{
    for (*row = 0; *row < r->count; ++*row)
        if (text_equal(rows_cell(r, *row, 0), id))
            return true;
    return false;
}

/* Words that are no marks count for nothing. */
static uint64_t marks_of(struct text list)
{
    uint64_t marks = 0, mark;
    struct text name;
    while (list.length && text_part(&list, '|', &name))
        marks |= mark_find(name, &mark) ? mark : 0;
    return marks;
}

static uint64_t shapes_of(struct text list)
{
    uint64_t shapes = 0;
    struct text name;
    while (list.length && text_part(&list, '|', &name))
        shapes |= text_shape(name);
    return shapes;
}

struct caution_tables {
    struct rows rules, words, published;
};

static bool load_rule(struct cautions *s, struct arena *a, const struct caution_tables *t,
                      size_t row, struct problems *p)
{
    const struct rows *rules = &t->rules;
    size_t said, published;
    struct caution_rule *rule = LIST_ADD(a, &s->rules);
    rule->id = rows_cell(rules, row, 0);
    rule->marks = marks_of(rows_cell(rules, row, 1));
    rule->marked = rows_cell(rules, row, 1).length > 0;
    rule->foods = rows_cell(rules, row, 2);
    rule->food_shapes = shapes_of(rule->foods);
    rule->actions = rows_cell(rules, row, 3);
    rule->action_shapes = shapes_of(rule->actions);
    rule->uncooked = text_is(rows_cell(rules, row, 4), "no");
    if (!find_row(&t->words, rule->id, &said) || !find_row(&t->published, rule->id, &published))
        return problem(p, rows_place(rules, row),
                       "\"%.*s\" is not in caution-words.tsv and safe-temperatures.tsv",
                       TEXT(rule->id));
    rule->words = rows_cell(&t->words, said, 1);
    rule->source = rows_cell(&t->published, published, 1);
    rule->memory = text_is(rows_cell(&t->published, published, 2), "memory");
    return true;
}

bool cautions_load(struct cautions *s, struct arena *a, const struct pack *k, struct problems *p)
{
    struct caution_tables t;
    if (!rows_open(&t.rules, k, "caution-rules", "id marks foods actions heat", p)
        || !rows_open(&t.words, k, "caution-words", "id words", p)
        || !rows_open(&t.published, k, "safe-temperatures", "id publication status", p))
        return false;
    for (size_t row = 0; row < t.rules.count; row++)
        if (!load_rule(s, a, &t, row, p))
            return false;
    return true;
}

static bool has_food(const struct caution_rule *rule, struct text food)
{
    return rule->food_shapes & text_shape(food) && text_has_part(rule->foods, '|', food);
}

/* `food` is what it is weighed as. */
static bool line_is_meant(const struct caution_rule *rule, const struct ingredient *line,
                          const struct food *food)
{
    return (line->entry && line->entry->marks & rule->marks) || has_food(rule, line->food)
           || has_food(rule, line->kind) || (food && has_food(rule, food->name));
}

static bool dish_does(const struct caution_rule *rule, const struct dish *dish)
{
    for (size_t i = 0; i < dish->steps.count; i++)
        for (size_t n = 0; n < dish->steps.at[i].actions.count; n++)
            if (rule->action_shapes & text_shape(dish->steps.at[i].actions.at[n])
                && text_has_part(rule->actions, '|', dish->steps.at[i].actions.at[n]))
                return true;
    return !rule->actions.length;
}

/* `foods` are what the dish's lines are weighed as. */
static void add_caution(const struct kitchen *k, struct arena *a, const struct caution_rule *rule,
                        const struct food *const *foods, struct dish *dish)
{
    struct caution made = {.rule = rule->id, .source = rule->source};
    for (size_t i = 0; i < dish->ingredients.count; i++)
        if (dish->ingredients.at[i].role != ROLE_SERVE_WITH
            && line_is_meant(rule, &dish->ingredients.at[i], foods[i]))
            *LIST_ADD(a, &made.because) = dish->ingredients.at[i].id;
    if (!made.because.count && (rule->marked || rule->foods.length))
        return;
    made.text = PHRASE_TEXT(k, a, caution, rule->words, k->phrases[PHRASE_local_advice]);
    if (rule->memory)
        made.source = PHRASE_TEXT(k, a, memory, rule->source);
    *LIST_ADD(a, &dish->cautions) = made;
}

void find_cautions(const struct kitchen *k, struct arena *a, struct dish *dish)
{
    bool cooks = dish_cooks(k, dish);
    const struct food **foods = arena_alloc(a, dish->ingredients.count * sizeof *foods);
    for (size_t i = 0; i < dish->ingredients.count; i++)
        foods[i] = weighed_as(k, &dish->ingredients.at[i]);
    LIST_CUT(&dish->cautions, 0);
    for (size_t i = 0; i < k->cautions.rules.count; i++) {
        const struct caution_rule *rule = &k->cautions.rules.at[i];
        if (!(rule->uncooked && cooks) && dish_does(rule, dish))
            add_caution(k, a, rule, foods, dish);
    }
}
