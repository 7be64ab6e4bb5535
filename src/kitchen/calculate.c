/* kitchen/calculate.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/calculate.h"

#include "kitchen/convert.h"
#include "kitchen/heat.h"
#include "kitchen/measure.h"
#include "kitchen/print.h"
#include "kitchen/weight.h"

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
    return is_digit(c) || c == '.' || c == '/' || c == ' ' || (unsigned char) c >= 0x80;
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
        p, INPUT_PLACE,
        "\"%.*s\" does not begin with a number of kitchen size; write 2, 1/2, 1 1/2, 2.5 or 2-3",
        TEXT(input));
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
        return problem(p, INPUT_PLACE, "in \"%.*s\" the second number is the smaller one",
                       TEXT(input));
    return !runs_on(*rest, dash > 0) || bad_number(p, input);
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

/* Fractions that a kitchen reads off, and two decimals, are no invented precision. */
static bool is_plain(struct ratio n)
{
    return n.under <= 4 || n.under == 8 || 100 % n.under == 0;
}

static void set_result(const struct asked *q, const struct amount *exact, bool measured,
                       struct calculation *out)
{
    struct amount shown = *exact;
    int figures = 0;
    bool keep = !measured && is_plain(exact->min) && is_plain(exact->max);
    if (!keep) {
        shown.min = round_figures(exact->min, &figures);
        shown.max = round_figures(exact->max, &figures);
    }
    out->result = print_amount(q->k, q->a, &shown, WORDS_WHOLE);
    out->rounding =
        keep || (ratio_equal(shown.min, exact->min) && ratio_equal(shown.max, exact->max))
            ? PHRASE_PLAIN(q->k, q->a, exact)
            : PHRASE_TEXT(q->k, q->a, rounded_figures, arena_format(q->a, "%d", figures));
}

static bool too_large(const struct asked *q)
{
    return problem(q->problems, INPUT_PLACE, "%.*s", TEXT(q->k->phrases[PHRASE_too_big]));
}

/* Grams of the amount, as an interval, with their source. */
static bool to_grams(const struct asked *q, const struct ingredient *line, const struct unit *unit,
                     struct amount *grams, struct text *source)
{
    *grams = (struct amount){.known = true, .unit = TEXT_OF("gram")};
    if (unit->dimension == DIMENSION_MASS) {
        grams->min = ratio_multiply(line->amount.min, unit->factor);
        grams->max = ratio_multiply(line->amount.max, unit->factor);
        *source = unit->source;
        return true;
    }
    bool counted = unit->dimension == DIMENSION_COUNT && ratio_finite(unit->factor);
    struct measured one = weigh_one(q->k, q->a, q->profile, line,
                                    counted ? unit_find(&q->k->units, TEXT_EMPTY) : unit);
    if (!one.known)
        return problem(q->problems, INPUT_PLACE, "%.*s", TEXT(one.why_not));
    struct ratio pieces = counted ? unit->factor : RATIO(1);
    grams->min = ratio_multiply(ratio_multiply(line->amount.min, pieces), one.min);
    grams->max = ratio_multiply(ratio_multiply(line->amount.max, pieces), one.max);
    *source = one.source;
    return true;
}

/* By the food's own weight: to grams, and from there to the other unit. */
static bool calculate_food(const struct asked *q, const struct ingredient *line,
                           const struct unit *from, const struct unit *to, struct calculation *out)
{
    struct amount result;
    if (!line->food.length)
        return problem(q->problems, INPUT_PLACE,
                       "\"%.*s\" in \"%.*s\" depends on the food; name it: \"2 cups flour\"",
                       TEXT(from->one), TEXT(to->one));
    if (!to_grams(q, line, from, &result, &out->source))
        return false;
    struct measured one = {.min = to->factor, .max = to->factor};
    if (to->dimension != DIMENSION_MASS) {
        one = weigh_one(q->k, q->a, q->profile, line, to);
        if (!one.known)
            return problem(q->problems, INPUT_PLACE, "%.*s", TEXT(one.why_not));
        out->source = one.source;
    }
    result.min = ratio_divide(result.min, one.max);
    result.max = ratio_divide(result.max, one.min);
    result.unit = to->name;
    if (!ratio_finite(result.min) || !ratio_finite(result.max))
        return too_large(q);
    set_result(q, &result, true, out);
    return true;
}

