/* split/move.c
 * SPDX-License-Identifier: MIT */
#include "split/move.h"

#define WEIGHT_MOST 3.0
#define UNFINISHED_MOST 5
#define DISHES_MOST 6
#define LENGTH_MOST 150 /* in a short talk dishes are short */

/* For a dish that begins, and for one that goes on. */
static const double WEIGHTS[2][MOVES] = {
    {
#define MOVE(name, new, back, what) new,
#include "split/move.def"
#undef MOVE
    },
    {
#define MOVE(name, new, back, what) back,
#include "split/move.def"
#undef MOVE
    },
};

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

static void find_its(const struct move_base *b, size_t dish, double *x)
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
}

/* Evidence is first of things, then of the dish; then it is the same for all dishes of a way. */
#define OF_DISH GAP
#define OF_ALL ON_NONE

static inline double weigh(const double *x, int what, size_t first, size_t end)
{
    double score = 0;
    for (size_t n = first; n < end; n++)
        score += WEIGHTS[what][n] * x[n];
    return score;
}

struct move_base find_base(const struct standings *s, const struct move_place *at)
{
    struct move_base b = {.standings = s, .f = &at->f[at->i], .i = at->i};
    b.things = at->things;
    b.logs = at->logs;
    b.both = at->both;
    find_on(s, at, b.x);
    find_all(s, at, b.x);
    for (int what = 0; what < 2; what++)
        b.score[what] =
            weigh(b.x, what, OF_ALL, MOVES) + weigh_both(b.both, b.x, what, 0, BOTH_ITS_FIRST);
    return b;
}

static void find_dish(const struct move_base *b, size_t dish, double *x)
{
    if (dish != NO_DISH)
        find_its(b, dish, x);
    x[CLASH] = clash(b->standings, b->f, dish == NO_DISH ? b->standings->on : dish);
}

void find_moves(const struct move_base *b, const struct links *links, size_t dish, double *x)
{
    for (size_t n = 0; n < MOVES; n++)
        x[n] = n < OF_ALL ? 0 : b->x[n];
    count_things(b->things, links, dish, x);
    find_dish(b, dish, x);
}

static double weigh_things(const struct move_base *b, const struct links *links, size_t dish)
{
    double x[OF_DISH] = {0};
    count_things(b->things, links, dish, x);
    return weigh(x, dish != NO_DISH, 0, OF_DISH);
}

/* The things are the same for all ways with these links: they are counted once. */
static double things_speak(const struct move_base *b, struct links *links, size_t dish)
{
    if (dish == NO_DISH && !links->new_scored) {
        links->new_score = weigh_things(b, links, dish);
        links->new_scored = true;
    } else if (dish_bit(dish) & ~links->scored) {
        links->score[dish % DISHES_KEPT] = weigh_things(b, links, dish);
        links->scored |= dish_bit(dish);
    }
    return dish == NO_DISH ? links->new_score : links->score[dish % DISHES_KEPT];
}

double speaks_for(const struct move_base *b, struct links *links, size_t dish)
{
    const int what = dish != NO_DISH;
    double x[OF_ALL] = {0};
    find_dish(b, dish, x);
    return b->score[what] + things_speak(b, links, dish) + weigh(x, what, OF_DISH, OF_ALL)
           + weigh_both(b->both, x, what, BOTH_ITS_FIRST, BOTHS);
}
