/* model/own.c: copies of what later stages change in place.
 * SPDX-License-Identifier: MIT */
#include "model/recording.h"

void recording_own_words(struct recording *r)
{
    LIST_OWN(r->arena, &r->cues);
    LIST_OWN(r->arena, &r->words);
    LIST_OWN(r->arena, &r->sentences);
}

static void own_line(struct arena *a, struct ingredient *in)
{
    LIST_OWN(a, &in->prep);
    LIST_OWN(a, &in->state);
    LIST_OWN(a, &in->alternatives);
}

static void own_step(struct arena *a, struct step *s)
{
    LIST_OWN(a, &s->actions);
    LIST_OWN(a, &s->uses);
    LIST_OWN(a, &s->temperatures);
    LIST_OWN(a, &s->durations);
}

/* What is worked out of lines and steps (shopping lines, allergens, cautions) is made after the
 * last stage that changes them in place. */
static void own_dish(struct arena *a, struct dish *d)
{
    LIST_OWN(a, &d->spans);
    LIST_OWN(a, &d->ingredients);
    LIST_OWN(a, &d->steps);
    for (size_t i = 0; i < d->ingredients.count; i++)
        own_line(a, &d->ingredients.at[i]);
    for (size_t i = 0; i < d->steps.count; i++)
        own_step(a, &d->steps.at[i]);
}

void recording_own_dishes(struct recording *r)
{
    LIST_OWN(r->arena, &r->dishes);
    for (size_t i = 0; i < r->dishes.count; i++)
        own_dish(r->arena, &r->dishes.at[i]);
}

void recording_own_findings(struct recording *r)
{
    LIST_OWN(r->arena, &r->findings);
}
