/* tests/edits/test_edits.c: every kind of edit, undone and redone, over a changed transcript;
 * hostile and later files.
 * SPDX-License-Identifier: MIT */
#include "edits/session.h"

#include "disk/disk.h"
#include "edits/edits.h"

static void word_is_read_anew(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    assert_null(session_line(&s, 0, "cumin seed"));
    size_t first = session_word(&s, "blurb it");
    session_do(&s, "{'kind':'word','on':[%zu,%zu],'value':'cumin'}", first, first + 1);
    assert_non_null(session_line(&s, 0, "cumin seed"));
    /* Numbers of words stay, so what stood behind keeps its id. */
    assert_string_equal(session_line_id(&s, 0, "tomato"), "i42");
    session_do(&s, "{'kind':'undo'}");
    assert_null(session_line(&s, 0, "cumin seed"));
    session_do(&s, "{'kind':'redo'}");
    assert_non_null(session_line(&s, 0, "cumin seed"));
    session_end(&s);
}

static void word_is_read_anew_everywhere(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t salt = session_word(&s, "salt");
    session_do(&s, "{'kind':'word','on':[%zu,%zu],'value':'sugar','everywhere':true}", salt, salt);
    assert_non_null(session_line(&s, 0, "sugar"));
    assert_non_null(session_line(&s, 1, "sugar"));
    session_do(&s, "{'kind':'undo'}");
    session_do(&s, "{'kind':'word','on':[%zu,%zu],'value':'sugar'}", salt, salt);
    assert_non_null(session_line(&s, 0, "sugar"));
    assert_null(session_line(&s, 1, "sugar"));
    session_end(&s);
}

static void a_word_may_become_two(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t word = session_word(&s, "paprika");
    session_do(&s, "{'kind':'word','on':[%zu,%zu],'value':'olive oil'}", word, word);
    assert_non_null(session_line(&s, 1, "olive oil"));
    session_do(&s,
               "{'kind':'word','on':[%zu,%zu],'value':'\xc3\xa9pice \xe2\x80\x9cx\xe2\x80\x9d'}",
               word, word);
    session_end(&s);
}

static void amount_is_set_and_removed(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    char id[32];
    snprintf(id, sizeof id, "%s", session_line_id(&s, 1, "paprika"));
    assert_string_equal(session_text(session_line(&s, 1, "paprika"), "amount_from"), "not-heard");
    session_do(&s,
               "{'kind':'line-set','on':'%s','field':'amount','value':{'min':'1 "
               "1/2','max':'2','unit':'teaspoon'}}",
               id);
    json_t *amount = json_object_get(session_line(&s, 1, "paprika"), "amount");
    assert_string_equal(session_text(amount, "min"), "1 1/2");
    assert_string_equal(session_text(amount, "max"), "2");
    assert_string_equal(session_text(amount, "unit"), "teaspoon");
    session_do(&s, "{'kind':'line-set','on':'%s','field':'amount','value':null}", id);
    assert_true(json_is_null(json_object_get(session_line(&s, 1, "paprika"), "amount")));
    session_do(&s, "{'kind':'line-set','on':'%s','field':'to_taste','value':true}", id);
    assert_string_equal(session_text(session_line(&s, 1, "paprika"), "amount_from"), "to-taste");
    session_end(&s);
}

/* What no amount can be is refused, and nothing changes. */
static void odd_values_are_refused(void **state)
{
    static const char *const VALUES[] = {
        "{'min':'2','max':'1'}",
        "{'min':'0','max':'0'}",
        "{'min':'-1','max':'1'}",
        "{'min':'two','max':'two'}",
        "{'min':1,'max':1}",
        "{'max':'1'}",
        "{'min':'1'}",
        "[]",
        "'1'",
        "{'min':'1','max':'1','unit':7}",
        "{'min':'1/0','max':'1'}",
        "{'min':'99999999999999999999','max':null}",
        "true",
        "{'min':'1','max':'1','approx':1}",
    };
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    for (size_t i = 0; i < sizeof VALUES / sizeof *VALUES; i++)
        assert_false(session_try(&s, "{'kind':'line-set','on':'%s','field':'amount','value':%s}",
                                 session_line_id(&s, 1, "paprika"), VALUES[i]));
    assert_int_equal(dishtake_edits(s.d), 0);
    session_end(&s);
}

