/* tests/edits/test_values.c: every field that the cook can set, what is taken for it and what the
 * page then shows, and what is refused; reasons for what is unsafe.
 * SPDX-License-Identifier: MIT */
#include "edits/session.h"

#define TEMPERATURE(rest) "[{'value':'180','unit':'C'" rest "}]"
#define DURATION(rest) "[{'min':60,'max':90" rest "}]"

/* Single quotes stand for double ones. `shown` NULL: it is refused, and nothing changes. */
static const struct row {
    const char *kind, *field, *value, *shown;
} ROWS[] = {
    {"line-set", "food", "'leek'", "'leek'"},
    {"line-set", "food", "' leek '", "'leek'"},
    {"line-set", "food", "null", NULL},
    {"line-set", "food", "'  '", NULL},
    {"line-set", "food", "'a\\nb'", "'a\\nb'"},
    {"line-set", "food", "'a\\tb'", NULL},
    {"line-set", "amount", "{'min':'1','max':null,'unit':'cup','approx':true}",
     "{'min':'1','max':null,'unit':'cup','approx':true}"},
    {"line-set", "amount", "{'min':'3/4','max':'1 1/2','unit':null}",
     "{'min':'3/4','max':'1 1/2','unit':'','approx':false}"},
    {"line-set", "amount", "{'min':'2','max':'2','unit':''}",
     "{'min':'2','max':'2','unit':'','approx':false}"},
    {"line-set", "amount", "{'min':'1','max':'1','unit':' '}", NULL},
    {"line-set", "package", "{'min':'14','max':'14','unit':'ounce'}",
     "{'min':'14','max':'14','unit':'ounce','approx':false}"},
    {"line-set", "package", "null", "null"},
    {"line-set", "size", "'large'", "'large'"},
    {"line-set", "size", "null", "''"},
    {"line-set", "size", "7", NULL},
    {"line-set", "prep", "['chopped','toasted']", "['chopped','toasted']"},
    {"line-set", "prep", "[]", "[]"},
    {"line-set", "prep", "'chopped'", NULL},
    {"line-set", "prep", "['chopped',7]", NULL},
    {"line-set", "prep", "['']", NULL},
    {"line-set", "state", "['cold']", "['cold']"},
    {"line-set", "alternatives", "['chive']", "['chive']"},
    {"line-set", "optional", "true", "true"},
    {"line-set", "optional", "false", "false"},
    {"line-set", "optional", "null", NULL},
    {"line-set", "optional", "'true'", NULL},
    {"line-set", "group", "'Dressing'", "'Dressing'"},
    {"line-set", "group", "null", "''"},
    {"line-set", "role", "'garnish'", "'garnish'"},
    {"line-set", "role", "'serve-with'", "'serve-with'"},
    {"line-set", "role", "'ingredient'", "'ingredient'"},
    {"line-set", "role", "'guest'", NULL},
    {"line-set", "role", "null", NULL},
    {"step-set", "text", "'Boil it.'", "'Boil it.'"},
    {"step-set", "until", "'it is soft'", "'it is soft'"},
    {"step-set", "until", "null", "''"},
    {"step-set", "vessel", "'pot'", "'pot'"},
    {"step-set", "heat", "'low'", "'low'"},
    {"step-set", "beside", "true", "true"},
    {"step-set", "temperatures", "[]", "[]"},
    {"step-set", "temperatures", TEMPERATURE(""), "'fan':false"},
    {"step-set", "temperatures", TEMPERATURE(",'fan':true,'of':'oven'"), "'fan':true,'of':'oven'"},
    {"step-set", "temperatures", "[{'value':'4','unit':'G'},{'value':'350','unit':'F'}]",
     "'value':'350','unit':'F'"},
    {"step-set", "temperatures", TEMPERATURE(",'fan':'yes'"), NULL},
    {"step-set", "temperatures", TEMPERATURE(",'of':''"), NULL},
    {"step-set", "temperatures", "[{'value':'1501','unit':'C'}]", NULL},
    {"step-set", "temperatures", "[{'value':'180','unit':'CF'}]", NULL},
    {"step-set", "temperatures", "[{'value':'180'}]", NULL},
    {"step-set", "temperatures", "[180]", NULL},
    {"step-set", "temperatures", "'180'", NULL},
    {"step-set", "durations", "[]", "[]"},
    {"step-set", "durations", DURATION(",'approx':true,'of':'boil','each':'side'"),
     "'min':60,'max':90,'approx':true,'of':'boil','each':'side'"},
    {"step-set", "durations", "[{'min':60,'max':null},{'min':1,'max':2}]", "'min':1,'max':2"},
    {"step-set", "durations", "[{'min':60,'max':59}]", NULL},
    {"step-set", "durations", "[{'min':0,'max':60}]", NULL},
    {"step-set", "durations", "[{'min':60,'max':2678401}]", NULL},
    {"step-set", "durations", "[{'min':60}]", NULL},
    {"step-set", "durations", "[{'min':'60','max':60}]", NULL},
    {"step-set", "durations", DURATION(",'each':7"), NULL},
    {"step-set", "durations", DURATION(",'of':7"), NULL},
    {"step-set", "durations", DURATION(",'approx':7"), NULL},
    {"step-set", "durations", "{'min':60,'max':60}", NULL},
    {"dish-set", "title", "'Rice salad'", "'Rice salad'"},
    {"dish-set", "title", "null", NULL},
    {"dish-set", "yield", "{'min':'4','max':'6','of':'serving'}", "'min':'4','max':'6'"},
    {"dish-set", "yield", "null", "null"},
    {"dish-set", "yield", "{'min':'4','max':'6'}", NULL},
    {"dish-set", "yield", "{'min':'6','max':'4','of':'serving'}", NULL},
    {"dish-set", "approved", "true", "true"},
    {"dish-set", "food", "'leek'", NULL},
    {"line-set", "title", "'leek'", NULL},
    {"step-set", "food", "'leek'", NULL},
};

