/* kitchen/calculate.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/calculate.h"

#include "kitchen/convert.h"
#include "kitchen/measure.h"
#include "kitchen/print.h"
#include "kitchen/weight.h"

static const struct place input_place = {NULL, 0, 0};

/* A number as it is typed or printed: "2", "1 1/2", "2.75", "½", "1½"; none when it is none. */
static struct ratio figure_read(struct text t)
{
    t = text_trim(t);
    for (size_t i = 0, length; i < t.length; i++) {
        struct ratio part = fraction_read(text_slice(t, i, t.length), &length);
        if (!ratio_finite(part))
            continue;
        if (i + length != t.length)
            return RATIO_NONE;
        struct text whole = text_trim(text_slice(t, 0, i));
        return whole.length ? ratio_add(ratio_read(whole.at, whole.length), part) : part;
    }
    return ratio_read(t.at, t.length);
}

static bool is_number_byte(char c)
{
    return (c >= '0' && c <= '9') || c == '.' || c == '/' || c == ' ' || (unsigned char) c >= 0x80;
}

/* The longest number at the front of `*rest`, which is then what stands behind it. */
static struct ratio take_number(struct text *rest)
{
    struct ratio found = RATIO_NONE;
    size_t taken = 0;
    for (size_t end = 1; end <= rest->length && is_number_byte(rest->at[end - 1]); end++) {
        struct ratio n = figure_read(text_slice(*rest, 0, end));
        if (ratio_finite(n) && rest->at[end - 1] != ' ') {
            found = n;
            taken = end;
        }
    }
    *rest = text_slice(*rest, taken, rest->length);
    return found;
}

static bool bad_number(struct problems *p, struct text input)
{
    return problem(
        p, input_place,
        "\"%.*s\" does not begin with a number of kitchen size; write 2, 1/2, 1 1/2, 2.5 or 2-3",
        TEXT(input));
}

static bool is_digit_at(struct text t, size_t i)
{
    return i < t.length && t.at[i] >= '0' && t.at[i] <= '9';
}

/* "1e300", "2.5.1", "12/": what stands behind a number and would make it another one. */
static bool runs_on(struct text rest, bool ranged)
{
    return is_digit_at(rest, 0) || text_starts(rest, ".") || text_starts(rest, "/")
           || (!ranged && !text_starts(rest, " ") && is_digit_at(rest, 1));
}

/* "2-3", "2–3" and "2 - 3" too. */
static bool take_range(struct text input, struct text *rest, struct amount *amount,
                       struct problems *p)
{
    *rest = text_trim(input);
    amount->known = true;
    amount->min = amount->max = take_number(rest);
    if (!ratio_finite(amount->min))
        return bad_number(p, input);
    struct text behind = text_trim(*rest);
    size_t dash = text_starts(behind, "-") ? 1 : text_starts(behind, "–") ? sizeof "–" - 1 : 0;
    behind = text_trim(text_slice(behind, dash, behind.length));
    struct ratio high = dash ? take_number(&behind) : RATIO_NONE;
    if (ratio_finite(high)) {
        amount->max = high;
        *rest = behind;
    }
    if (ratio_compare(amount->max, amount->min) < 0)
        return problem(p, input_place, "in \"%.*s\" the second number is the smaller one",
                       TEXT(input));
    return !runs_on(*rest, dash > 0) || bad_number(p, input);
}

static char scale_read(const struct kitchen *k, struct text word)
{
    word = text_trim(word);
    if (text_has_part(k->phrases[PHRASE_scale_f], '|', word))
        return 'F';
    if (text_has_part(k->phrases[PHRASE_scale_c], '|', word))
        return 'C';
    return text_has_part(k->phrases[PHRASE_scale_g], '|', word) ? 'G' : 0;
}

/* The unit at the front: of two words ("fl oz", "fluid ounces") before of one. NULL: a plain count.
 */