static void odd_requests_are_refused(void **state)
{
    static const char *const ASKED[] = {
        "",
        "[]",
        "{}",
        "{'kind':7}",
        "{'kind':'nothing'}",
        "{'kind':'undo'}",
        "{'kind':'redo'}",
        "{'kind':'line-set','on':'i99999','field':'food','value':'x'}",
        "{'kind':'line-set','on':'s21','field':'food','value':'x'}",
        "{'kind':'line-set','on':42,'field':'food','value':'x'}",
        "{'kind':'line-set','on':'i87','field':'colour','value':'red'}",
        "{'kind':'line-set','on':'i87','field':'food','value':''}",
        "{'kind':'line-set','on':'i87','field':'food','value':'a\\u0007b'}",
        "{'kind':'line-set','on':'i87','field':'food'}",
        "{'kind':'line-set','field':'food','value':'x'}",
        "{'kind':'line-set','kind':'line-remove','on':'i87'}",
        "{'kind':'word','on':[5,4],'value':'x'}",
        "{'kind':'word','on':[0,100000],'value':'x'}",
        "{'kind':'word','on':[0],'value':'x'}",
        "{'kind':'word','on':[-1,0],'value':'x'}",
        "{'kind':'word','on':[0,0]}",
        "{'kind':'dish-join','on':'d8'}",
        "{'kind':'dish-border','on':'d8','to':[20,20]}",
        "{'kind':'dish-border','on':'d8','field':'middle','to':[20,20]}",
        "{'kind':'finding','finding':999,'value':'accepted'}",
        "{'kind':'finding','finding':0,'value':'maybe'}",
        "{'kind':'line-add','on':'d8','value':{'amount':null}}",
        "{'kind':'line-add','on':'d8','value':{'food':'x','y':1}}",
        "{'kind':'step-add','on':'d8','value':{}}",
        "{'kind':'step-set','on':'s21','field':'durations','value':[{'min':-5,'max':3}]}",
        "{'kind':'step-set','on':'s21','field':'temperatures','value':[{'value':'350','unit':'K'}]"
        "}",
        "{'kind':'dish-set','on':'d8','field':'approved','value':'yes'}",
    };
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    for (size_t i = 0; i < sizeof ASKED / sizeof *ASKED; i++)
        if (session_try(&s, "%s", ASKED[i]))
            fail_msg("taken: %s", ASKED[i]);
    assert_int_equal(dishtake_edits(s.d), 0);
    session_end(&s);
}

static void lines_are_added_moved_joined_removed(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    json_t *dish = session_dish(&s, 1);
    size_t before = json_array_size(json_object_get(dish, "lines"));
    session_do(&s,
               "{'kind':'line-add','on':'%s','to':'%s','value':{'food':'chive','amount':{'min':'1',"
               "'max':'1',"
               "'unit':'tablespoon'},'prep':['snipped']}}",
               session_text(dish, "id"), session_line_id(&s, 1, "rice"));
    assert_int_equal(json_array_size(json_object_get(session_dish(&s, 1), "lines")), before + 1);
    assert_ptr_equal(json_array_get(json_object_get(session_dish(&s, 1), "lines"), 1),
                     session_line(&s, 1, "chive"));
    /* An added line can be changed like any other. */
    session_do(&s, "{'kind':'line-set','on':'%s','field':'optional','value':true}",
               session_line_id(&s, 1, "chive"));
    assert_true(json_is_true(json_object_get(session_line(&s, 1, "chive"), "optional")));
    session_do(&s, "{'kind':'line-move','on':'%s','to':'%s'}", session_line_id(&s, 1, "chive"),
               session_line_id(&s, 1, "rice"));
    assert_ptr_equal(json_array_get(json_object_get(session_dish(&s, 1), "lines"), 0),
                     session_line(&s, 1, "chive"));
    session_do(&s, "{'kind':'line-move','on':'%s','to':null}", session_line_id(&s, 1, "chive"));
    assert_ptr_equal(json_array_get(json_object_get(session_dish(&s, 1), "lines"), before),
                     session_line(&s, 1, "chive"));
    session_do(&s, "{'kind':'line-join','on':'%s','to':'%s'}",
               session_line_id(&s, 1, "lemon juice"), session_line_id(&s, 1, "chive"));
    assert_null(session_line(&s, 1, "chive"));
    assert_string_equal(
        session_text(json_object_get(session_line(&s, 1, "lemon juice"), "amount"), "min"), "3");
    session_do(&s, "{'kind':'line-remove','on':'%s'}", session_line_id(&s, 1, "paprika"));
    assert_null(session_line(&s, 1, "paprika"));
    session_end(&s);
}