static json_t *item(const struct session *s, const char *kind)
{
    if (strcmp(kind, "line-set") == 0)
        return session_line(s, 1, "paprika");
    return strcmp(kind, "step-set") == 0 ? session_step(s, 1, 0) : session_dish(s, 1);
}

/* What the page has for a field of the item that had this id: a line may have another food now. */
static char *page_value(const struct session *s, const char *id, const char *field)
{
    static const char *const LISTS[] = {"lines", "steps"};
    json_t *dish = session_dish(s, 1), *found = dish, *one;
    size_t n;
    for (size_t i = 0; i < 2; i++)
        json_array_foreach(json_object_get(dish, LISTS[i]), n, one)
        {
            if (strcmp(session_text(one, "id"), id) == 0)
                found = one;
        }
    char *text = json_dumps(json_object_get(found, field), JSON_COMPACT | JSON_ENCODE_ANY);
    if (!text)
        return strdup("");
    for (char *at = text; *at; at++)
        if (*at == '"')
            *at = '\'';
    return text;
}

static void each_field_takes_what_it_can_be(void **state)
{
    (void) state;
    for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
        const struct row *r = &ROWS[i];
        struct session s = session_begin(TRANSCRIPT);
        char id[32];
        snprintf(id, sizeof id, "%s", session_text(item(&s, r->kind), "id"));
        bool taken = session_try(&s, "{'kind':'%s','on':'%s','field':'%s','value':%s}", r->kind, id,
                                 r->field, r->value);
        char *now = page_value(&s, id, r->field);
        if (taken != (r->shown != NULL))
            fail_msg("%s: %s %s", taken ? "taken" : "refused", r->field, r->value);
        if (taken && (dishtake_edit_unplaced(s.d, 1) || !strstr(now, r->shown)))
            fail_msg("%s %s: %s", r->field, r->value, now);
        assert_int_equal(dishtake_edits(s.d), taken);
        free(now);
        session_end(&s);
    }
}

