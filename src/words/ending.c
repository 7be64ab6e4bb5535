/* words/ending.c
 * SPDX-License-Identifier: MIT */
#include "words/ending.h"

#include <string.h>

#include "words/entry.h"

/* What of a place is looked up: units before it and behind it, each by its tag (T) or its word (W);
 * the word before a place is a unit's last, behind it its first. */
static const char *const BEFORE[] = {"", "T", "TT", "W"};
static const char *const BEHIND[] = {"", "T", "TT", "TTT", "W", "WT", "WW"};
#define BEFORE_COUNT (sizeof BEFORE / sizeof *BEFORE)
#define BEHIND_COUNT (sizeof BEHIND / sizeof *BEHIND)

/* Which of them together, a bit for each BEHIND. */
#define BIT(behind) (1u << (behind))
static const unsigned TOGETHER[BEFORE_COUNT] = {
    /* "" */ BIT(1) | BIT(2) | BIT(3) | BIT(4) | BIT(5) | BIT(6),
    /* T */ BIT(0) | BIT(1) | BIT(2) | BIT(4),
    /* TT */ BIT(0) | BIT(1) | BIT(2),
    /* W */ BIT(0) | BIT(1)};

enum column { COLUMN_BEFORE, COLUMN_BEHIND, COLUMN_WORDS, COLUMN_POINTS };

/* Of units side by side, with spaces; longer ones have no row. */
#define SIDE_BYTES 160

/* Rows of length stand for "up to so many words", each from the one before it on. */
static const size_t LENGTHS[ENDING_LENGTHS] = {1, 2, 3, 4, 6, 8, 11, 15, 20, 28};

/* ---- the table */

static int points_of(const struct table *t, size_t row)
{
    return text_whole(table_cell(t, row, COLUMN_POINTS));
}

/* The rows of no unit: of any place, and of lengths. */
static void read_lengths(struct endings *e)
{
    const struct table *t = e->table;
    for (size_t row = table_find(t, TEXT_EMPTY); row < t->rows; row = table_next(t, row)) {
        const struct text words = table_cell(t, row, COLUMN_WORDS);
        if (table_cell(t, row, COLUMN_BEHIND).length)
            continue;
        if (!words.length)
            e->always = points_of(t, row);
        for (size_t n = 0; words.length && n < ENDING_LENGTHS; n++)
            if (text_whole(words) == (int) LENGTHS[n])
                e->of_length[n] = points_of(t, row);
    }
}

/* ---- units */

static bool names_kinds(const struct entry *e)
{
    const uint64_t all = MARK_OF(generic) | MARK_OF(plural);
    return (e->marks & all) == all;
}

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
                                                            .tag = entry ? entry->tag : w->tag,
                                                            .kinds = entry && names_kinds(entry)};
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
    e->table = t;
    read_lengths(e);
    units_make(e, r, k);
}

/* ---- points */

/* What stands on one side of a place; `lacks`: nothing that a row could have. */
struct side {
    char room[SIDE_BYTES];
    size_t length;
    bool lacks;
};

static void put_unit(struct side *s, struct text t)
{
    s->lacks |= !t.length || s->length + 1 + t.length > SIDE_BYTES;
    if (s->lacks)
        return;
    if (s->length)
        s->room[s->length++] = ' ';
    memcpy(s->room + s->length, t.at, t.length);
    s->length += t.length;
}

/* The units from `first` on, as the shape sees them. */
static void look(const struct endings *e, const char *shape, size_t first, bool before,
                 struct side *out)
{
    out->length = 0;
    out->lacks = false;
    for (; *shape && !out->lacks; shape++, first++) {
        if (first >= e->units.count) {
            out->lacks = true;
            return;
        }
        const struct unit_of_words *u = &e->units.at[first];
        put_unit(out, *shape == 'T' ? text_from(tag_name(u->tag)) : before ? u->tail : u->head);
    }
}

static int points_between(const struct table *t, const struct side *before,
                          const struct side *behind)
{
    if (before->lacks || behind->lacks)
        return 0;
    return points_of(t, table_find_pair(t, (struct text){before->room, before->length},
                                        (struct text){behind->room, behind->length}));
}

/* Of what stands around the end of unit `i`. */
static int points_around(const struct endings *e, size_t i)
{
    struct side behind[BEHIND_COUNT], before;
    int points = 0;
    for (size_t n = 0; n < BEHIND_COUNT; n++)
        look(e, BEHIND[n], i + 1, false, &behind[n]);
    for (size_t n = 0; n < BEFORE_COUNT; n++) {
        const size_t count = strlen(BEFORE[n]);
        if (count > i + 1)
            continue;
        look(e, BEFORE[n], i + 1 - count, true, &before);
        for (size_t m = 0; m < BEHIND_COUNT; m++)
            if (TOGETHER[n] & BIT(m))
                points += points_between(e->table, &before, &behind[m]);
    }
    return points;
}

int ending_points(const struct endings *e, size_t unit, size_t words)
{
    size_t n = 0;
    while (n + 1 < ENDING_LENGTHS && words > LENGTHS[n])
        n++;
    return e->table ? e->of_length[n] + e->always + points_around(e, unit) : 0;
}