/* The edit is kept by the caller only if it was placed; this one is not: a spoon and a cup are no
 * sum. */
static void unlike_amounts_are_not_joined(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    assert_true(session_try(&s, "{'kind':'line-join','on':'%s','to':'%s'}",
                            session_line_id(&s, 1, "rice"), session_line_id(&s, 1, "salt")));
    assert_non_null(dishtake_edit_unplaced(s.d, 1));
    assert_non_null(session_line(&s, 1, "salt"));
    session_end(&s);
}

static void no_line_is_joined_with_itself(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    assert_true(session_try(&s, "{'kind':'line-join','on':'%s','to':'%s'}",
                            session_line_id(&s, 1, "rice"), session_line_id(&s, 1, "rice")));
    assert_non_null(dishtake_edit_unplaced(s.d, 1));
    assert_non_null(session_line(&s, 1, "rice"));
    session_end(&s);
}

static void steps_are_set_added_moved_joined_removed(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    char id[32];
    snprintf(id, sizeof id, "%s", session_text(session_step(&s, 1, 0), "id"));
    session_do(&s, "{'kind':'step-set','on':'%s','field':'text','value':'Boil the rice.'}", id);
    assert_string_equal(session_text(session_step(&s, 1, 0), "text"), "Boil the rice.");
    session_do(&s,
               "{'kind':'step-set','on':'%s','field':'durations','value':[{'min':600,'max':720,'of'"
               ":'boil'}]}",
               id);
    json_t *time = json_array_get(json_object_get(session_step(&s, 1, 0), "durations"), 0);
    assert_float_equal(json_number_value(json_object_get(time, "max")), 720, 0);
    session_do(
        &s,
        "{'kind':'step-set','on':'%s','field':'temperatures','value':[{'value':'100','unit':'C'}]}",
        id);
    session_do(&s, "{'kind':'step-add','on':'%s','to':'%s','value':{'text':'Let it cool.'}}",
               session_text(session_dish(&s, 1), "id"), id);
    assert_string_equal(session_text(session_step(&s, 1, 1), "text"), "Let it cool.");
    session_do(&s, "{'kind':'step-move','on':'%s','to':'%s'}",
               session_text(session_step(&s, 1, 1), "id"), id);
    assert_string_equal(session_text(session_step(&s, 1, 0), "text"), "Let it cool.");
    session_do(&s, "{'kind':'step-join','on':'%s','to':'%s'}", id,
               session_text(session_step(&s, 1, 0), "id"));
    assert_string_equal(session_text(session_step(&s, 1, 0), "text"),
                        "Boil the rice. Let it cool.");
    size_t count = json_array_size(json_object_get(session_dish(&s, 1), "steps"));
    session_do(&s, "{'kind':'step-remove','on':'%s'}", id);
    assert_int_equal(json_array_size(json_object_get(session_dish(&s, 1), "steps")), count - 1);
    session_end(&s);
}

