/* tests/split/test_segment.c: a chain of segments is looked through by leaps, and where the dishes
 * stand is kept up as they take turns: both against the plain way to tell the same.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "split/segment.h"
#include "split/standing.h"

#define SEGMENTS 500
#define SENTENCES 1500
#define DISHES 90 /* more than are told apart */

/* Numerical Recipes' generator, from memory: any numbers will do, if they are the same each time.
 */
static uint32_t next_random(uint32_t *state)
{
    return *state = *state * 1664525u + 1013904223u;
}

static const struct segment *at_by_steps(const struct segment *s, size_t sentence)
{
    while (s && s->first > sentence)
        s = s->before;
    return s;
}

static void leaps_find_what_steps_find(void **state)
{
    (void) state;
    static struct segment chain[SEGMENTS + 1];
    uint32_t seed = 7;
    size_t first = 0;
    chain[0] = (struct segment){.dish = NO_DISH};
    for (size_t n = 1; n <= SEGMENTS; n++) {
        first += next_random(&seed) % 5 / 4 + next_random(&seed) % 4;
        chain[n] = segment_after(&chain[n - 1], first, next_random(&seed) % DISHES, n);
        for (size_t sentence = 0; sentence <= first + 1; sentence += 1 + n / 50)
            assert_ptr_equal(segment_at(&chain[n], sentence), at_by_steps(&chain[n], sentence));
    }
}

/* What `stand` keeps, told from all sentences so far. */
struct plain {
    size_t owner[SENTENCES];
    size_t count, dishes;
};

static size_t last_of(const struct plain *p, size_t dish)
{
    for (size_t i = p->count; i-- > 0;)
        if (p->owner[i] == dish)
            return i;
    return SIZE_MAX;
}

static size_t named_by_steps(const struct plain *p, const struct feature *f, size_t dish)
{
    for (size_t i = p->count; i-- > 0;)
        if (p->owner[i] == dish && says_name(&f[i]))
            return i + 1;
    return 0;
}

static size_t left_since_plain(const struct plain *p, size_t dish, size_t on)
{
    size_t found = 0;
    for (size_t d = 0; d < p->dishes; d++)
        found += d != on && d != dish && last_of(p, d) > last_of(p, dish);
    return found < LEFT_KEPT ? found : LEFT_KEPT;
}

static void check_standings(const struct standings *s, const struct plain *p,
                            const struct feature *f)
{
    size_t open = 0;
    assert_int_equal(s->dishes, p->dishes);
    for (size_t d = first_kept(s); d < s->dishes; d++) {
        assert_int_equal(standing_of(s, d)->last, last_of(p, d));
        assert_int_equal(standing_of(s, d)->named, named_by_steps(p, f, d));
        open += d != s->on && !is_finished(standing_of(s, d));
        if (d != s->on)
            assert_int_equal(left_since(s, d), left_since_plain(p, d, s->on));
    }
    assert_int_equal(unfinished(s), open);
}

static void standings_are_kept_up(void **state)
{
    (void) state;
    static struct feature f[SENTENCES];
    static struct plain p;
    struct standings s, copy;
    uint32_t seed = 11;
    standings_init(&s);
    for (size_t i = 0; i < SENTENCES; i++) {
        f[i] = (struct feature){.timed = next_random(&seed) % 7 == 0,
                                .finished = next_random(&seed) % 9 == 0,
                                .opening_title = {next_random(&seed) % 2, 0},
                                .closing_title = {1, next_random(&seed) % 5 / 4}};
        bool begins = !s.dishes || (next_random(&seed) % 12 == 0 && s.dishes < DISHES);
        size_t kept = s.dishes - first_kept(&s);
        size_t dish = begins                        ? s.dishes
                      : next_random(&seed) % 3 == 0 ? first_kept(&s) + next_random(&seed) % kept
                                                    : s.on;
        stand(&s, f, i, dish, true);
        p.owner[p.count++] = dish;
        p.dishes += begins;
        standings_copy(&copy, &s);
        check_standings(&copy, &p, f);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(leaps_find_what_steps_find),
        cmocka_unit_test(standings_are_kept_up),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
