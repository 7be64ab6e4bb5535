/* tests/published/test_units_checks.c: every row of units-checks.tsv, which is what GNU Units 2.22
 * (Debian package `units`) printed for the command in the row, against the kitchen's own
 * arithmetic. Units and temperatures: the same to the six figures of the column `value`. Densities:
 * GNU Units has them from a cake book and the kitchen from USDA SR28, so the two must agree within
 * a tenth, or, where the row names a way of filling a cup that USDA does not have, within the tenth
 * that flour is known to vary by (113 to 142 g a cup).
 * SPDX-License-Identifier: MIT */
#include "published/published.h"

#include <math.h>

#include "kitchen/convert.h"
#include "kitchen/weight.h"

enum { ID, GROUP, QUESTION, HAVE, WANT, VALUE };

#define SAME 1e-5   /* six figures */
#define NEAR 0.1    /* two books about one food */
#define FILLED 0.26 /* one cup, sifted or scooped */

/* GNU's names where ours differ. */
static const struct {
    const char *gnu, *unit;
} unit_names[] = {
    {"uscup", "cup"},
    {"ustablespoon", "tablespoon"},
    {"usteaspoon", "teaspoon"},
    {"usfloz", "fluid-ounce"},
    {"uspint", "pint"},
    {"usquart", "quart"},
    {"usgallon", "gallon"},
    {"ml", "milliliter"},
    {"l", "liter"},
    {"metriccup", "metric-cup"},
    {"legalcup", "label-cup"},
    {"legaltablespoon", "label-tablespoon"},
    {"brpint", "imperial-pint"},
    {"brfloz", "imperial-fluid-ounce"},
    {"brquart", "imperial-quart"},
    {"brgallon", "imperial-gallon"},
    {"brgill", "imperial-gill"},
    {"brcup", "imperial-cup"},
    {"brtablespoon", "metric-tablespoon"},
    {"brdessertspoon", "dessertspoon"},
    {"australiatablespoon", "australian-tablespoon"},
    {"australiateaspoon", "australian-teaspoon"},
    {"japancup", "japanese-cup"},
    {"inch^3", "cubic-inch"},
    {"number10can", "number-10-can"},
    {"number2.5can", "number-2.5-can"},
    {"number2can", "number-2-can"},
    {"oz", "ounce"},
    {"g", "gram"},
    {"lb", "pound"},
    {"kg", "kilogram"},
    {"stickbutter", "butter-stick"},
    {"cm", "centimeter"},
    {"mm", "millimeter"},
    {"scoop(16)", "number-16-scoop"},
    {"scoop(40)", "number-40-scoop"},
    {"ethanoldensity", ""},
};

/* GNU's foods, what we call them, and how near the two books are. */
static const struct {
    const char *gnu, *food;
    double within;
} foods[] = {
    {"butter", "butter", NEAR},
    {"butter_clarified", "ghee", NEAR},
    {"shortening", "shortening", NEAR},
    {"oil", "vegetable oil", NEAR},
    {"cakeflour_sifted", "flour", FILLED},
    {"cakeflour_spooned", "flour", FILLED},
    {"cakeflour_scooped", "flour", FILLED},
    {"flour_sifted", "flour", FILLED},
    {"flour_spooned", "flour", NEAR},
    {"flour_scooped", "flour", FILLED},
    {"breadflour_sifted", "bread flour", FILLED},
    {"breadflour_spooned", "bread flour", NEAR},
    {"breadflour_scooped", "bread flour", FILLED},
    {"cornstarch", "cornstarch", NEAR},
    {"cocoa_sifted", "cocoa", FILLED},
    {"cocoa_spooned", "cocoa", NEAR},
    {"dutchcocoa_spooned", "dutch-process cocoa powder", NEAR},
    {"heavycream", "heavy cream", NEAR},
    {"milk", "milk", NEAR},
    {"sourcream", "sour cream", NEAR},
    {"molasses", "molasses", NEAR},
    {"cornsyrup", "corn syrup", NEAR},
    {"honey", "honey", NEAR},
    {"sugar", "sugar", NEAR},
    {"powdered_sugar", "powdered sugar", NEAR},
    {"brownsugar_light", "brown sugar", NEAR},
    {"brownsugar_dark", "brown sugar", NEAR},
    {"baking_powder", "baking powder", NEAR},
    {"salt", "salt", NEAR},
    {"koshersalt", "flaky salt", NEAR},
};

