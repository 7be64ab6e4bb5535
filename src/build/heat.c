/* build/heat.c
 * SPDX-License-Identifier: MIT */
#include "build/heat.h"

#include <math.h>

#include "build/heatlimits.h"
#include "build/heatof.h"
#include "build/heattime.h"
#include "build/wording.h"
#include "match/capture.h"
#include "match/matches.h"

/* Oven numbers from here on are Fahrenheit, since no kitchen oven reaches 260 Celsius in talk
 * (trade practice: bare oven numbers of 100 to 195 are Celsius, of 260 to 550 Fahrenheit). */
#define OVEN_F_LEAST 260
#define BARE_OVEN_LEAST 300
#define OVEN_C_LEAST 140
#define OVEN_C_TENS 240
/* A number of such a height without its scale speaks for Fahrenheit as much as so many amounts in
 * pounds do; one of a Celsius dial the same for Celsius. */
#define HIGH_HINT 3
#define OVEN_C_MOST 199
#define BARE_LEAST 50
#define BARE_MOST 600
#define WATER_LEAST 25

/* "Fan", "no fan": names the oven and no scale; it is said where dials are in Celsius, unless the
 * number is none of those. */
static bool is_oven(const struct entry *scale)
{
    return scale && (text_is(entry_value(scale), "fan") || text_is(entry_value(scale), "still"));
}

bool is_celsius(const struct entry *scale)
{
    return scale && (text_is(entry_value(scale), "C") || is_oven(scale));
}

/* What speaks for either scale, by how much. */
struct scales {
    int f, c;
};

/* Fahrenheit dials begin where Celsius ones end, but for keeping warm; those have tens. */
static bool is_celsius_dial(struct ratio value)
{
    return value.under == 1 && value.over % 10 == 0 && value.over >= OVEN_C_LEAST
           && value.over <= OVEN_C_TENS;
}

/* "Two twenty": a heat that no Fahrenheit dial has between 200 and 250. */
static bool is_celsius_alone(struct ratio value)
{
    return is_celsius_dial(value) && value.over > OVEN_C_MOST + 1 && value.over % 25 != 0;
}

static bool says_oven(const struct recording *r, size_t word)
{
    const struct sentence *s = sentence_of(r, word);
    for (size_t i = s ? s->first : 0; s && i <= s->last; i++)
        if (r->words.at[i].tag == TAG_OVEN)
            return true;
    return false;
}

/* "Celsius", "fan", "gas mark" and "Fahrenheit" say it; a high number without a scale only hints.
 */
static void count_temperature(const struct recording *r, const struct match *m, struct scales *said,
                              struct scales *hinted)
{
    const struct entry *scale = match_entry(r, m, SLOT_scale);
    if (!ratio_finite(m->low))
        return;
    bool high = ratio_compare(m->low, RATIO(OVEN_F_LEAST)) >= 0;
    if (scale && (text_is(entry_value(scale), "F") || (high && is_oven(scale))))
        said->f++;
    else if (is_celsius(scale) || (scale && scale->tag == TAG_GAS))
        said->c++;
    else if (is_celsius_alone(m->low) && says_oven(r, m->words.first))
        said->c++;
    else if (high)
        hinted->f += HIGH_HINT;
    else if (is_celsius_dial(m->low) && says_oven(r, m->words.first))
        hinted->c += HIGH_HINT;
}

/* Who weighs in grams has an oven in Celsius, who weighs in pounds one in Fahrenheit. */
static void count_unit(const struct recording *r, const struct table *units, const struct match *m,
                       struct scales *hinted)
{
    const struct entry *unit = match_entry(r, m, SLOT_unit);
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
    struct matches heats = matches_all(r, KIND_OF(temperature)),
                   amounts = matches_all(r, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&heats));)
        count_temperature(r, m, &said, &hinted);
    for (const struct match *m; (m = matches_next(&amounts));)
        count_unit(r, units, m, &hinted);
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

/* Ovens are marked in steps of 25 Fahrenheit: a number that fits needs no word beside it. */
static bool is_multiple_of_twenty_five(struct ratio value)
{
    return value.under == 1 && value.over % 25 == 0;
}

/* Two scales' names of one heat differ by no more, rounded as cooks round them. */
#define SAME_HEAT_F 15.0

bool has_scale(const struct builder *b, const struct chunk *c)
{
    return match_entry(b->r, c->match, SLOT_scale);
}

/* "Two hundred, that's four hundred Fahrenheit": the scale in which the number is a heat that the
 * sentence also has in the other one; 0 where it has none. */
static char scale_beside(const struct builder *b, double value)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_HEATED || !c->match || !ratio_finite(c->match->low))
            continue;
        const struct entry *scale = match_entry(b->r, c->match, SLOT_scale);
        double other = ratio_double(c->match->low);
        if (is_celsius(scale) && fabs(other * 1.8 + 32 - value) <= SAME_HEAT_F)
            return 'F';
        if (scale && text_is(entry_value(scale), "F")
            && fabs(value * 1.8 + 32 - other) <= SAME_HEAT_F)
            return 'C';
    }
    return 0;
}

/* "Down from two twenty": what it was before. */
static bool is_left(const struct builder *b, const struct chunk *c)
{
    return c > b->chunks.at && (c - 1)->tag == TAG_FROM;
}

