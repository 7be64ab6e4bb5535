/* write/test_card.c: lines, parts and layout of cards. The form of a line follows common recipe
 * style (amount, size, food, comma, preparation; "divided", "plus more", "to taste": university
 * extension guides and a recipe-writing handbook, told from memory).
 * SPDX-License-Identifier: MIT */
#include "write/made.h"

#include "kitchen/add.h"
#include "write/card.h"
#include "write/ingredient_line.h"
#include "write/markdown.h"
#include "write/wrap.h"

struct one {
    struct open_kitchen *o;
    struct recording r;
    struct dish *d;
    struct writing w;
};

static struct one one_open(void **state)
{
    struct one t = {.o = *state};
    made_open(&t.r, &t.o->arena, "made.srt");
    t.d = made_dish(&t.r, "Berry bars", 0, 60);
    t.w = (struct writing){.kitchen = t.o->kitchen, .scratch = &t.o->arena, .at = -1};
    return t;
}

static void assert_line(struct one *t, const struct ingredient *in, const char *wanted)
{
    assert_string_equal(open_string(t->o, ingredient_line(&t->w, in, NULL)), wanted);
}

static void amount_then_food_then_preparation(void **state)
{
    struct one t = one_open(state);
    struct ingredient *in = made_line(&t.r, t.d, 1, "two large onions", "onion", "2", "2", "");
    in->size = TEXT_OF("large");
    *LIST_ADD(t.r.arena, &in->prep) = TEXT_OF("peeled");
    *LIST_ADD(t.r.arena, &in->prep) = TEXT_OF("diced");
    *LIST_ADD(t.r.arena, &in->state) = TEXT_OF("red");
    *LIST_ADD(t.r.arena, &in->state) = TEXT_OF("at room temperature");
    assert_line(&t, in, "2 large red onions, at room temperature, peeled and diced");
    *LIST_ADD(t.r.arena, &in->prep) = TEXT_OF("rinsed");
    assert_line(&t, in, "2 large red onions, at room temperature, peeled, diced and rinsed");
}

static void fractions_and_packages(void **state)
{
    struct one t = one_open(state);
    assert_line(&t, made_line(&t.r, t.d, 1, "", "milk", "3/2", "3/2", "cup"), "1½ cups milk");
    assert_line(&t, made_line(&t.r, t.d, 2, "", "milk", "3/4", "1", "cup"), "¾ to 1 cup milk");
    struct ingredient *can = made_line(&t.r, t.d, 3, "", "coconut milk", "1", "1", "can");
    can->package = open_amount("400", "400", "gram");
    assert_line(&t, can, "1 can (400 g) coconut milk");
}

/* In lexicons and in JSON a food is in small letters; a card is printed. */
static void names_are_written_as_print_has_them(void **state)
{
    struct one t = one_open(state);
    assert_line(&t, made_line(&t.r, t.d, 1, "", "greek yogurt", "1", "1", "cup"),
                "1 cup Greek yogurt");
    assert_line(&t, made_line(&t.r, t.d, 2, "", "self raising flour", "3", "3", "cup"),
                "3 cups self-raising flour");
    assert_line(&t, made_line(&t.r, t.d, 3, "", "french fry", "9", "9", ""), "9 French fries");
    assert_line(&t, made_line(&t.r, t.d, 4, "", "englishman bean", "1", "1", "cup"),
                "1 cup englishman bean");
}

static void notes_at_the_end_of_a_line(void **state)
{
    struct one t = one_open(state);
    struct ingredient *salt = made_line(&t.r, t.d, 1, "salt", "salt", NULL, NULL, NULL);
    assert_line(&t, salt, "Salt (amount not heard)");
    salt->to_taste = true;
    assert_line(&t, salt, "Salt, to taste");
    struct ingredient *spoon = made_line(&t.r, t.d, 2, "", "salt", "1", "1", "teaspoon");
    spoon->to_taste = true;
    assert_line(&t, spoon, "1 teaspoon salt, or to taste");
    struct ingredient *flour = made_line(&t.r, t.d, 3, "", "flour", "2", "2", "");
    flour->no_unit = true;
    assert_line(&t, flour, "2 flour (unit not heard)");
    struct ingredient *herb = made_line(&t.r, t.d, 4, "", "chives", NULL, NULL, NULL);
    herb->optional = true;
    herb->role = ROLE_GARNISH;
    *LIST_ADD(t.r.arena, &herb->alternatives) = TEXT_OF("parsley");
    assert_line(&t, herb, "Chives or parsley (optional)");
    herb->role = ROLE_INGREDIENT;
    assert_line(&t, herb, "Chives or parsley (optional, amount not heard)");
}

