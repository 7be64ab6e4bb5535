/* split/turnword.c
 * SPDX-License-Identifier: MIT */
#include "split/turnword.h"

#include <string.h>

#include "base/arena.h"
#include "split/feature.h"

#define COLUMN_PLACE 1
#define COLUMN_BEGINS 2
#define COLUMN_RETURNS 3
#define HUNDREDTH 0.01F /* the table's unit */
/* How many units are looked at: in runs of up to TURN_RUN_MOST right behind the
 * place and before it, one by one farther behind. */
#define NEAR_UNITS 7
#define LATER_UNITS 28
#define BEFORE_UNITS 8
/* A common dish with that food is made of it this often, or at least now and then. */
#define LEAD_OFTEN 0.40F
#define LEAD_SOMETIMES 0.15F
/* The row that holds at any place. */
#define EVERYWHERE "*"

/* ---- units */

static const char *food_class(const struct entry *e, const struct table *goes_with)
{
    if (e->marks & PLAIN_MARKS)
        return "PLAIN";
    float lead = affinity_lead(goes_with, entry_value(e));
    return lead >= LEAD_OFTEN ? "LEAD" : lead >= LEAD_SOMETIMES ? "MIDDLE" : "FOOD";
}

/* NULL for a word that stands for itself. */
static const char *class_of(const struct word *w, const struct table *goes_with)
{
    switch (w->tag) {
    case TAG_FOOD:
        return w->entry ? food_class(w->entry, goes_with) : "FOOD";
    case TAG_NUMBER:
    case TAG_ONES:
    case TAG_TEENS:
    case TAG_TENS:
    case TAG_HUNDRED:
    case TAG_FRACTION:
        return "NUMBER";
    case TAG_UNIT:
    case TAG_COUNTER:
    case TAG_CONTAINER:
    case TAG_DISH:
    case TAG_PART:
    case TAG_VESSEL:
    case TAG_TIME:
    case TAG_SIZE:
    case TAG_STATE:
    case TAG_EATER:
    case TAG_ACTION:
    case TAG_DOING:
    case TAG_DONE:
        return tag_name(w->tag);
    default:
        return NULL;
    }
}

static void add_unit(const struct recording *r, struct turn_units *u, char *text, struct text unit)
{
    const struct turn_unit *last = u->list.count ? &u->list.at[u->list.count - 1] : NULL;
    size_t at = last ? last->at + last->length + 1 : 0;
    memcpy(text + at, unit.at, unit.length);
    text[at + unit.length] = ' ';
    *LIST_ADD(r->arena, &u->list) = (struct turn_unit){.at = at, .length = unit.length};
}

/* The units of a sentence; `text` has room for them. */
static void read_units(const struct recording *r, const struct sentence *s,
                       const struct table *goes_with, struct turn_units *u, char *text)
{
    const char *before = NULL;
    size_t first = s->first;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        if (w->tag == TAG_INSIDE)
            continue;
        const char *class = class_of(w, goes_with);
        if (class && class != before)
            add_unit(r, u, text, text_from(class));
        for (size_t n = first; !class && n <= i; n++)
            if (!r->words.at[n].filler)
                add_unit(r, u, text, r->words.at[n].key);
        before = class;
        first = i + 1;
    }
}

/* No class is longer than this, in bytes, with the space behind it. */
#define CLASS_ROOM 16

static char *text_make(const struct recording *r)
{
    size_t room = 1;
    for (size_t i = 0; i < r->words.count; i++)
        room += r->words.at[i].key.length + CLASS_ROOM;
    return arena_alloc(r->arena, room);
}

/* Units [first, last]. */
static struct text run(const struct turn_units *u, size_t first, size_t last)
{
    const struct turn_unit *a = &u->list.at[first], *z = &u->list.at[last];
    return (struct text){u->text + a->at, z->at + z->length - a->at};
}

static void find_rows(struct turn_units *u)
{
    size_t count = u->list.count;
    for (size_t i = 0; i < count; i++)
        for (size_t n = 0; n < TURN_RUN_MOST; n++)
            u->list.at[i].rows[n] =
                i + n < count ? table_find(u->table, run(u, i, i + n)) : u->table->rows;
}

struct turn_units turn_units_make(const struct recording *r, const struct pack *k)
{
    const struct table *goes_with = pack_table(k, "goes-with"), *t = pack_table(k, "turn-words");
    struct turn_units u = {.table = t && t->columns > COLUMN_RETURNS ? t : NULL};
    char *text = text_make(r);
    u.text = text;
    u.first = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *u.first);
    for (size_t i = 0; i < r->sentences.count; i++) {
        u.first[i] = u.list.count;
        read_units(r, &r->sentences.at[i], goes_with, &u, text);
    }
    u.first[r->sentences.count] = u.list.count;
    if (u.table)
        find_rows(&u);
    return u;
}

/* ---- points */

/* Adds what the words of `row` speak for where they stand at that place. */
static void add_points(const struct table *t, size_t row, const char *place,
                       struct turn_points *sum)
{
    while (row < t->rows && !text_is(table_cell(t, row, COLUMN_PLACE), place))
        row = table_next(t, row);
    if (row == t->rows)
        return;
    sum->begins += HUNDREDTH * (float) text_whole(table_cell(t, row, COLUMN_BEGINS));
    sum->returns += HUNDREDTH * (float) text_whole(table_cell(t, row, COLUMN_RETURNS));
}

/* All runs of up to `most` among units [first, end). */
static void add_runs(const struct turn_units *u, const char *place, size_t first, size_t end,
                     size_t most, struct turn_points *sum)
{
    for (size_t i = first; i < end; i++)
        for (size_t n = 0; n < most && i + n < end; n++)
            add_points(u->table, u->list.at[i].rows[n], place, sum);
}

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

struct turn_points turn_points_at(const struct turn_units *u, size_t sentence)
{
    struct turn_points sum = {0, 0};
    if (!u->table)
        return sum;
    size_t count = u->list.count, at = u->first[sentence];
    size_t near = least(at + NEAR_UNITS, count), later = least(at + LATER_UNITS, count);
    size_t before = at - least(BEFORE_UNITS, at);
    add_points(u->table, table_find(u->table, text_from(EVERYWHERE)), EVERYWHERE, &sum);
    for (size_t n = 0; n < TURN_RUN_MOST; n++) {
        if (at + n < near)
            add_points(u->table, u->list.at[at].rows[n], "first", &sum);
        if (at > before + n)
            add_points(u->table, u->list.at[at - 1 - n].rows[n], "last", &sum);
    }
    add_runs(u, "near", at, near, TURN_RUN_MOST, &sum);
    add_runs(u, "later", near, later, 1, &sum);
    add_runs(u, "before", before, at, TURN_RUN_MOST, &sum);
    return sum;
}
