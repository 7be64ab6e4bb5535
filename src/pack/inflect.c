/* pack/inflect.c: forms of words, by the endings in the table forms.tsv.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/load.h"

static const char *const form_names[FORMS] = {"plural", "third", "doing", "done"};

static bool form_find(struct text name, enum form *form)
{
    for (int i = 0; i < FORMS; i++) {
        if (text_is(name, form_names[i])) {
            *form = (enum form) i;
            return true;
        }
    }
    return false;
}

static bool read_cut(struct text cell, size_t *cut)
{
    *cut = 0;
    if (cell.length > 1 || (cell.length && (cell.at[0] < '0' || cell.at[0] > '9')))
        return false;
    if (cell.length)
        *cut = (size_t) (cell.at[0] - '0');
    return true;
}

static void add_ends(struct loader *l, struct ending e, struct text ends)
{
    const char *consonant = "CONSONANT+";
    struct text end;
    while (line_word(&ends, &end)) {
        e.after_consonant = text_starts(end, consonant);
        e.end = e.after_consonant ? text_slice(end, strlen(consonant), end.length) : end;
        if (text_is(e.end, "*"))
            e.end = TEXT_EMPTY;
        *LIST_ADD(&l->arena, &l->endings) = e;
    }
}

/* The column's number; t->columns when there is none. */
static size_t find_column(const struct listed_table *t, const char *head)
{
    size_t i = 0;
    while (i < t->columns && !text_is(t->heads[i], head))
        i++;
    return i;
}

static void read_row(struct loader *l, const struct listed_table *t, size_t row,
                     const size_t columns[4])
{
    struct text cell[4];
    for (size_t i = 0; i < 4; i++)
        cell[i] = text_trim(t->cells[row * t->columns + columns[i]]);
    struct place at = {t->file, t->lines[row], 1};
    struct ending e = {.add = cell[3]};
    if (!form_find(cell[0], &e.form))
        problem(l->problems, at, "unknown form \"%.*s\"; the forms are plural, third, doing, done",
                QUOTE(cell[0]));
    else if (!cell[1].length)
        problem(l->problems, at, "no endings; `*` stands for any");
    else if (!read_cut(cell[2], &e.cut))
        problem(l->problems, at, "`cut` is \"%.*s\"; it is a number of letters, 0 to 9",
                QUOTE(cell[2]));
    else
        add_ends(l, e, cell[1]);
}

void endings_read(struct loader *l, const struct listed_table *t)
{
    static const char *const heads[4] = {"form", "ends", "cut", "add"};
    size_t columns[4];
    for (size_t i = 0; i < 4; i++) {
        columns[i] = find_column(t, heads[i]);
        if (columns[i] == t->columns) {
            problem(l->problems, (struct place){.file = t->file},
                    "no column \"%s\"; this table has form, ends, cut, add", heads[i]);
            return;
        }
    }
    for (size_t row = 0; row < t->rows; row++)
        read_row(l, t, row, columns);
}

static bool is_consonant(char c)
{
    return c >= 'a' && c <= 'z' && !strchr("aeiou", c);
}

static bool fits(const struct ending *e, struct text word)
{
    size_t n = e->end.length;
    if (word.length < n || memcmp(word.at + word.length - n, e->end.at, n) != 0)
        return false;
    return !e->after_consonant || (word.length > n && is_consonant(word.at[word.length - n - 1]));
}

/* Without its last `letters` letters. */
static struct text cut_letters(struct text word, size_t letters)
{
    while (letters && word.length) {
        word.length--;
        letters -= !byte_goes_on(word.at[word.length]);
    }
    return word;
}

struct text inflect(struct loader *l, enum form form, struct text word)
{
    for (size_t i = 0; i < l->endings.count; i++) {
        const struct ending *e = &l->endings.at[i];
        if (e->form != form || !fits(e, word))
            continue;
        struct text stem = cut_letters(word, e->cut);
        char *at = arena_alloc(&l->arena, stem.length + e->add.length + 1);
        memcpy(at, stem.at, stem.length);
        memcpy(at + stem.length, e->add.at, e->add.length);
        return (struct text){at, stem.length + e->add.length};
    }
    return TEXT_EMPTY;
}
