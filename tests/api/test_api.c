/* api/test_api.c: the library through its one door, include/dishtake.h, as a program that uses it
 * would.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "dishtake.h"

#define PANCAKES                                                                                \
    "0:01 Today we're making pancakes, and this is how I do it.\n"                              \
    "0:06 In a large bowl, whisk two cups of flour with two teaspoons of baking powder and a "  \
    "pinch of salt.\n"                                                                          \
    "0:14 Then add one and a half cups of milk, two eggs and three tablespoons of melted "      \
    "butter.\n"                                                                                 \
    "0:22 Whisk until smooth, and let the batter rest for ten minutes.\n"                       \
    "0:30 Heat a frying pan over medium heat and fry them for two minutes on each side, until " \
    "golden brown.\n"                                                                           \
    "0:40 Serve with maple syrup. And that's the pancakes.\n"
#define SOUP                                                                                     \
    "1:00 Next, we're making a tomato soup.\n"                                                   \
    "1:05 Heat two tablespoons of olive oil in a large pot and cook one chopped onion for five " \
    "minutes.\n"                                                                                 \
    "1:14 Add two pounds of tomatoes, three cups of stock and a teaspoon of salt.\n"             \
    "1:22 Bring it to a boil, then simmer for twenty minutes, until the tomatoes are soft.\n"    \
    "1:30 Blend it until smooth and stir in half a cup of cream. And that's the tomato soup.\n"

static const char TALK[] = PANCAKES;
static const char TWO[] = PANCAKES SOUP;

static int open_handle(void **state)
{
    *state = dishtake_new(NULL, 0);
    return *state && dishtake_ready(*state) ? 0 : -1;
}

static int close_handle(void **state)
{
    dishtake_free(*state);
    return 0;
}

static enum dishtake_result read_talk(struct dishtake *d, const struct dishtake_read_options *o)
{
    return dishtake_read(d, TALK, sizeof TALK - 1, "talk.srt", o);
}

static const char *message(const struct dishtake *d)
{
    struct dishtake_message m;
    return dishtake_message(d, 0, &m) ? m.text : "";
}

static void every_format_can_be_written(void **state)
{
    struct dishtake_format f;
    size_t length, formats = 0;
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    for (; dishtake_format(formats, &f); formats++) {
        const char *out = dishtake_write(*state, f.output, f.as, NULL, &length);
        assert_non_null(out);
        assert_int_equal(strlen(out), length);
    }
    assert_true(formats > 4);
    assert_non_null(strstr(dishtake_write(*state, "card", "text", NULL, &length), "2 cups flour"));
}

static void a_handle_reads_again_and_again(void **state)
{
    size_t length;
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    char *first = strdup(dishtake_write(*state, "recipes", "json", NULL, &length));
    for (int i = 0; i < 20; i++) {
        assert_int_equal(dishtake_read(*state, "x", 1, "x", NULL), DISHTAKE_UNREADABLE);
        assert_null(dishtake_write(*state, "recipes", "json", NULL, &length));
        assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
        assert_string_equal(dishtake_write(*state, "recipes", "json", NULL, &length), first);
    }
    free(first);
}

static void two_handles_share_a_grammar(void **state)
{
    struct dishtake *other = dishtake_again(*state);
    size_t length;
    assert_non_null(other);
    assert_null(dishtake_write(other, "recipes", "json", NULL, &length)); /* nothing was read */
    assert_int_equal(read_talk(other, NULL), DISHTAKE_DONE);
    assert_non_null(dishtake_write(other, "recipes", "json", NULL, &length));
    dishtake_free(other);
}

/* Every ceiling ends in order, from none at all up to enough: no crash, no leak, and then the same
 * output. */
static void any_ceiling_of_memory_ends_in_order(void **state)
{
    size_t length, refused = 0;
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    char *whole = strdup(dishtake_write(*state, "recipes", "json", NULL, &length));
    enum dishtake_result result = DISHTAKE_NO_MEMORY;
    for (size_t memory = 1; result != DISHTAKE_DONE; memory += memory / 16 + 8, refused++) {
        struct dishtake_read_options o = {.size = sizeof o, .memory = memory};
        result = read_talk(*state, &o);
        assert_true(result == DISHTAKE_DONE || result == DISHTAKE_NO_MEMORY);
        if (result == DISHTAKE_NO_MEMORY)
            assert_non_null(strstr(message(*state), "too large"));
    }
    assert_true(refused > 20);
    assert_string_equal(dishtake_write(*state, "recipes", "json", NULL, &length), whole);
    free(whole);
}