static void a_line_begins_with_a_capital_in_any_script(void **state)
{
    struct one t = one_open(state);
    assert_string_equal(open_string(t.o, capital(&t.w, TEXT_OF("éclair"))), "Éclair");
    assert_string_equal(open_string(t.o, capital(&t.w, TEXT_OF("½ cup"))), "½ cup");
    assert_string_equal(open_string(t.o, capital(&t.w, TEXT_EMPTY)), "");
}

static const char *card_text(struct one *t)
{
    struct problems p = {0};
    return made_output(t->o, &t->r, write_card_text, 0, &p);
}

static void the_same_food_in_one_part_is_one_divided_line(void **state)
{
    struct one t = one_open(state);
    made_line(&t.r, t.d, 1, "", "butter", "3", "3", "tablespoon");
    made_line(&t.r, t.d, 2, "", "sugar", "1", "1", "cup");
    made_line(&t.r, t.d, 3, "", "butter", "1", "1", "tablespoon");
    add_dish(t.o->kitchen, &t.o->arena, NULL, t.d);
    const char *out = card_text(&t);
    assert_non_null(strstr(out, "  4 tablespoons butter, divided\n  1 cup sugar\n"));
    assert_null(strstr(out, "3 tablespoons"));
}

/* No spoon holds 1 1/3 tablespoons (US: 3 teaspoons are one). What cannot be split without rounding
 * stays as it adds up. */
static void a_sum_is_told_by_measures_that_exist(void **state)
{
    struct one t = one_open(state);
    made_line(&t.r, t.d, 1, "", "salt", "1", "1", "tablespoon");
    made_line(&t.r, t.d, 2, "", "sugar", "2", "2", "tablespoon");
    made_line(&t.r, t.d, 3, "", "salt", "1", "1", "teaspoon");
    made_line(&t.r, t.d, 4, "", "sugar", "1/3", "1/3", "tablespoon");
    made_line(&t.r, t.d, 5, "", "oil", "1/2", "1/2", "cup");
    made_line(&t.r, t.d, 6, "", "oil", "2", "2", "tablespoon");
    made_line(&t.r, t.d, 7, "", "cumin", "1/5", "1/5", "teaspoon");
    made_line(&t.r, t.d, 8, "", "cumin", "1", "1", "teaspoon");
    add_dish(t.o->kitchen, &t.o->arena, NULL, t.d);
    const char *out = card_text(&t);
    assert_non_null(strstr(out, "  1 tablespoon plus 1 teaspoon salt, divided\n"));
    assert_non_null(strstr(out, "  2 tablespoons plus 1 teaspoon sugar, divided\n"));
    assert_non_null(strstr(out, "  ½ cup plus 2 tablespoons oil, divided\n"));
    assert_non_null(strstr(out, "  1.2 teaspoons cumin, divided\n"));
}

/* A caption may break its lines anywhere. */
static void what_is_said_in_the_plural_is_printed_so(void **state)
{
    struct one t = one_open(state);
    assert_line(&t,
                made_line(&t.r, t.d, 1, "one cup of rolled\noats", "rolled oat", "1", "1", "cup"),
                "1 cup rolled oats");
    assert_line(&t, made_line(&t.r, t.d, 2, "a cup of oat", "oat", "1", "1", "cup"), "1 cup oat");
    struct ingredient *bean =
        made_line(&t.r, t.d, 3, "black-eyed\nbeans", "black eyed bean", "1", "1", "pound");
    assert_line(&t, bean, "1 pound black-eyed beans");
}

/* "A prawn curry. The prawns, half a kilo." Of a lemon's slices there are several, of lemons not. A
 * number alone that lacks its unit counts nothing. */
static void what_is_named_in_the_plural_elsewhere_is_so_by_weight(void **state)
{
    struct one t = one_open(state);
    struct ingredient *prawn = made_line(&t.r, t.d, 1, "prawn", "prawn", "500", "500", "gram");
    assert_line(&t, prawn, "500 grams prawn");
    prawn->several = true;
    assert_line(&t, prawn, "500 grams prawns");
    struct ingredient *lemon = made_line(&t.r, t.d, 2, "lemon", "lemon", "2", "2", "slice");
    lemon->several = true;
    assert_line(&t, lemon, "2 slices lemon");
    struct ingredient *juice = made_line(&t.r, t.d, 3, "", "pineapple juice", "400", "400", "");
    juice->no_unit = true;
    assert_line(&t, juice, "400 pineapple juice (unit not heard)");
}

