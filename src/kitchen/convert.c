/* kitchen/convert.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/convert.h"

struct ratio convert_number(struct ratio n, const struct unit *from, const struct unit *to)
{
    if (from == to)
        return n;
    if (from->dimension != to->dimension)
        return RATIO_NONE;
    return ratio_multiply(n, ratio_divide(from->factor, to->factor));
}

/* Zero stays zero; "and upwards" stays upwards. */
bool convert_amount(const struct amount *in, const struct unit *from, const struct unit *to,
                    struct amount *out)
{
    struct ratio min = convert_number(in->min, from, to), max = convert_number(in->max, from, to);
    if (!in->known || !ratio_known(min) || !ratio_known(max))
        return false;
    *out = (struct amount){
        .known = true, .min = min, .max = max, .unit = to->name, .approx = in->approx};
    return true;
}

static const struct ratio nine_fifths = {9, 5};

static struct ratio to_fahrenheit(const struct kitchen *k, struct ratio value, char from)
{
    if (from == 'C')
        return ratio_add(ratio_multiply(value, nine_fifths), RATIO(32));
    if (from != 'G')
        return value;
    for (size_t i = 0; i < k->marks.count; i++)
        if (ratio_equal(k->marks.at[i].mark, value))
            return k->marks.at[i].fahrenheit;
    return RATIO_NONE;
}

static struct ratio distance(struct ratio a, struct ratio b)
{
    return ratio_compare(a, b) < 0 ? ratio_subtract(b, a) : ratio_subtract(a, b);
}

/* Half a mark's width is 12 1/2 F degrees; a little more is allowed for Celsius figures that were
 * rounded. */
static struct ratio nearest_mark(const struct kitchen *k, struct ratio fahrenheit)
{
    struct ratio best = RATIO_NONE, least = RATIO(15);
    for (size_t i = 0; i < k->marks.count; i++) {
        struct ratio off = distance(k->marks.at[i].fahrenheit, fahrenheit);
        if (ratio_finite(off) && ratio_compare(off, least) < 0) {
            least = off;
            best = k->marks.at[i].mark;
        }
    }
    return best;
}

struct ratio convert_degrees(const struct kitchen *k, struct ratio value, char from, char to)
{
    if (from == to || !ratio_finite(value))
        return value;
    struct ratio fahrenheit = to_fahrenheit(k, value, from);
    if (!ratio_finite(fahrenheit))
        return RATIO_NONE;
    if (to == 'G')
        return nearest_mark(k, fahrenheit);
    return to == 'F' ? fahrenheit
                     : ratio_divide(ratio_subtract(fahrenheit, RATIO(32)), nine_fifths);
}

/* 20 C degrees: NSW Health, conversion chart (Healthy Kids). */
static struct ratio fan_difference(char scale)
{
    return scale == 'F' ? RATIO(36) : RATIO(20);
}

struct ratio degrees_for_fan(struct ratio value, char scale)
{
    return scale == 'G' ? RATIO_NONE : ratio_subtract(value, fan_difference(scale));
}

struct ratio degrees_without_fan(struct ratio value, char scale)
{
    return scale == 'G' ? RATIO_NONE : ratio_add(value, fan_difference(scale));
}

struct ratio round_figures(struct ratio n, int *figures)
{
    *figures = ratio_compare(n, RATIO(100)) < 0 ? FIGURES_SMALL : FIGURES_LARGE;
    if (!ratio_finite(n) || n.over == 0)
        return n;
    struct ratio top = RATIO(1); /* top: a power of ten, at most n < 10 top */
    struct ratio size = n.over < 0 ? ratio_subtract(RATIO(0), n) : n;
    while (ratio_finite(top) && ratio_compare(ratio_multiply(top, RATIO(10)), size) <= 0)
        top = ratio_multiply(top, RATIO(10));
    while (ratio_finite(top) && ratio_compare(top, size) > 0)
        top = ratio_divide(top, RATIO(10));
    struct ratio step = top;
    for (int i = 1; i < *figures; i++)
        step = ratio_divide(step, RATIO(10));
    return ratio_round(n, step);
}

struct ratio round_degrees(struct ratio n, char scale, bool oven, int *step)
{
    /* Trade habit: dials have marks at every 25 F and are read to 5 C (common practice, no source).
     */
    *step = !oven ? 1 : scale == 'F' ? 25 : 5;
    return scale == 'G' ? n : ratio_round(n, RATIO(*step));
}
