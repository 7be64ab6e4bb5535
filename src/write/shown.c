/* write/shown.c
 * SPDX-License-Identifier: MIT */
#include "write/shown.h"

#include <string.h>

#include "kitchen/add.h"
#include "kitchen/convert.h"
#include "kitchen/measure.h"
#include "kitchen/print.h"
#include "kitchen/system.h"
#include "write/ingredient_line.h"

/* Lists that scaling writes into; the rest of the copy is shared. */
static void copy_lists(struct arena *a, struct dish *d)
{
    struct ingredient *lines = arena_alloc(a, (d->ingredients.count + 1) * sizeof *lines);
    struct shopping_line *sums = arena_alloc(a, (d->shopping.count + 1) * sizeof *sums);
    for (size_t i = 0; i < d->ingredients.count; i++)
        lines[i] = d->ingredients.at[i];
    for (size_t i = 0; i < d->shopping.count; i++) {
        struct packed_amount *parts =
            arena_alloc(a, (d->shopping.at[i].parts.count + 1) * sizeof *parts);
        sums[i] = d->shopping.at[i];
        for (size_t n = 0; n < sums[i].parts.count; n++)
            parts[n] = sums[i].parts.at[n];
        sums[i].parts.at = parts;
    }
    d->ingredients.at = lines;
    d->shopping.at = sums;
}

static bool find_factor(const struct writing *w, const struct dish *d, struct ratio *factor,
                        struct problems *p)
{
    *factor = ratio_finite(w->times) ? w->times : RATIO(1);
    return !ratio_finite(w->serves) || scale_to_yield(&d->yield, w->serves, TEXT_EMPTY, factor, p);
}

bool shown_make(struct shown_dish *shown, const struct writing *w, const struct dish *d,
                struct problems *p)
{
    *shown = (struct shown_dish){.dish = *d, .factor = RATIO(1)};
    if (!find_factor(w, d, &shown->factor, p))
        return problem(p, (struct place){0},
                       "\"%.*s\" was not scaled; name other dishes with --dish, or give --times",
                       TEXT(d->title));
    if (ratio_equal(shown->factor, RATIO(1)))
        return true;
    copy_lists(w->scratch, &shown->dish);
    return scale_dish(w->kitchen, w->scratch, &shown->dish, shown->factor, &shown->notes, p);
}

/* ---- amounts */

/* An amount that was multiplied or added up may be none that a spoon measures. A sum is not rounded
 * for that: each of its parts was said. */
static struct text plain_amount(const struct writing *w, const struct packed_amount *much,
                                bool summed)
{
    bool scaled = ratio_finite(w->times) || ratio_finite(w->serves);
    if (!much->package.known
        && (scaled || (summed && !is_measured(w->kitchen, w->profile, &much->amount)))) {
        struct text rounded = TEXT_EMPTY;
        struct text done =
            print_measurable(w->kitchen, w->scratch, w->profile, &much->amount, &rounded);
        if (scaled || !rounded.length)
            return done;
    }
    return print_packed(w->kitchen, w->scratch, &much->amount, &much->package, WORDS_WHOLE);
}

static struct text in_system(const struct writing *w, const struct ingredient *line,
                             enum system system)
{
    struct amount other = amount_in_system(w->kitchen, w->scratch, w->profile, line, system, NULL);
    if (!other.known)
        return TEXT_EMPTY;
    return system == SYSTEM_US ? print_measurable(w->kitchen, w->scratch, NULL, &other, NULL)
                               : print_amount(w->kitchen, w->scratch, &other,
                                              w->units == UNITS_BOTH ? WORDS_BRIEF : WORDS_WHOLE);
}

static struct text converted(const struct writing *w, const struct ingredient *line,
                             struct text said)
{
    if (w->units == UNITS_SAID || line->package.known)
        return said;
    struct text metric = w->units == UNITS_US ? TEXT_EMPTY : in_system(w, line, SYSTEM_METRIC);
    struct text us = w->units == UNITS_METRIC ? TEXT_EMPTY : in_system(w, line, SYSTEM_US);
    struct text other = metric.length ? metric : us;
    if (!other.length || w->units != UNITS_BOTH)
        return other.length ? other : said;
    return PHRASE_2(w, packed_in, said, other);
}

static struct text one_amount(const struct writing *w, const struct ingredient *in,
                              const struct packed_amount *much, bool summed)
{
    struct ingredient line = *in;
    line.amount = much->amount;
    line.package = much->package;
    return converted(w, &line, plain_amount(w, much, summed));
}

