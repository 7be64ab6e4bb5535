/* write/review.c: the recording as the review page shows it: recipes with where each value came
 * from, findings with the cook's answers, edits, each on a line of its own, so that review/delta.c
 * can tell which ones changed; and, apart, the captions word by word.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "edits/edits.h"
#include "kitchen/print.h"
#include "write/ingredient_line.h"
#include "write/json_print.h"
#include "write/write.h"

struct page {
    struct json j;
    const struct recording *r;
    const struct writing *w;
};

static void put_id(struct page *g, const char *key, char kind, size_t id)
{
    json_key(&g->j, key);
    struct text name = arena_format(g->w->scratch, "%c%zu", kind, id);
    json_put_text(&g->j, name);
}

static void put_text(struct page *g, const char *key, struct text t)
{
    json_key(&g->j, key);
    json_put_text(&g->j, t);
}

static void put_name(struct page *g, const char *key, const char *name)
{
    json_key(&g->j, key);
    json_put_string(&g->j, name);
}

static void put_flag(struct page *g, const char *key, bool value)
{
    json_key(&g->j, key);
    json_put_bool(&g->j, value);
}

static void put_seconds(struct page *g, const char *key, double value)
{
    json_key(&g->j, key);
    json_put_seconds(&g->j, value);
}

static void put_count(struct page *g, const char *key, size_t value)
{
    json_key(&g->j, key);
    json_put_whole(&g->j, value);
}

static void put_words(struct page *g, struct span words)
{
    json_key(&g->j, "words");
    if (words.first > words.last || words.last >= g->r->words.count) {
        json_put_null(&g->j);
        return;
    }
    json_open(&g->j, '[');
    json_put_whole(&g->j, words.first);
    json_put_whole(&g->j, words.last);
    json_close(&g->j, ']');
}

static void put_texts(struct page *g, const char *key, const text_list *list)
{
    json_key(&g->j, key);
    json_open(&g->j, '[');
    for (size_t i = 0; i < list->count; i++)
        json_put_text(&g->j, list->at[i]);
    json_close(&g->j, ']');
}

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
    put_text(g, "unit", a->unit);
    put_flag(g, "approx", a->approx);
    json_close(&g->j, '}');
}

/* ---- what the cook changed */

static bool is_about(const struct edit_outcome *o, enum edit_target target, size_t id)
{
    switch (target) {
    case TARGET_DISH:
        return o->id == EDIT_NOWHERE && o->dish == id;
    default:
        return o->id == id;
    }
}

/* The fields that the cook gave this dish, line or step; "new" for one that was added whole. */
static void put_edited(struct page *g, enum edit_kind set, enum edit_target target, size_t id)
{
    const struct edit_run *run = g->r->edited;
    json_key(&g->j, "edited");
    json_open(&g->j, '[');
    for (size_t i = 0; run && i < run->edits->count; i++) {
        const struct edit *e = &run->edits->at[i];
        if (e->kind == set && !e->undone && run->at[i].placed && is_about(&run->at[i], target, id))
            json_put_string(&g->j, json_string_value(json_object_get(e->json, "field")));
    }
    if (id > EDIT_ADDED_ID)
        json_put_string(&g->j, "new");
    json_close(&g->j, ']');
}

/* ---- a dish */

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
    json_key(&g->j, "min");
    json_put_number(&g->j, weight->min);
    json_key(&g->j, "max");
    json_put_number(&g->j, weight->max);
    put_text(g, "source", weight->source);
    json_close(&g->j, '}');
}

static void put_line(struct page *g, const struct ingredient *in)
{
    static const char *const ROLES[] = {"ingredient", "garnish", "serve-with"};
    json_open(&g->j, '{');
    put_id(g, "id", ID_INGREDIENT, in->id);
    put_seconds(g, "at", in->at);
    put_words(g, in->words);
    put_text(g, "said", in->id > EDIT_ADDED_ID ? TEXT_EMPTY : in->said);
    put_text(g, "printed", ingredient_line(g->w, in, NULL));
    put_text(g, "food", in->food);
    put_amount(g, "amount", &in->amount);
    put_text(g, "amount_text",
             print_packed(g->w->kitchen, g->w->scratch, &in->amount, &in->package, WORDS_WHOLE));
    put_name(g, "amount_from", amount_from(in));
    put_amount(g, "package", &in->package);
    put_text(g, "size", in->size);
    put_texts(g, "prep", &in->prep);
    put_texts(g, "state", &in->state);
    put_texts(g, "alternatives", &in->alternatives);
    put_flag(g, "to_taste", in->to_taste);
    put_flag(g, "optional", in->optional);
    put_text(g, "group", in->group);
    put_name(g, "role", ROLES[in->role]);
    put_text(g, "rule", in->rule);
    put_weight(g, &in->weight);
    put_edited(g, EDIT_line_set, TARGET_LINE, in->id);
    json_close(&g->j, '}');
}