static void borders_are_moved_cut_joined(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    const char *first = "d8";
    assert_string_equal(session_text(session_dish(&s, 0), "id"), first);
    size_t chop = session_word(&s, "cucumber") - 1;
    session_do(&s, "{'kind':'dish-cut','on':'%s','to':[%zu,%zu],'value':'Cucumbers'}",
               session_text(session_dish(&s, 1), "id"), chop, chop);
    assert_string_equal(session_text(session_dish(&s, 2), "title"), "Cucumbers");
    assert_non_null(session_line(&s, 2, "paprika"));
    assert_null(session_line(&s, 1, "paprika"));
    char cut[32];
    snprintf(cut, sizeof cut, "%s", session_text(session_dish(&s, 2), "id"));
    session_do(&s, "{'kind':'dish-join','on':'%s','to':'%s'}",
               session_text(session_dish(&s, 1), "id"), cut);
    assert_null(session_dish(&s, 2));
    assert_non_null(session_line(&s, 1, "paprika"));
    /* The soup takes the rice salad's beginning. */
    size_t rice = session_word(&s, "rice for");
    session_do(&s, "{'kind':'dish-border','on':'%s','field':'end','to':[%zu,%zu]}", first, rice,
               rice);
    assert_non_null(session_line(&s, 0, "rice"));
    assert_null(session_line(&s, 1, "rice"));
    session_do(&s, "{'kind':'dish-remove','on':'%s'}", session_text(session_dish(&s, 1), "id"));
    assert_null(session_dish(&s, 1));
    session_do(&s, "{'kind':'dish-add','on':[%zu,%zu],'to':[%zu,%zu],'value':'Salad'}", chop, chop,
               chop + 20, chop + 20);
    assert_string_equal(session_text(session_dish(&s, 1), "title"), "Salad");
    session_end(&s);
}

/* A dish that is made after another one was removed has nothing of it, and nothing of its
 * neighbour's. */
static void a_new_dish_begins_empty(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t soup = session_word(&s, "tomato soup. You");
    session_do(&s, "{'kind':'dish-remove','on':'d8'}");
    assert_non_null(session_line(&s, 0, "cucumber"));
    session_do(&s, "{'kind':'dish-add','on':[%zu,%zu],'to':[%zu,%zu],'value':'Soup'}", soup, soup,
               soup + 20, soup + 20);
    assert_string_equal(session_text(session_dish(&s, 0), "title"), "Soup");
    assert_non_null(session_line(&s, 0, "onion"));
    assert_null(session_line(&s, 0, "cucumber"));
    assert_non_null(session_line(&s, 1, "cucumber"));
    session_end(&s);
}

static void a_dish_is_never_emptied(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t last = session_word(&s, "our rice salad");
    assert_true(session_try(&s, "{'kind':'dish-border','on':'d8','field':'end','to':[%zu,%zu]}",
                            last, last));
    assert_non_null(dishtake_edit_unplaced(s.d, 1));
    assert_int_equal(dishtake_dishes(s.d), 2);
    session_end(&s);
}

static void title_yield_and_approval(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    session_do(&s, "{'kind':'dish-set','on':'d8','field':'title','value':'Harbour tomato soup'}");
    session_do(&s, "{'kind':'dish-set','on':'d8','field':'yield','value':{'min':'4','max':'6','of':"
                   "'serving'}}");
    json_t *dish = session_dish(&s, 0);
    assert_string_equal(session_text(dish, "title"), "Harbour tomato soup");
    assert_string_equal(session_text(json_object_get(dish, "yield"), "max"), "6");
    session_do(&s, "{'kind':'dish-set','on':'d8','field':'approved','value':true}");
    assert_true(json_is_true(json_object_get(session_dish(&s, 0), "approved")));
    /* What is changed afterwards was not approved. */
    session_do(&s, "{'kind':'line-set','on':'%s','field':'optional','value':true}",
               session_line_id(&s, 0, "onion"));
    assert_false(json_is_true(json_object_get(session_dish(&s, 0), "approved")));
    session_do(&s, "{'kind':'undo'}");
    assert_true(json_is_true(json_object_get(session_dish(&s, 0), "approved")));
    session_end(&s);
}

