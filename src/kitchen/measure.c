/* kitchen/measure.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/measure.h"

#include "kitchen/convert.h"
#include "kitchen/print.h"

enum { RUNG_LADDER, RUNG_UNIT, RUNG_LEAST, RUNG_FRACTIONS, RUNG_STEP, RUNG_STEP_UNIT };

static bool read_parts(const struct rows *r, size_t row, struct rung *rung, struct problems *p)
{
    struct text rest = rows_cell(r, row, RUNG_FRACTIONS), part;
    rung->decimal = text_is(rest, "decimal");
    while (!rung->decimal && rest.length && text_part(&rest, ' ', &part)) {
        struct ratio n = ratio_read(part.at, part.length);
        if (!ratio_finite(n) || rung->parts_count == RUNG_PARTS)
            return problem(p, rows_place(r, row),
                           "\"%.*s\" is no fraction, or there are more than %d", TEXT(part),
                           RUNG_PARTS);
        rung->parts[rung->parts_count++] = n;
    }
    return true;
}

bool ladders_load(struct ladders *l, const struct units *u, struct arena *a, const struct pack *k,
                  struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "measures", "ladder unit least parts step step_unit", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct rung *rung = LIST_ADD(a, &l->rungs);
        rung->ladder = rows_cell(&r, row, RUNG_LADDER);
        rung->unit = unit_find(u, rows_cell(&r, row, RUNG_UNIT));
        rung->step_unit = unit_find(u, rows_cell(&r, row, RUNG_STEP_UNIT));
        if (!rung->unit || !rung->step_unit)
            return problem(p, rows_place(&r, row), "a unit that is not in units.tsv");
        if (!rows_number(&r, row, RUNG_LEAST, &rung->least, p)
            || !rows_number(&r, row, RUNG_STEP, &rung->step, p) || !read_parts(&r, row, rung, p))
            return false;
    }
    return true;
}

/* The rungs [begin, end) of one ladder, and the kitchen that says how large its units are. */
struct ladder {
    const struct rung *at;
    size_t count;
    const struct profile *profile;
};

static struct ratio size_of(const struct ladder *l, const struct unit *unit)
{
    return unit_meant(unit, l->profile)->factor;
}

static bool has_unit(const struct ladder *l, const struct unit *unit)
{
    for (size_t i = 0; i < l->count; i++)
        if (l->at[i].unit == unit)
            return true;
    return false;
}

/* Spoons and cups are in every kitchen's ladder; the one of this kitchen is taken. */
static struct ladder find_ladder(const struct kitchen *k, const struct profile *profile,
                                 const struct unit *unit)
{
    struct ladder found = {NULL, 0, profile};
    size_t end;
    for (size_t begin = 0; begin < k->ladders.rungs.count; begin = end) {
        struct ladder l = {&k->ladders.rungs.at[begin], 0, profile};
        for (end = begin; end < k->ladders.rungs.count
                          && text_equal(k->ladders.rungs.at[end].ladder, l.at->ladder);)
            end++;
        l.count = end - begin;
        bool mine = profile && text_equal(l.at->ladder, profile->name);
        if (has_unit(&l, unit) && (!found.at || mine))
            found = l;
    }
    return found;
}

static bool is_written(const struct rung *r, struct ratio n)
{
    struct ratio whole = ratio_floor(n, RATIO(1)), rest = ratio_subtract(n, whole);
    if (rest.over == 0 && ratio_finite(rest))
        return true;
    for (size_t i = 0; i < r->parts_count; i++)
        if (ratio_equal(r->parts[i], rest))
            return true;
    return false;
}

static struct amount written(const struct rung *r, struct ratio n)
{
    return (struct amount){.known = true, .min = n, .max = n, .unit = r->unit->name};
}

/* The most of this rung's measure that is not more than `n`: the whole ones and `skip` parts below
 * the largest that fits. */
static struct ratio largest_written(const struct rung *r, struct ratio n, size_t skip)
{
    struct ratio whole = ratio_floor(n, RATIO(1));
    for (size_t i = r->parts_count; i-- > 0;) {
        struct ratio value = ratio_add(whole, r->parts[i]);
        if (ratio_compare(value, n) <= 0 && skip-- == 0)
            return value;
    }
    return whole;
}

/* The first rung from `from` on of which `base` (in the ladder's mL or g) is at least the least;
 * another unit each time. */
static size_t rung_for(const struct ladder *l, struct ratio base, size_t from)
{
    for (size_t i = from; i < l->count; i++)
        if (ratio_compare(ratio_divide(base, size_of(l, l->at[i].unit)), l->at[i].least) >= 0)
            return i;
    return l->count;
}

static size_t next_unit(const struct ladder *l, size_t i)
{
    const struct unit *unit = l->at[i].unit;
    while (i < l->count && l->at[i].unit == unit)
        i++;
    return i;
}

/* Splits `base` exactly into at most `room` measures; false when there is no such split. */
static bool split(const struct ladder *l, struct ratio base, size_t from, size_t room,
                  struct measurable *m)
{
    size_t i = rung_for(l, base, from);
    if (i == l->count || m->count == room)
        return false;
    struct ratio size = size_of(l, l->at[i].unit), n = ratio_divide(base, size);
    if (is_written(&l->at[i], n)) {
        m->parts[m->count++] = written(&l->at[i], n);
        return true;
    }
    for (size_t skip = 0; skip <= l->at[i].parts_count; skip++) {
        struct ratio most = largest_written(&l->at[i], n, skip);
        if (most.over == 0)
            return false;
        m->parts[m->count++] = written(&l->at[i], most);
        struct ratio rest = ratio_subtract(base, ratio_multiply(most, size));
        if (split(l, rest, next_unit(l, i), room, m))
            return true;
        m->count--;
    }
    return false;
}

