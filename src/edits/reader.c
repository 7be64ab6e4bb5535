/* edits/reader.c: JSON -> fields of the model. Each reader first looks whether the value is one.
 * SPDX-License-Identifier: MIT */
#include "edits/reader.h"

#include <math.h>
#include <string.h>

#include "base/json_text.h"
#include "edits/value.h"

/* Longer than any cooking (a month), in seconds; hotter than any oven. */
#define SECONDS_MOST (31.0 * 86400)
#define DEGREES_MOST 1500

bool json_is_text(const json_t *v)
{
    struct text t = json_text(v);
    if (!text_trim(t).length || t.length > VALUE_TEXT_MAX)
        return false;
    for (size_t i = 0; i < t.length; i++)
        if ((unsigned char) t.at[i] < 0x20 && t.at[i] != '\n')
            return false;
    return true;
}

bool value_text(const json_t *v, struct arena *a, void *out)
{
    if (!json_is_text(v))
        return false;
    if (out)
        *(struct text *) out = arena_text(a, text_trim(json_text(v)));
    return true;
}

bool value_text_or_none(const json_t *v, struct arena *a, void *out)
{
    if (!json_is_null(v))
        return value_text(v, a, out);
    if (out)
        *(struct text *) out = TEXT_EMPTY;
    return true;
}

bool value_texts(const json_t *v, struct arena *a, void *out)
{
    text_list list = {0};
    size_t count = json_array_size(v);
    if (!json_is_array(v) || count > VALUE_LIST_MAX)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!json_is_text(json_array_get(v, i)))
            return false;
    for (size_t i = 0; out && i < count; i++)
        value_text(json_array_get(v, i), a, LIST_ADD(a, &list));
    if (out)
        *(text_list *) out = list;
    return true;
}

bool value_bool(const json_t *v, struct arena *a, void *out)
{
    (void) a;
    if (!json_is_boolean(v))
        return false;
    if (out)
        *(bool *) out = json_is_true(v);
    return true;
}

static bool read_ratio(const json_t *v, struct ratio *n)
{
    struct text t = text_trim(json_text(v));
    *n = ratio_read(t.at, t.length);
    return ratio_finite(*n) && n->over > 0;
}

/* "min" and "max" are numbers as a cook writes them, "1 1/2"; "max" null is "and upwards". */
static bool read_range(const json_t *v, struct ratio *min, struct ratio *max)
{
    const json_t *top = json_object_get(v, "max");
    if (!read_ratio(json_object_get(v, "min"), min))
        return false;
    if (json_is_null(top))
        *max = RATIO_UPWARDS;
    else if (!read_ratio(top, max))
        return false;
    return ratio_compare(*min, *max) <= 0;
}

bool json_is_flag(const json_t *v)
{
    return !v || json_is_boolean(v);
}

bool json_is_name(const json_t *v)
{
    return !v || json_is_null(v) || json_is_text(v);
}

bool value_amount(const json_t *v, struct arena *a, void *out)
{
    struct amount n = {.known = !json_is_null(v)};
    const json_t *unit = json_object_get(v, "unit");
    bool plain = !unit || json_is_null(unit) || (json_is_string(unit) && !json_string_length(unit));
    if (n.known
        && (!read_range(v, &n.min, &n.max) || !json_is_flag(json_object_get(v, "approx"))
            || (!plain && !json_is_text(unit))))
        return false;
    if (!out)
        return true;
    n.approx = json_is_true(json_object_get(v, "approx"));
    n.unit = TEXT_EMPTY;
    if (!plain)
        value_text(unit, a, &n.unit);
    *(struct amount *) out = n;
    return true;
}

bool value_yield(const json_t *v, struct arena *a, void *out)
{
    struct yield y = {.known = !json_is_null(v), .words = {1, 0}};
    if (y.known && (!read_range(v, &y.min, &y.max) || !json_is_text(json_object_get(v, "of"))))
        return false;
    if (!out)
        return true;
    y.words = ((struct yield *) out)->words;
    y.of = TEXT_EMPTY;
    if (y.known)
        value_text(json_object_get(v, "of"), a, &y.of);
    *(struct yield *) out = y;
    return true;
}