static size_t finding_index(const struct session *s, const char *kind)
{
    size_t i;
    json_t *finding;
    json_array_foreach(json_object_get(s->page, "findings"), i,
                       finding) if (strcmp(session_text(finding, "kind"), kind) == 0) return i;
    fail_msg("there is no finding %s", kind);
    return 0;
}

static void findings_are_answered(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t open = dishtake_findings(s.d, DISHTAKE_NOTE);
    session_do(&s,
               "{'kind':'finding','finding':%zu,'value':'dismissed','reason':'shown on screen'}",
               finding_index(&s, "no-amount"));
    json_t *finding =
        json_array_get(json_object_get(s.page, "findings"), finding_index(&s, "no-amount"));
    assert_string_equal(session_text(finding, "answer"), "dismissed");
    assert_string_equal(session_text(finding, "reason"), "shown on screen");
    assert_int_equal(dishtake_findings(s.d, DISHTAKE_NOTE), open - 1);
    session_do(&s, "{'kind':'finding','finding':%zu,'value':'accepted'}",
               finding_index(&s, "no-yield"));
    assert_int_equal(dishtake_findings(s.d, DISHTAKE_NOTE), open - 2);
    session_do(&s, "{'kind':'finding','finding':%zu,'value':'open'}",
               finding_index(&s, "no-amount"));
    assert_int_equal(dishtake_findings(s.d, DISHTAKE_NOTE), open - 1);
    session_end(&s);
}

/* ---- a newer transcript: an intro of 90 seconds, a caption split, one word captioned otherwise.
 */
static const char NEWER[] =
    "[0:00] This evening is brought to you by nobody at all, and we are glad of that.\n"
    "[0:30] Please find a seat, there is a lot to cook tonight.\n"
    "[1:30] Hello everybody, welcome back to the harbour kitchen.\n"
    "[1:35] Today we're making a tomato soup. You need two tablespoons of olive oil.\n"
    "[1:42] Chop one large onion and add it to the pot. Add a teaspoon of cumin seeds.\n"
    "[1:50] Add three cups of tomatoes and stir in some sea salt. Simmer for twenty minutes.\n"
    "[2:00] Blend it until smooth. And that's our tomato soup.\n"
    "[2:10] Next up we're making a rice salad.\n[2:14] Boil one cup of rice for twelve minutes.\n"
    "[2:20] Chop one cucumber and add two tablespoons of lemon juice. Add paprika too.\n"
    "[2:28] Toss everything together with a teaspoon of salt. And that's our rice salad.\n";

static void edits_outlive_a_newer_transcript(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t cup = session_word(&s, "blurb it");
    session_do(&s,
               "{'kind':'line-set','on':'%s','field':'amount','value':{'min':'3','max':'3','unit':'"
               "teaspoon'}}",
               session_line_id(&s, 1, "paprika"));
    session_do(&s, "{'kind':'line-set','on':'%s','field':'optional','value':true}",
               session_line_id(&s, 0, "onion"));
    session_do(&s, "{'kind':'dish-set','on':'%s','field':'title','value':'Cold rice salad'}",
               session_text(session_dish(&s, 1), "id"));
    session_do(&s, "{'kind':'word','on':[%zu,%zu],'value':'cumin'}", cup, cup + 1);
    session_do(&s, "{'kind':'line-add','on':'%s','to':'%s','value':{'food':'mint'}}",
               session_text(session_dish(&s, 1), "id"), session_line_id(&s, 1, "paprika"));
    session_renew(&s, NEWER);
    assert_string_equal(
        session_text(json_object_get(session_line(&s, 1, "paprika"), "amount"), "min"), "3");
    assert_true(json_is_true(json_object_get(session_line(&s, 0, "onion"), "optional")));
    assert_string_equal(session_text(session_dish(&s, 1), "title"), "Cold rice salad");
    assert_non_null(session_line(&s, 1, "mint"));
    /* The misheard word is gone, so is the place of its correction; the edit stays. */
    assert_non_null(dishtake_edit_unplaced(s.d, 4));
    assert_int_equal(dishtake_edits(s.d), 5);
    session_renew(&s, TRANSCRIPT);
    assert_null(dishtake_edit_unplaced(s.d, 4));
    session_end(&s);
}