static bool split_fewest(const struct ladder *l, struct ratio base, struct measurable *m)
{
    for (size_t room = 1; room <= MEASURED_PARTS; room++) {
        m->count = 0;
        if (split(l, base, 0, room, m))
            return true;
    }
    return false;
}

/* Rounds to what is fine enough for an amount of this size, but never to nothing. */
static struct ratio round_base(const struct ladder *l, struct ratio base)
{
    size_t i = rung_for(l, base, 0);
    if (i == l->count)
        return base;
    struct ratio step = ratio_multiply(l->at[i].step, size_of(l, l->at[i].step_unit));
    struct ratio rounded = ratio_round(base, step);
    return rounded.over == 0 && ratio_finite(rounded) ? step : rounded;
}

static struct measurable in_quarters(struct ratio n, const struct unit *unit)
{
    static const struct rung quarters = {.parts = {{1, 4}, {1, 3}, {1, 2}, {2, 3}, {3, 4}},
                                         .parts_count = 5};
    struct measurable m = {.count = 1};
    struct ratio near = is_written(&quarters, n) ? n : ratio_round(n, ratio_make(1, 4));
    if (near.over == 0)
        near = ratio_make(1, 4);
    m.rounded = !ratio_equal(near, n);
    m.parts[0] = (struct amount){.known = true, .min = near, .max = near, .unit = unit->name};
    return m;
}

/* A scale shows whole grams; what is not whole keeps two or three figures. */
static struct measurable by_scale(const struct ladder *l, struct ratio base)
{
    int figures;
    size_t i = rung_for(l, base, 0);
    const struct rung *rung = &l->at[i < l->count ? i : l->count - 1];
    struct ratio near = base.under == 1 ? base : round_figures(base, &figures);
    struct measurable m = {.count = 1, .rounded = !ratio_equal(near, base)};
    m.parts[0] = written(rung, ratio_divide(near, size_of(l, rung->unit)));
    return m;
}

struct measurable measurable_number(const struct kitchen *k, const struct profile *profile,
                                    struct ratio n, const struct unit *unit)
{
    struct ladder l = find_ladder(k, profile, unit);
    struct measurable m = {.count = 0};
    if (!ratio_finite(n) || n.over <= 0)
        return (struct measurable){
            .count = 1, .parts = {{.known = true, .min = n, .max = n, .unit = unit->name}}};
    if (!l.at)
        return in_quarters(n, unit);
    struct ratio base = ratio_multiply(n, size_of(&l, unit));
    if (l.at->decimal)
        return by_scale(&l, base);
    if (!split_fewest(&l, base, &m) || m.count == MEASURED_PARTS) { /* rounded it may be fewer */
        struct measurable exact = m;
        struct ratio near = round_base(&l, base);
        m.rounded = !ratio_equal(near, base);
        if (!split_fewest(&l, near, &m))
            return exact.count ? exact : in_quarters(n, unit);
    }
    return m;
}

static bool shows(const struct ladder *l, const struct unit *unit, struct ratio n)
{
    if (!ratio_finite(n) || n.under <= 2)
        return true;
    for (size_t i = 0; i < l->count; i++)
        if (l->at[i].unit == unit && (l->at[i].decimal || is_written(&l->at[i], n)))
            return true;
    return false;
}

bool is_measured(const struct kitchen *k, const struct profile *profile,
                 const struct amount *amount)
{
    const struct unit *unit = amount->known ? unit_find(&k->units, amount->unit) : NULL;
    struct ladder l = find_ladder(k, profile, unit);
    return !l.at || (shows(&l, unit, amount->min) && shows(&l, unit, amount->max));
}

static struct text print_parts(const struct kitchen *k, struct arena *a, const struct measurable *m)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < m->count; i++) {
        struct text part = print_amount(k, a, &m->parts[i], WORDS_WHOLE);
        done = i ? PHRASE_TEXT(k, a, plus, done, part) : part;
    }
    return done;
}

/* A range of one measure is written once with its unit; of two, each with its own. */
static struct text print_ends(const struct kitchen *k, struct arena *a,
                              const struct measurable *low, const struct measurable *high)
{
    if (low->count == 1 && high->count == 1
        && text_equal(low->parts[0].unit, high->parts[0].unit)) {
        struct amount both = low->parts[0];
        both.max = high->parts[0].max;
        return print_amount(k, a, &both, WORDS_WHOLE);
    }
    struct text begin = print_parts(k, a, low), end = print_parts(k, a, high);
    return text_equal(begin, end) ? begin : PHRASE_TEXT(k, a, range, begin, end);
}

struct text print_measurable(const struct kitchen *k, struct arena *a,
                             const struct profile *profile, const struct amount *amount,
                             struct text *note)
{
    const struct unit *unit = amount->known ? unit_find(&k->units, amount->unit) : NULL;
    if (note)
        *note = TEXT_EMPTY;
    if (!unit || !ratio_finite(amount->max))
        return print_amount(k, a, amount, WORDS_WHOLE);
    struct measurable low = measurable_number(k, profile, amount->min, unit);
    struct measurable high = measurable_number(k, profile, amount->max, unit);
    struct text words = print_ends(k, a, &low, &high);
    if (note && (low.rounded || high.rounded)) {
        struct amount exact = *amount;
        exact.approx = false;
        *note = PHRASE_TEXT(k, a, rounded_from, print_amount(k, a, &exact, WORDS_WHOLE));
    }
    return amount->approx ? PHRASE_TEXT(k, a, about, words) : words;
}
