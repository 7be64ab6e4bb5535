/* build/heat.c
 * SPDX-License-Identifier: MIT */
#include "build/heat.h"

#include "match/capture.h"

/* Oven numbers from here on are Fahrenheit, since no kitchen oven reaches 260 Celsius in talk
 * (trade practice: bare oven numbers of 100 to 195 are Celsius, of 260 to 550 Fahrenheit). */
#define OVEN_F_LEAST 260
#define BARE_OVEN_LEAST 300
/* A number of such a height without its scale speaks for Fahrenheit as much as so many amounts in
 * pounds do. */
#define HIGH_HINT 3
#define OVEN_C_MOST 199
#define BARE_LEAST 50
#define BARE_MOST 600
/* Inside a food: Celsius up to here, Fahrenheit above. Water boils at 100 Celsius. */
#define INSIDE_C_MOST 100
/* A verb or a fat near the number tells less than "oven" or "middle": as if so many words farther
 * off. */
#define MARK_TRUST 6
/* "Oven on. One eighty.": what a number without a thing is of may stand so many sentences before.
 */
#define HEATED_SENTENCES 2
#define OVEN_LEAST 90
#define WATER_C_MOST 100
#define WATER_LEAST 25
#define INSIDE_F_MOST 212
#define OIL_C_LEAST 110
#define OIL_C_MOST 235

static bool is_celsius(const struct entry *scale)
{
    return scale && (text_is(entry_value(scale), "C") || text_is(entry_value(scale), "fan"));
}

/* What speaks for either scale, by how much. */
struct scales {
    int f, c;
};

/* "Celsius", "fan", "gas mark" and "Fahrenheit" say it; a high number without a scale only hints.
 */
static void count_temperature(const struct recording *r, const struct match *m, struct scales *said,
                              struct scales *hinted)
{
    const struct entry *scale = entry_at(r, match_slot(m, SLOT_scale));
    if (!ratio_finite(m->low))
        return;
    if (scale && text_is(entry_value(scale), "F"))
        said->f++;
    else if (is_celsius(scale) || (scale && scale->tag == TAG_GAS))
        said->c++;
    else if (ratio_compare(m->low, RATIO(OVEN_F_LEAST)) >= 0)
        hinted->f += HIGH_HINT;
}

/* Who weighs in grams has an oven in Celsius, who weighs in pounds one in Fahrenheit. */
static void count_unit(const struct recording *r, const struct table *units, const struct match *m,
                       struct scales *hinted)
{
    const struct entry *unit = entry_at(r, match_slot(m, SLOT_unit));
    size_t row = units && unit ? table_find(units, entry_value(unit)) : 0;
    if (!units || !unit || row >= units->rows)
        return;
    struct text system = table_cell(units, row, table_column(units, "system"));
    hinted->c += text_is(system, "metric");
    hinted->f += text_is(system, "avoirdupois");
}

char recording_scale(const struct recording *r, const struct pack *k)
{
    const struct table *units = pack_table(k, "units");
    struct scales said = {0}, hinted = {0};
    for (size_t i = 0; i < r->matches.count; i++) {
        const struct match *m = &r->matches.at[i];
        if (m->rule->kind == RULE_temperature)
            count_temperature(r, m, &said, &hinted);
        else if (m->rule->kind == RULE_amount)
            count_unit(r, units, m, &hinted);
    }
    if (said.c != said.f)
        return said.c > said.f ? 'C' : 'F';
    return hinted.c > hinted.f ? 'C' : 'F';
}

/* "3:50" for three fifty: the digits without the colon. */
static struct ratio clock_value(struct text t)
{
    int64_t value = 0;
    for (size_t i = 0; i < t.length; i++)
        if (t.at[i] >= '0' && t.at[i] <= '9' && value < 10000)
            value = value * 10 + (t.at[i] - '0');
    return RATIO(value);
}

/* What an entry says a temperature is of, and how far that word is trusted, in words of distance.
 */
