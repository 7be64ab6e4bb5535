/* write/review.c: the recipes as the review page shows them, with where each value came from, each
 * on a line of its own, so that review/delta.c can tell which ones changed.
 * SPDX-License-Identifier: MIT */
#include "write/review.h"

#include "kitchen/print.h"
#include "write/ingredient_line.h"

/* As it is typed: "1 1/2"; null for "and upwards". */
static void put_ratio(struct page *g, const char *key, struct ratio n)
{
    json_key(&g->j, key);
    if (!ratio_finite(n)) {
        json_put_null(&g->j);
        return;
    }
    long long whole = n.over / n.under, rest = n.over % n.under;
    struct text t;
    if (!rest)
        t = arena_format(g->w->scratch, "%lld", whole);
    else if (whole)
        t = arena_format(g->w->scratch, "%lld %lld/%lld", whole, rest, (long long) n.under);
    else
        t = arena_format(g->w->scratch, "%lld/%lld", rest, (long long) n.under);
    json_put_text(&g->j, t);
}

static void put_amount(struct page *g, const char *key, const struct amount *a)
{
    json_key(&g->j, key);
    if (!a->known) {
        json_put_null(&g->j);
        return;
    }
    json_open(&g->j, '{');
    put_ratio(g, "min", a->min);
    put_ratio(g, "max", a->max);
    json_key_text(&g->j, "unit", a->unit);
    json_key_bool(&g->j, "approx", a->approx);
    json_close(&g->j, '}');
}

/* Where a line's amount comes from. */
static const char *amount_from(const struct ingredient *in)
{
    if (in->vague)
        return "vague";
    if (in->no_unit)
        return "no-unit";
    if (in->amount.known)
        return "said";
    return in->to_taste ? "to-taste" : "not-heard";
}

static void put_weight(struct page *g, const struct weight *weight)
{
    json_key(&g->j, "weight");
    if (!weight->known) {
        json_put_null(&g->j);
        return;
    }
    json_open(&g->j, '{');
    json_key_number(&g->j, "min", weight->min);
    json_key_number(&g->j, "max", weight->max);
    json_key_text(&g->j, "source", weight->source);
    json_close(&g->j, '}');
}

static void put_line(struct page *g, const struct ingredient *in)
{
    json_open(&g->j, '{');
    json_key_id(&g->j, "id", ID_INGREDIENT, in->id);
    json_key_seconds(&g->j, "at", in->at);
    review_put_words(g, in->words);
    json_key_text(&g->j, "said", in->id > EDIT_ADDED_ID ? TEXT_EMPTY : in->said);
    json_key_text(&g->j, "printed", ingredient_line(g->w, in, NULL));
    json_key_text(&g->j, "food", in->food);
    put_amount(g, "amount", &in->amount);
    json_key_text(
        &g->j, "amount_text",
        print_packed(g->w->kitchen, g->w->scratch, &in->amount, &in->package, WORDS_WHOLE));
    json_key_string(&g->j, "amount_from", amount_from(in));
    put_amount(g, "package", &in->package);
    json_key_text(&g->j, "size", in->size);
    json_key_texts(&g->j, "prep", &in->prep);
    json_key_texts(&g->j, "state", &in->state);
    json_key_texts(&g->j, "alternatives", &in->alternatives);
    json_key_bool(&g->j, "to_taste", in->to_taste);
    json_key_bool(&g->j, "optional", in->optional);
    json_key_text(&g->j, "group", in->group);
    json_key_string(&g->j, "role", role_name(in->role));
    json_key_text(&g->j, "rule", in->rule);
    put_weight(g, &in->weight);
    review_put_edited(g, EDIT_line_set, TARGET_LINE, in->id);
    json_close(&g->j, '}');
}

static void put_temperature(struct page *g, const struct temperature *t)
{
    json_open(&g->j, '{');
    put_ratio(g, "value", t->value);
    json_key_text(&g->j, "unit", (struct text){&t->unit, 1});
    json_key_bool(&g->j, "fan", t->fan);
    json_key_text(&g->j, "of", t->of);
    json_key_seconds(&g->j, "at", t->at);
    json_close(&g->j, '}');
}

static void put_duration(struct page *g, const struct duration *d)
{
    json_open(&g->j, '{');
    json_key_seconds(&g->j, "min", d->min);
    json_key_seconds(&g->j, "max", d->max);
    json_key_bool(&g->j, "approx", d->approx);
    json_key_text(&g->j, "of", d->of);
    json_key_text(&g->j, "each", d->each);
    json_key_text(&g->j, "text",
                  print_time(g->w->kitchen, g->w->scratch, d->min, d->max, WORDS_WHOLE));
    json_key_seconds(&g->j, "at", d->at);
    json_close(&g->j, '}');
}

