/* write/test_chapters.c: the generally known rules of video hosts (first marker 0:00, ascending, at
 * least three, each at least ten seconds, short titles; common practice, told from memory), on
 * random recordings too. And findings as text.
 * SPDX-License-Identifier: MIT */
#include "write/made.h"

#include "write/chapters.h"

static void make(struct open_kitchen *o, struct recording *r, chapter_list *list,
                 struct problems *p)
{
    struct writing w = {.kitchen = o->kitchen, .scratch = &o->arena, .at = -1};
    assert_true(arena_open(&o->arena));
    chapters_make(list, r, &w, p);
}

static void three_dishes_are_three_chapters(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    made_open(&r, &o->arena, "made.srt");
    r.length = 300;
    made_dish(&r, "Soup", 4.7, 100);
    made_dish(&r, "Bread", 100.2, 200);
    made_dish(&r, "Cake", 200.9, 295);
    assert_string_equal(made_output(o, &r, write_chapters_text, 0, &p),
                        "0:00 Soup\n1:40 Bread\n3:20 Cake\n");
    assert_int_equal(p.count, 0);
}

static void what_hosts_ask_for_is_added_and_told(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    made_open(&r, &o->arena, "made.srt");
    r.length = 3700;
    made_dish(&r, "Soup", 62, 1000);
    made_dish(&r, "Bread", 1000, 3600);
    assert_string_equal(made_output(o, &r, write_chapters_text, 0, &p),
                        "0:00 Intro\n1:02 Soup\n16:40 Bread\n1:00:00 Closing words\n");
    assert_int_equal(p.notes, 2);
    problems_release(&p);
}

static void a_single_dish_is_cut_by_its_parts(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    made_open(&r, &o->arena, "made.srt");
    r.length = 300;
    struct dish *d = made_dish(&r, "Pie", 0, 300);
    made_step(&r, d, 1, 10, "Rub.", "crust");
    made_step(&r, d, 2, 100, "Stir.", "filling");
    made_step(&r, d, 3, 200, "Whip.", "topping");
    assert_string_equal(made_output(o, &r, write_chapters_text, 0, &p),
                        "0:00 Pie\n1:40 Pie: filling\n3:20 Pie: topping\n");
    assert_int_equal(p.notes, 1);
    problems_release(&p);
}

static void too_few_chapters_are_told(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    made_open(&r, &o->arena, "made.srt");
    made_dish(&r, "Tea", 0, 60);
    assert_string_equal(made_output(o, &r, write_chapters_text, 0, &p), "0:00 Tea\n");
    assert_non_null(strstr(p.at[0].message, "at least"));
    problems_release(&p);
}

static void long_titles_are_cut_at_a_word(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    chapter_list list;
    made_open(&r, &o->arena, "made.srt");
    made_dish(&r, "A very long name of a dish that nobody would ever want to read whole", 0, 60);
    made_dish(&r, "Zuckerrübensirupkuchenverkäuferinnenschürzenknöpfeundmehr", 30, 60);
    make(o, &r, &list, &p);
    assert_string_equal(open_string(o, list.at[0].title),
                        "A very long name of a dish that nobody would…");
    for (size_t i = 0; i < list.count; i++)
        assert_true(text_letters(list.at[i].title) <= CHAPTER_TITLE_LETTERS);
    problems_release(&p);
}

/* A small generator of its own, so that a failure can be repeated. */
static unsigned next_random(unsigned *seed)
{
    *seed = *seed * 1103515245u + 12345u;
    return *seed >> 16 & 0x7FFF;
}

