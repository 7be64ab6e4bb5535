/* pack/test_pattern.c: patterns over classes, run by PCRE2 over tag strings.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <pcre2.h>
#include <stdio.h>

#include "pack/load.h"
#include "packs.h"

/* A pack of one rule. */
static void open_rule(struct test_pack *t, const char *when, const char *give)
{
    struct buffer b = {0};
    buffer_format(
        &b, "== p/pack.list\nr.rules\n== p/r.rules\nstage amount\nrule r\n  when %s\n  give %s\n",
        when, give);
    buffer_put_string(&b, "  ex \"a\" -> nothing\n  ex \"b\" -> nothing\n  ex \"c\" -> nothing\n");
    test_pack_open(t, buffer_text(&b));
    buffer_release(&b);
}

static const struct rule *rule_of(const struct test_pack *t)
{
    size_t count = 0;
    const struct rule *rules = t->pack ? pack_rules(t->pack, STAGE_AMOUNT, &count) : NULL;
    return count == 1 ? rules : NULL;
}

/* "FOOD _FOOD" -> the tag string: each word a class name, `_` before it for each word that it has
 * more. */
static size_t tag_string(const char *names, unsigned char *out)
{
    size_t n = 0;
    struct text rest = text_from(names), word;
    while (line_word(&rest, &word)) {
        while (word.length && word.at[0] == '_') {
            out[n++] = TAG_INSIDE;
            word = text_slice(word, 1, word.length);
        }
        assert_true(tag_find(word, &out[n]));
        n++;
    }
    return n;
}

/* The match as "begin-end", then the same for each slot; "no" for none. */
static void put_match(const struct rule *rule, const unsigned char *tags, size_t length, bool jit,
                      struct buffer *b)
{
    pcre2_code *code = rule_compile(rule, jit);
    pcre2_match_data *found = pcre2_match_data_create_from_pattern(code, NULL);
    assert_non_null(found);
    int n = pcre2_match(code, tags, length, 0, 0, found, NULL);
    const PCRE2_SIZE *at = pcre2_get_ovector_pointer(found);
    assert_int_equal(pcre2_get_ovector_count(found), rule->slots_count + 1);
    for (int i = 0; i < n; i++) {
        if (at[2 * i] == PCRE2_UNSET)
            buffer_put_string(b, " -");
        else
            buffer_format(b, "%s%zu-%zu", i ? " " : "", at[2 * i], at[2 * i + 1]);
    }
    buffer_put_string(b, n > 0 ? "" : "no");
    buffer_put_char(b, '\0');
    pcre2_match_data_free(found);
    pcre2_code_free(code);
}

