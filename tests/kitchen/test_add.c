/* tests/kitchen/test_add.c: the same food's amounts added up; independent of the order of the
 * lines. Expected sums are arithmetic; "divided" and "plus more" as common practice has it.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include "kitchen/add.h"

struct case_line {
    const char *food, *amount, *unit, *package;
};

static struct ingredient make_line(const struct case_line *c, size_t id)
{
    struct ingredient line = {.id = id, .food = text_from(c->food)};
    if (c->amount)
        line.amount = open_amount(c->amount, c->amount, c->unit);
    if (c->package)
        line.package = open_amount(c->package, c->package, "gram");
    return line;
}

/* "4 tablespoons, divided", "1 can (400 g), plus more", "2 and 150 g". */
static struct text print_added(const struct kitchen *k, struct arena *a,
                               const struct packed_amount *parts, size_t count, bool divided,
                               bool plus_more)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < count; i++) {
        struct text part = print_packed(k, a, &parts[i].amount, &parts[i].package, WORDS_WHOLE);
        done = done.length ? PHRASE_TEXT(k, a, and, done, part) : part;
    }
    if (divided && done.length)
        done = PHRASE_TEXT(k, a, divided, done);
    return plus_more && done.length ? PHRASE_TEXT(k, a, plus_more, done) : done;
}

/* What a dish of these lines needs: "food: amount; food: amount". */
static const char *added(struct open_kitchen *o, const struct case_line *lines)
{
    struct dish dish = {.id = 1};
    for (size_t i = 0; lines[i].food; i++)
        *LIST_ADD(&o->arena, &dish.ingredients) = make_line(&lines[i], i);
    add_dish(o->kitchen, &o->arena, NULL, &dish);
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < dish.shopping.count; i++) {
        const struct shopping_line *s = &dish.shopping.at[i];
        struct text t = print_added(o->kitchen, &o->arena, s->parts.at, s->parts.count, s->divided,
                                    s->plus_more);
        assert_int_equal(s->amount.known, s->parts.count == 1);
        done = arena_format(&o->arena, "%.*s%s%.*s: %.*s", TEXT(done), i ? "; " : "", TEXT(s->food),
                            TEXT(t));
    }
    return open_string(o, done);
}
#define ADDED(o, ...) added((o), (const struct case_line[]){__VA_ARGS__, {NULL, NULL, NULL, NULL}})

static void test_sums(void **state)
{
    struct open_kitchen *o = *state;
    assert_string_equal(ADDED(o, {"flour", "1/3", "cup", NULL}, {"flour", "1/3", "cup", NULL},
                              {"flour", "1/3", "cup", NULL}),
                        "flour: 1 cup, divided");
    assert_string_equal(
        ADDED(o, {"olive oil", "2", "tablespoon", NULL}, {"olive oil", NULL, NULL, NULL}),
        "olive oil: 2 tablespoons, plus more");
    assert_string_equal(
        ADDED(o, {"plain flour", "1", "cup", NULL}, {"all-purpose flour", "1", "cup", NULL}),
        "plain flour: 2 cups, divided");
    assert_string_equal(
        ADDED(o, {"butter", "1", "tablespoon", NULL}, {"unsalted butter", "1", "tablespoon", NULL}),
        "butter: 1 tablespoon; unsalted butter: 1 tablespoon");
    assert_string_equal(ADDED(o, {"scallion", "2", "", NULL}, {"spring onion", "3", "", NULL}),
                        "scallion: 5, divided");
    assert_string_equal(ADDED(o, {"chickpea", "1", "can", "400"}, {"chickpea", "2", "can", "400"}),
                        "chickpea: 3 cans (400 g), divided");
    assert_string_equal(ADDED(o, {"garlic", "3", "clove", NULL}, {"garlic", "1", "head", NULL}),
                        "garlic: 3 cloves and 1 head, divided");
    assert_string_equal(ADDED(o, {"milk", "1", "tablespoon", NULL}, {"milk", "1", "cup", NULL}),
                        "milk: 1.0625 cups, divided");
    /* USDA SR28 20081: 125 g a cup */
    assert_string_equal(ADDED(o, {"flour", "200", "gram", NULL}, {"flour", "1", "cup", NULL}),
                        "flour: about 325 grams, divided");
    assert_string_equal(ADDED(o, {"salt", NULL, NULL, NULL}), "salt: ");
    /* A pinch is kitchen habit, and no number of teaspoons: 0.5625 teaspoon is nothing to measure.
     */
    assert_string_equal(ADDED(o, {"salt", "1", "pinch", NULL}, {"salt", "1/2", "teaspoon", NULL}),
                        "salt: ½ teaspoon and 1 pinch, divided");
}

