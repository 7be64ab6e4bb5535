/* edits/run.c: the edits of a stage, one after the other; and how their targets are found.
 * SPDX-License-Identifier: MIT */
#include "edits/run.h"

#include "edits/anchor.h"
#include "words/repeat.h"
#include "words/sentence.h"

static edit_apply *const APPLY[EDIT_KINDS] = {
#define EDIT(name, on, to, stage, about) apply_##name,
#include "edits/kinds.def"
#undef EDIT
};

bool no_place(struct change *c, const char *why)
{
    c->out->why = why;
    return false;
}

static void apply_one(struct recording *r, const struct edits *e, const struct pack *k, size_t i)
{
    struct change c = {r, k, i + 1, e->at[i].json, &r->edited->at[i]};
    bool wanted = json_is_object(json_object_get(c.json, "to"));
    c.out->placed = false;
    if (!c.out->on.placed
        || (wanted && edit_kind_to(e->at[i].kind) != TARGET_NOTHING && !c.out->to.placed))
        no_place(&c, "its words are not in this transcript");
    else if (APPLY[e->at[i].kind](&c))
        c.out->placed = true;
}

/* Applies all edits of a stage that are not undone. */
static void run_stage(struct recording *r, const struct edits *e, const struct pack *k,
                      enum edit_stage stage)
{
    for (size_t i = 0; i < e->count; i++)
        if (e->at[i].kind < EDIT_KINDS && !e->at[i].undone
            && edit_kind_stage(e->at[i].kind) == stage)
            apply_one(r, e, k, i);
}

/* ---- targets */

static bool has_word(const struct dish *d, size_t word)
{
    for (size_t i = 0; i < d->spans.count; i++)
        if (word >= d->spans.at[i].first && word <= d->spans.at[i].last)
            return true;
    return false;
}

struct dish *dish_with_word(const struct recording *r, size_t word)
{
    for (size_t i = 0; i < r->dishes.count; i++)
        if (has_word(&r->dishes.at[i], word))
            return &r->dishes.at[i];
    return NULL;
}

static size_t words_shared(const struct dish *d, size_t first, size_t end)
{
    size_t shared = 0;
    for (size_t i = 0; i < d->spans.count; i++) {
        size_t from = d->spans.at[i].first > first ? d->spans.at[i].first : first;
        size_t to = d->spans.at[i].last + 1 < end ? d->spans.at[i].last + 1 : end;
        shared += to > from ? to - from : 0;
    }
    return shared;
}

struct dish *spot_dish(const struct recording *r, const struct edit_spot *spot)
{
    size_t first = spot->words.first, reach = spot->reach ? spot->reach : 1, most = 0;
    struct dish *best = NULL;
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct dish *d = &r->dishes.at[i];
        size_t shared = words_shared(d, first, first + reach);
        if (d->id == first && !spot->added)
            return d;
        if (shared > most) {
            most = shared;
            best = d;
        }
    }
    return best;
}

static size_t spot_id(const struct edit_spot *spot)
{
    return spot->added ? EDIT_ADDED_ID + spot->added : spot->words.first;
}

struct ingredient *spot_line(const struct recording *r, const struct edit_spot *spot,
                             struct dish **dish)
{
    struct ingredient *around = NULL;
    size_t id = spot_id(spot);
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct dish *d = &r->dishes.at[i];
        for (size_t n = 0; n < d->ingredients.count; n++) {
            struct ingredient *in = &d->ingredients.at[n];
            bool inside = in->words.first <= id && id <= in->words.last && in->id < EDIT_ADDED_ID;
            if (in->id != id && (!inside || around))
                continue;
            *dish = d;
            around = in;
            if (in->id == id)
                return in;
        }
    }
    return around;
}

struct step *spot_step(const struct recording *r, const struct edit_spot *spot, struct dish **dish)
{
    struct step *around = NULL;
    size_t id = spot_id(spot);
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct dish *d = &r->dishes.at[i];
        for (size_t n = 0; n < d->steps.count; n++) {
            struct step *s = &d->steps.at[n];
            bool inside = s->words.first <= id && id <= s->words.last && s->id < EDIT_ADDED_ID;
            if (s->id != id && (!inside || around))
                continue;
            *dish = d;
            around = s;
            if (s->id == id)
                return s;
        }
    }
    return around;
}

/* ---- the stages */

