/* split/turnword.c
 * SPDX-License-Identifier: MIT */
#include "split/turnword.h"

#include <string.h>

#include "base/arena.h"

#define COLUMN_PLACE 1
#define COLUMN_BEGINS 2
#define COLUMN_RETURNS 3
#define COLUMN_TALKED 4
#define WITHIN "within" /* the place of what stands anywhere in a sentence */
/* Longer runs say nothing there. */
#define WITHIN_RUN 2
#define HUNDREDTH 0.01F /* the table's unit */
/* How many units are looked at: in runs of up to TURN_RUN_MOST right behind the
 * place and before it, one by one farther behind. */
#define NEAR_UNITS 7
#define LATER_UNITS 28
#define BEFORE_UNITS 8
/* The row that holds at any place. */
#define EVERYWHERE "*"
/* Of a run, spaces too; longer ones have no row. */
#define RUN_BYTES 256
/* So many rows an ordinary recording has. */
#define ROWS_USUAL 2048

/* Makes the units, one after the other; the text of the last few is at hand. */
struct run_maker {
    const struct recording *r;
    const struct table *table;
    uint32_t *row_of; /* for each of the table's rows, its place in units->rows; 0: not there yet */
    struct turn_units *units;
    char text[RUN_BYTES]; /* a space between any two */
    size_t starts[TURN_RUN_MOST], count, length;
};

static const struct {
    size_t length; /* known here, since a recording asks for thousands of rows */
    const char *name;
} PLACE[TURN_PLACES] = {{5, "first"}, {4, "last"}, {4, "near"}, {5, "later"}, {6, "before"}};

static struct turn_points row_points(const struct table *t, size_t row)
{
    return (struct turn_points){HUNDREDTH * (float) text_whole(table_cell(t, row, COLUMN_BEGINS)),
                                HUNDREDTH * (float) text_whole(table_cell(t, row, COLUMN_RETURNS))};
}

/* TURN_PLACES for no place. */
static size_t place_number(struct text name)
{
    size_t n = 0;
    while (n < TURN_PLACES
           && !(name.length == PLACE[n].length && *name.at == *PLACE[n].name
                && memcmp(name.at, PLACE[n].name, name.length) == 0))
        n++;
    return n;
}

/* What the words of that first row speak for at each place; of two rows the first one counts. */
static struct turn_row points_at_places(const struct table *t, size_t row)
{
    struct turn_row points = {.talked = 0};
    bool known[TURN_PLACES] = {false};
    for (; row < t->rows; row = table_next(t, row)) {
        const struct text place = table_cell(t, row, COLUMN_PLACE);
        size_t n = place_number(place);
        if (n == TURN_PLACES && text_is(place, WITHIN))
            points.talked = HUNDREDTH * (float) text_whole(table_cell(t, row, COLUMN_TALKED));
        if (n < TURN_PLACES && !known[n]) {
            points.at[n] = row_points(t, row);
            known[n] = true;
        }
    }
    return points;
}

/* What speaks at any place, which one row says. */
static struct turn_points points_everywhere(const struct table *t)
{
    size_t row = table_find(t, text_from(EVERYWHERE));
    while (row < t->rows && !text_is(table_cell(t, row, COLUMN_PLACE), EVERYWHERE))
        row = table_next(t, row);
    return row < t->rows ? row_points(t, row) : (struct turn_points){0, 0};
}

/* The number of the run's points; each of the table's rows is read once. */
static uint32_t find_row(struct run_maker *m, struct text run)
{
    size_t row = table_find(m->table, run);
    if (row == m->table->rows)
        return 0;
    if (!m->row_of[row]) {
        m->row_of[row] = (uint32_t) m->units->rows.count;
        *LIST_ADD(m->r->arena, &m->units->rows) = points_at_places(m->table, row);
    }
    return m->row_of[row];
}

static void forget_first(struct run_maker *m)
{
    size_t gone = m->count > 1 ? m->starts[1] : m->length;
    m->count--;
    for (size_t n = 0; n < m->count; n++)
        m->starts[n] = m->starts[n + 1] - gone;
    m->length -= gone;
    memmove(m->text, m->text + gone, m->length);
}

