/* split/standing.c
 * SPDX-License-Identifier: MIT */
#include "split/standing.h"

#include <stddef.h>
#include <string.h>

void standings_init(struct standings *s)
{
    s->dishes = 0;
    s->on = NO_DISH;
    s->finished = 0;
    for (size_t n = 0; n < LEFT_KEPT; n++)
        s->left[n] = NO_DISH;
}

void standings_copy(struct standings *to, const struct standings *from)
{
    size_t kept = from->dishes - first_kept(from);
    memcpy(to, from, offsetof(struct standings, of) + kept * sizeof *from->of);
}

size_t unfinished(const struct standings *s)
{
    const size_t kept = s->dishes - first_kept(s);
    const uint64_t all = kept < DISHES_KEPT ? ((uint64_t) 1 << kept) - 1 : UINT64_MAX;
    return count_bits(all & ~s->finished & ~dish_bit(s->on));
}

/* The dish that was on is left for another. */
static void leave(struct standings *s, size_t dish)
{
    size_t place = left_since(s, dish);
    for (size_t n = place < LEFT_KEPT ? place : LEFT_KEPT - 1; n > 0; n--)
        s->left[n] = s->left[n - 1];
    s->left[0] = s->on;
}

static bool ends(const struct feature *f)
{
    return f->closes > 0 || f->finished || f->late;
}

void stand(struct standings *s, const struct feature *f, size_t i, size_t dish, bool counts)
{
    struct standing *d = &s->of[dish % DISHES_KEPT];
    if (dish == s->dishes) {
        *d = (struct standing){.since = (uint32_t) i, .last = (uint32_t) i};
        s->dishes++;
    } else if (i != d->last + 1u) {
        d->since = (uint32_t) i;
    }
    if (s->on != dish && s->on != NO_DISH)
        leave(s, dish);
    s->on = dish;
    d->last = (uint32_t) i;
    d->sentences++;
    if (ends(&f[i]))
        d->ended = (uint32_t) i + 1;
    if (says_name(&f[i]))
        d->named = (uint32_t) i + 1;
    if (f[i].timed)
        d->timed = (uint32_t) i + 1;
    const uint64_t bit = dish_bit(dish);
    s->finished = is_finished(d) ? s->finished | bit : s->finished & ~bit;
    if (!counts)
        return;
    affinity_join(&d->about, &f[i].about);
    d->lines += (float) f[i].lines;
    d->sweet += f[i].sweet;
    d->savory += f[i].savory;
}
