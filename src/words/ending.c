/* words/ending.c
 * SPDX-License-Identifier: MIT */
#include "words/ending.h"

#include <string.h>

#include "words/entry.h"

/* What of a place is looked up: units before it and behind it, each by its tag (T) or its word (W);
 * the word before a place is a unit's last, behind it its first. '/' is the place. */
static const char *const SHAPES[] = {"T/",    "/T", "TT/", "/TT", "T/T", "TT/T", "T/TT", "/TTT",
                                     "TT/TT", "/W", "T/W", "/WT", "/WW", "W/",   "W/T"};
#define SHAPES_COUNT (sizeof SHAPES / sizeof *SHAPES)

struct ending_row {
    uint64_t key; /* of what stands there; 0: free */
    int points;
};

enum column { COLUMN_BEFORE, COLUMN_BEHIND, COLUMN_WORDS, COLUMN_POINTS };

static uint64_t mix(uint64_t key, uint64_t more)
{
    key = (key ^ more) * UINT64_C(0x9E3779B97F4A7C15);
    return key ^ key >> 29;
}

/* Of a word, or of a class, whose name is in capitals. */
static uint64_t word_code(struct text word)
{
    return (uint64_t) text_hash(word) << 8 | 0xff;
}

#define PLACE_CODE UINT64_C(0x101)
#define LENGTH_CODE(words) (UINT64_C(0x200) + (words))

/* ---- the table */

static struct ending_row *row_of(const struct endings *e, uint64_t key)
{
    size_t i = key & (e->room - 1);
    while (e->rows[i].key && e->rows[i].key != key)
        i = (i + 1) & (e->room - 1);
    return &e->rows[i];
}

/* "FOOD SO" or "then". */
static uint64_t mix_cell(uint64_t key, struct text cell)
{
    struct text name;
    while (cell.length && text_part(&cell, ' ', &name))
        key = mix(key, word_code(name));
    return key;
}

static uint64_t key_of_row(const struct table *t, size_t row)
{
    struct text before = table_cell(t, row, COLUMN_BEFORE),
                words = table_cell(t, row, COLUMN_WORDS);
    uint64_t key = words.length ? mix(0, LENGTH_CODE((uint64_t) text_whole(words))) : 0;
    return mix_cell(mix(mix_cell(key, before), PLACE_CODE), table_cell(t, row, COLUMN_BEHIND));
}

static void rows_read(struct endings *e, struct arena *a, const struct table *t)
{
    for (unsigned tag = 0; tag < TAG_CODES; tag++)
        e->tag_codes[tag] = word_code(text_from(tag_name((unsigned char) tag)));
    for (e->room = 64; e->room < t->rows * 2;)
        e->room *= 2;
    e->rows = arena_alloc(a, e->room * sizeof *e->rows);
    for (size_t i = 0; i < t->rows; i++) {
        uint64_t key = key_of_row(t, i);
        *row_of(e, key) = (struct ending_row){key, text_whole(table_cell(t, i, COLUMN_POINTS))};
    }
}

/* ---- units */

static size_t add_unit(struct endings *e, struct recording *r, const struct pack *k, size_t i)
{
    size_t last = i;
    const struct word *w = &r->words.at[i];
    const struct entry *entry =
        w->tag == TAG_OTHER ? entry_longest(r, k, i, r->words.count, &last) : NULL;
    *LIST_ADD(r->arena, &e->units) = (struct unit_of_words){.head = w->key,
                                                            .tail = r->words.at[last].key,
                                                            .last = last,
                                                            .words = last - i + 1,
                                                            .tag = entry ? entry->tag : w->tag};
    return last;
}

/* A filler behind a unit is of it. */
static void add_filler(struct endings *e, size_t i)
{
    if (!e->units.count)
        return;
    e->units.at[e->units.count - 1].last = i;
    e->units.at[e->units.count - 1].words++;
}

static void units_make(struct endings *e, struct recording *r, const struct pack *k)
{
    for (size_t i = 0; i < r->words.count; i++) {
        if (r->words.at[i].filler)
            add_filler(e, i);
        else
            i = add_unit(e, r, k, i);
    }
}

void endings_make(struct endings *e, struct recording *r, const struct pack *k)
{
    const struct table *t = pack_table(k, "sentence-ends");
    *e = (struct endings){0};
    if (!t || t->columns <= COLUMN_POINTS)
        return;
    rows_read(e, r->arena, t);
    units_make(e, r, k);
}

/* ---- points */

/* How many units the shape has before the place. */
static size_t before_count(const char *shape)
{
    return (size_t) (strchr(shape, '/') - shape);
}

static uint64_t unit_code(const struct endings *e, size_t unit, char by, bool before)
{
    const struct unit_of_words *u = &e->units.at[unit];
    return by == 'T' ? e->tag_codes[u->tag] : word_code(before ? u->tail : u->head);
}

/* The key of what stands around the end of unit `i`, as the shape sees it; 0 where units lack. */
static uint64_t shape_key(const struct endings *e, const char *shape, size_t i)
{
    size_t count = before_count(shape), at = i + 1 - count;
    bool before = true;
    uint64_t key = 0;
    if (count > i + 1)
        return 0;
    for (const char *c = shape; *c; c++) {
        if (*c == '/') {
            key = mix(key, PLACE_CODE);
            before = false;
        } else if (at >= e->units.count)
            return 0;
        else
            key = mix(key, unit_code(e, at++, *c, before));
    }
    return key;
}

static int points_of(const struct endings *e, uint64_t key)
{
    return key ? row_of(e, key)->points : 0;
}

/* Rows of length stand for "up to so many words", each from the one before it on. */
static int length_points(const struct endings *e, size_t words)
{
    static const size_t LENGTHS[] = {1, 2, 3, 4, 6, 8, 11, 15, 20, 28};
    size_t n = 0;
    while (n + 1 < sizeof LENGTHS / sizeof *LENGTHS && words > LENGTHS[n])
        n++;
    return points_of(e, mix(mix(0, LENGTH_CODE(LENGTHS[n])), PLACE_CODE));
}

int ending_points(const struct endings *e, size_t unit, size_t words)
{
    int points = length_points(e, words) + points_of(e, mix(0, PLACE_CODE));
    for (size_t n = 0; n < SHAPES_COUNT; n++)
        points += points_of(e, shape_key(e, SHAPES[n], unit));
    return points;
}
