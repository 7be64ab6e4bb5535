/* pack/table_file.c: tables, and their look-ups.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "base/path.h"
#include "pack/load.h"

typedef LIST(struct text) cell_list;

/* The file's name without folders and ending. */
static struct text table_name(const char *file)
{
    struct text name = text_from(path_file(file));
    return text_slice(name, 0, name.length - strlen(".tsv"));
}

static bool read_heads(struct loader *l, const struct source_line *line, struct listed_table *t)
{
    cell_list heads = {0};
    struct text head, rest = line->text;
    while (text_part(&rest, '\t', &head)) {
        struct place at = line_place(line, head.at);
        if (heads.count == TABLE_COLUMNS)
            return problem(l->problems, at, "more than %d columns", TABLE_COLUMNS);
        if (!text_trim(head).length)
            return problem(l->problems, at, "column %zu has no name", heads.count + 1);
        for (size_t i = 0; i < heads.count; i++)
            if (text_equal(heads.at[i], head))
                return problem(l->problems, at, "column \"%.*s\" is there twice", QUOTE(head));
        *LIST_ADD(&l->arena, &heads) = head;
    }
    t->heads = heads.at;
    t->columns = heads.count;
    return true;
}

/* At most so many rows are still to come: lines that are not empty. */
static size_t count_rows(struct text rest)
{
    size_t rows = 0;
    for (size_t i = 0; i < rest.length; i = text_find(rest, '\n', i) + 1)
        rows += rest.at[i] != '\n';
    return rows;
}

/* Room for all rows at once, since a table that grows leaves its smaller selves behind. */
static void make_room(struct loader *l, struct listed_table *t, struct text rest)
{
    size_t rows = count_rows(rest);
    t->cells = arena_alloc(&l->arena, rows * t->columns * sizeof *t->cells);
    t->lines = arena_alloc(&l->arena, rows * sizeof *t->lines);
}

static void read_row(struct loader *l, const struct source_line *line, struct listed_table *t)
{
    struct text cell, rest = line->text, *to = &t->cells[t->rows * t->columns];
    for (size_t i = 0; i < t->columns; i++)
        to[i] = text_part(&rest, '\t', &cell) ? cell : TEXT_EMPTY;
    t->lines[t->rows++] = line->number;
    if (rest.at)
        problem(l->problems, line_place(line, rest.at),
                "the row has more cells than the %zu columns", t->columns);
}

void table_file_read(struct loader *l, const struct pack_file *file)
{
    struct lines lines = lines_open(file, l->problems);
    struct listed_table t = {.name = table_name(file->name), .file = file->name};
    if (!lines_next(&lines)) {
        problem(l->problems, (struct place){.file = file->name},
                "the table is empty; its first line names the columns");
        return;
    }
    if (!read_heads(l, &lines.line, &t))
        return;
    for (size_t i = 0; i < l->tables.count; i++)
        if (text_equal(l->tables.at[i].name, t.name)) {
            problem(l->problems, (struct place){.file = file->name},
                    "%s is a table of that name already", l->tables.at[i].file);
            return;
        }
    make_room(l, &t, lines.rest);
    while (lines_next(&lines))
        read_row(l, &lines.line, &t);
    *LIST_ADD(&l->arena, &l->tables) = t;
}
