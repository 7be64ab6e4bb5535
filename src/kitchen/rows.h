/* kitchen/rows.h: a table of the pack with its columns found once; and an index from names to
 * numbers.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_ROWS_H
#define DISHTAKE_KITCHEN_ROWS_H

#include "base/arena.h"
#include "base/problem.h"
#include "pack/pack.h"

#define ROWS_COLUMNS 16

struct rows {
    const struct table *table; /* borrowed from the pack */
    size_t columns[ROWS_COLUMNS];
    size_t count;
};

/* Finds the table and the columns named in `heads`, divided by spaces, in that order. False, with a
 * problem, when the pack has no such table or the table no such column. */
bool rows_open(struct rows *r, const struct pack *k, const char *table, const char *heads,
               struct problems *p);
struct text rows_cell(const struct rows *r, size_t row, size_t column);
/* Half as long as the text, for what is kept of many rows and seldom read: ref_text() reads it. */
const struct ref *rows_ref(const struct rows *r, size_t row, size_t column);
struct place rows_place(const struct rows *r, size_t row);
/* The cell as a number; none where it is empty. False, with a problem, where it is something else.
 */
bool rows_number(const struct rows *r, size_t row, size_t column, struct ratio *number,
                 struct problems *p);

struct name_row {
    struct text name; /* borrowed */
    size_t value;
};

/* Names to numbers; filled, made ready once, then only read. All in the arena. */
struct names {
    LIST(struct name_row) rows;
    unsigned *slots; /* open addressing: 1 + the row; 0: free */
    size_t room;     /* a power of two; 0: not ready */
};

void names_add(struct arena *a, struct names *x, struct text name, size_t value);
/* Names can be found from here on; false, with a problem that names it, when a name stands there
 * twice. */
bool names_ready(struct arena *a, struct names *x, const char *of, struct problems *p);
bool names_find(const struct names *x, struct text name, size_t *value);

#endif
