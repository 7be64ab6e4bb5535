/* write/test_json.c: what is printed is read again by Jansson, an independent JSON library (RFC
 * 8259).
 * SPDX-License-Identifier: MIT */
#include "write/made.h"

#include <jansson.h>
#include <math.h>

#include "write/json_print.h"

static json_t *read_back(struct buffer *b)
{
    json_error_t error;
    json_t *value = json_loadb(b->at, b->length, JSON_DECODE_ANY | JSON_REJECT_DUPLICATES, &error);
    if (!value)
        print_error("%s: %s\n", error.text, b->at);
    assert_non_null(value);
    buffer_release(b);
    return value;
}

static void strings_come_back(void **state)
{
    static const char *const STRINGS[] = {"",
                                          "plain",
                                          "\"quoted\" \\ back",
                                          "tab\tline\nreturn\rbell\a\b\f",
                                          "crème brûlée",
                                          "½ ¾ ⅓",
                                          "\xF0\x9F\x8D\x8B",
                                          "</script>",
                                          "\x7F"};
    (void) state;
    for (size_t i = 0; i < sizeof STRINGS / sizeof *STRINGS; i++) {
        struct buffer b = {0};
        struct json j = {.out = &b};
        json_put_string(&j, STRINGS[i]);
        json_t *value = read_back(&b);
        assert_string_equal(json_string_value(value), STRINGS[i]);
        json_decref(value);
    }
}

/* Cut off, overlong, surrogate and stray bytes: each is one U+FFFD, and the rest is kept. */
static void bytes_that_are_no_text_are_replaced(void **state)
{
    static const struct {
        const char *bytes, *read;
    } CASES[] = {{"a\xFF"
                  "b",
                  "a\uFFFDb"},
                 {"a\xC3", "a\uFFFD"},
                 {"\xC0\xAF", "\uFFFD\uFFFD"},
                 {"\xED\xA0\x80", "\uFFFD\uFFFD\uFFFD"},
                 {"\xE2\x82"
                  "c",
                  "\uFFFD\uFFFDc"}};
    (void) state;
    for (size_t i = 0; i < sizeof CASES / sizeof *CASES; i++) {
        struct buffer b = {0};
        struct json j = {.out = &b};
        json_put_string(&j, CASES[i].bytes);
        json_t *value = read_back(&b);
        assert_string_equal(json_string_value(value), CASES[i].read);
        json_decref(value);
    }
}

static const char *number_text(struct buffer *b, double value)
{
    struct json j = {.out = b};
    buffer_clear(b);
    json_put_number(&j, value);
    return b->at;
}

static void numbers_have_15_digits_at_most(void **state)
{
    struct buffer b = {0};
    (void) state;
    assert_string_equal(number_text(&b, 0.1), "0.1");
    assert_string_equal(number_text(&b, 1.0 / 3), "0.333333333333333");
    assert_string_equal(number_text(&b, 2), "2");
    assert_string_equal(number_text(&b, -0.0), "0");
    assert_string_equal(number_text(&b, 1e300), "1e+300");
    assert_string_equal(number_text(&b, INFINITY), "null");
    assert_string_equal(number_text(&b, NAN), "null");
    buffer_release(&b);
}

static void numbers_come_back(void **state)
{
    (void) state;
    for (int i = -300; i < 300; i++) {
        struct buffer b = {0};
        double value = 1.2345678901234567 * pow(10, i);
        json_t *back;
        number_text(&b, value);
        back = read_back(&b);
        assert_true(fabs(json_number_value(back) - value) <= fabs(value) * 1e-14);
        json_decref(back);
    }
}

static void seconds_are_whole_milliseconds(void **state)
{
    struct buffer b = {0};
    struct json j = {.out = &b};
    (void) state;
    json_put_seconds(&j, 15.23333333);
    assert_string_equal(b.at, "15.233");
    buffer_release(&b);
}

/* The same values, whatever the depth to which they are spread over lines. */
static void layout_changes_no_value(void **state)
{
    json_t *first = NULL;
    (void) state;
    for (unsigned spread = 0; spread < 6; spread++) {
        struct buffer b = {0};
        struct json j = {.out = &b, .spread = spread};
        json_open(&j, '{');
        json_key(&j, "empty");
        json_open(&j, '[');
        json_close(&j, ']');
        json_key(&j, "list");
        json_open(&j, '[');
        json_put_whole(&j, 1);
        json_open(&j, '{');
        json_key(&j, "a");
        json_put_null(&j);
        json_key(&j, "b");
        json_put_bool(&j, true);
        json_close(&j, '}');
        json_close(&j, ']');
        json_close(&j, '}');
        assert_int_equal(spread == 0, strchr(b.at, '\n') == NULL);
        json_t *value = read_back(&b);
        assert_true(!first || json_equal(first, value));
        assert_int_equal(json_array_size(json_object_get(value, "list")), 2);
        json_decref(first);
        first = value;
    }
    json_decref(first);
}