static struct text thing_of(const struct entry *e, size_t *away)
{
    static const char *const things[] = {"oven", "oil", "inside", "water", "pan"};
    for (size_t n = 0; n < sizeof things / sizeof *things; n++)
        if (text_is(entry_value(e), things[n]) && e->tag != TAG_ACTION)
            return text_from(things[n]);
    *away += MARK_TRUST;
    if (e->tag == TAG_OVEN
        || (e->tag == TAG_ACTION && e->marks & (MARK_OF(ovens) | MARK_OF(changes))))
        return *away -= e->tag == TAG_OVEN ? MARK_TRUST : 0, TEXT_OF("oven");
    if (e->tag == TAG_ACTION && e->marks & MARK_OF(deep))
        return TEXT_OF("oil");
    if (e->tag == TAG_FOOD && e->marks & MARK_OF(fat) && !(e->marks & MARK_OF(dairy)))
        return TEXT_OF("oil");
    return e->tag == TAG_FOOD && e->marks & MARK_OF(water) ? TEXT_OF("water") : TEXT_EMPTY;
}

/* What the temperature is of, by the nearest word that tells; else what the sentences before spoke
 * of. */
static struct text heated_thing(const struct builder *b, const struct chunk *c)
{
    size_t best = SIZE_MAX;
    struct text of = TEXT_EMPTY;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *k = &b->chunks.at[i];
        const struct entry *e =
            k->match ? entry_at(b->r, match_slot(k->match, SLOT_food)) : k->entry;
        size_t away = k->first > c->last ? k->first - c->last : c->first - k->last;
        if (!e || k == c)
            continue;
        struct text thing = thing_of(e, &away);
        if (thing.length && away < best) {
            best = away;
            of = thing;
        }
    }
    return of.length ? of : b->heated_age <= HEATED_SENTENCES ? b->heated : TEXT_EMPTY;
}

void note_heated(struct builder *b)
{
    b->heated_age++;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *k = &b->chunks.at[i];
        const struct entry *e =
            k->match ? entry_at(b->r, match_slot(k->match, SLOT_food)) : k->entry;
        size_t away = 0;
        struct text thing = e ? thing_of(e, &away) : TEXT_EMPTY;
        if (text_is(thing, "pan") && text_is(b->heated, "oil") && !b->heated_age)
            continue; /* "oil in the pan" */
        if (thing.length && (away == 0 || text_is(thing, "oil"))) {
            b->heated = thing;
            b->heated_age = 0;
        }
    }
}

/* Ovens are marked in steps of 25 Fahrenheit: a number that fits needs no word beside it. */
static bool is_multiple_of_twenty_five(struct ratio value)
{
    return value.under == 1 && value.over % 25 == 0;
}

/* Without a word that tells: an oven number is an oven's, a smaller one is of the food's inside. */
static void settle(const struct builder *b, struct temperature *t)
{
    char recording = b->scale;
    double value = ratio_double(t->value);
    if (!t->of.length)
        t->of = recording == 'F' ? (value < 230 ? TEXT_OF("inside") : TEXT_OF("oven"))
                                 : (value <= INSIDE_C_MOST ? TEXT_OF("inside") : TEXT_OF("oven"));
    if (t->unit)
        return;
    if (text_is(t->of, "inside"))
        t->unit = value > INSIDE_C_MOST ? 'F' : 'C';
    else if (text_is(t->of, "oil") || text_is(t->of, "water"))
        t->unit = value > (text_is(t->of, "oil") ? OIL_C_MOST : WATER_C_MOST) ? 'F' : 'C';
    else if (value >= OVEN_F_LEAST)
        t->unit = 'F';
    else if (text_is(t->of, "oven") && value <= OVEN_C_MOST)
        t->unit = 'C';
    else
        t->unit = recording;
}

/* Heats that a kitchen has, by what is hot: a bare number outside of them counts something else.
 * Water boils at 100 Celsius at most; fats fry from about 120 to 230 (common practice, no source).
 */
static bool is_possible(const struct temperature *t)
{
    double value = ratio_double(t->value);
    double celsius = t->unit == 'F' ? (value - 32) / 1.8 : value;
    if (text_is(t->of, "water"))
        return celsius <= WATER_C_MOST;
    return !text_is(t->of, "oil") || (celsius >= OIL_C_LEAST && celsius <= OIL_C_MOST);
}

/* "Back in at a hundred and sixty, for fifty minutes": a heat that an oven has, and a time. */
static bool is_for_a_time(const struct builder *b, const struct chunk *c)
{
    const struct chunk *end = b->chunks.at + b->chunks.count, *next = c + 1;
    double value = ratio_double(c->match->low);
    while (next < end && (next->tag == TAG_FOR || next->tag == TAG_AND))
        next++;
    return next < end && next->tag == TAG_DURATION && value >= OVEN_LEAST
           && c->match->low.under == 1 && c->match->low.over % 5 == 0;
}

