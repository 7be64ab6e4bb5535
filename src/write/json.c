/* write/json.c: the recording as docs/schema/recipes.schema.json describes it.
 * SPDX-License-Identifier: MIT */
#include "write/json_print.h"
#include "write/write.h"

/* Recording, dishes, a dish, its lists: each has its values on lines of their own; a line item is
 * one line. */
#define SPREAD_DEPTH 4

static void put_id(struct json *j, char kind, size_t id)
{
    char name[1 + DIGITS_MOST] = {kind};
    json_put_text(j, (struct text){name, 1 + text_digits(id, name + 1)});
}

static void key_text(struct json *j, const char *key, struct text t)
{
    json_key(j, key);
    json_put_text(j, t);
}

static void key_text_or_null(struct json *j, const char *key, struct text t)
{
    json_key(j, key);
    json_put_text_or_null(j, t);
}

static void key_bool(struct json *j, const char *key, bool value)
{
    json_key(j, key);
    json_put_bool(j, value);
}

static void key_seconds(struct json *j, const char *key, double value)
{
    json_key(j, key);
    json_put_seconds(j, value);
}

static void key_span(struct json *j, const char *key, struct span words)
{
    json_key(j, key);
    if (words.first > words.last) {
        json_put_null(j);
        return;
    }
    unsigned spread = j->spread;
    j->spread = 0;
    json_open(j, '[');
    json_put_whole(j, words.first);
    json_put_whole(j, words.last);
    json_close(j, ']');
    j->spread = spread;
}

static void key_texts(struct json *j, const char *key, const text_list *list)
{
    json_key(j, key);
    json_open(j, '[');
    for (size_t i = 0; i < list->count; i++)
        json_put_text(j, list->at[i]);
    json_close(j, ']');
}

static void key_ids(struct json *j, const char *key, const id_list *list)
{
    json_key(j, key);
    json_open(j, '[');
    for (size_t i = 0; i < list->count; i++)
        put_id(j, ID_INGREDIENT, list->at[i]);
    json_close(j, ']');
}

static void key_range(struct json *j, struct ratio min, struct ratio max)
{
    json_key(j, "min");
    json_put_ratio(j, min);
    json_key(j, "max");
    json_put_ratio(j, max);
}

static void put_recording(struct json *j, const struct recording *r)
{
    static const char *const KINDS[] = {"unknown",     "subrip", "webvtt", "ttml",
                                        "timed-lines", "json",   "tsv"};
    json_open(j, '{');
    json_key(j, "file");
    json_put_string(j, r->file);
    json_key(j, "kind");
    json_put_string(j, KINDS[r->kind]);
    key_text_or_null(j, "language", r->language);
    json_key(j, "cues");
    json_put_whole(j, r->cues.count);
    json_key(j, "words");
    json_put_whole(j, r->words.count);
    key_seconds(j, "length", r->length);
    json_close(j, '}');
}

static void put_yield(struct json *j, const struct yield *y)
{
    if (!y->known) {
        json_put_null(j);
        return;
    }
    json_open(j, '{');
    key_range(j, y->min, y->max);
    key_text(j, "of", y->of);
    key_span(j, "from", y->words);
    json_close(j, '}');
}

static void key_amount(struct json *j, const struct amount *a)
{
    json_key(j, "amount");
    if (a->known) {
        json_open(j, '{');
        key_range(j, a->min, a->max);
        key_bool(j, "approx", a->approx);
        json_close(j, '}');
    } else {
        json_put_null(j);
    }
    json_key(j, "unit");
    if (a->known)
        json_put_text(j, a->unit);
    else
        json_put_null(j);
}

static void key_package(struct json *j, const struct amount *a)
{
    json_key(j, "package");
    if (!a->known) {
        json_put_null(j);
        return;
    }
    json_open(j, '{');
    key_range(j, a->min, a->max);
    key_text(j, "unit", a->unit);
    json_close(j, '}');
}

