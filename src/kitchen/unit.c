/* kitchen/unit.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/unit.h"

static const char *const dimension_words[] = {
#define DIMENSION(name, word) word,
#include "kitchen/dimensions.def"
#undef DIMENSION
};

enum { UNIT_NAME, UNIT_DIMENSION, UNIT_SYSTEM, UNIT_FACTOR, UNIT_EXACT, UNIT_SOURCE };

static bool read_dimension(const struct rows *r, size_t row, enum dimension *d, struct problems *p)
{
    struct text word = rows_cell(r, row, UNIT_DIMENSION);
    for (size_t i = 0; i < DIMENSIONS; i++)
        if (text_is(word, dimension_words[i])) {
            *d = (enum dimension) i;
            return true;
        }
    return problem(p, rows_place(r, row),
                   "the dimension \"%.*s\" is none of count, volume, mass, length, time",
                   TEXT(word));
}

static bool load_unit(struct units *u, struct arena *a, const struct rows *r, size_t row,
                      struct problems *p)
{
    names_add(a, &u->names, rows_cell(r, row, UNIT_NAME), u->all.count);
    struct unit *unit = LIST_ADD(a, &u->all);
    unit->name = unit->one = unit->many = unit->brief = rows_cell(r, row, UNIT_NAME);
    unit->source = rows_cell(r, row, UNIT_SOURCE);
    unit->metric = text_is(rows_cell(r, row, UNIT_SYSTEM), "metric");
    unit->habit = !text_is(rows_cell(r, row, UNIT_EXACT), "yes");
    return read_dimension(r, row, &unit->dimension, p)
           && rows_number(r, row, UNIT_FACTOR, &unit->factor, p);
}

static bool load_units(struct units *u, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "units", "unit dimension system factor exact source", p))
        return false;
    LIST_RESERVE(a, &u->all, r.count);
    LIST_RESERVE(a, &u->names.rows, r.count);
    for (size_t row = 0; row < r.count; row++)
        if (!load_unit(u, a, &r, row, p))
            return false;
    return names_ready(a, &u->names, r.table->file, p);
}

/* Each way to write a unit once: "inch" may be its own abbreviation. */
static void add_word(struct units *u, struct arena *a, struct text word, size_t unit)
{
    for (size_t i = u->words.rows.count; i-- > 0 && u->words.rows.at[i].value == unit;)
        if (text_equal(u->words.rows.at[i].name, word))
            return;
    if (word.length)
        names_add(a, &u->words, word, unit);
}

static bool load_words(struct units *u, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "unit-words", "unit singular plural brief others", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        size_t n;
        if (!names_find(&u->names, rows_cell(&r, row, 0), &n))
            return problem(p, rows_place(&r, row), "the unit \"%.*s\" is not in units.tsv",
                           TEXT(rows_cell(&r, row, 0)));
        struct unit *unit = &u->all.at[n];
        unit->one = rows_cell(&r, row, 1);
        unit->many = rows_cell(&r, row, 2);
        unit->brief = rows_cell(&r, row, 3);
        add_word(u, a, unit->name, n);
        add_word(u, a, unit->one, n);
        add_word(u, a, unit->many, n);
        add_word(u, a, unit->brief, n);
        struct text rest = rows_cell(&r, row, 4), word;
        while (text_part(&rest, '|', &word))
            add_word(u, a, text_trim(word), n);
    }
    return names_ready(a, &u->words, r.table->file, p);
}

static struct profile *profile_add(struct units *u, struct arena *a, struct text name)
{
    for (size_t i = 0; i < u->profiles.count; i++)
        if (text_equal(u->profiles.at[i].name, name))
            return &u->profiles.at[i];
    struct profile *made = LIST_ADD(a, &u->profiles);
    made->name = name;
    return made;
}

static bool load_profiles(struct units *u, struct arena *a, const struct pack *k,
                          struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "kitchens", "kitchen unit means", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        const struct unit *said = unit_find(u, rows_cell(&r, row, 1));
        const struct unit *meant = unit_find(u, rows_cell(&r, row, 2));
        if (!said || !meant)
            return problem(p, rows_place(&r, row), "a unit that is not in units.tsv");
        struct profile *profile = profile_add(u, a, rows_cell(&r, row, 0));
        *LIST_ADD(a, &profile->meanings) = (struct meaning){said, meant};
    }
    return true;
}

bool units_load(struct units *u, struct arena *a, const struct pack *k, struct problems *p)
{
    return load_units(u, a, k, p) && load_words(u, a, k, p) && load_profiles(u, a, k, p);
}

const struct unit *unit_find(const struct units *u, struct text name)
{
    size_t n;
    if (!name.length)
        name = TEXT_OF("each");
    return names_find(&u->names, name, &n) ? &u->all.at[n] : NULL;
}

const struct unit *unit_read(const struct units *u, struct text word)
{
    size_t n;
    return names_find(&u->words, word, &n) ? &u->all.at[n] : NULL;
}

const struct profile *profile_find(const struct units *u, struct text name)
{
    for (size_t i = 0; i < u->profiles.count; i++)
        if (text_equal(u->profiles.at[i].name, name))
            return &u->profiles.at[i];
    return NULL;
}

const struct unit *unit_meant(const struct unit *unit, const struct profile *profile)
{
    for (size_t i = 0; unit && profile && i < profile->meanings.count; i++)
        if (profile->meanings.at[i].said == unit)
            return profile->meanings.at[i].meant;
    return unit;
}
