/* pack/lexicon_file.c: a lexicon's rows -> entries, with their forms.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/load.h"

enum cell { CELL_WORDS, CELL_VALUE, CELL_MARKS, CELL_OTHERS, CELL_FORMS, CELLS };

/* How rows are inflected. `given` are forms written out: a plural, or third, doing, past,
 * participle. */
struct forms {
    enum { FORMS_NONE, FORMS_NOUN, FORMS_VERB } kind;
    bool doubled; /* the last letter: chop, chopping */
    bool last;    /* the last word of several is inflected, not the first */
    struct text given[4];
    size_t given_count;
};

/* What holds for the rows that follow. */
struct lexicon {
    struct loader *loader;
    const struct source_line *line;
    unsigned char tag; /* 0: none, or an unknown one; then rows are checked only */
    bool told_tag;     /* that the tag is missing or unknown */
    uint64_t marks;
    struct forms forms;
};

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

/* Tags whose value the program counts with. */
static bool tag_needs_number(unsigned char tag)
{
    static const unsigned char tags[] = {TAG_ONES,     TAG_TEENS,    TAG_TENS, TAG_HUNDRED,
                                         TAG_THOUSAND, TAG_FRACTION, TAG_TIME};
    return memchr(tags, tag, sizeof tags);
}

static struct problems *problems_of(const struct lexicon *x)
{
    return x->loader->problems;
}

static bool read_given(const struct lexicon *x, struct text t, struct forms *forms)
{
    struct place at = line_place(x->line, t.at);
    size_t want = forms->kind == FORMS_NOUN ? 1 : 4;
    struct text rest = t, part;
    if (forms->kind == FORMS_NONE || forms->doubled)
        return problem(problems_of(x), at, "forms are written out after `noun:` or `verb:` only");
    bool fine = true;
    while (fine && text_part(&rest, ',', &part)) {
        part = text_trim(part);
        fine = part.length && forms->given_count < want;
        if (fine)
            forms->given[forms->given_count++] = part;
    }
    if (!fine || forms->given_count != want)
        return problem(problems_of(x), at,
                       want == 1 ? "`noun:` takes one form: the plural"
                                 : "`verb:` takes four forms: third person, "
                                   "-ing, past, participle, divided by commas");
    return true;
}

static bool read_forms(const struct lexicon *x, struct text t, struct forms *forms)
{
    size_t colon = text_find(t, ':', 0);
    struct text name = text_slice(t, 0, colon);
    for (size_t i = 0; i < sizeof forms_names / sizeof *forms_names; i++) {
        if (!text_is(name, forms_names[i].name))
            continue;
        *forms = forms_names[i].forms;
        return colon == t.length || read_given(x, text_slice(t, colon + 1, t.length), forms);
    }
    return problem(problems_of(x), line_place(x->line, t.at),
                   "unknown forms \"%.*s\"; there are none, noun, noun:PLURAL, verb, "
                   "verb:THIRD,DOING,PAST,PARTICIPLE, verb2, each with -last",
                   QUOTE(t));
}

static bool read_marks(const struct lexicon *x, struct text t, uint64_t *marks)
{
    bool fine = true;
    struct text name;
    while (line_word(&t, &name)) {
        uint64_t mark = 0;
        if (!mark_find(name, &mark))
            fine = problem(problems_of(x), line_place(x->line, name.at),
                           "unknown mark \"%.*s\"; marks.def lists them", QUOTE(name));
        *marks |= mark;
    }
    return fine;
}