/* What may stand between the two ovens of "two hundred, or one eighty if you have a fan". */
static bool leads_to_other(const struct chunk *c)
{
    return c->tag == TAG_OR || c->tag == TAG_AND || c->tag == TAG_HEDGE || c->tag == TAG_THERE
           || c->tag == TAG_IF || c->tag == TAG_SO;
}

/* "Regular two hundred, fan one eighty", "gas four, or 180": a bare number beside an oven's heat
 * that has its scale is an oven's too. */
static bool is_beside_oven(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *end = begin + b->chunks.count, *other = c + 1;
    while (other < end && leads_to_other(other))
        other++;
    if (other == end || other->tag != TAG_HEATED)
        for (other = c - 1; other > begin && leads_to_other(other);)
            other--;
    if (other < begin || other >= end || other->tag != TAG_HEATED || !other->match)
        return false;
    const struct entry *scale = entry_at(b->r, match_slot(other->match, SLOT_scale));
    return scale && ratio_double(c->match->low) >= OVEN_LEAST;
}

/* "It reads one forty-five", "pull it at 135": a heat that a food has inside. */
static bool is_read_inside(const struct builder *b, const struct chunk *c)
{
    const struct chunk *begin = b->chunks.at, *before = c;
    double value = ratio_double(c->match->low);
    while (before > begin
           && ((before - 1)->tag == TAG_AT || (before - 1)->tag == TAG_IT
               || (before - 1)->tag == TAG_THE || (before - 1)->tag == TAG_HEDGE
               || (before - 1)->tag == TAG_OTHER))
        before--;
    if (before == begin || value < BARE_LEAST || value > INSIDE_F_MOST)
        return false;
    bool at = before < c && (c - 1)->tag == TAG_AT;
    before--;
    return (before->tag == TAG_BE && chunk_marks(before) & MARK_OF(tells))
           || (at && before->tag == TAG_ACTION && chunk_marks(before) & MARK_OF(takes));
}

/* What the number is of, where no word by itself tells, or tells what cannot be. */
static struct text other_thing(const struct builder *b, const struct chunk *c, struct text of)
{
    if (!of.length && is_beside_oven(b, c))
        return TEXT_OF("oven");
    if (!of.length && is_read_inside(b, c))
        return TEXT_OF("inside");
    if (text_is(of, "inside") && ratio_double(c->match->low) > INSIDE_F_MOST && b->heated.length)
        return b->heated; /* the thermometer is in the oil */
    return of;
}

bool read_temperature(const struct builder *b, const struct chunk *c, struct temperature *out)
{
    const struct match *m = c->match;
    struct span number = match_slot(m, SLOT_number);
    const struct entry *scale = entry_at(b->r, match_slot(m, SLOT_scale));
    bool bare = text_is(m->rule->option, "bare"), clock = text_is(m->rule->option, "clock");
    *out = (struct temperature){.value = m->low, .at = b->r->words.at[c->first].start};
    out->words = (struct span){c->first, c->last};
    if (clock)
        out->value = clock_value(b->r->words.at[number.last].key);
    if (!ratio_finite(out->value))
        return false;
    double value = ratio_double(out->value);
    if ((bare || clock)
        && (value < BARE_LEAST || value > BARE_MOST || !ratio_equal(m->low, m->high)))
        return false;
    out->of = other_thing(b, c, heated_thing(b, c));
    if (bare && !out->of.length && !is_for_a_time(b, c)
        && (value < BARE_OVEN_LEAST || !is_multiple_of_twenty_five(out->value)))
        return false;
    bool bath = text_is(out->of, "water") && value >= WATER_LEAST;
    if (value < BARE_LEAST && !bath && !(scale && scale->tag == TAG_GAS))
        return false;
    if (text_is(out->of, "oven") && value < OVEN_LEAST && !(scale && scale->tag == TAG_GAS))
        return false;
    if (scale && scale->tag == TAG_GAS) {
        out->unit = 'G';
        out->of = TEXT_OF("oven");
    } else if (scale) {
        out->unit = is_celsius(scale) ? 'C' : 'F';
        out->fan = text_is(entry_value(scale), "fan");
    }
    settle(b, out);
    return !(bare || clock) || is_possible(out);
}
