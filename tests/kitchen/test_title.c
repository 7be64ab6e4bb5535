/* tests/kitchen/test_title.c: titles of dishes that nobody named, by what goes in and what is done
 * with it. What an editor would write is common practice of cookbooks, no source.
 * SPDX-License-Identifier: MIT */
#include "../pack/packs.h"
#include "kitchen/open.h"

#include "kitchen/title.h"

/* "500 gram carrot": number and unit may be missing. */
static void add_food(struct open_kitchen *o, struct dish *d, struct text words)
{
    struct ingredient *line = LIST_ADD(&o->arena, &d->ingredients);
    size_t space = text_find(words, ' ', 0);
    struct ratio number = ratio_read(words.at, space);
    line->said = words;
    if (ratio_finite(number)) {
        line->amount = (struct amount){true, number, number, TEXT_EMPTY, false};
        words = text_slice(words, space + 1, words.length);
        space = text_find(words, ' ', 0);
        const struct unit *unit = unit_find(&o->kitchen->units, text_slice(words, 0, space));
        line->amount.unit = unit ? text_slice(words, 0, space) : TEXT_EMPTY;
        words = unit ? text_slice(words, space + 1, words.length) : words;
    }
    line->entry = entry_as(pack_find(o->pack, words, NULL), TAG_FOOD);
    line->food = line->entry ? entry_shown(line->entry) : words;
    line->kind = line->entry ? entry_value(line->entry) : words;
}

static struct dish dish_of(struct open_kitchen *o, const char *foods, const char *actions,
                           const char *vessel)
{
    struct dish d = {.id = 1};
    struct text rest = text_from(foods), part;
    while (rest.length && text_part(&rest, ',', &part))
        add_food(o, &d, text_trim(part));
    rest = text_from(actions);
    while (rest.length && text_part(&rest, ',', &part)) {
        struct step *step = LIST_ADD(&o->arena, &d.steps);
        *LIST_ADD(&o->arena, &step->actions) = text_trim(part);
        step->vessel = text_from(vessel);
    }
    return d;
}

static struct dish_word word_of(const struct open_kitchen *o, const char *said)
{
    const struct entry *e = entry_as(pack_find(o->pack, text_from(said), NULL), TAG_DISH);
    return e ? (struct dish_word){entry_value(e), entry_words(e)}
             : (struct dish_word){{"", 0}, {"", 0}};
}