static void any_recording_keeps_the_rules(void **state)
{
    struct open_kitchen *o = *state;
    static const char *const TITLES[] = {"Soup", "Bread", "Cake", "Stew",
                                         "Pie",  "Jam",   "Tea",  "Rice"};
    for (unsigned seed = 1; seed <= 500; seed++) {
        unsigned random = seed;
        struct recording r;
        struct problems p = {0};
        chapter_list list;
        made_open(&r, &o->arena, "made.srt");
        double at = next_random(&random) % 40;
        for (size_t n = next_random(&random) % 8; n; n--) {
            double end = at + 1 + next_random(&random) % 60;
            made_dish(&r, TITLES[n], at, end);
            at = end + next_random(&random) % 5;
        }
        r.length = at + next_random(&random) % 40;
        make(o, &r, &list, &p);
        assert_true(list.count >= 1 && list.at[0].start == 0); /* whole seconds are exact */
        for (size_t i = 1; i < list.count; i++) {
            assert_true(list.at[i].start - list.at[i - 1].start >= CHAPTER_SECONDS);
            assert_true(list.at[i - 1].end == list.at[i].start);
            assert_false(text_equal(list.at[i].title, list.at[i - 1].title));
        }
        if (list.count > 1)
            assert_true(r.length - list.at[list.count - 1].start >= CHAPTER_SECONDS);
        problems_release(&p);
        open_reset(state);
    }
}

static void a_finding_names_line_and_column_of_its_word(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    made_open(&r, &o->arena, "made.srt");
    made_dish(&r, "Tea", 0, 60);
    made_finding(&r, "no-amount", LEVEL_FIX, 0, 3); /* "blueberries", on the cue's first line */
    made_finding(&r, "vague-amount", LEVEL_NOTE, 0, 7)->suggest =
        TEXT_OF("Say how much."); /* "stick" is word 7 */
    made_finding(&r, "unsafe", LEVEL_STOP, 0, 8)->dismissed = true;
    struct finding *gap = made_finding(&r, "no-yield", LEVEL_NOTE, 0, 0);
    gap->words = (struct span){1, 0};
    gap->at = 4.5;
    assert_string_equal(
        made_output(o, &r, write_check_text, 0, &p),
        "made.srt:3:17: fix: no-amount: no amount was heard for it. (at 0:04)\n"
        "made.srt:4:8: note: vague-amount: no amount was heard for it. Say how much. (at 0:10)\n"
        "made.srt:3:17: note: no-yield: no amount was heard for it. (at 0:04)\n");
}

static void explain_shows_only_the_sentence_asked_for(void **state)
{
    struct open_kitchen *o = *state;
    struct recording r;
    struct problems p = {0};
    struct buffer out = {0};
    made_open(&r, &o->arena, "made.srt");
    *LIST_ADD(r.arena, &r.sentences) = (struct sentence){.first = 0, .last = 3};
    *LIST_ADD(r.arena, &r.sentences) = (struct sentence){.first = 4, .last = 9};
    struct writing w = {.kitchen = o->kitchen, .scratch = &o->arena, .at = 6.5};
    assert_true(arena_open(&o->arena));
    assert_true(write_explain_text(&r, &w, &out, &p));
    assert_null(strstr(out.at, "blueberries"));
    assert_non_null(strstr(out.at, "stick"));
    buffer_clear(&out);
    w.at = 61;
    assert_false(write_explain_text(&r, &w, &out, &p));
    assert_int_equal(p.errors, 1);
    problems_release(&p);
    buffer_release(&out);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_teardown(three_dishes_are_three_chapters, open_reset),
        cmocka_unit_test_teardown(what_hosts_ask_for_is_added_and_told, open_reset),
        cmocka_unit_test_teardown(a_single_dish_is_cut_by_its_parts, open_reset),
        cmocka_unit_test_teardown(too_few_chapters_are_told, open_reset),
        cmocka_unit_test_teardown(long_titles_are_cut_at_a_word, open_reset),
        cmocka_unit_test_teardown(any_recording_keeps_the_rules, open_reset),
        cmocka_unit_test_teardown(a_finding_names_line_and_column_of_its_word, open_reset),
        cmocka_unit_test_teardown(explain_shows_only_the_sentence_asked_for, open_reset),
    };
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
