/* tests/published/published.h: reading the tables beside these tests.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_PUBLISHED_PUBLISHED_H
#define TESTS_PUBLISHED_PUBLISHED_H

#include "kitchen/open.h"

#define CELLS 12

struct published_row {
    struct text cells[CELLS];
};
struct published {
    LIST(struct published_row) rows; /* without the head */
};

/* A table of tests/published, from the folder in which `make test` runs. */
static inline struct published published_read(struct arena *a, const char *path)
{
    struct published p = {.rows = {NULL, 0, 0}};
    FILE *file = fopen(path, "rb");
    assert_non_null(file);
    static char bytes[1 << 18];
    struct text rest = {bytes, fread(bytes, 1, sizeof bytes, file)}, line;
    fclose(file);
    rest = arena_text(a, rest);
    text_part(&rest, '\n', &line);
    while (text_part(&rest, '\n', &line) && line.length) {
        struct published_row *row = LIST_ADD(a, &p.rows);
        for (size_t i = 0; i < CELLS; i++)
            row->cells[i] = TEXT_EMPTY;
        for (size_t i = 0; i < CELLS && text_part(&line, '\t', &row->cells[i]); i++)
            continue;
    }
    return p;
}

#endif
