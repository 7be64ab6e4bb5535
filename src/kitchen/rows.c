/* kitchen/rows.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/rows.h"

#include <assert.h>

static bool find_column(struct rows *r, size_t n, struct text head, struct problems *p)
{
    for (size_t i = 0; i < r->table->columns; i++)
        if (text_equal(ref_text(&r->table->heads[i]), head)) {
            r->columns[n] = i;
            return true;
        }
    return problem(p, (struct place){r->table->file, 1, 1}, "the column \"%.*s\" is missing",
                   TEXT(head));
}

bool rows_open(struct rows *r, const struct pack *k, const char *table, const char *heads,
               struct problems *p)
{
    *r = (struct rows){.table = pack_table(k, table)};
    if (!r->table)
        return problem(p, (struct place){NULL, 0, 0}, "the pack has no table \"%s.tsv\"", table);
    r->count = r->table->rows;
    struct text rest = text_from(heads), head;
    for (size_t n = 0; text_part(&rest, ' ', &head); n++) {
        assert(n < ROWS_COLUMNS);
        if (!find_column(r, n, head, p))
            return false;
    }
    return true;
}

struct text rows_cell(const struct rows *r, size_t row, size_t column)
{
    return table_cell(r->table, row, r->columns[column]);
}

const struct ref *rows_ref(const struct rows *r, size_t row, size_t column)
{
    return &r->table->cells[row * r->table->columns + r->columns[column]];
}

struct place rows_place(const struct rows *r, size_t row)
{
    return (struct place){r->table->file, r->table->lines[row], 0};
}

bool rows_number(const struct rows *r, size_t row, size_t column, struct ratio *number,
                 struct problems *p)
{
    struct text cell = rows_cell(r, row, column);
    *number = cell.length ? ratio_read(cell.at, cell.length) : RATIO_NONE;
    if (cell.length && !ratio_finite(*number))
        return problem(p, rows_place(r, row), "\"%.*s\" is no number", TEXT(cell));
    return true;
}

void names_add(struct arena *a, struct names *x, struct text name, size_t value)
{
    *LIST_ADD(a, &x->rows) = (struct name_row){name, value};
}

/* The slot of the name, or the free one where it would go. */
static unsigned *slot_of(const struct names *x, struct text name)
{
    size_t i = text_hash(name) & (x->room - 1);
    while (x->slots[i] && !text_equal(x->rows.at[x->slots[i] - 1].name, name))
        i = (i + 1) & (x->room - 1);
    return &x->slots[i];
}

bool names_ready(struct arena *a, struct names *x, const char *of, struct problems *p)
{
    for (x->room = 8; x->room < x->rows.count * 2;)
        x->room *= 2;
    x->slots = arena_alloc(a, x->room * sizeof *x->slots);
    for (size_t i = 0; i < x->rows.count; i++) {
        unsigned *slot = slot_of(x, x->rows.at[i].name);
        if (*slot)
            return problem(p, (struct place){of, 0, 0}, "\"%.*s\" stands there twice",
                           TEXT(x->rows.at[i].name));
        *slot = (unsigned) i + 1;
    }
    return true;
}

bool names_find(const struct names *x, struct text name, size_t *value)
{
    unsigned row = x->room ? *slot_of(x, name) : 0;
    if (!row)
        return false;
    *value = x->rows.at[row - 1].value;
    return true;
}