static void put_step(struct page *g, const struct step *s)
{
    json_open(&g->j, '{');
    json_key_id(&g->j, "id", ID_STEP, s->id);
    json_key_seconds(&g->j, "start", s->start);
    json_key_seconds(&g->j, "end", s->end);
    review_put_words(g, s->words);
    json_key_text(&g->j, "text", s->text);
    json_key_text(&g->j, "until", s->until);
    json_key_text(&g->j, "vessel", s->vessel);
    json_key_text(&g->j, "heat", s->heat);
    json_key_text(&g->j, "group", s->group);
    json_key_bool(&g->j, "beside", s->beside);
    JSON_LIST(&g->j, "temperatures", &s->temperatures, put_temperature, g);
    JSON_LIST(&g->j, "durations", &s->durations, put_duration, g);
    review_put_edited(g, EDIT_step_set, TARGET_STEP, s->id);
    json_close(&g->j, '}');
}

static void put_time(struct page *g, const char *key, const struct time_sum *t)
{
    json_key(&g->j, key);
    if (!t->known) {
        json_put_null(&g->j);
        return;
    }
    json_open(&g->j, '{');
    json_key_text(&g->j, "text", print_sum_of_times(g->w->kitchen, g->w->scratch, t));
    json_key_text(&g->j, "from", t->from);
    json_close(&g->j, '}');
}

static void put_yield(struct page *g, const struct yield *y)
{
    json_key(&g->j, "yield");
    if (!y->known) {
        json_put_null(&g->j);
        return;
    }
    json_open(&g->j, '{');
    put_ratio(g, "min", y->min);
    put_ratio(g, "max", y->max);
    json_key_text(&g->j, "of", y->of);
    review_put_words(g, y->words);
    json_close(&g->j, '}');
}

static void put_span(struct page *g, const struct span *s)
{
    json_open(&g->j, '{');
    review_put_words(g, *s);
    json_key_seconds(&g->j, "start", g->r->words.at[s->first].start);
    json_key_seconds(&g->j, "end", g->r->words.at[s->last].end);
    json_close(&g->j, '}');
}

static void put_allergen(struct page *g, const struct allergen *a)
{
    json_open(&g->j, '{');
    json_key_text(&g->j, "name", a->name);
    json_key_bool(&g->j, "check_label", a->check_label);
    json_close(&g->j, '}');
}

static void put_caution(struct page *g, const struct caution *c)
{
    json_open(&g->j, '{');
    json_key_text(&g->j, "text", c->text);
    json_key_text(&g->j, "source", c->source);
    json_close(&g->j, '}');
}

static void put_dish(struct page *g, const struct dish *d)
{
    json_open(&g->j, '{');
    json_key_id(&g->j, "id", ID_DISH, d->id);
    json_key_text(&g->j, "title", d->title);
    json_key_bool(&g->j, "title_said", d->title_said);
    json_key_bool(&g->j, "approved", d->approved);
    review_put_words(g, d->words);
    json_key_seconds(&g->j, "start", d->start);
    json_key_seconds(&g->j, "end", d->end);
    JSON_LIST(&g->j, "spans", &d->spans, put_span, g);
    put_yield(g, &d->yield);
    JSON_LIST(&g->j, "lines", &d->ingredients, put_line, g);
    JSON_LIST(&g->j, "steps", &d->steps, put_step, g);
    put_time(g, "active", &d->active);
    put_time(g, "cook", &d->cook);
    put_time(g, "rest", &d->rest);
    put_time(g, "total", &d->total);
    JSON_LIST(&g->j, "allergens", &d->allergens, put_allergen, g);
    JSON_LIST(&g->j, "cautions", &d->cautions, put_caution, g);
    review_put_edited(g, EDIT_dish_set, TARGET_DISH, d->id);
    json_close(&g->j, '}');
}

bool write_review_recipes(const struct recording *r, const struct writing *w, struct buffer *out,
                          struct problems *p)
{
    (void) p;
    struct page g = {.j = {.out = out, .spread = 2}, .r = r, .w = w};
    json_open(&g.j, '{');
    json_key_text(&g.j, "file", text_from(r->file));
    json_key_seconds(&g.j, "length", r->length);
    review_put_edits(&g);
    JSON_LIST(&g.j, "dishes", &r->dishes, put_dish, &g);
    JSON_LIST(&g.j, "findings", &r->findings, review_put_finding, &g);
    json_close(&g.j, '}');
    return true;
}
