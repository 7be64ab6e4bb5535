/* write/shown.c
 * SPDX-License-Identifier: MIT */
#include "write/shown.h"

#include <string.h>

#include "kitchen/add.h"
#include "kitchen/convert.h"
#include "kitchen/measure.h"
#include "kitchen/print.h"
#include "kitchen/system.h"

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

/* An amount that was multiplied may be none that a spoon measures. */
static struct text plain_amount(const struct writing *w, const struct packed_amount *much)
{
    bool scaled = ratio_finite(w->times) || ratio_finite(w->serves);
    if (scaled && !much->package.known)
        return print_measurable(w->kitchen, w->scratch, w->profile, &much->amount, NULL);
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
                              const struct packed_amount *much)
{
    struct ingredient line = *in;
    line.amount = much->amount;
    line.package = much->package;
    return converted(w, &line, plain_amount(w, much));
}

struct text shown_amount(const struct writing *w, const struct ingredient *in,
                         const struct shopping_line *sum)
{
    const struct packed_amount own = {in->amount, in->package};
    struct text done = TEXT_EMPTY;
    if (!sum)
        return own.amount.known ? one_amount(w, in, &own) : done;
    for (size_t i = 0; i < sum->parts.count; i++) {
        struct text part = one_amount(w, in, &sum->parts.at[i]);
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

/* What was said is never left out, but where the other scale alone was asked for. */
struct text shown_temperature(const struct writing *w, const struct temperature *t)
{
    struct text said = degrees(w, t->value, t->unit);
    struct text us = w->units == UNITS_METRIC ? TEXT_EMPTY : other_degrees(w, t, 'F');
    struct text metric = w->units == UNITS_US ? TEXT_EMPTY : other_degrees(w, t, 'C');
    struct text other = listed(w, us, metric);
    bool alone = w->units == UNITS_US || w->units == UNITS_METRIC;
    struct text done = said;
    if (other.length)
        done = alone ? other : PHRASE_2(w, card_degrees, said, other);
    if (t->fan)
        done = PHRASE_1(w, card_fan, done);
    return text_is(t->of, "oven") ? PHRASE_1(w, card_oven, done) : done;
}