static void what_is_asked_for_wrongly_has_a_message(void **state)
{
    size_t length;
    struct dishtake_write_options third = {.size = sizeof third, .dish = 3};
    struct dishtake_read_options mars = {.size = sizeof mars, .kitchen = "mars"};
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    assert_null(dishtake_write(*state, "card", "clay", NULL, &length));
    assert_string_equal(message(*state), "card cannot be written as clay");
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    assert_null(dishtake_write(*state, "card", "text", &third, &length));
    assert_string_equal(message(*state), "there is no dish 3; the recording has 1");
    assert_int_equal(read_talk(*state, &mars), DISHTAKE_NO_SUCH_KITCHEN);
    assert_non_null(strstr(message(*state), "mars"));
}

/* A program that was built with an older header has shorter structs: what stands behind them in its
 * memory is none of the options. */
static void options_are_as_long_as_they_say(void **state)
{
    size_t length;
    struct dishtake_read_options read = {
        .size = offsetof(struct dishtake_read_options, kitchen), .kitchen = "mars", .memory = 1};
    struct dishtake_write_options write = {
        .size = offsetof(struct dishtake_write_options, units), .at = -1, .units = "parsecs"};
    assert_int_equal(read_talk(*state, &read), DISHTAKE_DONE);
    assert_non_null(dishtake_write(*state, "card", "text", &write, &length));
    write.size = sizeof write;
    assert_null(dishtake_write(*state, "card", "text", &write, &length));
    read.size = 0;
    assert_int_equal(read_talk(*state, &read), DISHTAKE_NO_SUCH_KITCHEN);
}

static void units_and_amounts_are_as_asked(void **state)
{
    static const struct {
        struct dishtake_write_options o;
        const char *card, *said; /* what the card has; or why there is none */
    } ROWS[] = {
        {{.at = -1}, "2 cups flour", NULL},
        {{.at = -1, .units = "us"}, "2 cups flour", NULL},
        {{.at = -1, .units = "metric"}, "250 grams flour", NULL},
        {{.at = -1, .units = "both"}, "2 cups (", NULL},
        {{.at = -1, .units = "parsecs"}, NULL, "units \"parsecs\": us, metric or both is needed"},
        {{.at = -1, .units = ""}, NULL, "us, metric or both is needed"},
        {{.at = -1, .times = "1/2"}, "1 cup flour", NULL},
        {{.at = -1, .times = "0"}, NULL, "times \"0\": a number above 0"},
        {{.at = -1, .times = "-1"}, NULL, "a number above 0"},
        {{.at = -1, .times = "two"}, NULL, "a number above 0"},
        {{.at = -1, .serves = "1/0"}, NULL, "serves \"1/0\": a number above 0"},
        {{.at = -1, .video_url = "javascript:x"}, NULL, "video address \"javascript:x\""},
    };
    size_t length;
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        struct dishtake_write_options o = ROWS[i].o;
        o.size = sizeof o;
        assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
        const char *card = dishtake_write(*state, "card", "text", &o, &length);
        if (ROWS[i].card ? !card || !strstr(card, ROWS[i].card) : card != NULL)
            fail_msg("row %zu: %s", i, card ? card : message(*state));
        if (ROWS[i].said && !strstr(message(*state), ROWS[i].said))
            fail_msg("row %zu: %s", i, message(*state));
    }
}

/* Before anything was read, and past the end of what was. */
static void nothing_is_found_in_nothing(void **state)
{
    static const char UNDO[] = "{\"kind\":\"undo\"}";
    struct dishtake *fresh = dishtake_again(*state);
    struct dishtake_published file;
    struct dishtake_still still;
    size_t length;
    assert_int_equal(dishtake_dishes(fresh), 0);
    assert_int_equal(dishtake_findings(fresh, DISHTAKE_NOTE), 0);
    assert_int_equal(dishtake_edits(fresh), 0);
    assert_null(dishtake_edit(fresh, UNDO, sizeof UNDO - 1, &length));
    assert_non_null(dishtake_edit_unplaced(fresh, 1));
    assert_false(dishtake_published(fresh, 0, &file));
    assert_false(dishtake_still(fresh, 0, &still));
    struct dishtake_shopping *list = dishtake_shopping_new(fresh);
    assert_non_null(list);
    assert_false(dishtake_shopping_add(list, fresh, 1, NULL));
    assert_int_equal(read_talk(fresh, NULL), DISHTAKE_DONE);
    assert_true(dishtake_shopping_add(list, fresh, 1, NULL));
    assert_null(dishtake_shopping_write(list, "clay", NULL, &length));
    assert_non_null(strstr(dishtake_shopping_write(list, "text", NULL, &length), "flour"));
    assert_true(dishtake_published(fresh, 0, &file));
    assert_false(dishtake_published(fresh, 1000, &file));
    assert_null(dishtake_edit(fresh, UNDO, sizeof UNDO - 1, &length));
    assert_non_null(dishtake_edit_unplaced(fresh, 0));
    dishtake_shopping_free(list);
    dishtake_free(fresh);
}