static void key_weight(struct json *j, const struct weight *w)
{
    json_key(j, "weight_g");
    if (!w->known) {
        json_put_null(j);
        return;
    }
    json_open(j, '{');
    json_key(j, "min");
    json_put_number(j, w->min);
    json_key(j, "max");
    json_put_number(j, w->max);
    key_text(j, "source", w->source);
    json_close(j, '}');
}

static void put_ingredient(struct json *j, const struct ingredient *in)
{
    static const char *const ROLES[] = {"ingredient", "garnish", "serve-with"};
    json_open(j, '{');
    json_key(j, "id");
    put_id(j, ID_INGREDIENT, in->id);
    key_seconds(j, "at", in->at);
    key_span(j, "words", in->words);
    key_text(j, "said", in->said);
    key_text(j, "food", in->food);
    key_amount(j, &in->amount);
    key_package(j, &in->package);
    key_text_or_null(j, "size", in->size);
    key_texts(j, "prep", &in->prep);
    key_texts(j, "state", &in->state);
    key_bool(j, "to_taste", in->to_taste);
    key_bool(j, "optional", in->optional);
    key_text_or_null(j, "group", in->group);
    json_key(j, "role");
    json_put_string(j, ROLES[in->role]);
    key_texts(j, "alternatives", &in->alternatives);
    key_text_or_null(j, "rule", in->rule);
    key_weight(j, &in->weight);
    json_close(j, '}');
}

static void put_shopping_line(struct json *j, const struct shopping_line *s)
{
    json_open(j, '{');
    key_text(j, "food", s->food);
    key_ids(j, "lines", &s->lines);
    key_amount(j, &s->amount);
    key_package(j, &s->package);
    key_bool(j, "divided", s->divided);
    key_bool(j, "plus_more", s->plus_more);
    json_close(j, '}');
}

static void put_temperature(struct json *j, const struct temperature *t)
{
    json_open(j, '{');
    json_key(j, "value");
    json_put_ratio(j, t->value);
    json_key(j, "unit");
    json_put_text(j, t->unit == 'G' ? TEXT_OF("gas mark") : (struct text){&t->unit, 1});
    key_bool(j, "fan", t->fan);
    key_text_or_null(j, "of", t->of);
    key_seconds(j, "at", t->at);
    json_close(j, '}');
}

static void put_duration(struct json *j, const struct duration *d)
{
    json_open(j, '{');
    key_seconds(j, "min", d->min);
    key_seconds(j, "max", d->max);
    key_bool(j, "approx", d->approx);
    key_text_or_null(j, "of", d->of);
    key_text_or_null(j, "each", d->each);
    key_seconds(j, "at", d->at);
    json_close(j, '}');
}

static void put_step(struct json *j, const struct step *s)
{
    json_open(j, '{');
    json_key(j, "id");
    put_id(j, ID_STEP, s->id);
    key_seconds(j, "start", s->start);
    key_seconds(j, "end", s->end);
    key_span(j, "words", s->words);
    key_text(j, "text", s->text);
    key_texts(j, "actions", &s->actions);
    key_ids(j, "uses", &s->uses);
    JSON_LIST(j, "temperatures", &s->temperatures, put_temperature, j);
    JSON_LIST(j, "durations", &s->durations, put_duration, j);
    key_text_or_null(j, "until", s->until);
    key_text_or_null(j, "vessel", s->vessel);
    key_text_or_null(j, "heat", s->heat);
    key_text_or_null(j, "group", s->group);
    json_close(j, '}');
}

static void key_time(struct json *j, const char *key, const struct time_sum *t)
{
    json_key(j, key);
    if (!t->known) {
        json_put_null(j);
        return;
    }
    json_open(j, '{');
    key_seconds(j, "min", t->min);
    key_seconds(j, "max", t->max);
    key_text(j, "from", t->from);
    json_close(j, '}');
}

static void put_times(struct json *j, const struct dish *d)
{
    json_open(j, '{');
    key_time(j, "active", &d->active);
    key_time(j, "cook", &d->cook);
    key_time(j, "rest", &d->rest);
    key_time(j, "total", &d->total);
    json_close(j, '}');
}

