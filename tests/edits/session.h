/* tests/edits/session.h: a transcript, its edits file, and the recipes that come of both, as a page
 * would see them.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_EDITS_SESSION_H
#define TESTS_EDITS_SESSION_H

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>
#include <jansson.h>

#include "dishtake.h"

/* Invented. Two dishes, so that borders can be moved; some words are wrong on purpose. */
static const char TRANSCRIPT[] =
    "[0:00] Hello everybody, welcome back to the harbour kitchen.\n"
    "[0:05] Today we're making a tomato soup. You need two tablespoons of olive oil.\n"
    "[0:12] Chop one large onion and add it to the pot. Add a teaspoon of blurb it seeds.\n"
    "[0:20] Add three cups of tomatoes and stir in some salt. Simmer for twenty minutes.\n"
    "[0:30] Blend it until smooth. And that's our tomato soup.\n"
    "[0:40] Next up we're making a rice salad. Boil one cup of rice for twelve minutes.\n"
    "[0:50] Chop one cucumber and add two tablespoons of lemon juice. Add paprika too.\n"
    "[0:58] Toss everything together with a teaspoon of salt. And that's our rice salad.\n";

struct session {
    struct dishtake *d;
    const char *transcript;
    char *edits;           /* NULL: no file yet */
    json_t *page;          /* what it shows now */
    struct dishtake *anew; /* reads all of it each time, for comparing */
    bool compares;
};

static inline void session_show(const struct session *s)
{
    struct dishtake_message m;
    for (size_t i = 0; dishtake_message(s->d, i, &m); i++)
        print_error("%s: %s\n", m.file ? m.file : "", m.text);
}

/* All of it, as a command does. */
static inline enum dishtake_result session_read_all(const struct session *s, struct dishtake *d,
                                                    bool keep)
{
    struct dishtake_read_options o = {
        .size = sizeof o, .edits = s->edits, .edits_name = "talk.edits.json", .keep = keep};
    o.edits_length = s->edits ? strlen(s->edits) : 0;
    return dishtake_read(d, s->transcript, strlen(s->transcript), "talk.txt", &o);
}

/* What was found by going on from what was kept is what is found from nothing: the page, the
 * captions, the recipes and the messages, byte for byte. */
static inline void session_compare(const struct session *s)
{
    static const char *const FORMS[][2] = {
        {"review", "recipes"}, {"review", "words"}, {"recipes", "json"}, {"explain", "text"}};
    struct dishtake_message m, other;
    assert_int_equal(session_read_all(s, s->anew, false), DISHTAKE_DONE);
    for (size_t i = 0; i < sizeof FORMS / sizeof *FORMS; i++) {
        size_t length, other_length;
        const char *now = dishtake_write(s->d, FORMS[i][0], FORMS[i][1], NULL, &length);
        const char *anew = dishtake_write(s->anew, FORMS[i][0], FORMS[i][1], NULL, &other_length);
        assert_non_null(now);
        assert_non_null(anew);
        if (strcmp(now, anew) != 0)
            fail_msg("%s as %s differs from what is read from nothing:\n%s\n%s\n%s", FORMS[i][0],
                     FORMS[i][1], s->edits ? s->edits : "", now, anew);
    }
    size_t i = 0;
    for (; dishtake_message(s->d, i, &m); i++) {
        assert_true(dishtake_message(s->anew, i, &other));
        assert_string_equal(m.text, other.text);
    }
    assert_false(dishtake_message(s->anew, i, &other));
}

/* Only what the edits change, as the page does. */
static inline void session_read(struct session *s)
{
    size_t length;
    enum dishtake_result result =
        dishtake_read_edits(s->d, s->edits, s->edits ? strlen(s->edits) : 0);
    if (result == DISHTAKE_NOT_READY)
        result = session_read_all(s, s->d, true);
    if (result != DISHTAKE_DONE)
        session_show(s);
    assert_int_equal(result, DISHTAKE_DONE);
    if (s->compares)
        session_compare(s);
    json_decref(s->page);
    const char *page = dishtake_write(s->d, "review", "recipes", NULL, &length);
    assert_non_null(page);
    s->page = json_loadb(page, length, JSON_REJECT_DUPLICATES, NULL);
    assert_non_null(s->page);
}

