/* split/whole.c
 * SPDX-License-Identifier: MIT */
#include "split/whole.h"

#include <math.h>

#include "base/arena.h"
#include "split/choose.h"
#include "split/name.h"

/* In so many sentences a dish is announced. */
#define FIRST_SENTENCES 3

static struct whole whole_begin(const struct feature *f, struct stretch s, size_t k)
{
    struct whole w = {.first = s.first, .first_stretch = k};
    for (size_t i = s.first; i <= s.last && i < s.first + FIRST_SENTENCES; i++)
        w.opens = fmax(w.opens, f[i].opens);
    return w;
}

static size_t parts_of(const struct feature *f)
{
    size_t parts = 0;
    for (size_t n = 0; n < f->mentions_count; n++)
        parts += f->mentions[n].part && !f->mentions[n].dish;
    return parts;
}

static void count_sentence(struct whole *w, const struct feature *f)
{
    w->sentences++;
    w->measured += f->measured;
    w->actions += f->actions;
    w->parts += parts_of(f);
    w->timed += f->timed;
    w->talk += f->cooking <= 0;
    w->closes = fmax(w->closes, f->closes);
    w->sweet += f->sweet;
    w->savory += f->savory;
    affinity_join(&w->about, &f->about);
}

static void add_stretch(struct wholes *w, size_t k)
{
    const struct stretch s = w->s[k];
    struct whole *d = &w->of[w->dish[k]];
    if (!d->sentences)
        *d = whole_begin(w->f, s, k);
    d->last = s.last;
    d->last_stretch = k;
    for (size_t i = s.first; i <= s.last; i++) {
        w->owner[i] = w->dish[k];
        count_sentence(d, &w->f[i]);
    }
}

static void name_wholes(struct wholes *w)
{
    w->names = name_by_rules(w->r, w->f, w->s, w->count, w->dish, w->dishes);
    for (size_t d = 0; d < w->dishes; d++) {
        w->of[d].name = w->names.best[d];
        w->of[d].name_weight = w->names.weight[d];
    }
    choose_names(&w->names, w->k);
}

void wholes_make(struct wholes *w)
{
    size_t sentences = w->r->sentences.count;
    w->owner = arena_alloc(w->r->arena, (sentences + 1) * sizeof *w->owner);
    w->of = arena_alloc(w->r->arena, (w->dishes + 1) * sizeof *w->of);
    for (size_t i = 0; i < sentences; i++)
        w->owner[i] = NO_DISH;
    for (size_t k = 0; k < w->count; k++)
        if (w->dish[k] != NO_DISH)
            add_stretch(w, k);
    name_wholes(w);
}
