/* tests/kitchen/test_time.c: a dish's times. ISO 8601 forms as in ISO 8601-1:2019, 5.5.2 (from
 * memory), which schema.org
 * asks for. What counts as waiting: common practice.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#include <math.h>

#include "kitchen/time.h"

struct said {
    const char *of;
    double min, max;
    const char *each;
    bool beside;
};

static struct dish timed(struct open_kitchen *o, const struct said *said, size_t batches)
{
    struct dish d = {.id = 1};
    for (size_t i = 0; said[i].of; i++) {
        struct step *step = LIST_ADD(&o->arena, &d.steps);
        step->beside = said[i].beside;
        *LIST_ADD(&o->arena, &step->actions) = text_from(said[i].of);
        *LIST_ADD(&o->arena, &step->durations) = (struct duration){.min = said[i].min,
                                                                   .max = said[i].max,
                                                                   .of = text_from(said[i].of),
                                                                   .each = text_from(said[i].each)};
    }
    time_dish(o->kitchen, &o->arena, &d, batches);
    return d;
}
#define TIMED(o, batches, ...) \
    timed((o), (const struct said[]){__VA_ARGS__, {NULL, 0, 0, NULL, false}}, (batches))

static void check(const struct time_sum *t, double min, double max)
{
    assert_true(t->known);
    assert_true(t->min == min && t->max == max);
}

static void test_sums(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = TIMED(o, 0, {"knead", 480, 600, NULL, false}, {"rise", 3600, 5400, NULL, false},
                          {"bake", 1500, 1800, NULL, false}, {"cool", 600, 600, NULL, false});
    check(&d.active, 480, 600);
    check(&d.rest, 4200, 6000);
    check(&d.cook, 1500, 1800);
    check(&d.total, 6180, 8400);
    assert_string_equal(
        open_string(o, d.total.from),
        "knead 8 to 10 minutes, bake 25 to 30 minutes, rise 1 to 1½ hours, cool 10 minutes");
}

/* "Six hours, but overnight is best" is no fourteen. */
static void test_instead(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = {.id = 1};
    struct step *step = LIST_ADD(&o->arena, &d.steps);
    *LIST_ADD(&o->arena, &step->actions) = TEXT_OF("chill");
    *LIST_ADD(&o->arena, &step->durations) =
        (struct duration){.min = 21600, .max = 21600, .of = TEXT_OF("chill")};
    *LIST_ADD(&o->arena, &step->durations) =
        (struct duration){.min = 28800, .max = 43200, .of = TEXT_OF("chill"), .instead = true};
    time_dish(o->kitchen, &o->arena, &d, 0);
    check(&d.rest, 21600, 21600);
    check(&d.total, 21600, 21600);
}

/* What is stirred on the heat cooks; beaten in a bowl, or stirred once it rested, it is worked. */
static void test_on_the_heat(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = TIMED(o, 0, {"fry", 300, 300, NULL, false}, {"stir", 60, 60, NULL, false});
    check(&d.cook, 360, 360);
    assert_false(d.active.known);
    d = TIMED(o, 0, {"fry", 300, 300, NULL, false}, {"whisk", 120, 120, NULL, false},
              {"cool", 600, 600, NULL, false}, {"stir", 60, 60, NULL, false});
    check(&d.cook, 300, 300);
    check(&d.active, 180, 180);
    d = TIMED(o, 0, {"stir", 60, 60, NULL, false}, {"fry", 300, 300, NULL, false});
    check(&d.active, 60, 60);
}

static void test_beside(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d =
        TIMED(o, 0, {"marinate", 7200, 7200, NULL, false}, {"preheat", 900, 900, NULL, false},
              {"roast", 2400, 2400, NULL, false}, {"simmer", 1200, 1200, NULL, true});
    check(&d.total, 9600, 9600);
    check(&d.rest, 7200, 7200);
    check(&d.cook, 2400, 2400);
    assert_false(d.active.known);
    assert_string_equal(open_string(o, d.total.from), "roast 40 minutes, marinate 2 hours, "
                                                      "preheat 15 minutes meanwhile, not added, "
                                                      "simmer 20 minutes meanwhile, not added");
    /* What runs beside may take longer than what it runs beside. */
    d = TIMED(o, 0, {"fry", 300, 300, NULL, false}, {"boil", 1200, 1200, NULL, true});
    check(&d.total, 1200, 1200);
    check(&d.cook, 1200, 1200);
}

static void test_each(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d = TIMED(o, 0, {"sear", 240, 300, "side", false});
    check(&d.cook, 480, 600);
    assert_string_equal(open_string(o, d.cook.from), "sear 4 to 5 minutes × 2");
    d = TIMED(o, 3, {"fry", 300, 300, "batch", false});
    check(&d.total, 900, 900);
    d = TIMED(o, 0, {"fry", 300, 300, "batch", false});
    check(&d.total, 300, 300);
    assert_string_equal(open_string(o, d.total.from), "fry 5 minutes for each batch, counted once");
}

static void test_open_and_bad(void **state)
{
    struct open_kitchen *o = *state;
    struct dish d =
        TIMED(o, 0, {"chill", 7200, INFINITY, NULL, false}, {"bake", 600, 600, NULL, false});
    check(&d.total, 7800, INFINITY);
    assert_string_equal(open_string(o, d.rest.from), "chill at least 2 hours");
    d = TIMED(o, 0, {"bake", NAN, 600, NULL, false}, {"bake", -5, 600, NULL, false},
              {"bake", 1e300, 1e300, NULL, false});
    assert_false(d.total.known);
    assert_true(d.total.min == 0 && d.total.max == 0);
}

static void test_iso8601(void **state)
{
    static const struct {
        double seconds;
        const char *written;
    } cases[] = {{2700, "PT45M"}, {5400, "PT1H30M"}, {93600, "P1DT2H"},  {0, "PT0S"},
                 {86400, "P1D"},  {45, "PT45S"},     {3661, "PT1H1M1S"}, {172800, "P2D"},
                 {-1, ""},        {INFINITY, ""},    {NAN, ""},          {1e300, ""}};
    struct open_kitchen *o = *state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
        assert_string_equal(open_string(o, iso8601_duration(&o->arena, cases[i].seconds)),
                            cases[i].written);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(test_sums, open_reset),
        cmocka_unit_test_teardown(test_instead, open_reset),
        cmocka_unit_test_teardown(test_on_the_heat, open_reset),
        cmocka_unit_test_teardown(test_beside, open_reset),
        cmocka_unit_test_teardown(test_each, open_reset),
        cmocka_unit_test_teardown(test_open_and_bad, open_reset),
        cmocka_unit_test_teardown(test_iso8601, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