bool value_role(const json_t *v, struct arena *a, void *out)
{
    enum role role;
    (void) a;
    if (!role_read(json_text(v), &role))
        return false;
    if (out)
        *(enum role *) out = role;
    return true;
}

static bool read_temperature(const json_t *v, struct temperature *t)
{
    struct text unit = json_text(json_object_get(v, "unit"));
    t->unit = unit.length == 1 ? unit.at[0] : 0;
    return read_ratio(json_object_get(v, "value"), &t->value)
           && ratio_double(t->value) <= DEGREES_MOST && t->unit && strchr("FCG", t->unit)
           && json_is_name(json_object_get(v, "of")) && json_is_flag(json_object_get(v, "fan"));
}

/* Where the step had one before, the new one is taken to be said at the same second. */
bool value_temperatures(const json_t *v, struct arena *a, void *out)
{
    struct step *s =
        out ? (struct step *) ((char *) out - offsetof(struct step, temperatures)) : NULL;
    struct temperature t = {0};
    size_t count = json_array_size(v), had = s ? s->temperatures.count : 0;
    struct temperature *old = s ? s->temperatures.at : NULL;
    if (!json_is_array(v) || count > VALUE_LIST_MAX)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!read_temperature(json_array_get(v, i), &t))
            return false;
    if (!s)
        return true;
    s->temperatures.at = NULL;
    s->temperatures.count = s->temperatures.room = 0;
    for (size_t i = 0; i < count; i++) {
        const json_t *one = json_array_get(v, i);
        read_temperature(one, &t);
        t.fan = json_is_true(json_object_get(one, "fan"));
        t.of = arena_text(a, text_trim(json_text(json_object_get(one, "of"))));
        t.at = i < had ? old[i].at : s->start;
        t.words = i < had ? old[i].words : s->words;
        *LIST_ADD(a, &s->temperatures) = t;
    }
    return true;
}

static bool read_seconds(const json_t *v, double *seconds)
{
    *seconds = json_number_value(v);
    return json_is_number(v) && *seconds > 0 && *seconds <= SECONDS_MOST;
}

static bool read_duration(const json_t *v, struct duration *d)
{
    const json_t *max = json_object_get(v, "max");
    if (!read_seconds(json_object_get(v, "min"), &d->min) || !json_is_name(json_object_get(v, "of"))
        || !json_is_name(json_object_get(v, "each")) || !json_is_flag(json_object_get(v, "approx")))
        return false;
    d->max = (double) INFINITY;
    return json_is_null(max) || (read_seconds(max, &d->max) && d->min <= d->max);
}

bool value_durations(const json_t *v, struct arena *a, void *out)
{
    struct step *s = out ? (struct step *) ((char *) out - offsetof(struct step, durations)) : NULL;
    struct duration d = {0};
    size_t count = json_array_size(v), had = s ? s->durations.count : 0;
    struct duration *old = s ? s->durations.at : NULL;
    if (!json_is_array(v) || count > VALUE_LIST_MAX)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!read_duration(json_array_get(v, i), &d))
            return false;
    if (!s)
        return true;
    s->durations.at = NULL;
    s->durations.count = s->durations.room = 0;
    for (size_t i = 0; i < count; i++) {
        const json_t *one = json_array_get(v, i);
        read_duration(one, &d);
        d.approx = json_is_true(json_object_get(one, "approx"));
        d.of = arena_text(a, text_trim(json_text(json_object_get(one, "of"))));
        d.each = arena_text(a, text_trim(json_text(json_object_get(one, "each"))));
        d.at = i < had ? old[i].at : s->start;
        d.words = i < had ? old[i].words : s->words;
        *LIST_ADD(a, &s->durations) = d;
    }
    return true;
}
