/* split/spoken.c
 * SPDX-License-Identifier: MIT */
#include "split/spoken.h"

#include <math.h>

/* How many sentences behind the border are looked at. */
#define SOON_SENTENCES 2
#define NEAR_SENTENCES 4
#define LATER_SENTENCES 7
/* A thing named longer ago than so many sentences is far. */
#define NEAR_LINK 10
/* No more than this counts. */
#define LINKS_MOST 6.0
#define SOON_MOST 3
#define LATER_MOST 6
#define AGAIN_MOST 4

/* What of the things in the next sentences was spoken of before border `i`, and when. */
struct novelty {
    double fresh, near, far, again;
};

static struct novelty novelty_at(const struct talk *t, size_t i, size_t sentences)
{
    const struct feature *f = t->f;
    struct novelty v = {0};
    for (size_t s = i; s < t->count && s < i + sentences; s++)
        for (size_t n = 0; n < f[s].mentions_count; n++) {
            const struct mention *m = &f[s].mentions[n];
            if (m->marks & PLAIN_MARKS || (m->before >= i && m->before < s))
                continue;
            if (m->before == s)
                v.fresh += !m->part;
            else if (i - m->before <= NEAR_LINK)
                v.near++;
            else
                v.far++;
            v.again += m->fresh && m->before < i && i - m->before > NEAR_LINK;
        }
    return v;
}

/* The lead of the first food of sentence `i`, if it is new there. */
static double first_lead(const struct feature *f, size_t i)
{
    for (const struct mention *m = f->mentions; m && m < f->mentions + f->mentions_count; m++)
        if (!m->part)
            return m->before == i ? m->lead : 0;
    return 0;
}

/* What the new foods of the next sentences are: what dishes are made of, or what goes into any. */
static void find_lead(const struct talk *t, size_t i, double *x)
{
    const struct feature *f = t->f;
    double all = 0;
    size_t count = 0;
    x[LEAD_NEW] = 0; /* there may be no such food */
    for (size_t s = i; s < t->count && s < i + NEAR_SENTENCES; s++)
        for (size_t n = 0; n < f[s].mentions_count; n++) {
            const struct mention *m = &f[s].mentions[n];
            if (m->part || m->before < i)
                continue;
            if (!count++)
                x[LEAD_NEW] = m->lead;
            all += m->lead;
        }
    x[LEAD_FIRST] = first_lead(&f[i], i);
    x[LEAD_MEAN] = count ? all / (double) count : 0;
    x[NOTHING_NEW] = !count;
}

/* What the sentence begins with, and when it was spoken of before. */
static void find_first(const struct feature *here, size_t i, double *x)
{
    x[FIRST_NEW] = x[FIRST_PART] = x[FIRST_NEAR] = x[FIRST_FAR] = 0;
    if (here->first_thing >= here->mentions_count)
        return;
    const struct mention *first = &here->mentions[here->first_thing];
    bool tells = !(first->marks & PLAIN_MARKS), known = tells && first->before < i;
    bool kind_only = first->marks & MARK_OF(generic); /* "okay, so veg": of this dish */
    x[FIRST_NEW] = tells && !known && !first->part && !kind_only;
    x[FIRST_PART] = (first->part && !first->dish) || kind_only;
    x[FIRST_NEAR] = known && i - first->before <= NEAR_LINK;
    x[FIRST_FAR] = known && i - first->before > NEAR_LINK;
}

void find_spoken(const struct talk *t, size_t i, double *x)
{
    const struct novelty soon = novelty_at(t, i, SOON_SENTENCES),
                         later = novelty_at(t, i, LATER_SENTENCES);
    x[NEW_SOON] = fmin(soon.fresh, SOON_MOST);
    x[NEAR_SOON] = fmin(soon.near, SOON_MOST);
    x[FAR_SOON] = fmin(soon.far, SOON_MOST);
    x[NEW_LATER] = fmin(later.fresh, LATER_MOST);
    x[NEAR_LATER] = fmin(later.near, LATER_MOST);
    x[FAR_LATER] = fmin(later.far, LATER_MOST);
    x[AGAIN_LATER] = fmin(later.again, AGAIN_MOST);
    x[LINKS] = fmin(t->chains[i], LINKS_MOST);
    find_first(&t->f[i], i, x);
    find_lead(t, i, x);
}