static void put_temperature(struct page *g, const struct temperature *t)
{
    json_open(&g->j, '{');
    put_ratio(g, "value", t->value);
    put_text(g, "unit", (struct text){&t->unit, 1});
    put_flag(g, "fan", t->fan);
    put_text(g, "of", t->of);
    put_seconds(g, "at", t->at);
    json_close(&g->j, '}');
}

static void put_duration(struct page *g, const struct duration *d)
{
    json_open(&g->j, '{');
    put_seconds(g, "min", d->min);
    put_seconds(g, "max", d->max);
    put_flag(g, "approx", d->approx);
    put_text(g, "of", d->of);
    put_text(g, "each", d->each);
    put_text(g, "text", print_time(g->w->kitchen, g->w->scratch, d->min, d->max, WORDS_WHOLE));
    put_seconds(g, "at", d->at);
    json_close(&g->j, '}');
}

static void put_step(struct page *g, const struct step *s)
{
    json_open(&g->j, '{');
    put_id(g, "id", ID_STEP, s->id);
    put_seconds(g, "start", s->start);
    put_seconds(g, "end", s->end);
    put_words(g, s->words);
    put_text(g, "text", s->text);
    put_text(g, "until", s->until);
    put_text(g, "vessel", s->vessel);
    put_text(g, "heat", s->heat);
    put_text(g, "group", s->group);
    put_flag(g, "beside", s->beside);
    JSON_LIST(&g->j, "temperatures", &s->temperatures, put_temperature, g);
    JSON_LIST(&g->j, "durations", &s->durations, put_duration, g);
    put_edited(g, EDIT_step_set, TARGET_STEP, s->id);
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
    put_text(g, "text", print_time(g->w->kitchen, g->w->scratch, t->min, t->max, WORDS_WHOLE));
    put_text(g, "from", t->from);
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
    put_text(g, "of", y->of);
    put_words(g, y->words);
    json_close(&g->j, '}');
}

static void put_spans(struct page *g, const struct dish *d)
{
    json_key(&g->j, "spans");
    json_open(&g->j, '[');
    for (size_t i = 0; i < d->spans.count; i++) {
        struct span s = d->spans.at[i];
        json_open(&g->j, '{');
        put_words(g, s);
        put_seconds(g, "start", g->r->words.at[s.first].start);
        put_seconds(g, "end", g->r->words.at[s.last].end);
        json_close(&g->j, '}');
    }
    json_close(&g->j, ']');
}

static void put_allergens(struct page *g, const struct dish *d)
{
    json_key(&g->j, "allergens");
    json_open(&g->j, '[');
    for (size_t i = 0; i < d->allergens.count; i++) {
        json_open(&g->j, '{');
        put_text(g, "name", d->allergens.at[i].name);
        put_flag(g, "check_label", d->allergens.at[i].check_label);
        json_close(&g->j, '}');
    }
    json_close(&g->j, ']');
}

static void put_cautions(struct page *g, const struct dish *d)
{
    json_key(&g->j, "cautions");
    json_open(&g->j, '[');
    for (size_t i = 0; i < d->cautions.count; i++) {
        json_open(&g->j, '{');
        put_text(g, "text", d->cautions.at[i].text);
        put_text(g, "source", d->cautions.at[i].source);
        json_close(&g->j, '}');
    }
    json_close(&g->j, ']');
}