static void edits_without_a_place_are_kept(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    session_do(&s, "{'kind':'line-set','on':'%s','field':'optional','value':true}",
               session_line_id(&s, 0, "onion"));
    char *before = strdup(s.edits);
    session_renew(&s, "[0:00] We are making a plum cake. Add two cups of flour and stir in three "
                      "plums.\n[0:10] Bake it for an hour. That's our plum cake.\n");
    assert_non_null(dishtake_edit_unplaced(s.d, 1));
    /* Another edit is added; the first one stands in the file as it did. */
    session_do(&s, "{'kind':'dish-set','on':'%s','field':'title','value':'Cake'}",
               session_text(session_dish(&s, 0), "id"));
    size_t same = strlen(before) - strlen("\n]\n}\n");
    assert_memory_equal(s.edits, before, same);
    free(before);
    session_end(&s);
}

/* ---- files */

static enum dishtake_result read_file(const char *bytes, size_t length)
{
    struct dishtake *d = dishtake_again(session_grammar);
    struct dishtake_read_options o = {
        .size = sizeof o, .edits = bytes, .edits_length = length, .edits_name = "e"};
    enum dishtake_result result = dishtake_read(d, TRANSCRIPT, strlen(TRANSCRIPT), "t", &o);
    dishtake_free(d);
    return result;
}

static void later_kinds_are_kept(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    s.edits = strdup("{\"format\":\"dishtake edits 1\",\"later\":{\"a\":[1.5,0.1]},\"edits\":["
                     "{\"kind\":\"photo\",\"of\":{\"deep\":[null,true]}},"
                     "{\"kind\":\"line-set\",\"on\":{\"words\":[24,24],\"said\":\"onion\"},"
                     "\"field\":\"sound\",\"value\":1}]}");
    session_read(&s);
    assert_int_equal(dishtake_edits(s.d), 2);
    assert_false(session_try(&s, "{'kind':'undo'}"));
    session_do(&s, "{'kind':'dish-set','on':'d8','field':'title','value':'Soup'}");
    assert_non_null(strstr(s.edits, "{\"kind\":\"photo\",\"of\":{\"deep\":[null,true]}}"));
    assert_non_null(strstr(s.edits, "\"field\":\"sound\",\"value\":1"));
    assert_non_null(strstr(s.edits, "\"later\": {\"a\":[1.5,0.1]}"));
    session_end(&s);
}

static void bad_files_are_refused_whole(void **state)
{
    static const char *const FILES[] = {
        "",
        "{",
        "[]",
        "null",
        "{\"format\":\"dishtake edits 2\",\"edits\":[]}",
        "{\"edits\":[]}",
        "{\"format\":\"dishtake edits 1\"}",
        "{\"format\":\"dishtake edits 1\",\"edits\":{}}",
        "{\"format\":\"dishtake edits 1\",\"format\":\"dishtake edits 1\",\"edits\":[]}",
        "{\"format\":\"dishtake edits 1\",\"edits\":[7]}",
        "{\"format\":\"dishtake edits 1\",\"edits\":[{}]}",
        "{\"format\":\"dishtake edits 1\",\"edits\":[{\"kind\":\"undo\",\"of\":1}]}",
        "{\"format\":\"dishtake edits 1\",\"edits\":[{\"kind\":\"undo\"}]}",
        "{\"format\":\"dishtake edits 1\",\"edits\":[]} x",
        "{\"format\":\"dishtake edits 1\",\"edits\":[],}",
    };
    (void) state;
    for (size_t i = 0; i < sizeof FILES / sizeof *FILES; i++)
        if (read_file(FILES[i], strlen(FILES[i])) != DISHTAKE_BAD_EDITS)
            fail_msg("read: %s", FILES[i]);
    assert_int_equal(read_file("{\"format\":\"dishtake edits 1\",\"edits\":[]}", 39),
                     DISHTAKE_BAD_EDITS);
    static const char FINE[] = "\xef\xbb\xbf{\"format\":\"dishtake edits 1\",\"edits\":[]}\r\n";
    assert_int_equal(read_file(FINE, sizeof FINE - 1), DISHTAKE_DONE);
}

