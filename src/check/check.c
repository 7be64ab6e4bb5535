/* check/check.c: recipes -> findings, the gravest first, then as they were said.
 * SPDX-License-Identifier: MIT */
#include "check/check.h"

#include <stdlib.h>

#include "check/report.h"

static int by_weight(const void *a, const void *b)
{
    const struct finding *x = a, *y = b;
    bool stop_x = x->level == LEVEL_STOP, stop_y = y->level == LEVEL_STOP;
    if (stop_x != stop_y)
        return stop_x ? -1 : 1;
    if (x->at < y->at || x->at > y->at)
        return x->at < y->at ? -1 : 1;
    int kind = text_compare(x->kind, y->kind);
    return kind ? kind : text_compare(x->about, y->about);
}

/* The same said twice in a breath is one finding, the first; a finding that was made again a minute
 * later stays. */
#define AGAIN_SECONDS 20.0
static bool repeats(const struct checker *c, const struct finding *a, const struct finding *b)
{
    if (a->dish != b->dish || !text_equal(a->kind, b->kind) || !text_equal(a->about, b->about))
        return false;
    /* Each caption that has a word wrong is to be mended. */
    if (text_equal(a->kind, c->rows[CASE_misheard].kind))
        return c->r->words.at[a->words.first].cue == c->r->words.at[b->words.first].cue;
    return b->at - a->at < AGAIN_SECONDS && a->at - b->at < AGAIN_SECONDS;
}

/* Whether `a` was found so long before `b` that it is none of its repeats. */
static bool is_long_before(const struct checker *c, const struct finding *a,
                           const struct finding *b)
{
    bool none = span_is_empty(a->words) || span_is_empty(b->words);
    return b->at - a->at >= AGAIN_SECONDS
           && (none || c->r->words.at[a->words.first].cue != c->r->words.at[b->words.first].cue);
}

/* Whether one of findings [first, end), which are in the order of time, is the same. */
static bool is_repeat(const struct checker *c, size_t first, size_t end, const struct finding *f)
{
    const struct finding *at = c->r->findings.at;
    for (size_t n = end; n-- > first && !is_long_before(c, &at[n], f);)
        if (repeats(c, &at[n], f))
            return true;
    return false;
}

/* What stops a recipe stands before all else. */
static void drop_repeats(const struct checker *c)
{
    struct recording *r = c->r;
    size_t kept = 0, stops = 0;
    for (size_t i = 0; i < r->findings.count; i++) {
        const struct finding f = r->findings.at[i];
        bool stop = f.level == LEVEL_STOP;
        if (is_repeat(c, 0, stops, &f) || (!stop && is_repeat(c, stops, kept, &f)))
            continue;
        r->findings.at[kept++] = f;
        stops += stop;
    }
    LIST_CUT(&r->findings, kept);
}

bool check_recipes(struct recording *r, const struct pack *k, const struct ingredient_list *list,
                   struct problems *p)
{
    struct checker *c = arena_alloc(r->arena, sizeof *c);
    c->r = r;
    c->k = k;
    c->list = list;
    c->sayings = *r->sayings;
    c->owned = count_owned(r);
    if (!findings_load(c, p))
        return false;
    for (size_t i = 0; i < r->dishes.count; i++) {
        look_at(c, i);
#define FINDER(name) find_##name(c);
#include "check/finders.def"
    }
    if (r->findings.count)
        qsort(r->findings.at, r->findings.count, sizeof *r->findings.at, by_weight);
    drop_repeats(c);
    return true;
}