static const struct unit *take_unit(const struct kitchen *k, struct text *rest)
{
    *rest = text_trim(*rest);
    size_t one = text_find(*rest, ' ', 0), two = text_find(*rest, ' ', one + 1);
    const struct unit *unit =
        one < rest->length ? unit_read(&k->units, text_slice(*rest, 0, two)) : NULL;
    size_t taken = unit ? two : one;
    if (!unit)
        unit = unit_read(&k->units, text_slice(*rest, 0, one));
    if (unit)
        *rest = text_trim(text_slice(*rest, taken, rest->length));
    return unit;
}

static struct text take_of(const struct kitchen *k, struct text rest)
{
    size_t end = text_find(rest, ' ', 0);
    return text_has_part(k->phrases[PHRASE_of_words], '|', text_slice(rest, 0, end))
               ? text_trim(text_slice(rest, end, rest.length))
               : rest;
}

/* How a temperature is given: 'F', 'C' or 'G' (0: it is none), of a fan oven or not. */
struct heat_scale {
    char scale;
    bool fan;
};

/* "C", "gas mark", "F in a fan oven". The longest way to say "fan" stands first in the list. */
static struct heat_scale heat_scale_read(const struct kitchen *k, struct text t)
{
    struct text list = k->phrases[PHRASE_fan_words], word;
    t = text_trim(t);
    while (text_part(&list, '|', &word)) {
        size_t cut = t.length > word.length ? t.length - word.length : 0;
        if (cut && t.at[cut - 1] == ' ' && text_equal(text_slice(t, cut, t.length), word))
            return (struct heat_scale){scale_read(k, text_slice(t, 0, cut)), true};
    }
    return (struct heat_scale){scale_read(k, t), false};
}

static struct text print_heat(const struct kitchen *k, struct arena *a, struct ratio low,
                              struct ratio high, struct heat_scale of)
{
    struct text done = print_degrees(k, a, low, high, of.scale);
    return of.fan ? PHRASE_TEXT(k, a, card_fan, done) : done;
}

/* By way of what a conventional oven is set to. */
static struct ratio oven_degrees(const struct kitchen *k, struct ratio n, struct heat_scale from,
                                 struct heat_scale to)
{
    struct ratio plain = from.fan ? degrees_without_fan(n, from.scale) : n;
    struct ratio wanted = convert_degrees(k, plain, from.scale, to.scale);
    return to.fan ? degrees_for_fan(wanted, to.scale) : wanted;
}

static bool calculate_degrees(const struct kitchen *k, struct arena *a, const struct amount *n,
                              struct heat_scale from, struct heat_scale to, struct calculation *out,
                              struct problems *p)
{
    int step;
    if ((from.fan && from.scale == 'G') || (to.fan && to.scale == 'G'))
        return problem(p, input_place, "a gas oven's mark is not one of a fan oven");
    struct ratio low = oven_degrees(k, n->min, from, to), high = oven_degrees(k, n->max, from, to);
    if (!ratio_finite(low) || !ratio_finite(high))
        return problem(p, input_place,
                       "there is no such gas mark, or no gas mark is near that temperature");
    struct ratio low_near = round_degrees(low, to.scale, false, &step),
                 high_near = round_degrees(high, to.scale, false, &step);
    out->said = print_heat(k, a, n->min, n->max, from);
    out->result = print_heat(k, a, low_near, high_near, to);
    out->source = from.fan || to.fan ? PHRASE_PLAIN(k, a, fan_source) : TEXT_EMPTY;
    out->rounding = ratio_equal(low, low_near) && ratio_equal(high, high_near)
                        ? PHRASE_PLAIN(k, a, exact)
                        : PHRASE_TEXT(k, a, rounded_degrees, arena_format(a, "%d", step));
    return true;
}

/* Into which scale when none was asked for: a fan oven's figure into the conventional one's, else
 * into the other scale. */
