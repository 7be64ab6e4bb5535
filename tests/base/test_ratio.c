/* base/test_ratio.c: exact numbers, row by row. "up" is "and upwards", "none" is no number.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <math.h>
#include <string.h>

#include "base/ratio.h"

#define ROWS(rows) (sizeof(rows) / sizeof *(rows))
/* The largest number and the one below it. */
#define MOST "9223372036854775807"
#define LESS "9223372036854775806"

static int64_t whole_of(const char **at)
{
    int64_t n = 0;
    for (; **at >= '0' && **at <= '9'; (*at)++)
        n = n * 10 + (**at - '0');
    return n;
}

/* "-3", "1/2", "up", "none"; not what is tested, which takes fewer digits and no minus. */
static struct ratio number(const char *written)
{
    if (strcmp(written, "up") == 0)
        return RATIO_UPWARDS;
    if (strcmp(written, "none") == 0)
        return RATIO_NONE;
    int64_t sign = *written == '-' ? -1 : 1;
    written += *written == '-';
    struct ratio r = {sign * whole_of(&written), 1};
    if (*written++ == '/')
        r.under = whole_of(&written);
    return r;
}

static void assert_ratio(struct ratio is, const char *wanted)
{
    struct ratio want = number(wanted);
    if (is.over != want.over || is.under != want.under)
        fail_msg("%lld/%lld instead of %s", (long long) is.over, (long long) is.under, wanted);
}

static void reading(void **state)
{
    static const struct {
        const char *text, *number;
    } rows[] = {
        {"0", "0"},
        {"3", "3"},
        {"12", "12"},
        {"1/2", "1/2"},
        {"2/4", "1/2"},
        {"1 1/2", "3/2"},
        {"10 3/4", "43/4"},
        {"2.75", "11/4"},
        {"0.5", "1/2"},
        {"1.0", "1"},
        {"", "none"},
        {"x", "none"},
        {"1x", "none"},
        {"1 ", "none"},
        {"1/", "none"},
        {"/2", "none"},
        {"1/0", "none"},
        {"1 1", "none"},
        {"1 1/", "none"},
        {"1 1/2x", "none"},
        {"1.", "none"},
        {".5", "none"},
        {"1.5x", "none"},
        {"1 1.5", "none"},
        {"1-2", "none"},
        {"-1", "none"},
        {"1/2/3", "none"},
        {"999999999999999999", "999999999999999999"},
        {"1000000000000000000", "none"},
        {"0.000000000000000001", "1/1000000000000000000"},
        {"0.0000000000000000001", "none"},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++)
        assert_ratio(ratio_read(rows[i].text, strlen(rows[i].text)), rows[i].number);
}

static void making(void **state)
{
    (void) state;
    assert_ratio(ratio_make(6, 4), "3/2");
    assert_ratio(ratio_make(6, -4), "-3/2");
    assert_ratio(ratio_make(-6, -4), "3/2");
    assert_ratio(ratio_make(0, 7), "0");
    assert_ratio(ratio_make(1, 0), "none");
    assert_ratio(ratio_make(INT64_MIN, 1), "none");
    assert_ratio(ratio_make(1, INT64_MIN), "none");
    assert_ratio(ratio_make(INT64_MAX, INT64_MAX), "1");
}

static void counting(void **state)
{
    static const struct {
        const char *a, *b, *sum, *difference, *product, *quotient;
        int order;
    } rows[] = {
        {"1/3", "1/6", "1/2", "1/6", "1/18", "2", 1},
        {"1/2", "1/2", "1", "0", "1/4", "1", 0},
        {"2", "3", "5", "-1", "6", "2/3", -1},
        {"-1", "2", "1", "-3", "-2", "-1/2", -1},
        {"-1/2", "-1/3", "-5/6", "-1/6", "1/6", "3/2", -1},
        {"3", "0", "3", "3", "0", "none", 1},
        {"0", "3", "3", "-3", "0", "0", -1},
        {"up", "2", "up", "up", "up", "up", 1},
        {"2", "up", "up", "none", "up", "none", -1},
        {"up", "up", "up", "none", "up", "none", 0},
        {"up", "0", "up", "up", "none", "none", 1},
        {"up", "-2", "up", "up", "none", "none", 1},
        {"none", "2", "none", "none", "none", "none", -1},
        {"2", "none", "none", "none", "none", "none", 1},
        {"none", "up", "none", "none", "none", "none", -1},
        {"none", "none", "none", "none", "none", "none", 0},
        {MOST, "1", "none", LESS, MOST, MOST, 1},
        {LESS, "1", MOST, "9223372036854775805", LESS, LESS, 1},
        {MOST, "2", "none", "9223372036854775805", "none", MOST "/2", 1},
        {"1/" MOST, "1/" LESS, "none", "none", "none", LESS "/" MOST, -1},
        {"1/" MOST, MOST, "none", "none", "1", "none", -1},
        {MOST, "1/7", "none", "none", "1317624576693539401", "none", 1},
        {"3/" MOST, MOST "/7", "none", "none", "3/7", "none", -1},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct ratio a = number(rows[i].a), b = number(rows[i].b);
        assert_ratio(ratio_add(a, b), rows[i].sum);
        assert_ratio(ratio_add(b, a), rows[i].sum);
        assert_ratio(ratio_subtract(a, b), rows[i].difference);
        assert_ratio(ratio_multiply(a, b), rows[i].product);
        assert_ratio(ratio_multiply(b, a), rows[i].product);
        assert_ratio(ratio_divide(a, b), rows[i].quotient);
        assert_int_equal(ratio_compare(a, b), rows[i].order);
        assert_int_equal(ratio_compare(b, a), -rows[i].order);
        assert_int_equal(ratio_equal(a, b), rows[i].order == 0);
    }
}

static void rounding(void **state)
{
    static const struct {
        const char *a, *step, *floor, *round;
    } rows[] = {
        {"7/4", "1", "1", "2"},       {"3/2", "1", "1", "2"},       {"5/4", "1", "1", "1"},
        {"2", "1", "2", "2"},         {"0", "1", "0", "0"},         {"-1/4", "1", "-1", "0"},
        {"-1/2", "1", "-1", "0"},     {"-3/4", "1", "-1", "-1"},    {"-2", "1", "-2", "-2"},
        {"1/3", "1/4", "1/4", "1/4"}, {"3/8", "1/4", "1/4", "1/2"}, {"187", "25", "175", "175"},
        {"188", "25", "175", "200"},  {"up", "1", "up", "up"},      {"none", "1", "none", "none"},
        {"1", "0", "none", "none"},
    };
    (void) state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_ratio(ratio_floor(number(rows[i].a), number(rows[i].step)), rows[i].floor);
        assert_ratio(ratio_round(number(rows[i].a), number(rows[i].step)), rows[i].round);
    }
}

static void asking(void **state)
{
    (void) state;
    assert_true(ratio_known(RATIO(0)) && ratio_known(RATIO_UPWARDS) && !ratio_known(RATIO_NONE));
    assert_true(ratio_finite(RATIO(0)) && !ratio_finite(RATIO_UPWARDS)
                && !ratio_finite(RATIO_NONE));
    assert_true(ratio_double(ratio_make(1, 4)) == 0.25);
    assert_true(isinf(ratio_double(RATIO_UPWARDS)) && isnan(ratio_double(RATIO_NONE)));
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(reading), cmocka_unit_test(making),
                                       cmocka_unit_test(counting), cmocka_unit_test(rounding),
                                       cmocka_unit_test(asking)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
