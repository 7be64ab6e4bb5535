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

/* Half of them stay free: most texts that are looked for are in no row, and with more slots taken
 * that takes one instruction in a hundred more of a whole run. */
static size_t row_slots_for(size_t rows)
{
    return rows * 2 + 1;
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
    uint32_t hash = hash_of_row(t, row, cells);
    size_t i = slot_first(hash, room);
    while (slots[i]
           && !(slot_may_hold(slots[i], hash) && begin_alike(t, slot_row(slots[i]), row, cells)))
        i = slot_next(i, room);
    return &slots[i];
}

/* Into slots that are 0; returns how many are taken then. */
static size_t fill_slots(uint32_t *slots, size_t room, const struct listed_table *t, size_t cells)
{
    size_t taken = 0;
    for (size_t row = 0; row < t->rows; row++) {
        uint32_t *slot = row_slot(slots, room, t, row, cells);
        taken += !*slot;
        *slot = *slot ? *slot : row_slot_value(hash_of_row(t, row, cells), row);
    }
    return taken;
}

/* The first row of each first cell, or of each two. */
static struct section put_row_keys(struct maker *m, const struct listed_table *t, size_t cells)
{
    struct section s;
    size_t most = row_slots_for(t->rows);
    uint32_t *all = arena_alloc(&m->l->arena, most * sizeof *all);
    size_t room = row_slots_for(fill_slots(all, most, t, cells));
    uint32_t *to = image_section(m, &s, room, sizeof *to);
    if (to)
        fill_slots(to, room, t, cells);
    return s;
}

/* How many rows have another one with the same first cell behind them, and how many of those stand
 * right before it. */
struct linked {
    size_t rows, together;
};

/* From the last row on, so that each finds the one behind it. */
static struct linked link_rows(uint32_t *nexts, uint32_t *slots, size_t room,
                               const struct listed_table *t)
{
    struct linked linked = {0, 0};
    for (size_t row = t->rows; row-- > 0;) {
        uint32_t *slot = row_slot(slots, room, t, row, 1);
        nexts[row] = *slot ? (uint32_t) slot_row(*slot) + 1 : 0;
        linked.rows += *slot != 0;
        linked.together += *slot && slot_row(*slot) == row + 1;
        *slot = row_slot_value(hash_of_row(t, row, 1), row);
    }
    return linked;
}

/* Tables that weigh words have several rows for many of them. */
static bool is_asked_often(struct maker *m, const struct listed_table *t)
{
    size_t room = row_slots_for(t->rows);
    uint32_t *nexts = arena_alloc(&m->l->arena, (t->rows + 1) * sizeof *nexts);
    uint32_t *slots = arena_alloc(&m->l->arena, room * sizeof *slots);
    return link_rows(nexts, slots, room, t).rows * 4 >= t->rows;
}

void image_pool_asked(struct maker *m)
{
    for (size_t i = 0; i < m->l->tables.count; i++) {
        const struct listed_table *t = &m->l->tables.at[i];
        bool asked = is_asked_often(m, t);
        for (size_t n = 0; asked && n < t->rows * t->columns; n++)
            image_pool_text(m, t->cells[n].at ? t->cells[n] : TEXT_EMPTY);
    }
}

static struct section put_nexts(struct maker *m, const struct listed_table *t,
                                struct linked *linked)
{
    struct section s = {0};
    size_t room = row_slots_for(t->rows);
    uint32_t *nexts = arena_alloc(&m->l->arena, (t->rows + 1) * sizeof *nexts);
    uint32_t *slots = arena_alloc(&m->l->arena, room * sizeof *slots);
    *linked = link_rows(nexts, slots, room, t);
    if (linked->together == linked->rows)
        return s;
    uint32_t *to = image_section(m, &s, t->rows, sizeof *to);
    if (to)
        memcpy(to, nexts, t->rows * sizeof *to);
    return s;
}

void image_put_table(struct maker *m, struct image_table *to, const struct listed_table *t)
{
    struct linked linked;
    if (t->rows > ROWS_MOST)
        longjmp(m->l->arena.full, 1);
    struct image_table made = {.columns = (uint32_t) t->columns, .rows = (uint32_t) t->rows};
    made.heads = put_texts(m, t->heads, t->columns);
    made.cells = put_texts(m, t->cells, t->rows * t->columns);
    made.keys = put_row_keys(m, t, 1);
    made.nexts = put_nexts(m, t, &linked);
    if (linked.rows * 2 >= t->rows && t->columns > 2) /* else the links lead there soon */
        made.pairs = put_row_keys(m, t, 2);
    if (!to)
        return;
    *to = made;
    image_put_text(m, &to->name, t->name);
    image_put_text(m, &to->file, text_from(t->file));
}

void image_put_lines(struct maker *m, struct image_table *to, const struct listed_table *t)
{
    struct section s;
    unsigned *lines = image_section(m, &s, t->rows, sizeof *lines);
    if (lines && t->rows)
        memcpy(lines, t->lines, t->rows * sizeof *lines);
    if (to)
        to->lines = s.at;
}