static const struct {
    const char *when, *tags, *match;
} matches[] = {
    {"FOOD", "OTHER FOOD", "1-2"},
    {"FOOD", "OTHER _FOOD OTHER", "1-3"},
    {"FOOD UNIT", "FOOD __UNIT", "0-4"},
    {"FOOD UNIT", "FOOD OTHER UNIT", "no"},
    {"FOOD UNIT?", "_FOOD _UNIT", "0-4"},
    {"FOOD  UNIT ?", "_FOOD OTHER", "0-2"},
    {"FOOD+", "OTHER FOOD _FOOD FOOD OTHER", "1-5"},
    {"FOOD{2}", "FOOD FOOD FOOD", "0-2"},
    {"FOOD{2,}", "FOOD FOOD FOOD", "0-3"},
    {"FOOD{1,2} UNIT", "FOOD FOOD FOOD UNIT", "1-4"},
    {"(FOOD | UNIT) OF", "UNIT OF", "0-2"},
    {"(FOOD UNIT)+ OF", "FOOD UNIT FOOD UNIT OF", "0-5"},
    {"UNIT ANY* FOOD", "UNIT OTHER _OF OTHER FOOD FOOD", "0-7"},
    {"UNIT ANY*? FOOD", "UNIT OTHER _OF OTHER FOOD FOOD", "0-6"},
    {"UNIT ANY FOOD", "UNIT __OTHER FOOD", "0-5"},
    {"UNIT ANY FOOD", "UNIT FOOD", "no"},
    {"^ FOOD", "OTHER FOOD", "no"},
    {"^ FOOD", "_FOOD", "0-2"},
    {"FOOD $", "FOOD FOOD OTHER", "no"},
    {"FOOD $", "OTHER FOOD", "1-2"},
    {"(^ | AND) FOOD", "OTHER AND FOOD", "1-3"},
    {"FOOD (?= OF)", "FOOD UNIT FOOD OF", "2-3"},
    {"FOOD (?! OF)", "FOOD OF FOOD _OF FOOD", "5-6"},
    {"(?! FOOD) ANY", "_FOOD _UNIT", "2-4"},
    {"(?<= OF) FOOD", "FOOD OF _FOOD", "2-4"},
    {"(?<= OF | AND) FOOD", "FOOD AND FOOD", "2-3"},
    {"(?<= ANY) FOOD", "FOOD FOOD", "1-2"},
    {"(?<= ANY) FOOD", "__FOOD", "no"}, /* what stands before must be another entry */
    {"(?<! OF) FOOD", "OF FOOD", "no"},
    {"(?<! OF) FOOD", "OF _FOOD", "no"}, /* not the second word of it either */
    {"(?<! OF|AND) FOOD", "OF FOOD AND FOOD OTHER _FOOD", "5-7"},
    {"(?<! ANY) FOOD", "_FOOD", "0-2"},
    {"(?<! ANY) FOOD", "OTHER _FOOD", "no"},
    {"<low:NUMBER> <unit:UNIT>?", "NUMBER FOOD", "0-1 0-1"},
    {"<low:NUMBER> TO <high:NUMBER> <unit:_>", "", ""}, /* refused: see below */
    {"<low:NUMBER> TO <high:NUMBER> <unit:UNIT>", "NUMBER TO _NUMBER UNIT", "0-5 0-1 2-4 4-5"},
    {"<food:FOOD (AND FOOD)*> OF", "_FOOD AND FOOD OF", "0-5 0-4"},
    {"(<unit:UNIT> OF | <unit:COUNTER>) <food:FOOD>", "COUNTER FOOD", "0-2 - 0-1 1-2"},
    {"<food:STATE <food2:FOOD>>", "STATE FOOD", "0-2 0-2 1-2"},
    /* signs that mean something to PCRE2, and tags over 127, are only tags here */
    {"OTHER", "FOOD", "no"},
    {"SORRY", "FOOD", "no"},
    {"OR", "OR", "0-1"},
    {"OPENER CLOSER STORY WILL IF", "OPENER CLOSER STORY WILL IF", "0-5"},
    {"AMOUNT OPTIONAL", "ARTICLE AMOUNT OPTIONAL", "1-3"},
    {"ARTICLE", "AMOUNT", "no"},
};

static void check_match(size_t i, bool jit)
{
    struct test_pack t;
    struct buffer b = {0};
    unsigned char tags[64];
    open_rule(&t, matches[i].when, "amount");
    const struct rule *rule = rule_of(&t);
    if (*matches[i].match == '\0') {
        assert_null(rule);
    } else {
        assert_non_null(rule);
        put_match(rule, tags, tag_string(matches[i].tags, tags), jit, &b);
        if (strcmp(b.at, matches[i].match) != 0)
            fail_msg("%s on %s gives %s, not %s", matches[i].when, matches[i].tags, b.at,
                     matches[i].match);
    }
    buffer_release(&b);
    test_pack_close(&t);
}

static void patterns_match(void **state)
{
    (void) state;
    for (size_t i = 0; i < sizeof matches / sizeof *matches; i++) {
        check_match(i, false);
        check_match(i, true);
    }
}

static bool has_bit(const struct rule *rule, unsigned char tag)
{
    return unit_set_has(&rule->needed, tag);
}

