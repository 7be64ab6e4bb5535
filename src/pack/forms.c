/* pack/forms.c
 * SPDX-License-Identifier: MIT */
#include "pack/forms.h"

#include <string.h>

static const struct {
    const char *name;
    struct forms forms;
} forms_names[] = {
    {"none", {.kind = FORMS_NONE}},
    {"noun", {.kind = FORMS_NOUN, .last = true}},
    {"noun-last", {.kind = FORMS_NOUN, .last = true}},
    {"verb", {.kind = FORMS_VERB}},
    {"verb-last", {.kind = FORMS_VERB, .last = true}},
    {"verb2", {.kind = FORMS_VERB, .doubled = true}},
    {"verb2-last", {.kind = FORMS_VERB, .doubled = true, .last = true}},
};

static bool read_given(struct loader *l, const struct source_line *line, struct text t,
                       struct forms *forms)
{
    struct place at = line_place(line, t.at);
    size_t want = forms->kind == FORMS_NOUN ? 1 : 4;
    struct text rest = t, part;
    if (forms->kind == FORMS_NONE || forms->doubled)
        return problem(l->problems, at, "forms are written out after `noun:` or `verb:` only");
    bool fine = true;
    while (fine && text_part(&rest, ',', &part)) {
        part = text_trim(part);
        fine = part.length && forms->given_count < want;
        if (fine)
            forms->given[forms->given_count++] = part;
    }
    if (!fine || forms->given_count != want)
        return problem(l->problems, at,
                       want == 1 ? "`noun:` takes one form: the plural"
                                 : "`verb:` takes four forms: third person, "
                                   "-ing, past, participle, divided by commas");
    return true;
}

bool forms_read(struct loader *l, const struct source_line *line, struct text t,
                struct forms *forms)
{
    size_t colon = text_find(t, ':', 0);
    struct text name = text_slice(t, 0, colon);
    for (size_t i = 0; i < sizeof forms_names / sizeof *forms_names; i++) {
        if (!text_is(name, forms_names[i].name))
            continue;
        *forms = forms_names[i].forms;
        return colon == t.length || read_given(l, line, text_slice(t, colon + 1, t.length), forms);
    }
    return problem(l->problems, line_place(line, t.at),
                   "unknown forms \"%.*s\"; there are none, noun, noun:PLURAL, verb, "
                   "verb:THIRD,DOING,PAST,PARTICIPLE, verb2, each with -last",
                   QUOTE(t));
}

/* The word of `words` that is inflected. */
static struct text inflected_word(struct text words, bool last)
{
    size_t space = text_find(words, ' ', 0);
    if (!last)
        return text_slice(words, 0, space);
    size_t begin = 0;
    for (; space < words.length; space = text_find(words, ' ', space + 1))
        begin = space + 1;
    return text_slice(words, begin, words.length);
}

/* `words` with `form` in place of `word`, which is a part of it. */
static struct text replace_word(struct arena *a, struct text words, struct text word,
                                struct text form)
{
    if (word.length == words.length)
        return form;
    size_t before = (size_t) (word.at - words.at), after = before + word.length;
    size_t tail = words.length - after;
    char *at = arena_alloc(a, before + form.length + tail + 1);
    memcpy(at, words.at, before);
    memcpy(at + before, form.at, form.length);
    memcpy(at + before + form.length, words.at + after, tail);
    return (struct text){at, before + form.length + tail};
}

/* "chop" -> "chopp" */
static struct text double_last(struct arena *a, struct text word)
{
    size_t last = word.length - 1;
    while (last && byte_goes_on(word.at[last]))
        last--;
    size_t letter = word.length - last; /* its bytes */
    char *at = arena_alloc(a, word.length + letter);
    memcpy(at, word.at, word.length);
    memcpy(at + word.length, word.at + last, letter);
    return (struct text){at, word.length + letter};
}

static void no_ending(struct loader *l, struct text word, struct place at)
{
    if (!l->told_endings)
        problem(l->problems, at, "no row of the table forms.tsv makes this form of \"%.*s\"",
                QUOTE(word));
    l->told_endings = true;
}

struct text forms_make(struct loader *l, const struct forms *forms, enum form form,
                       struct text words, struct text given, struct place at)
{
    struct arena *a = &l->arena;
    struct text word = inflected_word(words, forms->last);
    if (given.length && text_find(given, ' ', 0) < given.length)
        return given; /* several words: they are all of them */
    if (given.length)
        return replace_word(a, words, word, given);
    bool doubled = forms->doubled && form != FORM_THIRD && word.length;
    struct text made = inflect(l, form, doubled ? double_last(a, word) : word);
    if (made.length)
        return replace_word(a, words, word, made);
    no_ending(l, word, at);
    return TEXT_EMPTY;
}

struct forms forms_of_other(const struct forms *forms, struct text row, struct text other)
{
    struct forms usual = *forms;
    bool several =
        forms->given_count && text_find(forms->given[0], ' ', 0) < forms->given[0].length;
    if (several
        || !text_equal(inflected_word(row, forms->last), inflected_word(other, forms->last))) {
        memset(usual.given, 0, sizeof usual.given);
        usual.given_count = 0;
    }
    return usual;
}