static struct heat_scale other_scale(struct heat_scale from)
{
    char scale = from.fan ? from.scale : from.scale == 'C' ? 'F' : 'C';
    return (struct heat_scale){scale, false};
}

/* Where "gas mark 4" puts the scale first; else 0. */
static char scale_first(const struct kitchen *k, struct text input, struct text *rest)
{
    input = text_trim(input);
    for (size_t i = input.length; i-- > 0;)
        if (input.at[i] == ' ') {
            *rest = text_slice(input, i + 1, input.length);
            return scale_read(k, text_slice(input, 0, i)) == 'G' ? 'G' : 0;
        }
    return 0;
}

/* Fractions that a kitchen reads off, and two decimals, are no invented precision. */
static bool is_plain(struct ratio n)
{
    return n.under <= 4 || n.under == 8 || 100 % n.under == 0;
}

static void set_result(const struct kitchen *k, struct arena *a, const struct amount *exact,
                       bool measured, struct calculation *out)
{
    struct amount shown = *exact;
    int figures = 0;
    bool keep = !measured && is_plain(exact->min) && is_plain(exact->max);
    if (!keep) {
        shown.min = round_figures(exact->min, &figures);
        shown.max = round_figures(exact->max, &figures);
    }
    out->result = print_amount(k, a, &shown, WORDS_WHOLE);
    out->rounding =
        keep || (ratio_equal(shown.min, exact->min) && ratio_equal(shown.max, exact->max))
            ? PHRASE_PLAIN(k, a, exact)
            : PHRASE_TEXT(k, a, rounded_figures, arena_format(a, "%d", figures));
}

static bool too_large(const struct kitchen *k, struct problems *p)
{
    return problem(p, input_place, "%.*s", TEXT(k->phrases[PHRASE_too_big]));
}

/* Grams of the amount, as an interval, with their source. */
static bool to_grams(const struct kitchen *k, struct arena *a, const struct profile *profile,
                     const struct ingredient *line, const struct unit *unit, struct amount *grams,
                     struct text *source, struct problems *p)
{
    *grams = (struct amount){.known = true, .unit = TEXT_OF("gram")};
    if (unit->dimension == DIMENSION_MASS) {
        grams->min = ratio_multiply(line->amount.min, unit->factor);
        grams->max = ratio_multiply(line->amount.max, unit->factor);
        *source = unit->source;
        return true;
    }
    bool counted = unit->dimension == DIMENSION_COUNT && ratio_finite(unit->factor);
    struct measured one =
        weigh_one(k, a, profile, line, counted ? unit_find(&k->units, TEXT_EMPTY) : unit);
    if (!one.known)
        return problem(p, input_place, "%.*s", TEXT(one.why_not));
    struct ratio pieces = counted ? unit->factor : RATIO(1);
    grams->min = ratio_multiply(ratio_multiply(line->amount.min, pieces), one.min);
    grams->max = ratio_multiply(ratio_multiply(line->amount.max, pieces), one.max);
    *source = one.source;
    return true;
}

/* By the food's own weight: to grams, and from there to the other unit. */
static bool calculate_food(const struct kitchen *k, struct arena *a, const struct profile *profile,
                           const struct ingredient *line, const struct unit *from,
                           const struct unit *to, struct calculation *out, struct problems *p)
{
    struct amount result;
    if (!line->food.length)
        return problem(p, input_place,
                       "\"%.*s\" in \"%.*s\" depends on the food; name it: \"2 cups flour\"",
                       TEXT(from->one), TEXT(to->one));
    if (!to_grams(k, a, profile, line, from, &result, &out->source, p))
        return false;
    struct measured one = {.min = to->factor, .max = to->factor};
    if (to->dimension != DIMENSION_MASS) {
        one = weigh_one(k, a, profile, line, to);
        if (!one.known)
            return problem(p, input_place, "%.*s", TEXT(one.why_not));
        out->source = one.source;
    }
    result.min = ratio_divide(result.min, one.max);
    result.max = ratio_divide(result.max, one.min);
    result.unit = to->name;
    if (!ratio_finite(result.min) || !ratio_finite(result.max))
        return too_large(k, p);
    set_result(k, a, &result, true, out);
    return true;
}