/* Adds a reading of `words`, in all else like `like`. */
static void add_entry(const struct lexicon *x, const struct listing *like, struct text words,
                      bool made, struct place at)
{
    struct listing e = *like;
    size_t count;
    if (words.length > ENTRY_BYTES) {
        problem(problems_of(x), at, "the words are longer than %d bytes", ENTRY_BYTES);
        return;
    }
    e.words = fold_words(&x->loader->arena, words, &count);
    e.words_count = (unsigned char) count;
    e.made = made;
    if (!count)
        problem(problems_of(x), at, "\"%.*s\" is no word", QUOTE(words));
    else if (count > ENTRY_WORDS)
        problem(problems_of(x), at, "more than %d words", ENTRY_WORDS);
    else
        entry_add(x->loader, &e, at);
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

static void no_ending(const struct lexicon *x, struct text word, struct place at)
{
    if (!x->loader->told_endings)
        problem(problems_of(x), at, "no row of the table forms.tsv makes this form of \"%.*s\"",
                QUOTE(word));
    x->loader->told_endings = true;
}

/* One form of `words`; empty when the table has none. */
static struct text make_form(const struct lexicon *x, const struct forms *forms, enum form form,
                             struct text words, struct text given, struct place at)
{
    struct arena *a = &x->loader->arena;
    struct text word = inflected_word(words, forms->last);
    if (given.length && text_find(given, ' ', 0) < given.length)
        return given; /* several words: they are all of them */
    if (given.length)
        return replace_word(a, words, word, given);
    bool doubled = forms->doubled && form != FORM_THIRD && word.length;
    struct text made = inflect(x->loader, form, doubled ? double_last(a, word) : word);
    if (made.length)
        return replace_word(a, words, word, made);
    no_ending(x, word, at);
    return TEXT_EMPTY;
}

static void add_made(const struct lexicon *x, const struct listing *like, struct text made,
                     struct place at)
{
    if (made.length)
        add_entry(x, like, made, true, at);
}

static void add_plural(const struct lexicon *x, const struct forms *forms,
                       const struct listing *base, struct place at)
{
    struct listing e = *base;
    e.marks |= MARK_OF(plural);
    add_made(x, &e, make_form(x, forms, FORM_PLURAL, base->shown, forms->given[0], at), at);
}

static void add_verb_forms(const struct lexicon *x, const struct forms *forms,
                           const struct listing *base, struct place at)
{
    const struct text *given = forms->given;
    struct listing e = *base;
    add_made(x, &e, make_form(x, forms, FORM_THIRD, base->shown, given[0], at), at);
    e.tag = TAG_DOING;
    e.shown = make_form(x, forms, FORM_DOING, base->shown, given[1], at);
    add_made(x, &e, e.shown, at);
    e.tag = TAG_DONE;
    e.shown = make_form(x, forms, FORM_DONE, base->shown, given[3], at);
    add_made(x, &e, e.shown, at);
    if (given[2].length) /* else past and participle are the same */
        add_made(x, &e, make_form(x, forms, FORM_DONE, base->shown, given[2], at), at);
}

/* The entry that `base` describes, shown as its words stand there, and its forms. */
static void add_with_forms(const struct lexicon *x, const struct listing *base,
                           const struct forms *forms)
{
    struct place at = line_place(x->line, base->shown.at);
    add_entry(x, base, base->shown, false, at);
    if (forms->kind == FORMS_NOUN)
        add_plural(x, forms, base, at);
    else if (forms->kind == FORMS_VERB)
        add_verb_forms(x, forms, base, at);
}

/* Forms written out are those of the row's own word; another word takes the usual endings. */
static struct forms forms_of_other(const struct forms *forms, struct text row, struct text other)
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

static void add_others(const struct lexicon *x, const struct listing *row, struct text others,
                       const struct forms *forms)
{
    struct listing e = *row;
    struct text rest = others, other;
    while (others.length && text_part(&rest, '|', &other)) {
        e.shown = text_trim(other);
        if (e.shown.length) {
            struct forms usual = forms_of_other(forms, row->shown, e.shown);
            add_with_forms(x, &e, &usual);
        } else {
            problem(problems_of(x), line_place(x->line, other.at),
                    "words are missing between the `|` signs");
        }
    }
}

static bool split_row(const struct lexicon *x, struct text cell[CELLS])
{
    struct text rest = x->line->text;
    for (size_t i = 0; i < CELLS; i++) {
        cell[i] = TEXT_EMPTY;
        if (text_part(&rest, '\t', &cell[i]))
            cell[i] = text_trim(cell[i]);
    }
    if (rest.at)
        return problem(problems_of(x), line_place(x->line, rest.at),
                       "more than five cells; a row is words, value, marks, others, forms");
    if (!cell[CELL_WORDS].length)
        return problem(problems_of(x), line_place(x->line, x->line->text.at),
                       "the row begins without words");
    if (text_find(cell[CELL_WORDS], '|', 0) < cell[CELL_WORDS].length)
        return problem(problems_of(x), line_place(x->line, cell[CELL_WORDS].at),
                       "`|` among the words; other words for the same stand in the fourth cell");
    return true;
}

static bool check_number(const struct lexicon *x, const struct listing *e)
{
    if (!tag_needs_number(e->tag) || ratio_finite(e->number))
        return true;
    return problem(problems_of(x), line_place(x->line, e->value.at),
                   "\"%.*s\" is no number; the value of a %s is one, as 3, 1/2 or 2.5",
                   QUOTE(e->value), tag_name(e->tag));
}

static void read_row(struct lexicon *x)
{
    struct text cell[CELLS];
    struct forms forms = x->forms;
    if (!split_row(x, cell))
        return;
    struct listing e = {.tag = x->tag,
                        .marks = x->marks,
                        .shown = cell[CELL_WORDS],
                        .value = cell[CELL_VALUE].length ? cell[CELL_VALUE] : cell[CELL_WORDS],
                        .file = x->line->file,
                        .line = x->line->number};
    e.number = ratio_read(e.value.at, e.value.length);
    bool fine = read_marks(x, cell[CELL_MARKS], &e.marks);
    if (cell[CELL_FORMS].length)
        fine &= read_forms(x, cell[CELL_FORMS], &forms);
    fine &= check_number(x, &e);
    if (!x->tag && !x->told_tag)
        fine = problem(problems_of(x), line_place(x->line, x->line->text.at),
                       "a row before any `@tag`; the tag says what the words are");
    x->told_tag |= !x->tag;
    if (!fine || !x->tag)
        return;
    add_with_forms(x, &e, &forms);
    add_others(x, &e, cell[CELL_OTHERS], &forms);
}

static void set_tag(struct lexicon *x, struct text name)
{
    x->tag = 0;
    x->told_tag = !tag_find(name, &x->tag)
                  && !problem(problems_of(x), line_place(x->line, name.at),
                              "unknown tag \"%.*s\"; tags.def lists them", QUOTE(name));
}

static void set_forms(struct lexicon *x, struct text t)
{
    struct forms forms;
    if (!read_forms(x, t, &forms))
        return;
    if (forms.given_count)
        problem(problems_of(x), line_place(x->line, t.at),
                "forms are written out in a row, not for all rows");
    else
        x->forms = forms;
}

static void read_directive(struct lexicon *x)
{
    struct text rest = x->line->text, word;
    line_word(&rest, &word);
    rest = text_trim(rest);
    if (text_is(word, "@tag")) {
        set_tag(x, rest);
    } else if (text_is(word, "@forms")) {
        set_forms(x, rest);
    } else if (text_is(word, "@marks")) {
        x->marks = 0;
        read_marks(x, rest, &x->marks);
    } else {
        problem(problems_of(x), line_place(x->line, word.at),
                "unknown directive \"%.*s\"; there are @tag, @forms, @marks", QUOTE(word));
    }
}

void lexicon_file_read(struct loader *l, const struct pack_file *file)
{
    struct lines lines = lines_open(file, l->problems);
    struct lexicon x = {.loader = l, .line = &lines.line, .forms = {.kind = FORMS_NONE}};
    while (lines_next(&lines)) {
        if (lines.line.text.at[0] == '@')
            read_directive(&x);
        else
            read_row(&x);
    }
}
