/* write/test_html.c: the escapers, one for each place where a text may land. What must be escaped
 * where: HTML Living Standard 13.1 (text, attributes, raw text elements), XML 1.0 2.2 and 2.4, RFC
 * 3986; and tests/write/injections.h, texts that would be more than text if they got through.
 * SPDX-License-Identifier: MIT */
#include "write/html.h"
#include "write/made.h"
#include "write/json_print.h"

#include "write/injections.h"

static void assert_put(void (*put)(struct buffer *, struct text), const char *in,
                       const char *wanted)
{
    struct buffer b = {0};
    put(&b, text_from(in));
    assert_string_equal(b.at ? b.at : "", wanted);
    buffer_release(&b);
}

static void text_and_attributes(void **state)
{
    (void) state;
    assert_put(put_escaped, "Tom's \"hot\" <b>&amp;</b>",
               "Tom&#39;s &quot;hot&quot; &lt;b&gt;&amp;amp;&lt;/b&gt;");
    assert_put(put_escaped, "crème ½ 煎", "crème ½ 煎");
    assert_put(put_escaped,
               "a\x01"
               "b\x7f"
               "c",
               "a\xEF\xBF\xBD"
               "b\xEF\xBF\xBD"
               "c");
    assert_put(put_escaped, "\xC3(\xFF", "\xEF\xBF\xBD(\xEF\xBF\xBD");
    assert_put(put_escaped, "\xEF\xBF\xBE", "\xEF\xBF\xBD"); /* U+FFFE is no character */
}

static void addresses(void **state)
{
    (void) state;
    assert_put(put_url, "https://v.example/watch?v=1&t=5", "https://v.example/watch?v=1&amp;t=5");
    assert_put(put_url, "a b\"c'd<e>", "a%20b%22c%27d%3Ce%3E");
    assert_put(put_url, "/soup/crème%20x", "/soup/cr%C3%A8me%20x");
}

static void addresses_that_run_something_are_none(void **state)
{
    static const char *const bad[] = {"javascript:alert(1)",
                                      "JAVASCRIPT:x",
                                      " javascript:x",
                                      "\tjavascript:x",
                                      "java\nscript:x",
                                      "data:text/html,x",
                                      "vbscript:x",
                                      "file:///etc/passwd",
                                      "blob:x",
                                      "x:y",
                                      "\x01javascript:x",
                                      "http:x"};
    static const char *const good[] = {"",    "a.html", "../a.html",  "/a",
                                       "#s4", "?q=a:b", "HTTPS://x/", "http://x"};
    (void) state;
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++)
        assert_false(url_is_plain(text_from(bad[i])));
    for (size_t i = 0; i < sizeof good / sizeof *good; i++)
        assert_true(url_is_plain(text_from(good[i])));
}

static void elements_nest(void **state)
{
    struct buffer b = {0};
    struct html h = {.out = &b};
    (void) state;
    html_begin(&h, "a");
    html_url(&h, "href", TEXT_OF("javascript:x"));
    html_attribute(&h, "title", TEXT_OF("\" onclick=\""));
    html_put(&h, TEXT_OF("<"));
    html_empty(&h, "br");
    html_end(&h);
    assert_string_equal(b.at, "<a href=\"#\" title=\"&quot; onclick=&quot;\">&lt;<br></a>");
    buffer_release(&b);
}

static void a_style_sheet_stays_in_its_element(void **state)
{
    struct buffer b = {0};
    struct html h = {.out = &b};
    (void) state;
    html_style(&h, TEXT_OF("a{}/*</STYLE><script>*/ b{content:'</style>'}"));
    assert_null(strstr(b.at, "</STYLE>"));
    assert_ptr_equal(strstr(b.at, "</style>"), b.at + b.length - sizeof "</style>");
    buffer_release(&b);
}

/* In a <script> nothing may close it or open a comment in it. */
static void json_in_a_script(void **state)
{
    struct buffer b = {0};
    struct json j = {.out = &b, .in_script = true};
    (void) state;
    json_put_text(&j, TEXT_OF("</script><!--&"));
    assert_string_equal(b.at, "\"\\u003c/script\\u003e\\u003c!--\\u0026\"");
    buffer_release(&b);
}

/* Every text that a recording brings, in every page that is published. What stays of it must be
 * text: no tag but ours, no attribute but ours. */
static void hostile_recording(struct recording *r, struct open_kitchen *o, const char *hostile)
{
    made_open(r, &o->arena, hostile);
    struct dish *d = made_dish(r, hostile, 0, 60);
    made_line(r, d, 1, hostile, hostile, "2", "2", "cup");
    struct ingredient *in = made_line(r, d, 2, hostile, "butter", "1", "1", "");
    in->group = in->size = text_from(hostile);
    *LIST_ADD(r->arena, &in->prep) = text_from(hostile);
    made_step(r, d, 3, 3, hostile, hostile);
    made_step(r, d, 5, 30, hostile, "");
    *LIST_ADD(r->arena, &d->cautions) =
        (struct caution){text_from(hostile), text_from(hostile), TEXT_EMPTY, {0}};
    *LIST_ADD(r->arena, &d->allergens) =
        (struct allergen){text_from(hostile), text_from(hostile), true, {0}};
    struct finding *f = made_finding(r, "no-amount", LEVEL_FIX, 0, 1);
    f->said = f->about = f->why = f->suggest = f->source = text_from(hostile);
    r->cues.at[0].text = r->cues.at[0].speaker = text_from(hostile);
}

static size_t count_of(const char *out, const char *what)
{
    size_t n = 0;
    for (const char *at = out; (at = strstr(at, what)); at++)
        n += at == out || at[-1] != '\\'; /* a quote inside a JSON string is no quote of the page */
    return n;
}

static void nothing_gets_through(void **state)
{
    struct open_kitchen *o = *state;
    const struct format *f;
    for (size_t i = 0; i < sizeof INJECTIONS / sizeof *INJECTIONS; i++)
        for (size_t n = 0; (f = format_at(n)); n++) {
            struct recording r, tame;
            struct problems p = {0};
            if (strcmp(f->as, "html") != 0 && strcmp(f->as, "matroska") != 0
                && strcmp(f->as, "podlove") != 0)
                continue;
            hostile_recording(&r, o, INJECTIONS[i]);
            const char *out = made_output(o, &r, f->write, 0, &p);
            hostile_recording(&tame, o, "tame");
            const char *same = made_output(o, &tame, f->write, 0, &p);
            assert_int_equal(count_of(out, "<"), count_of(same, "<"));
            assert_int_equal(count_of(out, ">"), count_of(same, ">"));
            assert_int_equal(count_of(out, "\""), count_of(same, "\""));
            problems_release(&p);
        }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(text_and_attributes),
        cmocka_unit_test(addresses),
        cmocka_unit_test(addresses_that_run_something_are_none),
        cmocka_unit_test(elements_nest),
        cmocka_unit_test(a_style_sheet_stays_in_its_element),
        cmocka_unit_test(json_in_a_script),
        cmocka_unit_test_setup_teardown(nothing_gets_through, open_setup, open_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
