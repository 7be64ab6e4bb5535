/* split/move.c
 * SPDX-License-Identifier: MIT */
#include "split/move.h"

#include "split/weigh.h"

#define WEIGHT_MOST 3.0
#define UNFINISHED_MOST 5
#define DISHES_MOST 6
#define LENGTH_MOST 150 /* in a short talk dishes are short */
/* Evidence is first of things, then of the dish; then it is the same for all dishes of a way. */
#define OF_DISH GAP
#define OF_ALL ON_NONE

/* fmin that is no call: it runs for each dish of each way at each sentence. */
static double at_most(double most, double value)
{
    return value < most ? value : most;
}

/* The things of the next sentences, by who has them. */
static void count_things(const struct things *things, const struct links *links, size_t dish,
                         double *x)
{
    const uint64_t own = dish_bit(dish), on = dish_bit(links->on);
    for (size_t n = 0; n < things->count; n++) {
        const uint64_t dishes = links->dishes[n];
        bool has = dishes & own, on_has = dishes & on;
        enum move_evidence what = has && on_has ? BOTH_NOW
                                  : has         ? OWN_NOW
                                  : on_has      ? ON_NOW
                                  : dishes      ? OTHER_NOW
                                                : UNKNOWN_NOW;
        double sharers = what == OWN_NOW ? count_bits(dishes) : 1;
        x[what + (size_t) things->at[n].nearness] += things->at[n].weight / sharers;
        if (!things->at[n].first)
            continue;
        x[FIRST_OWN] = what == OWN_NOW;
        x[FIRST_OWN_ONLY] = own && dishes == own;
        x[FIRST_ON] = on_has;
    }
    for (size_t n = OWN_NOW; n <= UNKNOWN_LATER; n++)
        x[n] = at_most(WEIGHT_MOST, x[n]);
}

static void find_on(const struct standings *s, const struct move_place *at, double *x)
{
    x[ON_NONE] = s->on == NO_DISH;
    if (s->on == NO_DISH)
        return;
    const struct standing *on = standing_of(s, s->on);
    x[ON_FINISHED] = is_finished(on);
    x[ON_WAITS] = waits(on);
    x[ON_RUN] = log_after(at->logs, at->i - on->since);
    x[ON_SENTENCES] = log_after(at->logs, on->sentences);
    x[ON_FEW] = few_lines(on);
    x[ON_GOES] = affinity_between(&on->about, &at->things->about);
}

static void find_all(const struct standings *s, const struct move_place *at, double *x)
{
    size_t length = at->count < LENGTH_MOST ? at->count : LENGTH_MOST;
    x[UNFINISHED_DISHES] = at_most(UNFINISHED_MOST, (double) unfinished(s));
    x[DISHES] = s->dishes ? at_most(DISHES_MOST, (double) s->dishes - 1) : 0;
    x[LENGTH] = log_of(at->logs, length);
    x[TO_COME] = log_after(at->logs, at->count - at->i);
}

static inline void find_its(const struct move_base *b, size_t dish, double *x)
{
    const struct standing *its = standing_of(b->standings, dish);
    size_t since = left_since(b->standings, dish);
    bool finished = is_finished(its);
    x[GAP] = log_of(b->logs, b->i - its->last);
    x[LEFT_LAST] = !since;
    x[LEFT_SINCE] = (double) since;
    x[UNFINISHED] = !finished;
    x[WAITS] = waits(its);
    x[WAITS_UNFINISHED] = waits(its) && !finished;
    x[HAS_FEW] = few_lines(its);
    x[GOES] = affinity_between(&its->about, &b->things->about);
    x[CLASH] = clash(b->standings, b->f, dish);
}

struct move_base find_base(const struct standings *s, const struct move_place *at)
{
    struct move_base b;
    b.standings = s;
    b.f = &at->f[at->i];
    b.i = at->i;
    b.things = at->things;
    b.logs = at->logs;
    b.both = at->both;
    b.scored[false] = b.scored[true] = false;
    for (size_t n = OF_ALL; n < MOVES; n++)
        b.x[n] = 0;
    find_on(s, at, b.x);
    find_all(s, at, b.x);
    return b;
}

/* What speaks for any dish that begins, or goes on; most often only one of the two is asked for. */
static inline double base_speaks(struct move_base *b, bool begins)
{
    if (!b->scored[begins])
        b->score[begins] =
            weigh(b->x, begins, OF_ALL, MOVES) + weigh_both(b->both, b->x, begins, false);
    b->scored[begins] = true;
    return b->score[begins];
}

void find_moves(const struct move_base *b, const struct links *links, size_t dish, double *x)
{
    for (size_t n = 0; n < MOVES; n++)
        x[n] = n < OF_ALL ? 0 : b->x[n];
    count_things(b->things, links, dish, x);
    if (dish == NO_DISH)
        x[CLASH] = clash(b->standings, b->f, b->standings->on);
    else
        find_its(b, dish, x);
}

/* The things are the same for all ways with these links: they are counted once. */
static double things_begin(const struct move_base *b, struct links *links)
{
    if (!links->new_scored) {
        double x[OF_DISH] = {0};
        count_things(b->things, links, NO_DISH, x);
        links->new_score = weigh(x, true, 0, OF_DISH);
        links->new_scored = true;
    }
    return links->new_score;
}

static double things_go_on(const struct move_base *b, struct links *links, size_t dish)
{
    if (dish_bit(dish) & ~links->scored) {
        double x[OF_DISH] = {0};
        count_things(b->things, links, dish, x);
        links->score[dish % DISHES_KEPT] = weigh(x, false, 0, OF_DISH);
        links->scored |= dish_bit(dish);
    }
    return links->score[dish % DISHES_KEPT];
}

double speaks_for_new(struct move_base *b, struct links *links)
{
    double x[OF_ALL];
    for (size_t n = OF_DISH; n < OF_ALL; n++)
        x[n] = 0;
    x[CLASH] = clash(b->standings, b->f, b->standings->on);
    return base_speaks(b, true) + things_begin(b, links) + weigh(x, true, OF_DISH, OF_ALL)
           + weigh_both(b->both, x, true, true);
}

double speaks_for(struct move_base *b, struct links *links, size_t dish)
{
    double x[OF_ALL];
    find_its(b, dish, x);
    return base_speaks(b, false) + things_go_on(b, links, dish) + weigh(x, false, OF_DISH, OF_ALL)
           + weigh_both(b->both, x, false, true);
}
