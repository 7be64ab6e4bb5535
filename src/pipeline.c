/* pipeline.c: the pipeline, a line a stage; the only file that knows all of them.
 * SPDX-License-Identifier: MIT */
#include "pipeline.h"

#include "build/build.h"
#include "build/untitled.h"
#include "check/check.h"
#include "check/list.h"
#include "kitchen/add.h"
#include "kitchen/allergen.h"
#include "kitchen/caution.h"
#include "kitchen/time.h"
#include "read/read.h"
#include "split/split.h"
#include "tag/misheard.h"
#include "tag/tag.h"
#include "words/words.h"

static bool reckon_recipes(struct recording *r, const struct means *m)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct dish *d = &r->dishes.at[i];
        for (size_t n = 0; n < d->ingredients.count; n++) {
            struct ingredient *in = &d->ingredients.at[n];
            in->weight = weigh(m->kitchen, r->arena, m->profile, in, NULL);
        }
        add_dish(m->kitchen, r->arena, m->profile, d);
        time_dish(m->kitchen, r->arena, d, 0);
        find_allergens(m->kitchen, r->arena, d, NULL);
        find_cautions(m->kitchen, r->arena, d);
    }
    return true;
}

/* The list is read once the dishes are known, since its headings name them. */
static bool check_with_list(struct recording *r, const struct means *m, struct problems *p)
{
    struct ingredient_list list = {.file = m->list_name};
    if (!m->list_name)
        return check_recipes(r, m->k, NULL, p);
    return list_read(&list, m->list, r, m->k, m->matcher, p) && check_recipes(r, m->k, &list, p);
}

/* ---- the parts. The cook's edits enter where what they correct has been found, and before
 * anything is made of it. */

/* Stages ask for different parts of the pack, which need no memory all at once. */
static bool forget(const struct means *m)
{
    if (m->sparing)
        pack_forget(m->k);
    return true;
}

static bool hear(struct recording *r, const struct means *m, struct problems *p)
{
    return read_cues(r, r->bytes, p)    /* bytes -> timed cues */
           && number_words(r, m->k, p); /* cues -> numbered words, sentences */
}

static bool understand(struct recording *r, const struct means *m, struct problems *p)
{
    return edit_words(r, m->edits, m->k, p)       /* the cook's corrections of words */
           && tag_words(r, m->k, p)               /* words -> one tag each */
           && hear_words(r, m->ear, p)            /* misheard words -> what was meant */
           && forget(m)                           /* the pack need not stay in memory */
           && match_rules(r, m->k, m->matcher, p) /* tag string -> amounts, foods, actions */
           && split_dishes(r, m->k, p)            /* sentences -> dishes */
           && forget(m)                           /* the pack need not stay in memory */
           && listen_for(r, m->sayings, m->k, p); /* what checks listen for, by words */
}

static bool build(struct recording *r, const struct means *m, struct problems *p)
{
    return edit_borders(r, m->edits, m->k, p)           /* of which words are whose */
           && build_recipes(r, m->k, p)                 /* matches -> ingredients, steps */
           && forget(m)                                 /* the pack need not stay in memory */
           && title_recipes(r, m->kitchen, m->profile); /* titles of what nobody named */
}

static bool settle(struct recording *r, const struct means *m, struct problems *p)
{
    return edit_values(r, m->edits, m->k, p) /* the cook's corrections of values */
           && reckon_recipes(r, m)           /* recipes -> weights, sums, times, cautions */
           && check_with_list(r, m, p);      /* recipes -> findings */
}

static bool answer(struct recording *r, const struct means *m, struct problems *p)
{
    return edit_findings(r, m->edits, m->k, p); /* the cook's answers */
}

static void own_nothing(struct recording *r)
{
    (void) r;
}

/* In the order of enum edit_stage, after the first. `own` copies what this part or a later one
 * changes of what the parts before it made. */
static const struct part {
    bool (*run)(struct recording *r, const struct means *m, struct problems *p);
    void (*own)(struct recording *r);
} PART[PARTS] = {
    {hear, own_nothing},
    {understand, recording_own_words},
    {build, recording_own_dishes},
    {settle, recording_own_dishes},
    {answer, recording_own_findings},
};

/* A copy of `from` that the parts from `i` on can change. */
static struct recording copy_for(size_t i, const struct recording *from)
{
    struct recording copy = *from;
    PART[i].own(&copy);
    if (copy.edited)
        edits_own(&copy);
    return copy;
}

static void keep(struct kept *kept, size_t i, const struct recording *r, const struct problems *p)
{
    kept->before[i] = copy_for(i, r);
    kept->mark[i] = arena_mark(r->arena);
    kept->problems[i] = *p;
    kept->count = i + 1;
}

static bool run_from(size_t first, struct recording *r, const struct means *m, struct kept *kept,
                     struct problems *p)
{
    for (size_t i = first; i < PARTS; i++) {
        if (kept && i >= kept->count)
            keep(kept, i, r, p);
        if (!PART[i].run(r, m, p))
            return false;
    }
    return true;
}

bool recording_extract(struct recording *r, const struct means *m, struct kept *kept,
                       struct problems *p)
{
    if (kept)
        kept->count = 0;
    return run_from(0, r, m, kept, p);
}

static size_t part_of(enum edit_stage from)
{
    return from < EDIT_STAGES ? 1 + (size_t) from : PARTS - 1;
}

bool recording_kept(const struct kept *kept, enum edit_stage from)
{
    return part_of(from) < kept->count;
}

bool recording_again(struct recording *r, enum edit_stage from, const struct means *m,
                     struct kept *kept, struct problems *p)
{
    size_t first = part_of(from);
    kept->count = first + 1;
    arena_rewind(r->arena, kept->mark[first]);
    problems_rewind(p, &kept->problems[first]);
    *r = copy_for(first, &kept->before[first]);
    if (r->edited)
        edits_resume(r, m->edits);
    return run_from(first, r, m, kept, p);
}