/* The unit joins those at hand, the first of which go where there are enough. */
static void put_text(struct run_maker *m, struct text unit)
{
    while (m->count == TURN_RUN_MOST || (m->count && m->length + 1 + unit.length > RUN_BYTES))
        forget_first(m);
    if (unit.length + 1 > RUN_BYTES)
        return;
    if (m->count)
        m->text[m->length++] = ' ';
    m->starts[m->count++] = m->length;
    memcpy(m->text + m->length, unit.at, unit.length);
    m->length += unit.length;
}

static void add_unit(void *to, struct text unit)
{
    struct run_maker *m = to;
    LIST_ADD(m->r->arena, &m->units->list);
    put_text(m, unit);
    struct turn_unit *last = &m->units->list.at[m->units->list.count - 1];
    for (size_t n = 0; m->table && n < m->count; n++) {
        size_t start = m->starts[m->count - 1 - n];
        (last - n)->runs[n] = find_row(m, (struct text){m->text + start, m->length - start});
    }
}

static void open_rows(struct run_maker *m, const struct pack *k)
{
    const struct table *t = pack_table(k, "turn-words");
    if (!t || t->columns <= COLUMN_TALKED)
        return;
    m->table = t;
    LIST_RESERVE(m->r->arena, &m->units->rows, ROWS_USUAL);
    m->row_of = arena_alloc(m->r->arena, (t->rows + 1) * sizeof *m->row_of);
    LIST_ADD(m->r->arena, &m->units->rows);
    m->units->everywhere = points_everywhere(t);
}

struct turn_units turn_units_make(const struct recording *r, const struct pack *k)
{
    struct turn_units u = {0};
    struct run_maker m = {.r = r, .units = &u};
    open_rows(&m, k);
    LIST_RESERVE(r->arena, &u.list, r->words.count + 1);
    u.first = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *u.first);
    for (size_t i = 0; i < r->sentences.count; i++) {
        u.first[i] = u.list.count;
        turn_units_tell(r, k, &r->sentences.at[i], add_unit, &m);
    }
    u.first[r->sentences.count] = u.list.count;
    return u;
}

/* ---- points */

static void add_points(const struct turn_units *u, uint32_t row, enum turn_place place,
                       struct turn_points *sum)
{
    sum->begins += u->rows.at[row].at[place].begins;
    sum->returns += u->rows.at[row].at[place].returns;
}

/* All runs of up to `most` among units [first, end). */
static void add_runs(const struct turn_units *u, enum turn_place place, size_t first, size_t end,
                     size_t most, struct turn_points *sum)
{
    for (size_t i = first; i < end; i++)
        for (size_t n = 0; n < most && i + n < end; n++)
            add_points(u, u->list.at[i].runs[n], place, sum);
}

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

struct turn_points turn_points_at(const struct turn_units *u, size_t sentence)
{
    struct turn_points sum = u->everywhere;
    if (!u->rows.count)
        return sum;
    size_t count = u->list.count, at = u->first[sentence];
    size_t near = least(at + NEAR_UNITS, count), later = least(at + LATER_UNITS, count);
    size_t before = at - least(BEFORE_UNITS, at);
    for (size_t n = 0; n < TURN_RUN_MOST; n++) {
        if (at + n < near)
            add_points(u, u->list.at[at].runs[n], TURN_FIRST, &sum);
        if (at > before + n)
            add_points(u, u->list.at[at - 1 - n].runs[n], TURN_LAST, &sum);
    }
    add_runs(u, TURN_NEAR, at, near, TURN_RUN_MOST, &sum);
    add_runs(u, TURN_LATER, near, later, 1, &sum);
    add_runs(u, TURN_BEFORE, before, at, TURN_RUN_MOST, &sum);
    return sum;
}

float talk_points_of(const struct turn_units *u, size_t sentence)
{
    float sum = 0;
    size_t end = u->first[sentence + 1];
    for (size_t i = u->first[sentence]; u->rows.count && i < end; i++)
        for (size_t n = 0; n < WITHIN_RUN && i + n < end; n++)
            sum += u->rows.at[u->list.at[i].runs[n]].talked;
    return sum;
}