static const struct {
    const char *foods, *actions, *vessel, *said, *title;
} cases[] = {
    /* the dish's word that was said, with what the dish is about */
    {"500 gram beef,2 carrot,1 liter beef stock", "brown, simmer", "", "stew", "beef stew"},
    {"200 gram oat,1 orange,100 gram flour,100 gram butter,100 gram sugar", "mix, bake", "",
     "biscuits", "orange and oat biscuits"},
    {"8 egg,2 leek,2 tablespoon milk", "whisk, bake", "", "frittata", "leek frittata"},
    {"500 gram ground beef,4 slice cheddar", "shape, grill", "", "burgers", "burgers"},
    {"500 gram ground turkey,1 onion", "shape, grill", "", "burgers", "turkey burgers"},
    {"2 cup flour,1 cup milk,2 egg", "whisk, fry", "", "pancakes", "pancakes"},
    {"300 gram oat,200 gram butter,100 gram golden syrup,80 gram dried cranberry", "press, bake",
     "", "flapjacks", "dried cranberry flapjacks"},
    {"2 cup cornmeal,1 cup buttermilk,1 egg", "mix, bake", "", "cornbread", "cornbread"},
    /* by vessel */
    {"2 cup flour,2 teaspoon baking powder,2 egg,3 banana,0.5 cup brown sugar", "mash, mix, bake",
     "greased muffin tin", "", "banana muffins"},
    {"10 egg,2 cup spinach,0.25 cup milk", "whisk, pour, bake", "muffin tin", "",
     "spinach egg muffins"},
    {"225 gram flour,100 gram sugar,1 tablespoon ground ginger,1 egg,100 gram butter", "mix, bake",
     "loaf tin", "", "ginger loaf"},
    {"500 gram rye flour,7 gram yeast,10 gram salt", "knead, bake", "loaf tin", "", "rye loaf"},
    /* baked */
    {"500 gram bread flour,7 gram yeast,10 gram salt", "knead, rise, bake", "", "", "White bread"},
    {"400 gram all-purpose flour,1 teaspoon baking soda,400 gram buttermilk", "mix, shape, bake",
     "", "", "Soda bread"},
    {"2 cup flour,2 tablespoon sugar,2 teaspoon baking powder,2 cup buttermilk,2 egg",
     "whisk, rest, flip", "", "", "buttermilk pancakes"},
    {"225 gram flour,1 teaspoon baking powder,50 gram butter,120 gram cheddar", "rub in, cut, bake",
     "", "", "cheddar scones"},
    {"600 gram rhubarb,200 gram sugar,150 gram flour,100 gram butter", "rub, scatter, bake", "", "",
     "rhubarb crumble"},
    {"300 gram flour,250 gram yogurt", "mix, divide, roll, fry", "", "", "yogurt flatbreads"},
    /* in one pot */
    {"500 gram split pea,2 liter water,2 carrot,1 onion", "boil, simmer", "", "", "split pea soup"},
    {"500 gram carrot,200 gram red lentil,1 liter vegetable stock", "simmer, blend", "", "",
     "carrot and red lentil soup"},
    {"2 pound beef,4 cup beef stock,2 onion", "sear, simmer", "", "", "beef stew"},
    {"200 gram red lentil,1 teaspoon turmeric,2 clove garlic", "boil, fry", "", "",
     "red lentil dal"},
    {"500 gram shrimp,2 cup broccoli,3 tablespoon soy sauce", "fry, toss", "wok", "",
     "shrimp stir-fry"},
    /* by the way it is cooked */
    {"8 chicken drumstick,2 tablespoon oil,1 lemon", "marinate, grill", "", "",
     "Grilled chicken drumsticks"},
    {"12 chicken drumstick,1 cup orange juice,0.25 cup soy sauce", "marinate, grill", "", "",
     "Grilled chicken drumsticks"},
    {"2 red onion,250 milliliter cider vinegar,1 tablespoon sugar", "boil, pour", "", "",
     "Pickled red onions"},
    {"8 egg,2 tablespoon olive oil,1 onion,150 gram spinach,100 gram feta", "simmer, crack, bake",
     "", "", "Baked eggs with spinach and feta"},
    {"8 egg,2 leek,100 milliliter milk", "whisk, pour, bake", "", "", "leek frittata"},
    {"4 peach,2 tablespoon brown sugar", "halve, grill", "", "", "Grilled peaches"},
    {"4 plantain,0.5 cup oil", "slice, fry", "", "", "Fried plantains"},
    {"1 cabbage,4 slice bacon,1 onion", "fry, stir", "", "", "Fried cabbage"},
    {"1 trout,1 fish,2 tablespoon butter", "fry", "", "", "Pan-fried trout"},
    {"2 pound stewing beef,2 onion,1 liter beef stock", "brown, simmer", "", "", "beef stew"},
    {"2 cup flour,2 tablespoon sugar,2 teaspoon baking powder,2 cup buttermilk", "whisk, flip", "",
     "", "buttermilk pancakes"},
    {"1 cucumber,2 cup yogurt,2 clove garlic", "grate, stir, chill", "", "", "Cucumber yogurt dip"},
    {"1 chicken,2 lemon,3 clove garlic", "roast", "", "", "Roast chicken"},
    {"30 gram butter,225 gram cheddar,2 tablespoon flour,1 cup beer", "whisk, toast", "", "",
     "Cheese toast"},
    /* cold; the same food in several lines is one */
    {"4 tomato,1 cucumber,2 tablespoon olive oil", "slice, toss", "", "",
     "tomato and cucumber salad"},
    {"1 green chili,2 green chili,1 avocado,1 lime", "chop, mash", "", "", "Guacamole"},
    /* where nothing can be told, the main foods; salt, water, oil and spices never */
    {"500 gram potato,1 teaspoon salt,2 cup water,2 tablespoon oil,1 teaspoon paprika", "", "", "",
     "potato"},
    {"1 teaspoon salt,2 cup water", "", "", "", ""},
    {"", "", "", "", ""},
};

static void test_titles(void **state)
{
    struct open_kitchen *o = *state;
    size_t failed = 0;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct dish d = dish_of(o, cases[i].foods, cases[i].actions, cases[i].vessel);
        struct text title =
            make_title(o->kitchen, &o->arena, NULL, &d, word_of(o, cases[i].said), false);
        if (text_is(title, cases[i].title))
            continue;
        print_error("%s; %s; %s; %s: wanted \"%s\", made \"%.*s\"\n", cases[i].foods,
                    cases[i].actions, cases[i].vessel, cases[i].said, cases[i].title, TEXT(title));
        failed++;
    }
    assert_int_equal(failed, 0);
}

/* A bare word that is the cook's own name is filled up by one food, when the dish is clearly about
 * it. */