static void put_dish(struct page *g, const struct dish *d)
{
    json_open(&g->j, '{');
    put_id(g, "id", ID_DISH, d->id);
    put_text(g, "title", d->title);
    put_flag(g, "title_said", d->title_said);
    put_flag(g, "approved", d->approved);
    put_words(g, d->words);
    put_seconds(g, "start", d->start);
    put_seconds(g, "end", d->end);
    put_spans(g, d);
    put_yield(g, &d->yield);
    JSON_LIST(&g->j, "lines", &d->ingredients, put_line, g);
    JSON_LIST(&g->j, "steps", &d->steps, put_step, g);
    put_time(g, "active", &d->active);
    put_time(g, "cook", &d->cook);
    put_time(g, "rest", &d->rest);
    put_time(g, "total", &d->total);
    put_allergens(g, d);
    put_cautions(g, d);
    put_edited(g, EDIT_dish_set, TARGET_DISH, d->id);
    json_close(&g->j, '}');
}

/* ---- findings, edits */

static const char *answer_of(const struct finding *f)
{
    if (!f->dismissed)
        return "open";
    return f->accepted ? "accepted" : "dismissed";
}

/* The line and the step that a finding is about, for the page to lead there. */
static const struct ingredient *finding_line(const struct recording *r, const struct finding *f)
{
    const struct dish *d = f->dish < r->dishes.count ? &r->dishes.at[f->dish] : NULL;
    for (size_t i = 0; d && i < d->ingredients.count; i++) {
        const struct ingredient *in = &d->ingredients.at[i];
        if (f->words.first <= in->words.last && in->words.first <= f->words.last)
            return in;
    }
    return NULL;
}

static const struct step *finding_step(const struct recording *r, const struct finding *f)
{
    const struct dish *d = f->dish < r->dishes.count ? &r->dishes.at[f->dish] : NULL;
    for (size_t i = 0; d && i < d->steps.count; i++) {
        const struct step *s = &d->steps.at[i];
        if (f->words.first <= s->words.last && s->words.first <= f->words.last)
            return s;
    }
    return NULL;
}

/* What the words were read as, where that is not what was captioned: one reading, or two as likely.
 */
static void put_readings(struct page *g, struct span words)
{
    const struct word *w = NULL;
    for (size_t i = words.first; i <= words.last && i < g->r->words.count && !w; i++)
        if (g->r->words.at[i].heard_as)
            w = &g->r->words.at[i];
    json_key(&g->j, "read_as");
    json_open(&g->j, '[');
    if (w)
        json_put_text(&g->j, entry_words(w->heard_as));
    if (w && w->heard_or)
        json_put_text(&g->j, entry_words(w->heard_or));
    json_close(&g->j, ']');
}

static void put_finding(struct page *g, const struct finding *f)
{
    const struct ingredient *line = finding_line(g->r, f);
    const struct step *step = finding_step(g->r, f);
    json_open(&g->j, '{');
    put_text(g, "kind", f->kind);
    put_name(g, "level", level_name(f->level));
    if (f->dish < g->r->dishes.count)
        put_id(g, "dish", ID_DISH, g->r->dishes.at[f->dish].id);
    if (line)
        put_id(g, "line", ID_INGREDIENT, line->id);
    if (step)
        put_id(g, "step", ID_STEP, step->id);
    put_seconds(g, "at", f->at);
    put_words(g, f->words);
    put_readings(g, f->words);
    put_text(g, "about", f->about);
    put_text(g, "said", f->said);
    put_text(g, "why", f->why);
    put_text(g, "suggest", f->suggest);
    put_text(g, "source", f->source);
    put_name(g, "answer", answer_of(f));
    put_text(g, "reason", f->reason);
    json_close(&g->j, '}');
}

static const char *fate(const struct edit *e, const struct edit_outcome *o)
{
    if (e->kind == EDIT_UNKNOWN)
        return "unknown";
    if (e->kind >= EDIT_UNDO || o->placed)
        return e->undone ? "undone" : "applied";
    return e->undone ? "undone" : "unplaced";
}