static json_t *recording_json(struct open_kitchen *o, const struct recording *r, size_t dish)
{
    struct problems p = {0};
    json_error_t error;
    const char *out = made_output(o, r, write_json, dish, &p);
    json_t *root = json_loads(out, JSON_REJECT_DUPLICATES, &error);
    assert_non_null(root);
    return root;
}

static void what_was_not_said_is_null(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    made_open(&r, &o->arena, "made.srt");
    struct dish *d = made_dish(&r, "Butter", 0, 30);
    made_line(&r, d, 9, "butter", "butter", NULL, NULL, NULL);
    json_t *root = recording_json(o, &r, 0);
    json_t *dish = json_array_get(json_object_get(root, "dishes"), 0);
    json_t *line = json_array_get(json_object_get(dish, "ingredients"), 0);
    static const char *const NULLS[] = {"amount", "unit", "package", "size", "group", "weight_g"};
    for (size_t i = 0; i < sizeof NULLS / sizeof *NULLS; i++)
        assert_true(json_is_null(json_object_get(line, NULLS[i])));
    assert_true(json_is_null(json_object_get(dish, "yield")));
    assert_true(json_is_null(json_object_get(json_object_get(dish, "times"), "total")));
    assert_string_equal(json_string_value(json_object_get(line, "id")), "i9");
    assert_string_equal(json_string_value(json_object_get(dish, "title_from")), "made");
    json_decref(root);
}

static void amounts_are_numbers(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    made_open(&r, &o->arena, "made.srt");
    struct dish *d = made_dish(&r, "Butter", 0, 30);
    made_line(&r, d, 3, "a third of a cup to half", "butter", "1/3", "1/2", "cup");
    made_line(&r, d, 5, "at least two eggs", "egg", "2", "2", "")->amount.max = RATIO_UPWARDS;
    json_t *root = recording_json(o, &r, 0);
    json_t *lines =
        json_object_get(json_array_get(json_object_get(root, "dishes"), 0), "ingredients");
    json_t *cup = json_object_get(json_array_get(lines, 0), "amount");
    json_t *eggs = json_object_get(json_array_get(lines, 1), "amount");
    assert_true(fabs(json_number_value(json_object_get(cup, "min")) - 1.0 / 3) < 1e-14);
    assert_true(json_number_value(json_object_get(cup, "max"))
                == 0.5); /* Jansson reads 0.5 exactly */
    assert_int_equal(json_integer_value(json_object_get(eggs, "min")), 2);
    assert_true(json_is_null(json_object_get(eggs, "max")));
    assert_string_equal(json_string_value(json_object_get(json_array_get(lines, 1), "unit")), "");
    json_decref(root);
}

static void one_dish_alone_has_only_its_findings(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    made_open(&r, &o->arena, "made.srt");
    made_dish(&r, "First", 0, 20);
    made_dish(&r, "Second", 20, 40);
    made_finding(&r, "no-amount", LEVEL_FIX, 0, 3);
    made_finding(&r, "no-yield", LEVEL_NOTE, 1, 4);
    made_finding(&r, "cut-off", LEVEL_FIX, FINDING_NO_DISH, 5);
    json_t *all = recording_json(o, &r, 0), *second = recording_json(o, &r, 2);
    assert_int_equal(json_array_size(json_object_get(all, "findings")), 3);
    json_t *findings = json_object_get(second, "findings");
    assert_int_equal(json_array_size(findings), 1);
    assert_string_equal(json_string_value(json_object_get(json_array_get(findings, 0), "kind")),
                        "no-yield");
    json_t *none = json_array_get(json_object_get(all, "findings"), 2);
    assert_true(json_is_null(json_object_get(none, "dish")));
    json_decref(all);
    json_decref(second);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(strings_come_back),
        cmocka_unit_test(bytes_that_are_no_text_are_replaced),
        cmocka_unit_test(numbers_have_15_digits_at_most),
        cmocka_unit_test(numbers_come_back),
        cmocka_unit_test(seconds_are_whole_milliseconds),
        cmocka_unit_test(layout_changes_no_value),
        cmocka_unit_test_teardown(what_was_not_said_is_null, open_reset),
        cmocka_unit_test_teardown(amounts_are_numbers, open_reset),
        cmocka_unit_test_teardown(one_dish_alone_has_only_its_findings, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
