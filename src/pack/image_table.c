/* pack/image_table.c: a table with what its rows are found by.
 * SPDX-License-Identifier: MIT */
#include "pack/image_maker.h"

static uint32_t put_texts(struct maker *m, const struct text *from, size_t count)
{
    struct section s;
    struct ref *to = image_section(m, &s, count, sizeof *to);
    for (size_t i = 0; to && i < count; i++)
        image_put_text(m, &to[i], from[i]);
    return s.at;
}

static const struct text *row_at(const struct listed_table *t, size_t row)
{
    return &t->cells[row * t->columns];
}

static bool begin_alike(const struct listed_table *t, size_t a, size_t b, size_t cells)
{
    return text_equal(row_at(t, a)[0], row_at(t, b)[0])
           && (cells < 2 || text_equal(row_at(t, a)[1], row_at(t, b)[1]));
}

static uint32_t hash_of_row(const struct listed_table *t, size_t row, size_t cells)
{
    const struct text *at = row_at(t, row);
    return cells < 2 ? key_hash(at[0]) : pair_hash(at[0], at[1]);
}

/* The slot of the row, by its first one or two cells, or the free one where it would go. */
static uint32_t *row_slot(uint32_t *slots, size_t room, const struct listed_table *t, size_t row,
                          size_t cells)
{
    size_t i = hash_of_row(t, row, cells) & (room - 1);
    while (slots[i] && !begin_alike(t, slots[i] - 1, row, cells))
        i = (i + 1) & (room - 1);
    return &slots[i];
}

/* The first row of each first cell, or of each two. Half full at most. */
static struct section put_row_keys(struct maker *m, const struct listed_table *t, size_t cells)
{
    struct section s;
    size_t room = 8;
    while (room < t->rows * 2)
        room *= 2;
    uint32_t *to = image_section(m, &s, room, sizeof *to);
    for (size_t row = 0; to && row < t->rows; row++) {
        uint32_t *slot = row_slot(to, room, t, row, cells);
        *slot = *slot ? *slot : (uint32_t) row + 1;
    }
    return s;
}

/* From the last row on, so that each finds the one behind it; how many have one. */
static size_t link_rows(uint32_t *nexts, uint32_t *slots, size_t room, const struct listed_table *t)
{
    size_t linked = 0;
    for (size_t row = t->rows; row-- > 0;) {
        uint32_t *slot = row_slot(slots, room, t, row, 1);
        nexts[row] = *slot;
        linked += *slot != 0;
        *slot = (uint32_t) row + 1;
    }
    return linked;
}

/* `*linked`: how many rows have another one behind them. */
static struct section put_nexts(struct maker *m, const struct listed_table *t, size_t *linked)
{
    struct section s = {0};
    size_t room = 8;
    while (room < t->rows * 2)
        room *= 2;
    uint32_t *nexts = arena_alloc(&m->l->arena, (t->rows + 1) * sizeof *nexts);
    uint32_t *slots = arena_alloc(&m->l->arena, room * sizeof *slots);
    *linked = link_rows(nexts, slots, room, t);
    if (!*linked)
        return s;
    uint32_t *to = image_section(m, &s, t->rows, sizeof *to);
    if (to)
        memcpy(to, nexts, t->rows * sizeof *to);
    return s;
}

static uint32_t put_lines(struct maker *m, const struct listed_table *t)
{
    struct section s;
    unsigned *to = image_section(m, &s, t->rows, sizeof *to);
    if (to && t->rows)
        memcpy(to, t->lines, t->rows * sizeof *to);
    return s.at;
}

void image_put_table(struct maker *m, struct image_table *to, const struct listed_table *t)
{
    size_t linked;
    struct image_table made = {.columns = (uint32_t) t->columns, .rows = (uint32_t) t->rows};
    made.heads = put_texts(m, t->heads, t->columns);
    made.cells = put_texts(m, t->cells, t->rows * t->columns);
    made.lines = put_lines(m, t);
    made.keys = put_row_keys(m, t, 1);
    made.nexts = put_nexts(m, t, &linked);
    if (linked * 2 >= t->rows && t->columns > 2) /* else the links lead there soon */
        made.pairs = put_row_keys(m, t, 2);
    if (!to)
        return;
    *to = made;
    image_put_text(m, &to->name, t->name);
    image_put_text(m, &to->file, text_from(t->file));
}