/* Without a word that tells: an oven number is an oven's, a smaller one is of the food's inside. */
static void settle(const struct builder *b, struct temperature *t)
{
    char recording = b->scale;
    double value = ratio_double(t->value);
    if (!t->of.length)
        t->of = recording == 'F' ? (value < 230 ? TEXT_OF("inside") : TEXT_OF("oven"))
                                 : (value <= INSIDE_C_MOST ? TEXT_OF("inside") : TEXT_OF("oven"));
    if (!t->unit)
        t->unit = scale_beside(b, value);
    if (t->unit)
        return;
    if (text_is(t->of, "inside"))
        t->unit = value > (recording == 'C' ? SUGAR_C_MOST : INSIDE_C_MOST) ? 'F' : 'C';
    else if (text_is(t->of, "oil") || text_is(t->of, "water"))
        t->unit = value > (text_is(t->of, "oil") ? OIL_C_MOST : WATER_C_MOST) ? 'F' : 'C';
    else if (value >= OVEN_F_LEAST)
        t->unit = 'F';
    else if (text_is(t->of, "oven") && value <= OVEN_C_MOST)
        t->unit = 'C';
    else
        t->unit = recording;
}

/* "I weighed 450. There. 400.": where ovens have Celsius, so high a number alone is none of
 * theirs, whatever was hot before. */
static bool is_no_oven_here(const struct builder *b, const struct chunk *c)
{
    return b->scale == 'C' && ratio_double(c->match->low) >= OVEN_F_LEAST && !says_heated(b, c)
           && !is_for_a_time(b, c);
}

/* "Turn the tray a hundred and eighty degrees": how far, not how hot. */
static bool is_angle(const struct builder *b, const struct chunk *c)
{
    const struct chunk *before = c > b->chunks.at ? c - 1 : c;
    if (b->r->words.at[c->last].tag != TAG_DEGREE || before->tag == TAG_TO || before->tag == TAG_AT)
        return false;
    for (const struct chunk *k = c; k-- > b->chunks.at;)
        if (k->tag == TAG_ACTION)
            return is_step_word(b, k, "turns");
    return false;
}

/* "Four hundred guests": of something that is in no lexicon. */
static bool counts_something(const struct builder *b, const struct chunk *c)
{
    const struct chunk *next = c + 1;
    return next < b->chunks.at + b->chunks.count && next->tag == TAG_OTHER && !next->entry
           && b->r->words.at[c->last].after < AFTER_COMMA;
}

/* "Two, three, five, ten": counted, not four hundred and ten. */
static bool is_counting(const struct builder *b, const struct match *m)
{
    return text_is(m->rule->option, "split")
           && b->r->words.at[match_slot(m, SLOT_hundreds).last].after >= AFTER_COMMA;
}

/* "The fifty that's left over" */
static bool is_known_amount(const struct builder *b, const struct chunk *c)
{
    const struct chunk *next = c + 1;
    return c > b->chunks.at && (c - 1)->tag == TAG_THE && next < b->chunks.at + b->chunks.count
           && (next->tag == TAG_THERE || next->tag == TAG_BE || next->tag == TAG_ME);
}

static bool is_too_low(const struct temperature *t, double value)
{
    bool bath = text_is(t->of, "water") && value >= WATER_LEAST;
    return (value < BARE_LEAST && !bath) || (text_is(t->of, "oven") && value < OVEN_LEAST);
}

/* As it was said; NULL leaves it to what the recording has elsewhere. */
static void set_scale(struct temperature *t, const struct entry *scale, double value)
{
    if (scale && scale->tag == TAG_GAS) {
        t->unit = 'G';
        t->of = TEXT_OF("oven");
    } else if (scale) {
        t->fan = text_is(entry_value(scale), "fan");
        t->unit = is_celsius(scale) && !(is_oven(scale) && value >= OVEN_F_LEAST) ? 'C' : 'F';
    }
}

bool read_temperature(const struct builder *b, const struct chunk *c, struct temperature *out)
{
    const struct match *m = c->match;
    struct span number = match_slot(m, SLOT_number);
    const struct entry *scale = match_entry(b->r, m, SLOT_scale);
    bool bare = text_is(m->rule->option, "bare"), clock = text_is(m->rule->option, "clock");
    *out = (struct temperature){.value = m->low, .at = b->r->words.at[c->first].start};
    out->words = chunk_words(c);
    if (clock)
        out->value = clock_value(b->r->words.at[number.last].key);
    if (!ratio_finite(out->value) || is_left(b, c) || is_angle(b, c) || is_counting(b, m)
        || (bare && (is_no_oven_here(b, c) || is_known_amount(b, c))))
        return false;
    double value = ratio_double(out->value);
    if ((bare || clock)
        && (value < BARE_LEAST || value > BARE_MOST || !ratio_equal(m->low, m->high)))
        return false;
    out->of = temperature_of(b, c);
    if (!clock && !scale && !out->of.length && is_for_a_time(b, c))
        out->of = TEXT_OF("oven");
    else if (bare && !out->of.length
             && (value < BARE_OVEN_LEAST || !is_multiple_of_twenty_five(out->value)
                 || counts_something(b, c)))
        return false;
    if (!(scale && scale->tag == TAG_GAS) && is_too_low(out, value))
        return false;
    set_scale(out, scale, value);
    settle(b, out);
    return !(bare || clock) || is_possible(out);
}
