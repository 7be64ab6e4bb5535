/* kitchen/print.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/print.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* The fractions that cups and spoons come in, as Unicode has them. */
static const struct {
    struct ratio part;
    const char *sign;
} fractions[] = {{{1, 2}, "½"}, {{1, 3}, "⅓"}, {{2, 3}, "⅔"}, {{1, 4}, "¼"},
                 {{3, 4}, "¾"}, {{1, 8}, "⅛"}, {{3, 8}, "⅜"}, {{5, 8}, "⅝"},
                 {{7, 8}, "⅞"}, {{1, 6}, "⅙"}, {{5, 6}, "⅚"}};

static const char *fraction_sign(struct ratio part)
{
    for (size_t i = 0; i < sizeof fractions / sizeof *fractions; i++)
        if (ratio_equal(fractions[i].part, part))
            return fractions[i].sign;
    return NULL;
}

/* Four places are finer than any scale or spoon; a number that has none but zeros there shows nine.
 */
static struct text print_decimal(struct arena *a, struct ratio n)
{
    double value = ratio_double(n);
    struct text t = fabs(value) >= 0.001 || value == 0 ? arena_format(a, "%.4f", value)
                                                       : arena_format(a, "%.9f", value);
    while (t.length && t.at[t.length - 1] == '0')
        t.length--;
    if (t.length && t.at[t.length - 1] == '.')
        t.length--;
    return t;
}

struct text print_number(struct arena *a, struct ratio n, bool decimal)
{
    if (!ratio_finite(n))
        return TEXT_EMPTY;
    if (n.under == 1)
        return arena_format(a, "%lld", (long long) n.over);
    struct ratio whole = ratio_floor(n, RATIO(1));
    const char *sign = decimal || n.over < 0 ? NULL : fraction_sign(ratio_subtract(n, whole));
    if (!sign)
        return print_decimal(a, n);
    return whole.over ? arena_format(a, "%lld%s", (long long) whole.over, sign)
                      : arena_format(a, "%s", sign);
}

/* One is singular, and so is what is less: "½ teaspoon", "1½ teaspoons". */
static struct text unit_word(const struct unit *unit, struct ratio n, enum print_words words)
{
    if (words == WORDS_BRIEF && !text_equal(unit->brief, unit->one))
        return unit->brief;
    return n.over > 0 && ratio_compare(n, RATIO(1)) <= 0 ? unit->one : unit->many;
}

static struct text print_range(const struct kitchen *k, struct arena *a,
                               const struct amount *amount, bool decimal)
{
    struct text low = print_number(a, amount->min, decimal);
    if (!ratio_finite(amount->max))
        return PHRASE_TEXT(k, a, at_least, low);
    struct text high = print_number(a, amount->max, decimal);
    return text_equal(low, high) ? low : PHRASE_TEXT(k, a, range, low, high);
}

struct text print_amount(const struct kitchen *k, struct arena *a, const struct amount *amount,
                         enum print_words words)
{
    if (!amount->known)
        return TEXT_EMPTY;
    const struct unit *unit = unit_find(&k->units, amount->unit);
    struct text number = print_range(k, a, amount, unit && unit->metric);
    struct ratio top = ratio_finite(amount->max) ? amount->max : amount->min;
    struct text word = unit ? unit_word(unit, top, words) : amount->unit;
    struct text whole =
        word.length ? arena_format(a, "%.*s %.*s", TEXT(number), TEXT(word)) : number;
    return amount->approx ? PHRASE_TEXT(k, a, about, whole) : whole;
}

struct text print_packed(const struct kitchen *k, struct arena *a, const struct amount *amount,
                         const struct amount *package, enum print_words words)
{
    struct text whole = print_amount(k, a, amount, words);
    if (!package->known || !whole.length)
        return whole;
    return PHRASE_TEXT(k, a, packed_in, whole, print_amount(k, a, package, WORDS_BRIEF));
}

static const char *const time_units[] = {"day", "hour", "minute", "second"};

