/* pack/lexicon_file.c: a lexicon's rows -> entries, with their forms.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/forms.h"

enum cell { CELL_WORDS, CELL_VALUE, CELL_MARKS, CELL_OTHERS, CELL_FORMS, CELLS };

/* What holds for the rows that follow. */
struct lexicon {
    struct loader *loader;
    const struct source_line *line;
    unsigned char tag; /* 0: none, or an unknown one; then rows are checked only */
    bool told_tag;     /* that the tag is missing or unknown */
    uint64_t marks;
    struct forms forms;
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
    add_made(x, &e, forms_make(x->loader, forms, FORM_PLURAL, base->shown, forms->given[0], at),
             at);
}

static void add_verb_forms(const struct lexicon *x, const struct forms *forms,
                           const struct listing *base, struct place at)
{
    const struct text *given = forms->given;
    struct listing e = *base;
    add_made(x, &e, forms_make(x->loader, forms, FORM_THIRD, base->shown, given[0], at), at);
    e.tag = TAG_DOING;
    e.shown = forms_make(x->loader, forms, FORM_DOING, base->shown, given[1], at);
    add_made(x, &e, e.shown, at);
    e.tag = TAG_DONE;
    e.shown = forms_make(x->loader, forms, FORM_DONE, base->shown, given[3], at);
    add_made(x, &e, e.shown, at);
    if (given[2].length) /* else past and participle are the same */
        add_made(x, &e, forms_make(x->loader, forms, FORM_DONE, base->shown, given[2], at), at);
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
        fine &= forms_read(x->loader, x->line, cell[CELL_FORMS], &forms);
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
    if (!forms_read(x->loader, x->line, t, &forms))
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