static const struct unit *unit_of(const struct units *u, struct text gnu)
{
    for (size_t i = 0; i < sizeof unit_names / sizeof *unit_names; i++)
        if (text_is(gnu, unit_names[i].gnu))
            return unit_find(u,
                             text_from(*unit_names[i].unit ? unit_names[i].unit : "no such unit"));
    return unit_find(u, gnu);
}

/* "1|3", "2.25" */
static struct ratio gnu_number(struct text t)
{
    char room[32];
    assert_true(t.length < sizeof room);
    for (size_t i = 0; i < t.length; i++)
        room[i] = t.at[i] == '|' ? '/' : t.at[i];
    return ratio_read(room, t.length);
}

/* One term: "1|3 uscup", "scoop(16)", "uscup flour_spooned". */
struct term {
    struct ratio number;
    const struct unit *unit;
    struct text food;
};

static struct term read_term(const struct units *u, struct text t)
{
    struct term term = {.number = RATIO(1), .food = TEXT_EMPTY};
    struct text word, rest = text_trim(t);
    text_part(&rest, ' ', &word);
    if (word.at[0] >= '0' && word.at[0] <= '9') {
        term.number = gnu_number(word);
        text_part(&rest, ' ', &word);
    }
    term.unit = unit_of(u, word);
    if (rest.at && rest.length)
        term.food = rest;
    return term;
}

/* "2 lb + 6 oz" in the wanted unit. */
static double convert_sum(const struct units *u, struct text have, const struct unit *want)
{
    struct text part;
    double sum = 0;
    while (text_part(&have, '+', &part)) {
        struct term t = read_term(u, part);
        sum += t.unit ? ratio_double(convert_number(t.number, t.unit, want)) : NAN;
    }
    return sum;
}

/* "8 inch 8 inch 2 inch", "pi (4.5 inch)^2 2 inch": by the inch's own factor, into a volume. */
static double pan_volume(const struct units *u, struct text have, const struct unit *want)
{
    double inch = ratio_double(unit_find(u, TEXT_OF("inch"))->factor),
           cubic = ratio_double(want->factor), volume = 1;
    struct text word;
    if (text_starts(have, "pi ("))
        return 3.14159265358979 * 4.5 * 4.5 * 2 * inch * inch * inch / cubic;
    while (text_part(&have, ' ', &word))
        if (word.at[0] >= '0' && word.at[0] <= '9')
            volume *= ratio_double(gnu_number(word)) * inch;
    return volume / cubic;
}

/* "tempF(32)", "gasmark(0.25)" to "tempC"; and differences, "25 degF" to "degC". */
static double degrees(const struct kitchen *k, struct text have, struct text want)
{
    size_t open = text_find(have, '(', 0);
    char to = text_starts(want, "gas") ? 'G' : want.at[want.length - 1];
    struct ratio zero = RATIO(0);
    if (open == have.length) { /* a difference */
        struct ratio n = gnu_number(text_slice(have, 0, text_find(have, ' ', 0)));
        char from = have.at[have.length - 1];
        return ratio_double(
            ratio_subtract(convert_degrees(k, n, from, to), convert_degrees(k, zero, from, to)));
    }
    struct text number = text_slice(have, open + 1, have.length - 1);
    bool minus = text_starts(number, "-");
    struct ratio n = gnu_number(minus ? text_slice(number, 1, number.length) : number);
    char from = text_starts(have, "gas") ? 'G' : have.at[open - 1];
    return ratio_double(convert_degrees(k, minus ? ratio_subtract(zero, n) : n, from, to));
}

