/* tests/published/test_corpus_weights.c: how many of the weighable ingredient lines of tests/corpus
 * get grams with a source. The lines are the hand-made gold; the weights are USDA SR28's. Weighable
 * is a line with an amount, in a unit that has a size or is counted; not a handful, splash,
 * drizzle, knob, scoop, bunch or sprig or a depth in inches, which have
 * none, nor a package whose size was not said, nor a number whose unit the gold notes as missing.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include <dirent.h>
#include <jansson.h>

#include "kitchen/weight.h"

#define CORPUS "tests/corpus"
#define FLOOR 95 /* per cent */

struct count {
    size_t lines, weighable, weighed;
};

static bool is_weighable(const char *unit, bool packed)
{
    static const char *const vague[] = {"handful", "splash",     "drizzle", "knob",  "scoop",
                                        "inch",    "centimeter", "thumb",   "bunch", "sprig"};
    static const char *const packs[] = {"can", "jar", "packet", "bottle",
                                        "bag", "box", "carton", "tub"};
    for (size_t i = 0; i < sizeof vague / sizeof *vague; i++)
        if (strcmp(unit, vague[i]) == 0)
            return false;
    for (size_t i = 0; !packed && i < sizeof packs / sizeof *packs; i++)
        if (strcmp(unit, packs[i]) == 0)
            return false;
    return true;
}

static struct ratio to_ratio(const json_t *n)
{
    return ratio_make((int64_t) (json_number_value(n) * 10000 + 0.5), 10000);
}

static void read_strings(struct open_kitchen *o, const json_t *array, text_list *list)
{
    for (size_t i = 0; i < json_array_size(array); i++)
        *LIST_ADD(&o->arena, list) = text_from(json_string_value(json_array_get(array, i)));
}

static bool names_food(const json_t *foods, const char *name)
{
    for (size_t i = 0; i < json_array_size(foods); i++)
        if (strcmp(json_string_value(json_array_get(foods, i)), name) == 0)
            return true;
    return false;
}

/* Whether the gold notes that this food's number had no unit. */
static bool lacks_unit(const json_t *gold, size_t dish, const json_t *foods)
{
    size_t i;
    const json_t *problem;
    json_array_foreach(
        json_object_get(gold, "problems"), i,
        problem) if (strcmp(json_string_value(json_object_get(problem, "kind")), "no-unit") == 0
                     && json_integer_value(json_object_get(problem, "dish")) == (json_int_t) dish
                     && names_food(
                         foods, json_string_value(json_object_get(problem, "about")))) return true;
    return false;
}

static void count_line(struct open_kitchen *o, const json_t *gold, size_t dish, const json_t *line,
                       struct count *c)
{
    const json_t *package = json_object_get(line, "package"),
                 *foods = json_object_get(line, "food");
    const char *unit = json_string_value(json_object_get(line, "unit"));
    c->lines++;
    if (!unit || !is_weighable(unit, json_is_object(package))
        || (!*unit && lacks_unit(gold, dish, foods)))
        return;
    c->weighable++;
    struct ingredient made = {.amount = {.known = true, .unit = text_from(unit)}};
    made.amount.min = to_ratio(json_object_get(line, "min"));
    made.amount.max = to_ratio(json_object_get(line, "max"));
    made.food = text_from(json_string_value(json_array_get(foods, 0)));
    made.kind = text_from(json_string_value(json_array_get(foods, json_array_size(foods) - 1)));
    read_strings(o, json_object_get(line, "prep"), &made.prep);
    if (json_is_object(package)) {
        made.package = made.amount;
        made.package.min = made.package.max = to_ratio(json_object_get(package, "min"));
        made.package.unit = text_from(json_string_value(json_object_get(package, "unit")));
    }
    struct text why = TEXT_EMPTY;
    struct weight w = weigh(o->kitchen, &o->arena, NULL, &made, &why);
    if (w.known)
        assert_true(w.source.length > 0 && w.min > 0 && w.max >= w.min);
    else
        print_message("  no weight: %s: %.*s\n", json_string_value(json_array_get(foods, 0)),
                      TEXT(why));
    c->weighed += w.known;
}

static void count_file(struct open_kitchen *o, const char *name, struct count *c)
{
    char path[300];
    json_error_t error;
    snprintf(path, sizeof path, CORPUS "/%s", name);
    json_t *gold = json_load_file(path, 0, &error), *dish, *line;
    size_t i, j;
    assert_non_null(gold);
    json_array_foreach(json_object_get(gold, "dishes"), i, dish)
        json_array_foreach(json_object_get(dish, "ingredients"), j, line)
            count_line(o, gold, i, line, c);
    json_decref(gold);
    arena_reset(&o->arena);
}

static void test_corpus(void **state)
{
    struct count c = {0, 0, 0};
    DIR *folder = opendir(CORPUS);
    assert_non_null(folder);
    for (struct dirent *entry = readdir(folder); entry; entry = readdir(folder))
        if (strstr(entry->d_name, ".gold.json"))
            count_file(*state, entry->d_name, &c);
    closedir(folder);
    assert_true(c.weighable > 300);
    print_message("figure: %zu of %zu weighable ingredient lines of the corpus have a published "
                  "weight (%.1f %%; %zu lines in all)\n",
                  c.weighed, c.weighable, 100.0 * (double) c.weighed / (double) c.weighable,
                  c.lines);
    assert_true(c.weighed * 100 >= c.weighable * FLOOR);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_corpus)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