static bool calculate_units(const struct kitchen *k, struct arena *a, const struct profile *profile,
                            const struct ingredient *line, const struct unit *from,
                            const struct unit *to, struct calculation *out, struct problems *p)
{
    const struct unit *from_here = unit_meant(from, profile), *to_here = unit_meant(to, profile);
    bool direct = from_here->dimension == to_here->dimension && ratio_finite(from_here->factor)
                  && ratio_finite(to_here->factor);
    struct amount result;
    if (!direct)
        return calculate_food(k, a, profile, line, from, to, out, p);
    if (!convert_amount(&line->amount, from_here, to_here, &result))
        return too_large(k, p);
    result.unit = to->name;
    out->source = text_equal(from_here->source, to_here->source) || !from_here->source.length
                      ? to_here->source
                      : PHRASE_TEXT(k, a, list_next, from_here->source, to_here->source);
    set_result(k, a, &result, false, out);
    return true;
}

static bool unknown_unit(struct problems *p, struct text to)
{
    return problem(
        p, input_place,
        "the unit \"%.*s\" is not known; write one as in \"gram\", \"cup\", \"milliliter\", \"F\"",
        TEXT(to));
}

static bool calculate_amount(const struct kitchen *k, struct arena *a,
                             const struct profile *profile, struct amount amount, struct text rest,
                             struct text to, struct calculation *out, struct problems *p)
{
    const struct unit *from = take_unit(k, &rest),
                      *target = to.length ? unit_read(&k->units, to) : NULL;
    struct ingredient line = {.amount = amount, .food = take_of(k, rest)};
    if (!from)
        from = unit_find(&k->units, TEXT_EMPTY);
    line.amount.unit = text_is(from->name, "each") ? TEXT_EMPTY : from->name;
    out->said = print_amount(k, a, &line.amount, WORDS_WHOLE);
    if (line.food.length)
        out->said = PHRASE_TEXT(k, a, amount_of, out->said, line.food);
    if (target)
        return calculate_units(k, a, profile, &line, from, target, out, p);
    if (to.length)
        return unknown_unit(p, to);
    out->result = print_measurable(k, a, profile, &line.amount, &out->rounding);
    return true;
}

/* "2 c" may be cups: a scale is meant where nothing else can be, or where the answer is wanted in
 * one. */
static bool is_heat(const struct kitchen *k, struct heat_scale from, struct text words,
                    struct heat_scale into)
{
    return from.scale && (into.scale || !take_unit(k, &words));
}

bool calculate(const struct kitchen *k, struct arena *a, const struct profile *profile,
               struct text input, struct text to, struct calculation *out, struct problems *p)
{
    struct amount amount = {.known = false};
    struct text rest = input;
    struct calculation made = {.source = TEXT_EMPTY, .rounding = TEXT_EMPTY};
    to = text_trim(to);
    char first = scale_first(k, input, &rest);
    if (!take_range(first ? rest : input, &rest, &amount, p))
        return false;
    struct heat_scale from = first ? (struct heat_scale){first, false} : heat_scale_read(k, rest),
                      into = heat_scale_read(k, to);
    bool heat = is_heat(k, from, rest, into);
    if (heat && to.length && !into.scale)
        return problem(p, input_place,
                       "a temperature is measured in F, C or gas mark, not in \"%.*s\"", TEXT(to));
    bool good = heat ? calculate_degrees(k, a, &amount, from, into.scale ? into : other_scale(from),
                                         &made, p)
                     : calculate_amount(k, a, profile, amount, rest, to, &made, p);
    if (!good)
        return false;
    made.line = PHRASE_TEXT(k, a, equals, made.said, made.result);
    *out = made;
    return true;
}