static void test_named(void **state)
{
    static const struct {
        const char *foods, *said, *title;
    } named[] = {
        {"4 tomato,1 cucumber,2 tablespoon olive oil", "salad", "tomato salad"},
        {"500 gram beef,2 carrot,1 liter beef stock", "stew", "beef stew"},
        {"2 cup flour,1 cup yogurt", "flatbreads", "flatbreads"},
        {"1 teaspoon paprika,3 cup water", "soup", "soup"},
    };
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof named / sizeof *named; i++) {
        struct dish d = dish_of(o, named[i].foods, "toss", "");
        struct text title =
            make_title(o->kitchen, &o->arena, NULL, &d, word_of(o, named[i].said), true);
        assert_string_equal(open_string(o, title), named[i].title);
    }
}

#define FOODS "== p/title-foods.tsv\nfoods\tsavory\tsweet\tusual\tshown\n"
#define RULES                                                                                   \
    "== p/title-rules.tsv\nsaid\tfoods\twithout\tactions\tundone\tvessels\theat\tby\tunnamed\t" \
    "none\tone\ttwo\n"
#define WORDS                                                                               \
    "== p/pack.list\nw.lex\ntitle-foods.tsv\ntitle-rules.tsv\n== p/w.lex\n@tag FOOD\npea\n" \
    "@tag ACTION\nboil\n@tag DISH\nsoup\n@tag VESSEL\npot\n"

/* What is wrong in a table is told with its line. */
static const struct {
    const char *pack, *problems;
} mistakes[] = {
    {WORDS FOODS "pea\t1\t0\t100\t\n" RULES
                 "soup\tpea:10\tmeat\tboil\tgrills\tpot\tyes\tsavory\t\tSoup\t{1} soup\t\n",
     ""},
    {WORDS FOODS "peas\t1\t0\t100\t\n" RULES,
     "p/title-foods.tsv:2: \"peas\" is no food, mark or group of this pack\n"},
    {WORDS FOODS "pea\tmuch\t0\t100\t\n" RULES, "p/title-foods.tsv:2: \"much\" is no number\n"},
    {WORDS FOODS "pea\t1\t\t100\t\n" RULES,
     "p/title-foods.tsv:2: a number of 0 or more is missing\n"},
    {WORDS FOODS RULES "stew\t\t\t\t\t\t\tsavory\t\tStew\t\t\n",
     "p/title-rules.tsv:2: \"stew\" is no dish's word of this pack\n"},
    {WORDS FOODS RULES "\tbean\t\tpoach|boil\t\twok\t\tsavory\t\tSoup\t\t\n",
     "p/title-rules.tsv:2: \"bean\" is no food, mark or group of this pack\n"
     "p/title-rules.tsv:2: \"poach\" is no action or mark of this pack\n"
     "p/title-rules.tsv:2: \"wok\" is no vessel of this pack\n"},
    {WORDS FOODS RULES "\t\t\t\t\t\tmaybe\tsour\t\tSoup\t\t\n",
     "p/title-rules.tsv:2: \"maybe\": yes or no is needed\n"
     "p/title-rules.tsv:2: \"sour\": savory or sweet is needed\n"},
    {WORDS FOODS RULES "\t\t\t\t\t\t\tsavory\t\t\t{1} soup\t{1} soup\n",
     "p/title-rules.tsv:2: the title \"{1} soup\" needs blanks for 2 foods: {1} or {4} for the "
     "first, {2} or {5} for the second\n"},
    {"== p/pack.list\ntitle-foods.tsv\n" FOODS, "the pack has no table \"title-rules.tsv\"\n"},
};

static void problems_text(const struct problems *p, struct buffer *out)
{
    for (size_t i = 0; i < p->count; i++) {
        if (p->at[i].at.file)
            buffer_format(out, "%s:%u: ", p->at[i].at.file, p->at[i].at.line);
        buffer_format(out, "%s\n", p->at[i].message);
    }
}

static void test_mistakes(void **state)
{
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof mistakes / sizeof *mistakes; i++) {
        struct test_pack t;
        struct titles titles = {{0}, {0}};
        struct foods foods = {0};
        struct buffer out = {0};
        test_pack_open(&t, text_from(mistakes[i].pack));
        assert_non_null(t.pack);
        assert_int_equal(titles_load(&titles, &foods, &o->arena, t.pack, &t.problems),
                         !*mistakes[i].problems);
        problems_text(&t.problems, &out);
        buffer_put_char(&out, '\0');
        assert_string_equal(buffer_text(&out).at, mistakes[i].problems);
        buffer_release(&out);
        test_pack_close(&t);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_titles),
        cmocka_unit_test(test_named),
        cmocka_unit_test(test_mistakes),
    };
    return cmocka_run_group_tests_name("title", tests, open_setup, open_teardown);
}
