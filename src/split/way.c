/* split/way.c
 * SPDX-License-Identifier: MIT */
#include "split/way.h"

#include "base/arena.h"

/* Of those that leave the same dishes in the same part only the best is kept: that one; NULL: there
 * is none. */
static struct move *move_alike(struct ways *w, const struct move *m)
{
    for (size_t i = 0; i < w->moves_count; i++)
        if (w->moves[i].key == m->key && w->moves[i].part == m->part)
            return &w->moves[i];
    return NULL;
}

static struct move *worst_move(struct ways *w)
{
    struct move *worst = w->moves;
    for (size_t i = 1; i < w->moves_count; i++)
        worst = w->moves[i].score < worst->score ? &w->moves[i] : worst;
    return worst;
}

void ways_begin(struct ways *w, const struct segment *nothing)
{
    w->moves_count = 0;
    w->count = 1;
    w->way[0] = (struct way){0, OUTSIDE, 0, nothing, &w->standings[0]};
    standings_init(w->way[0].dishes);
    for (w->spare_count = 0; w->spare_count < WAYS_MOST - 1; w->spare_count++)
        w->spare[w->spare_count] = &w->standings[w->spare_count + 1];
}

void ways_offer(struct ways *w, const struct move *m)
{
    if (ways_lose(w, m->score))
        return;
    struct move *to = move_alike(w, m);
    if (to && m->score <= to->score)
        return;
    if (!to)
        to = w->moves_count < WAYS_MOST ? &w->moves[w->moves_count++] : w->worst;
    *to = *m;
    if (w->moves_count == WAYS_MOST)
        w->worst = worst_move(w);
}

/* A way that goes on has its dishes where they stood, when it is the last that goes on from there:
 * others need a copy. */
static struct standings *take_standings(struct ways *w, const struct way *from, bool last)
{
    if (last)
        return from->dishes;
    struct standings *copy = w->spare[--w->spare_count];
    standings_copy(copy, from->dishes);
    return copy;
}

/* The way's last segment, when another begins with sentence `i`. */
static const struct segment *add_segment(struct arena *arena, const struct segment *before,
                                         const struct move *m, size_t i)
{
    struct segment *s = arena_alloc(arena, sizeof *s);
    *s = segment_after(before, i, m->dish, m->key);
    return s;
}

void ways_take(struct ways *w, struct arena *arena, const struct feature *f, size_t i)
{
    size_t left[WAYS_MOST] = {0}; /* moves from each way */
    struct way next[WAYS_MOST];
    for (size_t n = 0; n < w->moves_count; n++)
        left[w->moves[n].from - w->way]++;
    for (size_t n = 0; n < w->count; n++)
        if (!left[n])
            w->spare[w->spare_count++] = w->way[n].dishes;
    for (size_t n = 0; n < w->moves_count; n++) {
        const struct move *m = &w->moves[n];
        bool last = --left[m->from - w->way] == 0;
        next[n] = (struct way){m->score, m->part, m->closed, m->from->at,
                               take_standings(w, m->from, last)};
        if (m->begins)
            next[n].at = add_segment(arena, next[n].at, m, i);
        if (next[n].at->dish != NO_DISH)
            stand(next[n].dishes, f, i, next[n].at->dish, m->part == INSIDE);
    }
    for (size_t n = 0; n < w->moves_count; n++)
        w->way[n] = next[n];
    w->count = w->moves_count;
    w->moves_count = 0;
}

const struct way *ways_best(const struct ways *w)
{
    const struct way *best = &w->way[0];
    for (size_t n = 1; n < w->count; n++)
        if (w->way[n].score > best->score)
            best = &w->way[n];
    return best;
}