/* At the limits of text and of lists, and one over. */
static void texts_and_lists_have_an_end(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    for (int over = 1; over >= 0; over--) {
        char list[600] = "'a'";
        for (size_t i = 1; i < 50u + (size_t) over; i++)
            snprintf(list + 4 * i - 1, 5, ",'a'");
        assert_int_equal(session_try(&s,
                                     "{'kind':'line-set','on':'%s','field':'prep','value':[%s]}",
                                     session_line_id(&s, 1, "paprika"), list),
                         !over);
    }
    for (int over = 1; over >= 0; over--) {
        char asked[2200], food[2002];
        size_t length;
        memset(food, 'a', sizeof food);
        food[2000 + over] = '\0';
        snprintf(asked, sizeof asked,
                 "{\"kind\":\"line-set\",\"on\":\"%s\",\"field\":\"food\",\"value\":\"%s\"}",
                 session_line_id(&s, 1, "paprika"), food);
        assert_int_equal(dishtake_edit(s.d, asked, strlen(asked), &length) != NULL, !over);
    }
    session_end(&s);
}

static void one_edit_has_an_end(void **state)
{
    (void) state;
    struct session s = session_begin(TRANSCRIPT);
    size_t length, room = (64 << 10) + 1;
    char *asked = malloc(room + 1);
    assert_non_null(asked);
    int begun = snprintf(asked, room, "{\"kind\":\"line-remove\",\"on\":\"%s\"}",
                         session_line_id(&s, 1, "paprika"));
    memset(asked + begun, ' ', room - (size_t) begun);
    assert_null(dishtake_edit(s.d, asked, room, &length));
    assert_non_null(dishtake_edit(s.d, asked, room - 1, &length));
    free(asked);
    session_end(&s);
}

/* Invented; the heat is too low on purpose. */
static const char UNSAFE[] =
    "[0:05] Today we're making roast chicken. You need two pounds of chicken thighs and a "
    "teaspoon of salt.\n"
    "[0:12] Rub the chicken with the salt. Roast the chicken at 400 degrees for forty minutes.\n"
    "[0:30] Take it out when the inside reads 130 degrees on the thermometer.\n"
    "[0:40] And that's our roast chicken.\n";

static size_t stop(const struct session *s)
{
    size_t i;
    json_t *finding;
    json_array_foreach(json_object_get(s->page, "findings"), i,
                       finding) if (strcmp(session_text(finding, "level"), "stop") == 0) return i;
    fail_msg("nothing unsafe was found");
    return 0;
}

static void what_is_unsafe_wants_a_reason(void **state)
{
    static const struct {
        const char *value, *reason;
        bool taken;
    } ANSWERS[] = {
        {"accepted", "", false},
        {"accepted", ",'reason':null", false},
        {"dismissed", ",'reason':'  '", false},
        {"dismissed", ",'reason':7", false},
        {"accepted", ",'reason':'cooked on, off camera'", true},
        {"open", "", true},
        {"dismissed", ",'reason':'misheard'", true},
    };
    (void) state;
    struct session s = session_begin(UNSAFE);
    for (size_t i = 0; i < sizeof ANSWERS / sizeof *ANSWERS; i++) {
        size_t n = stop(&s);
        if (session_try(&s, "{'kind':'finding','finding':%zu,'value':'%s'%s}", n, ANSWERS[i].value,
                        ANSWERS[i].reason)
            != ANSWERS[i].taken)
            fail_msg("%s%s", ANSWERS[i].value, ANSWERS[i].reason);
        json_t *finding = json_array_get(json_object_get(s.page, "findings"), n);
        if (ANSWERS[i].taken)
            assert_string_equal(session_text(finding, "answer"), ANSWERS[i].value);
        else
            assert_string_equal(session_text(finding, "answer"), "open");
    }
    session_end(&s);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_field_takes_what_it_can_be),
        cmocka_unit_test(texts_and_lists_have_an_end),
        cmocka_unit_test(one_edit_has_an_end),
        cmocka_unit_test(what_is_unsafe_wants_a_reason),
    };
    return cmocka_run_group_tests(tests, session_setup, session_teardown);
}