static void what_is_counted_twice_is_in_the_plural(void **state)
{
    struct one t = one_open(state);
    made_line(&t.r, t.d, 1, "", "carrot", "1", "1", "");
    made_line(&t.r, t.d, 2, "", "bay leaf", "1", "1", "");
    made_line(&t.r, t.d, 3, "", "carrot", "2", "2", "");
    made_line(&t.r, t.d, 4, "", "bay leaf", "1", "1", "");
    add_dish(t.o->kitchen, &t.o->arena, NULL, t.d);
    assert_non_null(strstr(card_text(&t), "  3 carrots, divided\n  2 bay leaves, divided\n"));
}

static void the_same_food_in_two_parts_keeps_two_amounts(void **state)
{
    struct one t = one_open(state);
    made_line(&t.r, t.d, 1, "", "butter", "3", "3", "tablespoon");
    made_line(&t.r, t.d, 3, "", "butter", "1", "1", "tablespoon")->group = TEXT_OF("sauce");
    add_dish(t.o->kitchen, &t.o->arena, NULL, t.d);
    const char *out = card_text(&t);
    assert_non_null(
        strstr(out, "  3 tablespoons butter\n\nFor the sauce\n  1 tablespoon butter\n"));
    assert_null(strstr(out, "divided"));
}

static void the_dishs_own_lines_come_before_its_parts(void **state)
{
    struct one t = one_open(state);
    made_line(&t.r, t.d, 1, "", "cream", "1", "1", "cup")->group = TEXT_OF("sauce");
    made_line(&t.r, t.d, 2, "", "milk", "2", "2", "cup");
    made_line(&t.r, t.d, 3, "", "bread", NULL, NULL, NULL)->role = ROLE_SERVE_WITH;
    made_line(&t.r, t.d, 4, "", "chives", NULL, NULL, NULL)->role = ROLE_GARNISH;
    assert_non_null(strstr(
        card_text(&t), "Ingredients\n-----------\n  2 cups milk\n\nFor the sauce\n  1 cup cream\n\n"
                       "To finish\n  Chives\n\nTo serve\n  Bread\n"));
}

static void steps_are_numbered_and_timed(void **state)
{
    struct one t = one_open(state);
    made_step(&t.r, t.d, 1, 5, "Whisk the eggs.", "sauce");
    made_step(&t.r, t.d, 2, 3723.9, "Bake until golden.", "");
    const char *out = card_text(&t);
    assert_non_null(strstr(out, "For the sauce\n 1. Whisk the eggs. [0:05]\n\n"
                                "For the dish\n 2. Bake until golden. [1:02:03]\n"));
}

static struct temperature *add_heat(struct one *t, long value, char unit)
{
    struct step *last = &t->d->steps.at[t->d->steps.count - 1];
    *LIST_ADD(t->r.arena, &last->temperatures) =
        (struct temperature){.value = RATIO(value), .unit = unit, .of = TEXT_OF("oven")};
    return &last->temperatures.at[last->temperatures.count - 1];
}

/* The marks beside degrees: as British ovens have them, gas mark 6 is 200 °C (common practice, no
 * source). */