/* "1 hour 30 minutes"; a part that is 0 is left out. */
static struct text print_seconds(const struct kitchen *k, struct arena *a, double seconds,
                                 enum print_words words)
{
    struct text done = TEXT_EMPTY;
    double left = fmin(round(seconds), 1e12);
    for (size_t i = 0; i < sizeof time_units / sizeof *time_units; i++) {
        const struct unit *unit = unit_find(&k->units, text_from(time_units[i]));
        double size = unit ? ratio_double(unit->factor) : 1, n = floor(left / size);
        if (!unit || (n == 0 && (done.length || size > 1)))
            continue;
        left -= n * size;
        struct text word = unit_word(unit, RATIO((int64_t) n), words);
        done =
            arena_format(a, "%.*s%s%.0f %.*s", TEXT(done), done.length ? " " : "", n, TEXT(word));
    }
    return done;
}

/* From so many on nobody counts in the unit: 500 minutes, 100 hours. */
#define MOST_OF_A_UNIT 100

/* The unit that both ends of a range count whole: 25 to 30 minutes, 1 to 1½ hours. */
static const struct unit *shared_unit(const struct kitchen *k, double min, double max)
{
    for (size_t i = 0; i < sizeof time_units / sizeof *time_units; i++) {
        const struct unit *unit = unit_find(&k->units, text_from(time_units[i]));
        double half = unit ? ratio_double(unit->factor) / 2 : 1;
        if (unit && min >= half && fmod(min, half) == 0 && fmod(max, half) == 0)
            return max < half * 2 * MOST_OF_A_UNIT ? unit : NULL;
    }
    return NULL;
}

struct text print_time(const struct kitchen *k, struct arena *a, double min, double max,
                       enum print_words words)
{
    if (isinf(max))
        return PHRASE_TEXT(k, a, at_least, print_seconds(k, a, min, words));
    const struct unit *unit = min == max || max > 1e9 ? NULL : shared_unit(k, min, max);
    if (min == max || !unit)
        return min == max ? print_seconds(k, a, min, words)
                          : PHRASE_TEXT(k, a, range, print_seconds(k, a, min, words),
                                        print_seconds(k, a, max, words));
    double half = ratio_double(unit->factor) / 2;
    struct amount range = {.known = true,
                           .min = ratio_make((int64_t) (min / half), 2),
                           .max = ratio_make((int64_t) (max / half), 2),
                           .unit = unit->name};
    return print_amount(k, a, &range, words);
}

/* A summary is told in whole minutes from here on. */
#define WHOLE_MINUTES_FROM 600

static double in_minutes(double seconds)
{
    return isfinite(seconds) && seconds >= WHOLE_MINUTES_FROM ? ceil(seconds / 60) * 60 : seconds;
}

struct text print_sum_of_times(const struct kitchen *k, struct arena *a, const struct time_sum *t)
{
    return print_time(k, a, in_minutes(t->min), in_minutes(t->max), WORDS_WHOLE);
}

/* Of ways to write it that are divided by '|', the one that is printed. */
static struct text first_way(const struct kitchen *k, enum phrase_key ways)
{
    return text_slice(k->phrases[ways], 0, text_find(k->phrases[ways], '|', 0));
}

struct text print_degrees(const struct kitchen *k, struct arena *a, struct ratio low,
                          struct ratio high, char scale)
{
    bool gas = scale == 'G';
    struct text number = print_number(a, low, !gas);
    if (!ratio_equal(low, high))
        number = PHRASE_TEXT(k, a, range, number, print_number(a, high, !gas));
    if (gas)
        return PHRASE_TEXT(k, a, gas_mark, number, first_way(k, PHRASE_scale_g));
    return PHRASE_TEXT(k, a, degrees, number,
                       first_way(k, scale == 'F' ? PHRASE_scale_f : PHRASE_scale_c));
}

struct ratio fraction_read(struct text t, size_t *length)
{
    for (size_t i = 0; i < sizeof fractions / sizeof *fractions; i++)
        if (text_starts(t, fractions[i].sign)) {
            *length = strlen(fractions[i].sign);
            return fractions[i].part;
        }
    return RATIO_NONE;
}