static struct measured weigh_gnu(struct open_kitchen *o, struct text gnu, const struct unit *unit,
                                 double *within)
{
    for (size_t i = 0; i < sizeof foods / sizeof *foods; i++)
        if (text_is(gnu, foods[i].gnu)) {
            struct ingredient line = {.food = text_from(foods[i].food)};
            *within = foods[i].within;
            return weigh_one(o->kitchen, &o->arena, NULL, &line, unit);
        }
    return (struct measured){.known = false};
}

/* Eggs count; the rest is "1 uscup butter" to "g", or "100 g" to "ustablespoon butter". */
static double density(struct open_kitchen *o, struct text have, struct text want, double *within)
{
    const struct units *u = &o->kitchen->units;
    static const char *const eggs[][2] = {
        {"1 egg", "egg"}, {"1 eggwhite", "egg white"}, {"1 eggyolk", "egg yolk"}};
    *within = NEAR;
    for (size_t i = 0; i < 3; i++)
        if (text_is(have, eggs[i][0])) {
            struct ingredient line = {.food = text_from(eggs[i][1])};
            return ratio_double(
                weigh_one(o->kitchen, &o->arena, NULL, &line, unit_find(u, TEXT_EMPTY)).min);
        }
    struct term from = read_term(u, have), to = read_term(u, want);
    bool reverse = to.food.length > 0;
    struct measured one =
        weigh_gnu(o, reverse ? to.food : from.food, reverse ? to.unit : from.unit, within);
    if (!one.known)
        return NAN;
    double grams = (ratio_double(one.min) + ratio_double(one.max)) / 2;
    return reverse ? ratio_double(from.number) / grams : ratio_double(from.number) * grams;
}

static double answer(struct open_kitchen *o, const struct published_row *row, double *within)
{
    struct text group = row->cells[GROUP], have = row->cells[HAVE], want = row->cells[WANT];
    const struct units *u = &o->kitchen->units;
    *within = SAME;
    if (text_is(group, "density"))
        return density(o, have, want, within);
    if (text_is(group, "temperature") || text_is(group, "gas-mark"))
        return degrees(o->kitchen, have, want);
    if (text_is(group, "volume")
        && (text_starts(have, "pi (") || text_starts(have, "8 inch 8")
            || text_starts(have, "9 inch 13")))
        return pan_volume(u, have, unit_of(u, want));
    return convert_sum(u, have, unit_of(u, want));
}

/* Chemistry and the volume of eggs are nothing that the kitchen works out: boiling points of syrup,
 * pure alcohol. */
static bool is_kitchen(const struct published_row *row)
{
    static const char *const not_ours[] = {"U155", "U156", "U157", "U158", "U159"};
    for (size_t i = 0; i < 5; i++)
        if (text_is(row->cells[ID], not_ours[i]))
            return false;
    return true;
}

static void test_rows(void **state)
{
    struct open_kitchen *o = *state;
    struct published p = published_read(&o->arena, "tests/published/units-checks.tsv");
    size_t checked = 0, wrong = 0;
    for (size_t i = 0; i < p.rows.count; i++) {
        const struct published_row *row = &p.rows.at[i];
        double within, value = strtod(open_string(o, row->cells[VALUE]), NULL);
        if (!is_kitchen(row))
            continue;
        double got = answer(o, row, &within), off = fabs(got - value) / fmax(fabs(value), 1e-3);
        checked++;
        if (off <= within)
            continue;
        wrong++;
        print_error("%.*s %.*s: GNU Units %g, kitchen %g\n", TEXT(row->cells[ID]),
                    TEXT(row->cells[QUESTION]), value, got);
    }
    print_message("figure: %zu of %zu rows of units-checks.tsv agree with the kitchen; %zu are not "
                  "of the kitchen\n",
                  checked - wrong, checked, p.rows.count - checked);
    assert_int_equal(checked, 154);
    assert_int_equal(wrong, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test_teardown(test_rows, open_reset)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