static uint32_t seed = 20260101;
static uint32_t draw(uint32_t below)
{
    seed = seed * 1664525u
           + 1013904223u; /* Numerical Recipes' generator: the same sequence everywhere */
    return (seed >> 8) % below;
}

static struct ingredient random_line(size_t id)
{
    static const char *const foods[] = {"flour", "butter",   "milk", "egg",    "garlic",
                                        "onion", "chickpea", "salt", "venison"};
    static const char *const units[] = {"cup", "tablespoon", "teaspoon",   "gram", "ounce",
                                        "",    "clove",      "milliliter", "can"};
    struct ingredient line = {.id = id, .food = text_from(foods[draw(9)])};
    if (draw(8))
        line.amount =
            (struct amount){.known = true,
                            .min = ratio_make((int64_t) draw(40) + 1, (int64_t) draw(8) + 1),
                            .unit = text_from(units[draw(9)])};
    line.amount.max = draw(5) ? line.amount.min : ratio_add(line.amount.min, RATIO(1));
    if (text_is(line.amount.unit, "can") && draw(2))
        line.package = open_amount("400", "400", "gram");
    return line;
}

static struct text list_text(struct open_kitchen *o, const struct shop_list *list)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < list->items.count; i++) {
        const struct shop_item *item = &list->items.at[i];
        struct text t = print_added(o->kitchen, &o->arena, item->amounts.at, item->amounts.count,
                                    false, item->plus_more);
        done = arena_format(&o->arena, "%.*s%.*s/%.*s/%.*s: %.*s (%zu)\n", TEXT(done),
                            TEXT(item->aisle), TEXT(item->key), TEXT(item->food), TEXT(t),
                            item->parts.count);
    }
    return done;
}

static void shuffle(struct dish *dish)
{
    for (size_t i = dish->ingredients.count; i > 1; i--) {
        size_t j = draw((uint32_t) i);
        struct ingredient keep = dish->ingredients.at[i - 1];
        dish->ingredients.at[i - 1] = dish->ingredients.at[j];
        dish->ingredients.at[j] = keep;
    }
}

#define RANDOM_RECIPES 4000

static void test_order_does_not_matter(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t n = 0; n < RANDOM_RECIPES; n++) {
        struct dish dishes[2] = {{.id = 1}, {.id = 2}};
        for (size_t d = 0; d < 2; d++)
            for (size_t i = draw(14); i > 0; i--)
                *LIST_ADD(&o->arena, &dishes[d].ingredients) = random_line(i);
        struct shop_dish forth[] = {{&dishes[0], 0}, {&dishes[1], 0}},
                         back[] = {{&dishes[1], 0}, {&dishes[0], 0}};
        struct shop_list one = {.items = {NULL, 0, 0}}, other = {.items = {NULL, 0, 0}};
        add_dishes(o->kitchen, &o->arena, NULL, forth, 2, &one);
        struct text before = list_text(o, &one);
        shuffle(&dishes[0]);
        shuffle(&dishes[1]);
        add_dishes(o->kitchen, &o->arena, NULL, back, 2, &other);
        struct text after = list_text(o, &other);
        if (!text_equal(before, after))
            fail_msg("recipe %zu:\n%.*s\n%.*s", n, TEXT(before), TEXT(after));
        arena_reset(&o->arena);
    }
}

static void test_aisles(void **state)
{
    struct open_kitchen *o = *state;
    struct dish dish = {.id = 1};
    static const struct case_line lines[] = {{"salt", "1", "teaspoon", NULL},
                                             {"milk", "1", "cup", NULL},
                                             {"water", "1", "cup", NULL},
                                             {"onion", "1", "", NULL},
                                             {"moon dust", "1", "cup", NULL}};
    for (size_t i = 0; i < 5; i++)
        *LIST_ADD(&o->arena, &dish.ingredients) = make_line(&lines[i], i);
    struct shop_list list = {.items = {NULL, 0, 0}};
    add_dishes(o->kitchen, &o->arena, NULL, &(struct shop_dish){&dish, 0}, 1, &list);
    assert_string_equal(open_string(o, list_text(o, &list)),
                        "Vegetables, fruit and herbs/onion/onion: 1 (1)\n"
                        "Dairy and eggs/whole milk/milk: 1 cup (1)\n"
                        "Other/moon dust/moon dust: 1 cup (1)\n"
                        "Spices/salt/salt: 1 teaspoon (1)\n");
    assert_true(list.items.at[3].pantry);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_sums, open_reset),
        cmocka_unit_test_teardown(test_order_does_not_matter, open_reset),
        cmocka_unit_test_teardown(test_aisles, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
