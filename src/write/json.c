/* write/json.c: the recording as docs/schema/recipes.schema.json describes it.
 * SPDX-License-Identifier: MIT */
#include "write/json_values.h"

/* Recording, dishes, a dish, its lists: each has its values on lines of their own; a line item is
 * one line. */
#define SPREAD_DEPTH 4

static void key_ids(struct json *j, const char *key, const id_list *list)
{
    json_key(j, key);
    json_open(j, '[');
    for (size_t i = 0; i < list->count; i++)
        json_put_id(j, ID_INGREDIENT, list->at[i]);
    json_close(j, ']');
}

static void key_range(struct json *j, struct ratio min, struct ratio max)
{
    json_key_ratio(j, "min", min);
    json_key_ratio(j, "max", max);
}

static void put_recording(struct json *j, const struct recording *r)
{
    static const char *const KINDS[] = {"unknown",     "subrip", "webvtt", "ttml",
                                        "timed-lines", "json",   "tsv"};
    json_open(j, '{');
    json_key_string(j, "file", r->file);
    json_key_string(j, "kind", KINDS[r->kind]);
    json_key_text_or_null(j, "language", r->language);
    json_key_whole(j, "cues", r->cues.count);
    json_key_whole(j, "words", r->words.count);
    json_key_seconds(j, "length", r->length);
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
    json_key_text(j, "of", y->of);
    json_key_words(j, "from", y->words);
    json_close(j, '}');
}

static void key_amount(struct json *j, const struct amount *a)
{
    json_key(j, "amount");
    if (a->known) {
        json_open(j, '{');
        key_range(j, a->min, a->max);
        json_key_bool(j, "approx", a->approx);
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
    json_key_text(j, "unit", a->unit);
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
    json_key_number(j, "min", w->min);
    json_key_number(j, "max", w->max);
    json_key_text(j, "source", w->source);
    json_close(j, '}');
}

static void put_ingredient(struct json *j, const struct ingredient *in)
{
    json_open(j, '{');
    json_key_id(j, "id", ID_INGREDIENT, in->id);
    json_key_seconds(j, "at", in->at);
    json_key_words(j, "words", in->words);
    json_key_text(j, "said", in->said);
    json_key_text(j, "food", in->food);
    key_amount(j, &in->amount);
    key_package(j, &in->package);
    json_key_text_or_null(j, "size", in->size);
    json_key_texts(j, "prep", &in->prep);
    json_key_texts(j, "state", &in->state);
    json_key_bool(j, "to_taste", in->to_taste);
    json_key_bool(j, "optional", in->optional);
    json_key_text_or_null(j, "group", in->group);
    json_key_string(j, "role", role_name(in->role));
    json_key_texts(j, "alternatives", &in->alternatives);
    json_key_text_or_null(j, "rule", in->rule);
    key_weight(j, &in->weight);
    json_close(j, '}');
}

static void put_shopping_line(struct json *j, const struct shopping_line *s)
{
    json_open(j, '{');
    json_key_text(j, "food", s->food);
    key_ids(j, "lines", &s->lines);
    key_amount(j, &s->amount);
    key_package(j, &s->package);
    json_key_bool(j, "divided", s->divided);
    json_key_bool(j, "plus_more", s->plus_more);
    json_close(j, '}');
}

static void put_temperature(struct json *j, const struct temperature *t)
{
    json_open(j, '{');
    json_key_ratio(j, "value", t->value);
    json_key_text(j, "unit", t->unit == 'G' ? TEXT_OF("gas mark") : (struct text){&t->unit, 1});
    json_key_bool(j, "fan", t->fan);
    json_key_text_or_null(j, "of", t->of);
    json_key_seconds(j, "at", t->at);
    json_close(j, '}');
}

static void put_duration(struct json *j, const struct duration *d)
{
    json_open(j, '{');
    json_key_seconds(j, "min", d->min);
    json_key_seconds(j, "max", d->max);
    json_key_bool(j, "approx", d->approx);
    json_key_text_or_null(j, "of", d->of);
    json_key_text_or_null(j, "each", d->each);
    json_key_seconds(j, "at", d->at);
    json_close(j, '}');
}

static void put_step(struct json *j, const struct step *s)
{
    json_open(j, '{');
    json_key_id(j, "id", ID_STEP, s->id);
    json_key_seconds(j, "start", s->start);
    json_key_seconds(j, "end", s->end);
    json_key_words(j, "words", s->words);
    json_key_text(j, "text", s->text);
    json_key_texts(j, "actions", &s->actions);
    key_ids(j, "uses", &s->uses);
    JSON_LIST(j, "temperatures", &s->temperatures, put_temperature, j);
    JSON_LIST(j, "durations", &s->durations, put_duration, j);
    json_key_text_or_null(j, "until", s->until);
    json_key_text_or_null(j, "vessel", s->vessel);
    json_key_text_or_null(j, "heat", s->heat);
    json_key_text_or_null(j, "group", s->group);
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
    json_key_seconds(j, "min", t->min);
    json_key_seconds(j, "max", t->max);
    json_key_text(j, "from", t->from);
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
    json_key_text(j, "name", a->name);
    json_key_text(j, "law", a->law);
    json_key_bool(j, "check_label", a->check_label);
    key_ids(j, "because", &a->because);
    json_close(j, '}');
}

static void put_caution(struct json *j, const struct caution *c)
{
    json_open(j, '{');
    json_key_text(j, "text", c->text);
    json_key_text(j, "source", c->source);
    json_key_text_or_null(j, "rule", c->rule);
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
        json_key_seconds(j, "start", r->words.at[s.first].start);
        json_key_seconds(j, "end", r->words.at[s.last].end);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void put_dish(struct json *j, const struct recording *r, const struct dish *d)
{
    json_open(j, '{');
    json_key_id(j, "id", ID_DISH, d->id);
    json_key_text(j, "title", d->title);
    json_key_string(j, "title_from", d->title_said ? "said" : "made");
    json_key_words(j, "words", d->words);
    json_key_seconds(j, "start", d->start);
    json_key_seconds(j, "end", d->end);
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
    json_finding_begins(j, r, f);
    json_key_words(j, "words", f->words);
    json_finding_words(j, f);
    json_close(j, '}');
}

bool write_json(const struct recording *r, const struct writing *w, struct buffer *out,
                struct problems *p)
{
    (void) p;
    struct json j = {.out = out, .spread = w->one_line ? 0 : SPREAD_DEPTH};
    json_open(&j, '{');
    json_key_string(&j, "format", "dishtake recipes 1");
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