static void heats_of_one_thing_are_told_once(void **state)
{
    struct one t = one_open(state);
    made_step(&t.r, t.d, 1, 4, "Heat it up.", "");
    add_heat(&t, 200, 'C');
    add_heat(&t, 180, 'C')->fan = true;
    add_heat(&t, 6, 'G');
    made_step(&t.r, t.d, 2, 8, "Check the middle.", "");
    add_heat(&t, 74, 'C')->of = TEXT_OF("inside");
    add_heat(&t, 165, 'F')->of = TEXT_OF("inside");
    made_step(&t.r, t.d, 3, 10, "Heat the oven to 190 °C.", "");
    add_heat(&t, 190, 'C');
    add_heat(&t, 5, 'G');
    made_step(&t.r, t.d, 4, 12, "Start hot, then lower it.", "");
    add_heat(&t, 3, 'G');
    add_heat(&t, 220, 'C');
    add_heat(&t, 63, 'C')->of = TEXT_OF("inside");
    const char *out = card_text(&t);
    assert_non_null(strstr(out, "    Oven 200 °C (400 °F), 180 °C (350 °F) fan, gas mark 6\n"));
    assert_non_null(strstr(out, "    Inside 74 °C (165 °F)\n"));
    assert_non_null(strstr(out, "    Oven 190 °C (375 °F), gas mark 5\n"));
    assert_non_null(strstr(
        out, "    Oven gas mark 3 (325 °F, 165 °C), 220 °C (425 °F), inside 63 °C (145 °F)\n"));
    t.w.units = UNITS_METRIC;
    struct text metric = shown_temperatures(&t.w, &t.d->steps.at[1]);
    assert_string_equal(open_string(t.o, metric), "Inside 74 °C");
}

/* A recipe without its oven's heat cannot be cooked from; told twice it only reads badly, also
 * where the cook says both scales. */
static void a_heat_stands_behind_a_text_that_lacks_it(void **state)
{
    struct one t = one_open(state);
    made_step(&t.r, t.d, 1, 5, "Bake for 40 minutes.", "");
    add_heat(&t, 400, 'F');
    made_step(&t.r, t.d, 2, 8, "Lower the heat to 180 °C.", "");
    add_heat(&t, 180, 'C');
    add_heat(&t, 350, 'F');
    const char *out = card_text(&t);
    assert_non_null(strstr(out, " 1. Bake for 40 minutes. [0:05]\n    Oven 400 °F (205 °C)\n"
                                " 2. Lower the heat to 180 °C. [0:08]\n"));
    assert_null(strstr(out, "350"));
}

static void a_card_says_that_it_is_a_draft(void **state)
{
    struct one t = one_open(state);
    made_finding(&t.r, "no-yield", LEVEL_NOTE, 0, 1);
    made_finding(&t.r, "no-amount", LEVEL_FIX, 0, 2)->dismissed = true;
    assert_null(strstr(card_text(&t), "Points to mend"));
    made_finding(&t.r, "no-amount", LEVEL_FIX, 0, 2);
    assert_non_null(strstr(card_text(&t), "Points to mend before publishing: 1\n"));
    assert_non_null(strstr(card_text(&t), "Draft"));
    t.d->approved = true;
    assert_null(strstr(card_text(&t), "Draft"));
}

static void yield_and_times(void **state)
{
    struct one t = one_open(state);
    t.d->yield = (struct yield){
        .known = true, .min = RATIO(4), .max = RATIO(6), .of = TEXT_OF("serving"), .words = {0, 1}};
    t.d->total = (struct time_sum){true, 5400, 5400, TEXT_OF("bake")};
    assert_non_null(strstr(card_text(&t), "Serves 4 to 6 · Total 1 hour 30 minutes\n"));
}

static void cautions_give_their_source(void **state)
{
    struct one t = one_open(state);
    *LIST_ADD(t.r.arena, &t.d->cautions) =
        (struct caution){.text = TEXT_OF("Cook chicken to 165°F."), .source = TEXT_OF("a table")};
    struct allergen *milk = LIST_ADD(t.r.arena, &t.d->allergens);
    *milk = (struct allergen){.name = TEXT_OF("milk"), .law = TEXT_OF("US and EU")};
    struct allergen *soy = LIST_ADD(t.r.arena, &t.d->allergens);
    *soy = (struct allergen){
        .name = TEXT_OF("soybeans"), .law = TEXT_OF("US and EU"), .check_label = true};
    const char *out = card_text(&t);
    assert_non_null(strstr(out, "- Cook chicken to 165°F. (a table)\n"));
    assert_non_null(strstr(out, "Contains: milk\nCheck the label for: soybeans\n"));
    assert_non_null(strstr(out, "silence about a risk"));
}