static bool calculate_units(const struct asked *q, const struct ingredient *line,
                            const struct unit *from, const struct unit *to, struct calculation *out)
{
    const struct unit *from_here = unit_meant(from, q->profile),
                      *to_here = unit_meant(to, q->profile);
    bool direct = from_here->dimension == to_here->dimension && ratio_finite(from_here->factor)
                  && ratio_finite(to_here->factor);
    struct amount result;
    if (!direct)
        return calculate_food(q, line, from, to, out);
    if (!convert_amount(&line->amount, from_here, to_here, &result))
        return too_large(q);
    result.unit = to->name;
    out->source = text_equal(from_here->source, to_here->source) || !from_here->source.length
                      ? to_here->source
                      : PHRASE_TEXT(q->k, q->a, list_next, from_here->source, to_here->source);
    set_result(q, &result, false, out);
    return true;
}

static bool unknown_unit(struct problems *p, struct text to)
{
    return problem(
        p, INPUT_PLACE,
        "the unit \"%.*s\" is not known; write one as in \"gram\", \"cup\", \"milliliter\", \"F\"",
        TEXT(to));
}

static bool calculate_amount(const struct asked *q, struct amount amount, struct text rest,
                             struct text to, struct calculation *out)
{
    const struct kitchen *k = q->k;
    const struct unit *from = take_unit(k, &rest),
                      *target = to.length ? unit_read(&k->units, to) : NULL;
    struct ingredient line = {.amount = amount, .food = take_of(k, rest)};
    if (!from)
        from = unit_find(&k->units, TEXT_EMPTY);
    line.amount.unit = text_is(from->name, "each") ? TEXT_EMPTY : from->name;
    out->said = print_amount(k, q->a, &line.amount, WORDS_WHOLE);
    if (line.food.length)
        out->said = PHRASE_TEXT(k, q->a, amount_of, out->said, line.food);
    if (target)
        return calculate_units(q, &line, from, target, out);
    if (to.length)
        return unknown_unit(q->problems, to);
    out->result = print_measurable(k, q->a, q->profile, &line.amount, &out->rounding);
    return true;
}

/* "2 c" may be cups: a scale is meant where nothing else can be, or where the answer is wanted in
 * one. */
static bool is_heat(const struct kitchen *k, struct heat_scale from, struct text words,
                    struct heat_scale into)
{
    return from.scale && (into.scale || !take_unit(k, &words));
}

bool calculate(const struct asked *q, struct text input, struct text to, struct calculation *out)
{
    struct amount amount = {.known = false};
    struct text rest = input;
    struct calculation made = {.source = TEXT_EMPTY, .rounding = TEXT_EMPTY};
    to = text_trim(to);
    char first = heat_scale_first(q->k, input, &rest);
    if (!take_range(first ? rest : input, &rest, &amount, q->problems))
        return false;
    struct heat_scale from =
                          first ? (struct heat_scale){first, false} : heat_scale_read(q->k, rest),
                      into = heat_scale_read(q->k, to);
    bool heat = is_heat(q->k, from, rest, into);
    if (heat && to.length && !into.scale)
        return problem(q->problems, INPUT_PLACE,
                       "a temperature is measured in F, C or gas mark, not in \"%.*s\"", TEXT(to));
    struct heat_scale target = into.scale ? into : heat_scale_other(from);
    bool good = heat ? calculate_heat(q, &amount, from, target, &made)
                     : calculate_amount(q, amount, rest, to, &made);
    if (!good)
        return false;
    made.line = PHRASE_TEXT(q->k, q->a, equals, made.said, made.result);
    *out = made;
    return true;
}
