/* kitchen/heat.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/heat.h"

#include "kitchen/convert.h"
#include "kitchen/measure.h"
#include "kitchen/print.h"

static char scale_read(const struct kitchen *k, struct text word)
{
    word = text_trim(word);
    if (text_has_part(k->phrases[PHRASE_scale_f], '|', word))
        return 'F';
    if (text_has_part(k->phrases[PHRASE_scale_c], '|', word))
        return 'C';
    return text_has_part(k->phrases[PHRASE_scale_g], '|', word) ? 'G' : 0;
}

/* The longest way to say "fan" stands first in the list. */
struct heat_scale heat_scale_read(const struct kitchen *k, struct text t)
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

bool calculate_heat(const struct asked *q, const struct amount *n, struct heat_scale from,
                    struct heat_scale to, struct calculation *out)
{
    const struct kitchen *k = q->k;
    struct arena *a = q->a;
    int step;
    if ((from.fan && from.scale == 'G') || (to.fan && to.scale == 'G'))
        return problem(q->problems, INPUT_PLACE, "a gas oven's mark is not one of a fan oven");
    struct ratio low = oven_degrees(k, n->min, from, to), high = oven_degrees(k, n->max, from, to);
    if (!ratio_finite(low) || !ratio_finite(high))
        return problem(q->problems, INPUT_PLACE,
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

struct heat_scale heat_scale_other(struct heat_scale from)
{
    char scale = from.fan ? from.scale : from.scale == 'C' ? 'F' : 'C';
    return (struct heat_scale){scale, false};
}

char heat_scale_first(const struct kitchen *k, struct text input, struct text *rest)
{
    input = text_trim(input);
    for (size_t i = input.length; i-- > 0;)
        if (input.at[i] == ' ') {
            *rest = text_slice(input, i + 1, input.length);
            return scale_read(k, text_slice(input, 0, i)) == 'G' ? 'G' : 0;
        }
    return 0;
}