static void one_dish_finds_no_borders(void **state)
{
    struct dishtake_read_options one = {.size = sizeof one, .one_dish = true};
    assert_int_equal(dishtake_read(*state, TWO, sizeof TWO - 1, "two", NULL), DISHTAKE_DONE);
    assert_int_equal(dishtake_dishes(*state), 2);
    assert_int_equal(dishtake_read(*state, TWO, sizeof TWO - 1, "two", &one), DISHTAKE_DONE);
    assert_int_equal(dishtake_dishes(*state), 1);
}

static void as_many_dishes_as_are_told_of(void **state)
{
    struct dishtake_read_options told = {.size = sizeof told, .dishes = 1};
    struct dishtake_message m;
    assert_int_equal(dishtake_read(*state, TWO, sizeof TWO - 1, "two", &told), DISHTAKE_DONE);
    assert_int_equal(dishtake_dishes(*state), 1);
    told.dishes = 2;
    assert_int_equal(dishtake_read(*state, TWO, sizeof TWO - 1, "two", &told), DISHTAKE_DONE);
    assert_int_equal(dishtake_dishes(*state), 2);
    assert_false(dishtake_message(*state, 0, &m));
    told.dishes = (size_t) -1; /* as many as can be told apart */
    assert_int_equal(dishtake_read(*state, TWO, sizeof TWO - 1, "two", &told), DISHTAKE_DONE);
    assert_true(dishtake_message(*state, 0, &m));
    assert_non_null(strstr(m.text, "where 200 were told of"));
}

static void findings_are_counted_from_a_level(void **state)
{
    size_t last = (size_t) -1;
    assert_int_equal(read_talk(*state, NULL), DISHTAKE_DONE);
    assert_true(dishtake_findings(*state, DISHTAKE_NOTE) > 0); /* nobody said how many it serves */
    for (int level = DISHTAKE_NOTE; level <= DISHTAKE_STOP; level++) {
        size_t count = dishtake_findings(*state, (enum dishtake_level) level);
        assert_true(count <= last);
        last = count;
    }
}

static void a_bad_grammar_only_has_messages(void **state)
{
    static const char LIST[] = "a.lex\n", WORDS[] = "@tag NOSUCH\nword\n";
    const struct dishtake_file files[] = {{"x/pack.list", LIST, sizeof LIST - 1},
                                          {"x/a.lex", WORDS, sizeof WORDS - 1}};
    struct dishtake_message m;
    size_t length;
    (void) state;
    struct dishtake *d = dishtake_new(files, 2);
    assert_non_null(d);
    assert_false(dishtake_ready(d));
    assert_true(dishtake_message(d, 0, &m));
    assert_string_equal(m.file, "x/a.lex");
    assert_int_equal(m.line, 1);
    assert_int_equal(read_talk(d, NULL), DISHTAKE_NOT_READY);
    assert_null(dishtake_write(d, "recipes", "json", NULL, &length));
    dishtake_free(d);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_format_can_be_written),
        cmocka_unit_test(a_handle_reads_again_and_again),
        cmocka_unit_test(two_handles_share_a_grammar),
        cmocka_unit_test(any_ceiling_of_memory_ends_in_order),
        cmocka_unit_test(what_is_asked_for_wrongly_has_a_message),
        cmocka_unit_test(options_are_as_long_as_they_say),
        cmocka_unit_test(units_and_amounts_are_as_asked),
        cmocka_unit_test(nothing_is_found_in_nothing),
        cmocka_unit_test(one_dish_finds_no_borders),
        cmocka_unit_test(as_many_dishes_as_are_told_of),
        cmocka_unit_test(findings_are_counted_from_a_level),
        cmocka_unit_test(a_bad_grammar_only_has_messages),
    };
    return cmocka_run_group_tests(tests, open_handle, close_handle);
}