/* ---- walks: whatever was done, undoing all of it gives the first page again, byte for byte. */

static unsigned long long seed =
    88172645463325252ULL; /* xorshift64, Marsaglia 2003; always the same walks */

static size_t any(size_t below)
{
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return (size_t) (seed % below);
}

static const char *any_id(const struct session *s, const char *list, json_t **dish)
{
    *dish = session_dish(s, any(json_array_size(json_object_get(s->page, "dishes"))));
    json_t *items = json_object_get(*dish, list);
    size_t count = json_array_size(items);
    return count ? session_text(json_array_get(items, any(count)), "id") : "i0";
}

static void walk_step(struct session *s, size_t words)
{
    static const char *const FIELDS[] = {
        "'optional','value':true", "'food','value':'barley'", "'prep','value':['torn']",
        "'amount','value':{'min':'1/3','max':null,'unit':'cup'}", "'role','value':'garnish'"};
    json_t *dish;
    if (!json_array_size(json_object_get(s->page, "dishes"))) { /* all words of it were changed */
        session_try(s, "{'kind':'undo'}");
        return;
    }
    const char *line = any_id(s, "lines", &dish), *dish_id = session_text(dish, "id");
    json_t *other_dish;
    const char *other = any_id(s, "lines", &other_dish), *step = any_id(s, "steps", &other_dish);
    size_t word = any(words);
    switch (any(12)) {
    case 0:
        session_try(s, "{'kind':'line-set','on':'%s','field':%s}", line, FIELDS[any(5)]);
        break;
    case 1:
        session_try(s, "{'kind':'line-remove','on':'%s'}", line);
        break;
    case 2:
        session_try(s, "{'kind':'line-add','on':'%s','to':'%s','value':{'food':'mint'}}", dish_id,
                    line);
        break;
    case 3:
        session_try(s, "{'kind':'line-move','on':'%s','to':'%s'}", line, other);
        break;
    case 4:
        session_try(s, "{'kind':'line-join','on':'%s','to':'%s'}", line, other);
        break;
    case 5:
        session_try(s, "{'kind':'step-set','on':'%s','field':'text','value':'Do it.'}", step);
        break;
    case 6:
        session_try(s, "{'kind':'dish-border','on':'%s','field':'%s','to':[%zu,%zu]}", dish_id,
                    any(2) ? "start" : "end", word, word);
        break;
    case 7:
        session_try(s, "{'kind':'dish-cut','on':'%s','to':[%zu,%zu]}", dish_id, word, word);
        break;
    case 8:
        session_try(s, "{'kind':'word','on':[%zu,%zu],'value':'%s','everywhere':true}", word,
                    word + any(3), any(2) ? "sugar" : "two cups sugar");
        break;
    case 9:
        session_try(s, "{'kind':'dish-join','on':'%s','to':'%s'}", dish_id,
                    session_text(other_dish, "id"));
        break;
    case 10:
        session_try(s, "{'kind':'finding','finding':%zu,'value':'accepted','reason':'so'}", any(6));
        break;
    default:
        session_try(s, any(2) ? "{'kind':'undo'}" : "{'kind':'redo'}");
    }
}

/* The number of words that the recording has. */
static size_t words_of(const struct session *s)
{
    size_t length;
    const char *bytes = dishtake_write(s->d, "review", "words", NULL, &length);
    json_t *page = json_loadb(bytes, length, 0, NULL);
    size_t count = json_array_size(json_object_get(page, "times"));
    json_decref(page);
    return count;
}

