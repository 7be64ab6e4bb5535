/* write/review_answers.c: what the cook answered and changed: findings, edits, edited fields.
 * SPDX-License-Identifier: MIT */
#include "write/review.h"

void review_put_words(struct page *g, struct span words)
{
    json_key_words(&g->j, "words", words.last < g->r->words.count ? words : NO_WORDS);
}

static bool is_about(const struct edit_outcome *o, enum edit_target target, size_t id)
{
    switch (target) {
    case TARGET_DISH:
        return o->id == EDIT_NOWHERE && o->dish == id;
    default:
        return o->id == id;
    }
}

void review_put_edited(struct page *g, enum edit_kind set, enum edit_target target, size_t id)
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
        if (g->r->words.at[i].rare->heard_as)
            w = &g->r->words.at[i];
    json_key(&g->j, "read_as");
    json_open(&g->j, '[');
    if (w)
        json_put_text(&g->j, entry_words(w->rare->heard_as));
    if (w && w->rare->heard_or)
        json_put_text(&g->j, entry_words(w->rare->heard_or));
    json_close(&g->j, ']');
}

void review_put_finding(struct page *g, const struct finding *f)
{
    const struct ingredient *line = finding_line(g->r, f);
    const struct step *step = finding_step(g->r, f);
    json_open(&g->j, '{');
    json_key_text(&g->j, "kind", f->kind);
    json_key_string(&g->j, "level", level_name(f->level));
    if (f->dish < g->r->dishes.count)
        json_key_id(&g->j, "dish", ID_DISH, g->r->dishes.at[f->dish].id);
    if (line)
        json_key_id(&g->j, "line", ID_INGREDIENT, line->id);
    if (step)
        json_key_id(&g->j, "step", ID_STEP, step->id);
    json_key_seconds(&g->j, "at", f->at);
    review_put_words(g, f->words);
    put_readings(g, f->words);
    json_key_text(&g->j, "about", f->about);
    json_key_text(&g->j, "said", f->said);
    json_key_text(&g->j, "why", f->why);
    json_key_text(&g->j, "suggest", f->suggest);
    json_key_text(&g->j, "source", f->source);
    json_key_string(&g->j, "answer", answer_of(f));
    json_key_text(&g->j, "reason", f->reason);
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
    json_key_whole(&g->j, "number", i + 1);
    json_key_string(&g->j, "kind", json_string_value(json_object_get(e->json, "kind")));
    json_key_string(&g->j, "field", json_string_value(json_object_get(e->json, "field")));
    json_key_string(&g->j, "said",
                    json_string_value(json_object_get(json_object_get(e->json, "on"), "said")));
    const json_t *value = json_object_get(e->json, "value");
    json_key_string(&g->j, "value", json_string_value(value));
    json_key_string(&g->j, "state", fate(e, o));
    json_key_string(&g->j, "why", o->why);
    if (o->dish != EDIT_NOWHERE)
        json_key_id(&g->j, "dish", ID_DISH, o->dish);
    if (e->kind == EDIT_UNDO || e->kind == EDIT_REDO)
        json_key_whole(&g->j, "of", (size_t) json_integer_value(json_object_get(e->json, "of")));
    json_close(&g->j, '}');
}

void review_put_edits(struct page *g)
{
    const struct edits *e = g->r->edited ? g->r->edited->edits : NULL;
    json_key_whole(&g->j, "undo", edits_undoable(e));
    json_key_whole(&g->j, "redo", edits_redoable(e));
    json_key(&g->j, "edits");
    json_open(&g->j, '[');
    for (size_t i = 0; e && i < e->count; i++)
        put_edit(g, i);
    json_close(&g->j, ']');
}