static void put_allergen(struct json *j, const struct allergen *a)
{
    json_open(j, '{');
    key_text(j, "name", a->name);
    key_text(j, "law", a->law);
    key_bool(j, "check_label", a->check_label);
    key_ids(j, "because", &a->because);
    json_close(j, '}');
}

static void put_caution(struct json *j, const struct caution *c)
{
    json_open(j, '{');
    key_text(j, "text", c->text);
    key_text(j, "source", c->source);
    key_text_or_null(j, "rule", c->rule);
    key_ids(j, "because", &c->because);
    json_close(j, '}');
}

/* The stretches' times come from their words. */
static void put_spans(struct json *j, const struct recording *r, const struct dish *d)
{
    json_open(j, '[');
    for (size_t i = 0; i < d->spans.count; i++) {
        struct span s = d->spans.at[i];
        if (s.first > s.last || s.last >= r->words.count)
            continue;
        json_open(j, '{');
        key_seconds(j, "start", r->words.at[s.first].start);
        key_seconds(j, "end", r->words.at[s.last].end);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void put_dish(struct json *j, const struct recording *r, const struct dish *d)
{
    json_open(j, '{');
    json_key(j, "id");
    put_id(j, ID_DISH, d->id);
    key_text(j, "title", d->title);
    json_key(j, "title_from");
    json_put_string(j, d->title_said ? "said" : "made");
    key_span(j, "words", d->words);
    key_seconds(j, "start", d->start);
    key_seconds(j, "end", d->end);
    json_key(j, "spans");
    put_spans(j, r, d);
    json_key(j, "yield");
    put_yield(j, &d->yield);
    JSON_LIST(j, "ingredients", &d->ingredients, put_ingredient, j);
    JSON_LIST(j, "shopping_lines", &d->shopping, put_shopping_line, j);
    JSON_LIST(j, "steps", &d->steps, put_step, j);
    json_key(j, "times");
    put_times(j, d);
    JSON_LIST(j, "allergens", &d->allergens, put_allergen, j);
    JSON_LIST(j, "cautions", &d->cautions, put_caution, j);
    json_close(j, '}');
}

static void put_finding(struct json *j, const struct recording *r, const struct finding *f)
{
    json_open(j, '{');
    key_text(j, "kind", f->kind);
    json_key(j, "level");
    json_put_string(j, level_name(f->level));
    json_key(j, "dish");
    if (f->dish < r->dishes.count)
        put_id(j, ID_DISH, r->dishes.at[f->dish].id);
    else
        json_put_null(j);
    key_seconds(j, "at", f->at);
    key_span(j, "words", f->words);
    key_text_or_null(j, "about", f->about);
    key_text_or_null(j, "said", f->said);
    key_text(j, "why", f->why);
    key_text_or_null(j, "suggest", f->suggest);
    key_text_or_null(j, "source", f->source);
    key_bool(j, "dismissed", f->dismissed);
    json_close(j, '}');
}

bool write_json(const struct recording *r, const struct writing *w, struct buffer *out,
                struct problems *p)
{
    (void) p;
    struct json j = {.out = out, .spread = w->one_line ? 0 : SPREAD_DEPTH};
    json_open(&j, '{');
    json_key(&j, "format");
    json_put_string(&j, "dishtake recipes 1");
    json_key(&j, "recording");
    put_recording(&j, r);
    json_key(&j, "dishes");
    json_open(&j, '[');
    for (size_t i = 0; i < r->dishes.count; i++)
        if (dish_wanted(w, i))
            put_dish(&j, r, &r->dishes.at[i]);
    json_close(&j, ']');
    json_key(&j, "findings");
    json_open(&j, '[');
    for (size_t i = 0; i < r->findings.count; i++)
        if (dish_wanted(w, r->findings.at[i].dish))
            put_finding(&j, r, &r->findings.at[i]);
    json_close(&j, ']');
    json_close(&j, '}');
    buffer_put_char(out, '\n');
    return true;
}