static void put_edit(struct page *g, size_t i)
{
    const struct edit *e = &g->r->edited->edits->at[i];
    const struct edit_outcome *o = &g->r->edited->at[i];
    json_open(&g->j, '{');
    put_count(g, "number", i + 1);
    put_name(g, "kind", json_string_value(json_object_get(e->json, "kind")));
    put_name(g, "field", json_string_value(json_object_get(e->json, "field")));
    put_name(g, "said", json_string_value(json_object_get(json_object_get(e->json, "on"), "said")));
    const json_t *value = json_object_get(e->json, "value");
    put_name(g, "value", json_string_value(value));
    put_name(g, "state", fate(e, o));
    put_name(g, "why", o->why);
    if (o->dish != EDIT_NOWHERE)
        put_id(g, "dish", ID_DISH, o->dish);
    if (e->kind == EDIT_UNDO || e->kind == EDIT_REDO)
        put_count(g, "of", (size_t) json_integer_value(json_object_get(e->json, "of")));
    json_close(&g->j, '}');
}

static void put_edits(struct page *g)
{
    const struct edits *e = g->r->edited ? g->r->edited->edits : NULL;
    put_count(g, "undo", edits_undoable(e));
    put_count(g, "redo", edits_redoable(e));
    json_key(&g->j, "edits");
    json_open(&g->j, '[');
    for (size_t i = 0; e && i < e->count; i++)
        put_edit(g, i);
    json_close(&g->j, ']');
}

bool write_review_recipes(const struct recording *r, const struct writing *w, struct buffer *out,
                          struct problems *p)
{
    (void) p;
    struct page g = {.j = {.out = out, .spread = 2}, .r = r, .w = w};
    json_open(&g.j, '{');
    put_text(&g, "file", text_from(r->file));
    put_seconds(&g, "length", r->length);
    put_edits(&g);
    JSON_LIST(&g.j, "dishes", &r->dishes, put_dish, &g);
    JSON_LIST(&g.j, "findings", &r->findings, put_finding, &g);
    json_close(&g.j, '}');
    return true;
}

/* ---- the captions: a list a cue, so that three hours stay small: [start, end, first word,
 * speaker, words ...]. A word that the cook corrected is a list: [as it is read, as it was
 * captioned]. What stands between two words comes with the first. */
static struct text with_gap(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    const struct text cue = r->cues.at[w->cue].text;
    bool last = i + 1 >= r->words.count || r->words.at[i + 1].cue != w->cue;
    const char *end = last ? cue.at + cue.length : r->words.at[i + 1].text.at;
    return (struct text){w->text.at, (size_t) (end - w->text.at)};
}

static bool is_corrected(const struct recording *r, size_t i)
{
    return r->edited && r->edited->captioned
           && !text_equal(r->edited->captioned[i], r->words.at[i].key);
}

static void put_word(struct page *g, size_t i)
{
    if (!is_corrected(g->r, i)) {
        json_put_text(&g->j, with_gap(g->r, i));
        return;
    }
    json_open(&g->j, '[');
    json_put_text(&g->j, with_gap(g->r, i));
    json_put_text(&g->j, g->r->edited->captioned[i]);
    json_close(&g->j, ']');
}

static void put_cue(struct page *g, size_t cue, size_t *word)
{
    const struct recording *r = g->r;
    size_t first = *word;
    json_open(&g->j, '[');
    json_put_seconds(&g->j, r->cues.at[cue].start);
    json_put_seconds(&g->j, r->words.at[first].start);
    json_put_whole(&g->j, first);
    json_put_text(&g->j, r->cues.at[cue].speaker);
    for (; *word < r->words.count && r->words.at[*word].cue == cue; (*word)++)
        put_word(g, *word);
    json_close(&g->j, ']');
}

bool write_review_words(const struct recording *r, const struct writing *w, struct buffer *out,
                        struct problems *p)
{
    (void) p;
    struct page g = {.j = {.out = out}, .r = r, .w = w};
    size_t word = 0;
    json_open(&g.j, '{');
    json_key(&g.j, "cues");
    json_open(&g.j, '[');
    while (word < r->words.count)
        put_cue(&g, r->words.at[word].cue, &word);
    json_close(&g.j, ']');
    json_key(&g.j, "sentences");
    json_open(&g.j, '[');
    for (size_t i = 0; i < r->sentences.count; i++)
        json_put_whole(&g.j, r->sentences.at[i].first);
    json_close(&g.j, ']');
    json_key(&g.j, "times");
    json_open(&g.j, '[');
    for (size_t i = 0; i < r->words.count; i++)
        json_put_seconds(&g.j, r->words.at[i].start);
    json_close(&g.j, ']');
    json_close(&g.j, '}');
    return true;
}