static void needed_units(void **state)
{
    static const struct {
        const char *when, *needed; /* as a tag string */
    } want[] = {
        {"FOOD UNIT", "FOOD UNIT"},
        {"FOOD? UNIT+", "UNIT"},
        {"FOOD{0,2} UNIT{1,2}", "UNIT"},
        {"(FOOD UNIT) OF*", "FOOD UNIT"},
        {"(FOOD UNIT)? OF", "OF"},
        {"(FOOD OF | UNIT OF) TO", "OF TO"},
        {"FOOD | UNIT", ""},
        {"<food:FOOD> (?= UNIT)", "FOOD"},
        {"(?<! OF) (?! UNIT) ANY FOOD", "FOOD"},
        {"(?<= OF) FOOD", "FOOD"},
        {"AMOUNT", "AMOUNT"},
    };
    (void) state;
    for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
        struct test_pack t;
        unsigned char tags[64];
        size_t n = tag_string(want[i].needed, tags), bits = 0;
        open_rule(&t, want[i].when, "amount");
        const struct rule *rule = rule_of(&t);
        assert_non_null(rule);
        for (unsigned tag = 0; tag < 256; tag++)
            bits += has_bit(rule, (unsigned char) tag);
        assert_int_equal(bits, n);
        for (size_t j = 0; j < n; j++)
            assert_true(has_bit(rule, tags[j]));
        test_pack_close(&t);
    }
}

/* ---- random patterns: what must hold for all of them */

static uint32_t seed;

static unsigned dice(unsigned sides)
{
    seed = seed * 1664525u + 1013904223u; /* Numerical Recipes' constants, from memory */
    return (seed >> 16) % sides;
}

static const char *const classes[] = {"FOOD", "UNIT", "OF", "AMOUNT", "ANY"};

static void put_random(struct buffer *b, unsigned depth)
{
    static const char *const looks[] = {"(?= ", "(?! ", "(?<= ", "(?<! "};
    static const char *const repeats[] = {"", "", "", "?", "*", "+", "{2}", "{0,2}", "*?"};
    unsigned what = depth ? dice(8) : 0;
    if (what == 7) {
        unsigned look = dice(4);
        buffer_put_string(b, looks[look]);
        buffer_put_string(b, classes[dice(5)]);
        buffer_put_string(b, ") ");
        return;
    }
    if (what < 4) {
        buffer_put_string(b, classes[dice(5)]);
    } else {
        buffer_put_string(b, "(");
        put_random(b, depth - 1);
        put_random(b, depth - 1);
        buffer_put_string(b, what == 4 ? " | " : " ");
        put_random(b, depth - 1);
        buffer_put_string(b, ")");
    }
    buffer_put_string(b, repeats[dice(9)]);
    buffer_put_string(b, " ");
}

static size_t random_tags(unsigned char *tags)
{
    static const unsigned char of[] = {TAG_FOOD, TAG_UNIT, TAG_OF, TAG_AMOUNT, TAG_OTHER};
    size_t entries = 1 + dice(6), n = 0;
    while (entries--) {
        for (unsigned inside = dice(3); inside; inside--)
            tags[n++] = TAG_INSIDE;
        tags[n++] = of[dice(5)];
    }
    return n;
}

/* A match has all units that the rule needs, begins where an entry begins, and ends where one ends.
 */
static bool check_random_match(const struct rule *rule, const char *when)
{
    unsigned char tags[64];
    size_t length = random_tags(tags);
    pcre2_code *code = rule_compile(rule, false);
    pcre2_match_data *found = pcre2_match_data_create_from_pattern(code, NULL);
    int n = pcre2_match(code, tags, length, 0, 0, found, NULL);
    const PCRE2_SIZE *at = pcre2_get_ovector_pointer(found);
    if (n > 0) {
        for (unsigned tag = 0; tag < 256; tag++)
            if (has_bit(rule, (unsigned char) tag) && !memchr(tags, (int) tag, length))
                fail_msg("%s needs too much", when);
        if ((at[0] && tags[at[0] - 1] == TAG_INSIDE) || tags[at[1] - 1] == TAG_INSIDE)
            fail_msg("%s cuts an entry in \"%.*s\" at %zu-%zu", when, (int) length,
                     (const char *) tags, at[0], at[1]);
    }
    pcre2_match_data_free(found);
    pcre2_code_free(code);
    return n > 0;
}