/* What is cut and marked by words is cut and marked anew. */
static void understand_anew(struct recording *r, const struct pack *k)
{
    for (size_t i = 0; i < r->words.count; i++)
        r->words.at[i].filler = false;
    LIST_CUT(&r->sentences, 0);
    mark_repeats(r, k);
    cut_sentences(r, k);
    for (size_t i = 0; i < r->words.count; i++)
        if (!r->words.at[i].text.length)
            r->words.at[i].filler = true;
}

static void begin(struct recording *r, const struct edits *e)
{
    struct edit_run *run = arena_alloc(r->arena, sizeof *run);
    if (r->edited)
        *run = *r->edited;
    run->edits = e;
    run->count = e->count;
    run->at = arena_alloc(r->arena, (e->count + 1) * sizeof *run->at);
    for (size_t i = 0; i < e->count; i++)
        run->at[i].dish = run->at[i].id = EDIT_NOWHERE;
    r->edited = run;
    anchors_place(r, run);
}

void edits_own(struct recording *r)
{
    struct edit_run *run = arena_own(r->arena, r->edited, sizeof *run);
    run->at = arena_own(r->arena, run->at, (run->count + 1) * sizeof *run->at);
    r->edited = run;
}

/* Edits of stages that are still to come have not been applied, so theirs is what it is at the
 * beginning. */
void edits_resume(struct recording *r, const struct edits *e)
{
    const struct edit_run *before = r->edited;
    begin(r, e);
    for (size_t i = 0; i < e->count && i < before->count; i++) {
        struct edit_outcome *now = &r->edited->at[i];
        const struct edit_outcome *then = &before->at[i];
        now->placed = then->placed;
        now->dish = then->dish;
        now->id = then->id;
        now->why = then->why;
    }
}

bool edit_words(struct recording *r, const struct edits *e, const struct pack *k,
                struct problems *p)
{
    (void) p;
    if (!e)
        return true;
    begin(r, e);
    run_stage(r, e, k, EDITS_WORDS);
    if (r->edited->captioned)
        understand_anew(r, k);
    return true;
}

bool edit_borders(struct recording *r, const struct edits *e, const struct pack *k,
                  struct problems *p)
{
    (void) p;
    if (e)
        run_stage(r, e, k, EDITS_BORDERS);
    return true;
}

/* What was changed after the cook approved a dish has not been approved. */
static void withdraw(struct recording *r, const struct edits *e)
{
    for (size_t d = 0; d < r->dishes.count; d++) {
        struct dish *dish = &r->dishes.at[d];
        for (size_t i = 0; i < e->count; i++) {
            const struct edit_outcome *o = &r->edited->at[i];
            const char *field = json_string_value(json_object_get(e->at[i].json, "field"));
            bool here =
                o->dish == dish->id
                || (e->at[i].kind == EDIT_word && o->placed && has_word(dish, o->on.words.first));
            if (e->at[i].undone || !o->placed || !here || e->at[i].kind == EDIT_finding)
                continue;
            dish->approved = e->at[i].kind == EDIT_dish_set && field
                             && text_is(text_from(field), "approved")
                             && json_is_true(json_object_get(e->at[i].json, "value"));
        }
    }
}

bool edit_values(struct recording *r, const struct edits *e, const struct pack *k,
                 struct problems *p)
{
    (void) p;
    if (!e)
        return true;
    run_stage(r, e, k, EDITS_VALUES);
    withdraw(r, e);
    return true;
}

static void note_unplaced(const struct recording *r, const struct edits *e, struct problems *p)
{
    struct place here = {.file = e->file};
    for (size_t i = 0; i < e->count; i++) {
        const char *kind = json_string_value(json_object_get(e->at[i].json, "kind"));
        const struct edit_outcome *o = &r->edited->at[i];
        if (e->at[i].kind == EDIT_UNKNOWN)
            problem_note(
                p, here,
                "edit %zu (%.40s) is of a kind that this version does not know; it is kept", i + 1,
                kind);
        else if (e->at[i].kind < EDIT_KINDS && !e->at[i].undone && !o->placed)
            problem_note(p, here, "edit %zu (%s) finds no place: %s; it is kept", i + 1, kind,
                         o->why ? o->why : "there is no such thing");
    }
}

bool edit_findings(struct recording *r, const struct edits *e, const struct pack *k,
                   struct problems *p)
{
    if (!e)
        return true;
    run_stage(r, e, k, EDITS_FINDINGS);
    note_unplaced(r, e, p);
    return true;
}