/* Loading the grammar takes longer than a test, so all of them share one. */
static struct dishtake *session_grammar;

static inline int session_setup(void **state)
{
    (void) state;
    session_grammar = dishtake_new(NULL, 0);
    return session_grammar ? 0 : -1;
}

static inline int session_teardown(void **state)
{
    (void) state;
    dishtake_free(session_grammar);
    return 0;
}

static inline struct session session_begin(const char *transcript)
{
    struct session s = {.d = dishtake_again(session_grammar),
                        .anew = dishtake_again(session_grammar),
                        .transcript = transcript,
                        .compares = true};
    assert_non_null(s.d);
    assert_non_null(s.anew);
    session_read(&s);
    return s;
}

/* Another transcript in the place of the first one. */
static inline void session_renew(struct session *s, const char *transcript)
{
    s->transcript = transcript;
    assert_int_equal(session_read_all(s, s->d, true), DISHTAKE_DONE);
    session_read(s);
}

static inline void session_end(struct session *s)
{
    json_decref(s->page);
    free(s->edits);
    dishtake_free(s->d);
    dishtake_free(s->anew);
}

/* One more edit; false when it is refused. Single quotes stand for double ones. */
static inline bool session_try(struct session *s, const char *format, ...)
{
    char asked[2000];
    size_t length;
    va_list args;
    va_start(args, format);
    vsnprintf(asked, sizeof asked, format, args);
    va_end(args);
    for (char *at = asked; *at; at++)
        if (*at == '\'')
            *at = '"';
    const char *file = dishtake_edit(s->d, asked, strlen(asked), &length);
    if (!file)
        return false;
    free(s->edits);
    s->edits = strdup(file);
    session_read(s);
    return true;
}

/* The same, where it must be taken and find its place. */
#define session_do(s, ...)                                                   \
    do {                                                                     \
        if (!session_try((s), __VA_ARGS__)) {                                \
            session_show(s);                                                 \
            fail();                                                          \
        }                                                                    \
        assert_null(dishtake_edit_unplaced((s)->d, dishtake_edits((s)->d))); \
    } while (0)

static inline json_t *session_dish(const struct session *s, size_t i)
{
    return json_array_get(json_object_get(s->page, "dishes"), i);
}

static inline const char *session_text(const json_t *object, const char *key)
{
    const char *text = json_string_value(json_object_get(object, key));
    return text ? text : "";
}

/* The line of a dish with that food; NULL: none. */
static inline json_t *session_line(const struct session *s, size_t dish, const char *food)
{
    size_t i;
    json_t *line;
    json_array_foreach(json_object_get(session_dish(s, dish), "lines"), i,
                       line) if (strcmp(session_text(line, "food"), food) == 0) return line;
    return NULL;
}

static inline const char *session_line_id(const struct session *s, size_t dish, const char *food)
{
    const char *id = session_text(session_line(s, dish, food), "id");
    if (!*id)
        print_error("there is no %s in dish %zu\n", food, dish);
    assert_string_not_equal(id, "");
    return id;
}

static inline json_t *session_step(const struct session *s, size_t dish, size_t i)
{
    return json_array_get(json_object_get(session_dish(s, dish), "steps"), i);
}

/* The number of the first of those words, in the captions as they are read; fails when they are not
 * there. */
static inline size_t session_word(const struct session *s, const char *words)
{
    char text[4000] = "";
    size_t length, number = 0, i, n, begins[500];
    const char *bytes = dishtake_write(s->d, "review", "words", NULL, &length);
    json_t *page = json_loadb(bytes, length, 0, NULL), *cue, *word;
    json_array_foreach(json_object_get(page, "cues"), i, cue)
    {
        json_array_foreach(cue, n, word)
        {
            if (n < 4)
                continue;
            size_t end = strlen(text);
            begins[number++] = end;
            snprintf(text + end, sizeof text - end, "%s",
                     json_string_value(json_is_array(word) ? json_array_get(word, 0) : word));
        }
        snprintf(text + strlen(text), sizeof text - strlen(text), " ");
    }
    json_decref(page);
    const char *at = strstr(text, words);
    if (!at)
        fail_msg("there is no \"%s\" in: %s", words, text);
    for (i = 0; i < number && begins[i] < (size_t) (at - text);)
        i++;
    return i;
}

#endif