static void random_patterns_hold(void **state)
{
    (void) state;
    unsigned patterns = 0, hits = 0;
    for (unsigned i = 0; i < 500; i++) {
        struct buffer b = {0};
        struct test_pack t;
        seed = i;
        put_random(&b, 3);
        put_random(&b, 3);
        buffer_put_char(&b, '\0');
        open_rule(&t, b.at, "amount");
        const struct rule *rule = rule_of(&t);
        patterns += rule != NULL;
        for (unsigned j = 0; rule && j < 20; j++)
            hits += check_random_match(rule, b.at);
        buffer_release(&b);
        test_pack_close(&t);
    }
    assert_true(patterns > 200 && hits > 2000); /* or the test tests nothing */
}

/* ---- number expressions */

/* Works the steps out, with slot i as i + 2. */
static struct ratio work_out(const struct number_step *steps, size_t count)
{
    struct ratio stack[NUMBER_STEPS];
    size_t n = 0;
    for (size_t i = 0; i < count; i++) {
        if (steps[i].kind == STEP_SLOT || steps[i].kind == STEP_INTEGER) {
            stack[n++] = RATIO(steps[i].kind == STEP_SLOT ? steps[i].value + 2 : steps[i].value);
            continue;
        }
        assert_true(n >= 2);
        struct ratio a = stack[n - 2], b = stack[n - 1];
        stack[--n - 1] = steps[i].kind == STEP_ADD        ? ratio_add(a, b)
                         : steps[i].kind == STEP_SUBTRACT ? ratio_subtract(a, b)
                         : steps[i].kind == STEP_MULTIPLY ? ratio_multiply(a, b)
                                                          : ratio_divide(a, b);
    }
    assert_int_equal(n, 1);
    return stack[0];
}

static void numbers_are_worked_out(void **state)
{
    static const struct {
        const char *give;
        struct ratio low, high;
    } want[] = {
        /* hundreds is 2, tens 3, ones 4 */
        {"number low=ones", {4, 1}, {0, 0}},
        {"number low=7", {7, 1}, {0, 0}},
        {"number low=hundreds*100+tens*10+ones", {234, 1}, {0, 0}},
        {"number low=hundreds+tens/ones", {11, 4}, {0, 0}},
        {"number low=10-tens-ones", {3, 1}, {0, 0}},
        {"number low=24/tens/ones*hundreds high=tens*ones", {4, 1}, {12, 1}},
        {"duration low=ones high=9", {4, 1}, {9, 1}},
    };
    (void) state;
    for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
        struct test_pack t;
        open_rule(&t, "<hundreds:ONES> <tens:TENS> <ones:ONES>", want[i].give);
        const struct rule *rule = rule_of(&t);
        assert_non_null(rule);
        assert_true(ratio_equal(work_out(rule->low, rule->low_count), want[i].low));
        if (want[i].high.under)
            assert_true(ratio_equal(work_out(rule->high, rule->high_count), want[i].high));
        else
            assert_int_equal(rule->high_count, 0);
        test_pack_close(&t);
    }
}

/* One of the two groups takes part; the other counts as 0. */
static void slot_of_several_choices_is_summed(void **state)
{
    (void) state;
    struct test_pack t;
    open_rule(&t, "(<low:NUMBER> OF | <low:ONES>) UNIT", "number low=low*10");
    const struct rule *rule = rule_of(&t);
    assert_non_null(rule);
    assert_int_equal(rule->slots_count, 2);
    assert_int_equal(rule->low_count, 5);
    assert_true(ratio_equal(work_out(rule->low, rule->low_count), RATIO(50)));
    test_pack_close(&t);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(patterns_match),
        cmocka_unit_test(needed_units),
        cmocka_unit_test(random_patterns_hold),
        cmocka_unit_test(numbers_are_worked_out),
        cmocka_unit_test(slot_of_several_choices_is_summed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