/* The page without what it says about the edits themselves. */
static char *page_bytes(const struct session *s)
{
    json_t *page = json_deep_copy(s->page);
    json_object_del(page, "edits");
    json_object_del(page, "undo");
    json_object_del(page, "redo");
    char *bytes = json_dumps(page, JSON_SORT_KEYS);
    json_decref(page);
    return bytes;
}

/* Of many walks only some are held against what is read from nothing, each step of them. */
#define WALKS_COMPARED 100
#define COMPARED_EACH 20

static void walk(struct session *s, size_t words, const char *first)
{
    for (size_t i = 0, steps = 5 + any(20); i < steps; i++)
        walk_step(s, words);
    char *changed = page_bytes(s);
    size_t undone = 0;
    while (session_try(s, "{'kind':'undo'}"))
        undone++;
    char *again = page_bytes(s);
    assert_string_equal(again, first);
    free(again);
    while (undone--)
        assert_true(session_try(s, "{'kind':'redo'}"));
    again = page_bytes(s);
    assert_string_equal(again, changed);
    free(again);
    free(changed);
    free(s->edits);
    s->edits = NULL;
    session_read(s);
}

static void walk_over(const char *transcript, unsigned long walks)
{
    struct session s = session_begin(transcript);
    size_t words = words_of(&s);
    char *first = page_bytes(&s);
    for (unsigned long n = 0; n < walks; n++) {
        s.compares = walks <= WALKS_COMPARED || !any(COMPARED_EACH);
        walk(&s, words, first);
    }
    free(first);
    session_end(&s);
}

static void undo_reaches_the_start(void **state)
{
    (void) state;
    const char *asked = getenv("WALKS"); /* WALKS=10000 before a release */
    unsigned long walks = asked ? strtoul(asked, NULL, 10) : 20;
    walk_over(TRANSCRIPT, walks);
    printf("figure: %lu walks of edits, undone and redone, byte for byte\n", walks);
}

/* Talk of the tests' own recordings: returns to a dish, asides, mishearings, components. */
static void edits_go_on_from_what_was_kept(void **state)
{
    static const char *const FILES[] = {"tests/recordings/two-bakes.vtt",
                                        "tests/recordings/amma-kitchen.json"};
    (void) state;
    for (size_t i = 0; i < sizeof FILES / sizeof *FILES; i++) {
        struct buffer bytes = {0};
        struct problems p = {0};
        assert_true(disk_read(FILES[i], (size_t) 1 << 20, &bytes, &p));
        walk_over(bytes.at, 1);
        buffer_release(&bytes);
        problems_release(&p);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(word_is_read_anew),
        cmocka_unit_test(word_is_read_anew_everywhere),
        cmocka_unit_test(a_word_may_become_two),
        cmocka_unit_test(amount_is_set_and_removed),
        cmocka_unit_test(odd_values_are_refused),
        cmocka_unit_test(odd_requests_are_refused),
        cmocka_unit_test(lines_are_added_moved_joined_removed),
        cmocka_unit_test(unlike_amounts_are_not_joined),
        cmocka_unit_test(no_line_is_joined_with_itself),
        cmocka_unit_test(steps_are_set_added_moved_joined_removed),
        cmocka_unit_test(borders_are_moved_cut_joined),
        cmocka_unit_test(a_new_dish_begins_empty),
        cmocka_unit_test(a_dish_is_never_emptied),
        cmocka_unit_test(title_yield_and_approval),
        cmocka_unit_test(findings_are_answered),
        cmocka_unit_test(edits_outlive_a_newer_transcript),
        cmocka_unit_test(edits_without_a_place_are_kept),
        cmocka_unit_test(later_kinds_are_kept),
        cmocka_unit_test(bad_files_are_refused_whole),
        cmocka_unit_test(undo_reaches_the_start),
        cmocka_unit_test(edits_go_on_from_what_was_kept),
    };
    return cmocka_run_group_tests(tests, session_setup, session_teardown);
}
