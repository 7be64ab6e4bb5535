/* split/links.c
 * SPDX-License-Identifier: MIT */
#include "split/links.h"

#include <string.h>

#define SOON_SENTENCES 3
#define ABOUT_SENTENCES 4
#define COMMON (MARK_OF(dairy) | MARK_OF(egg) | MARK_OF(flour))
#define COMMON_WEIGHT 0.25F

/* The sentences before `begin` that named what mention `m` of sentence `i` names, the last one
 * first. */
static void look_back(const struct feature *f, size_t i, const struct mention *m, size_t begin,
                      struct thing *out)
{
    while (out->times < LINK_TIMES && (m = mention_before(f, m, &i)))
        if (i < begin)
            out->before[out->times++] = (uint32_t) i;
}

void find_things(const struct feature *f, size_t count, size_t i, struct things *out)
{
    out->count = 0;
    out->about = (struct affinity){0};
    for (size_t n = i; n < count && n < i + LINK_SENTENCES; n++) {
        if (n < i + ABOUT_SENTENCES)
            affinity_join(&out->about, &f[n].about);
        enum nearness nearness = n == i ? NOW : n < i + SOON_SENTENCES ? SOON : LATER;
        for (size_t k = 0; k < f[n].mentions_count; k++) {
            const struct mention *m = &f[n].mentions[k];
            if (m->marks & PLAIN_MARKS)
                continue;
            struct thing *to = &out->at[out->count++];
            to->times = 0;
            to->nearness = nearness;
            to->weight = m->marks & COMMON ? COMMON_WEIGHT : 1;
            to->first = n == i && k == f[i].first_thing;
            look_back(f, n, m, i, to);
        }
    }
}

void find_links(const struct things *t, const struct segment *s, const struct standings *dishes,
                struct links *out)
{
    const size_t kept = first_kept(dishes);
    out->any = out->scored = 0;
    out->new_scored = false;
    out->on = dishes->on;
    for (size_t n = 0; n < t->count; n++) {
        uint64_t whose = 0;
        const struct segment *at = s; /* the last one first */
        for (size_t k = 0; k < t->at[n].times && at; k++) {
            at = segment_at(at, t->at[n].before[k]);
            if (at && at->dish >= kept)
                whose |= dish_bit(at->dish);
        }
        out->dishes[n] = whose;
        out->any |= whose;
    }
}

bool links_equal(const struct things *t, const struct links *a, const struct links *b)
{
    return a->on == b->on && a->any == b->any
           && memcmp(a->dishes, b->dishes, t->count * sizeof *a->dishes) == 0;
}