static void markdown_means_nothing_by_itself(void **state)
{
    static const struct {
        const char *said, *written;
    } CASES[] = {{"1. item", "1\\. item"},
                 {"2) item", "2\\) item"},
                 {"# no heading", "\\# no heading"},
                 {"- no list", "\\- no list"},
                 {"+ no list", "\\+ no list"},
                 {"a *b* _c_ `d`", "a \\*b\\* \\_c\\_ \\`d\\`"},
                 {"[a](b)", "\\[a\\](b)"},
                 {"<b>", "\\<b\\>"},
                 {"&amp;", "\\&amp;"},
                 {"two\nlines", "two lines"},
                 {"1½ cups", "1½ cups"},
                 {"2 eggs", "2 eggs"},
                 {"== rule", "\\== rule"},
                 {"", ""}};
    (void) state;
    for (size_t i = 0; i < sizeof CASES / sizeof *CASES; i++) {
        struct buffer b = {0};
        put_markdown(&b, text_from(CASES[i].said));
        assert_string_equal(b.at ? b.at : "", CASES[i].written);
        buffer_release(&b);
    }
}

static void lines_are_wrapped_under_their_text(void **state)
{
    struct buffer b = {0};
    (void) state;
    put_wrapped(
        &b, " 1. ",
        TEXT_OF(
            "Crème  fraîche goes in with a\nspoon, and then it is stirred with great care until "
            "nothing of it is left to be seen."));
    assert_string_equal(
        b.at, " 1. Crème fraîche goes in with a spoon, and then it is stirred with great care\n"
              "    until nothing of it is left to be seen.\n");
    buffer_release(&b);
}

static void every_part_of_the_text_card_is_in_the_markdown_card(void **state)
{
    struct one t = one_open(state);
    struct problems p = {0};
    made_line(&t.r, t.d, 1, "", "cream", "1", "1", "cup")->group = TEXT_OF("sauce");
    made_step(&t.r, t.d, 1, 5, "Whisk the eggs.", "sauce");
    const char *out = made_output(t.o, &t.r, write_card_markdown, 0, &p);
    static const char *const PARTS[] = {"# Berry bars\n", "\n## Ingredients\n\n",
                                        "\n### For the sauce\n\n- 1 cup cream\n", "\n## Method\n\n",
                                        "1. Whisk the eggs. (0:05)\n"};
    for (size_t i = 0; i < sizeof PARTS / sizeof *PARTS; i++)
        assert_non_null(strstr(out, PARTS[i]));
}

static void a_recording_without_dishes_has_no_card(void **state)
{
    struct one t = one_open(state);
    struct problems p = {0};
    t.r.dishes.count = 0;
    assert_string_equal(made_output(t.o, &t.r, write_card_text, 0, &p), "");
    assert_int_equal(p.notes, 1);
    problems_release(&p);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(amount_then_food_then_preparation, open_reset),
        cmocka_unit_test_teardown(fractions_and_packages, open_reset),
        cmocka_unit_test_teardown(names_are_written_as_print_has_them, open_reset),
        cmocka_unit_test_teardown(notes_at_the_end_of_a_line, open_reset),
        cmocka_unit_test_teardown(a_line_begins_with_a_capital_in_any_script, open_reset),
        cmocka_unit_test_teardown(the_same_food_in_one_part_is_one_divided_line, open_reset),
        cmocka_unit_test_teardown(a_sum_is_told_by_measures_that_exist, open_reset),
        cmocka_unit_test_teardown(what_is_said_in_the_plural_is_printed_so, open_reset),
        cmocka_unit_test_teardown(what_is_named_in_the_plural_elsewhere_is_so_by_weight,
                                  open_reset),
        cmocka_unit_test_teardown(what_is_counted_twice_is_in_the_plural, open_reset),
        cmocka_unit_test_teardown(the_same_food_in_two_parts_keeps_two_amounts, open_reset),
        cmocka_unit_test_teardown(the_dishs_own_lines_come_before_its_parts, open_reset),
        cmocka_unit_test_teardown(steps_are_numbered_and_timed, open_reset),
        cmocka_unit_test_teardown(heats_of_one_thing_are_told_once, open_reset),
        cmocka_unit_test_teardown(a_heat_stands_behind_a_text_that_lacks_it, open_reset),
        cmocka_unit_test_teardown(a_card_says_that_it_is_a_draft, open_reset),
        cmocka_unit_test_teardown(yield_and_times, open_reset),
        cmocka_unit_test_teardown(cautions_give_their_source, open_reset),
        cmocka_unit_test(markdown_means_nothing_by_itself),
        cmocka_unit_test(lines_are_wrapped_under_their_text),
        cmocka_unit_test_teardown(every_part_of_the_text_card_is_in_the_markdown_card, open_reset),
        cmocka_unit_test_teardown(a_recording_without_dishes_has_no_card, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
