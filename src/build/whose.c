/* build/whose.c: which dish a yield is of.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"

/* The dish, as sentence.names has it, that is named in sentence `n`, in the one before, or in one
 * after it that takes leave: "Eight of them.", "Two each, so that's four. That's my fish cakes." */
static size_t named_near(const struct recording *r, size_t n)
{
    const struct sentence *all = r->sentences.at;
    if (all[n].names)
        return all[n].names;
    if (n > 0 && all[n - 1].names)
        return all[n - 1].names;
    bool leaves = n + 1 < r->sentences.count && all[n + 1].flags & SENTENCE_LEAVING;
    return leaves ? all[n + 1].names : 0;
}

bool yield_is_elsewhere(const struct recording *r, size_t n)
{
    const struct sentence *s = &r->sentences.at[n];
    return s->last < r->dishes.at[0].words.first
           || (s->match_count && (named_near(r, n) || yield_is_shared(r, s)));
}

bool yield_is_of(const struct recording *r, const struct dish *d, size_t n, bool inside)
{
    size_t named = r->sentences.at[n].match_count ? named_near(r, n) : 0;
    if (!inside && named != d->id + 1)
        return false; /* as of nearly all dishes that a sentence is looked at for */
    const struct dish *other = named ? dish_with_id(r, named - 1) : NULL;
    bool same = other && text_equal(other->title, d->title); /* a dish that was taken for two */
    return other && !(inside && same) ? other == d : inside;
}