struct text shown_amount(const struct writing *w, const struct ingredient *in,
                         const struct shopping_line *sum)
{
    const struct packed_amount own = {in->amount, in->package};
    struct text done = TEXT_EMPTY;
    if (!sum)
        return own.amount.known ? one_amount(w, in, &own, false) : done;
    for (size_t i = 0; i < sum->parts.count; i++) {
        struct text part = one_amount(w, in, &sum->parts.at[i], true);
        done = done.length ? PHRASE_2(w, and, done, part) : part;
    }
    return done;
}

/* ---- temperatures */

static struct text degrees(const struct writing *w, struct ratio value, char scale)
{
    return print_degrees(w->kitchen, w->scratch, value, value, scale);
}

static struct text other_degrees(const struct writing *w, const struct temperature *t, char scale)
{
    int step;
    struct ratio value = convert_degrees(w->kitchen, t->value, t->unit, scale);
    if (t->unit == scale || !ratio_finite(value))
        return TEXT_EMPTY;
    return degrees(w, round_degrees(value, scale, text_is(t->of, "oven"), &step), scale);
}

/* Of what it is, in words; as `of` has it. */
static struct text with_place(const struct writing *w, const struct temperature *t,
                              struct text degrees)
{
    if (text_is(t->of, "oven"))
        return PHRASE_1(w, card_oven, degrees);
    if (text_is(t->of, "inside"))
        return PHRASE_1(w, card_inside, degrees);
    return text_is(t->of, "oil") ? PHRASE_1(w, card_oil, degrees) : degrees;
}

/* What was said is never left out, but where the other scale alone was asked for. */
static struct text in_scales(const struct writing *w, const struct temperature *t, bool brief)
{
    struct text said = degrees(w, t->value, t->unit);
    struct text us = w->units == UNITS_METRIC ? TEXT_EMPTY : other_degrees(w, t, 'F');
    struct text metric = w->units == UNITS_US ? TEXT_EMPTY : other_degrees(w, t, 'C');
    struct text other = listed(w, us, metric);
    bool alone = w->units == UNITS_US || w->units == UNITS_METRIC;
    struct text done = said;
    if (other.length && (alone || !brief))
        done = alone ? other : PHRASE_2(w, card_degrees, said, other);
    return t->fan ? PHRASE_1(w, card_fan, done) : done;
}

/* Whether the one is the other in another scale, as it is shown beside that: 74 °C and 165 °F. */
static bool is_same_heat(const struct writing *w, const struct temperature *a,
                         const struct temperature *b)
{
    struct text other =
        a->unit == b->unit ? degrees(w, a->value, a->unit) : other_degrees(w, a, b->unit);
    bool mark = (a->unit == 'G') != (b->unit == 'G');
    return a->fan == b->fan && text_equal(a->of, b->of)
           && ((!mark && text_equal(other, degrees(w, b->value, b->unit)))
               || text_equal(in_scales(w, a, false), in_scales(w, b, false)));
}

/* A gas mark behind the degrees of a thermostat is the same dial, told for those who have it: the
 * mark next to them. */
static bool is_mark_of(const struct writing *w, const struct temperature *mark,
                       const struct temperature *t)
{
    if (mark->unit != 'G' || t->unit == 'G' || !text_equal(mark->of, t->of))
        return false;
    struct ratio value = t->fan ? degrees_without_fan(t->value, t->unit) : t->value;
    struct ratio near = convert_degrees(w->kitchen, value, t->unit, 'G');
    return ratio_finite(near) && ratio_compare(ratio_subtract(near, mark->value), RATIO(1)) <= 0
           && ratio_compare(ratio_subtract(mark->value, near), RATIO(1)) <= 0;
}

struct text shown_temperatures(const struct writing *w, const struct step *s)
{
    struct text done = TEXT_EMPTY;
    const struct temperature *last = NULL;
    for (size_t i = 0; i < s->temperatures.count; i++) {
        const struct temperature *t = &s->temperatures.at[i];
        bool same = false, mark = false;
        for (size_t n = 0; n < i; n++) {
            same |= is_same_heat(w, &s->temperatures.at[n], t);
            mark |= is_mark_of(w, t, &s->temperatures.at[n]);
        }
        if (same)
            continue;
        struct text degrees = in_scales(w, t, mark);
        bool goes_on = last && text_equal(last->of, t->of);
        done = listed(w, done, goes_on ? degrees : with_place(w, t, degrees));
        last = t;
    }
    return capital(w, done);
}
