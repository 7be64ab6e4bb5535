/* tests/split/test_affinity.c: what goes with what (common practice, no source): of two things that
 * may be spoken of beside others, the one that common dishes have with them goes with them better.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>

#include <cmocka.h>

#include "split/affinity.h"

struct thing {
    const char *how, *word;
};

static const struct {
    struct thing have[3], better, worse;
} cases[] = {
    {{{"", "flour"}, {"", "sugar"}, {"", "egg"}}, {"", "baking powder"}, {"", "soy sauce"}},
    {{{"", "flour"}, {"", "sugar"}, {"", "egg"}}, {"", "vanilla"}, {"", "onion"}},
    {{{"", "soy sauce"}, {"", "ginger"}, {"", "scallion"}}, {"", "sesame oil"}, {"", "cinnamon"}},
    {{{"", "soy sauce"}, {"", "ginger"}, {"", "scallion"}}, {"", "star anise"}, {"", "yeast"}},
    {{{"", "onion"}, {"", "garlic"}, {"", "kidney bean"}}, {"", "cumin"}, {"", "vanilla"}},
    {{{"", "onion"}, {"", "garlic"}, {"", "kidney bean"}}, {"to ", "simmer"}, {"to ", "knead"}},
    {{{"", "yeast"}, {"", "bread flour"}, {"to ", "knead"}}, {"to ", "bake"}, {"to ", "simmer"}},
    {{{"", "spaghetti"}, {"", "parmesan"}, {"", "garlic"}}, {"", "basil"}, {"", "sugar"}},
    {{{"", "lettuce"}, {"", "cucumber"}, {"", "tomato"}}, {"to ", "toss"}, {"to ", "bake"}},
    {{{"", "lettuce"}, {"", "cucumber"}, {"", "tomato"}}, {"", "olive oil"}, {"", "yeast"}},
    {{{"", "chickpea"}, {"", "tahini"}, {"", "garlic"}}, {"", "lemon juice"}, {"", "cocoa powder"}},
    {{{"", "apple"}, {"", "cinnamon"}, {"", "butter"}}, {"", "brown sugar"}, {"", "fish sauce"}},
    {{{"", "onion"}, {"", "carrot"}, {"", "celery"}}, {"in ", "pot"}, {"in ", "cookie sheet"}},
};

static struct affinity read_things(const struct table *t, const struct thing *things, size_t count)
{
    struct affinity sum = {0};
    for (size_t i = 0; i < count && things[i].word; i++)
        affinity_add(&sum, t, things[i].how, text_from(things[i].word));
    return sum;
}

static void test_better(void **state)
{
    struct pack *k = pack_builtin();
    const struct table *t = pack_table(k, "goes-with");
    (void) state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct affinity have = read_things(t, cases[i].have, 3),
                        better = read_things(t, &cases[i].better, 1),
                        worse = read_things(t, &cases[i].worse, 1);
        double more = affinity_between(&have, &better), less = affinity_between(&have, &worse);
        if (have.count < 3 || better.count < 1 || more <= less)
            fail_msg("case %zu, %s: %g for %s, %g for %s", i, cases[i].have[0].word, more,
                     cases[i].better.word, less, cases[i].worse.word);
    }
    pack_free(k);
}

/* What the table does not have, and a pack without it, tell nothing. */
static void test_unknown(void **state)
{
    struct pack *k = pack_builtin();
    struct affinity sum = {0};
    (void) state;
    affinity_add(&sum, pack_table(k, "goes-with"), "",
                 text_from("a word of nobody's kitchen, and rather long for one, at that"));
    affinity_add(&sum, pack_table(k, "goes-with"), "to ", text_from("onion"));
    affinity_add(&sum, NULL, "", text_from("onion"));
    assert_true(sum.count == 0);
    assert_true(affinity_between(&sum, &sum) == 0);
    pack_free(k);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_better),
                                       cmocka_unit_test(test_unknown)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
