/* split/thread.c
 * SPDX-License-Identifier: MIT */
#include "split/thread.h"

#include <math.h>

#include "base/arena.h"
#include "split/evidence.h"
#include "split/lead.h"
#include "split/move.h"
#include "split/rename.h"
#include "split/segment.h"

/* Scores of a sentence, in the units of border.def. */
#define CHAT_INSIDE 0.41      /* a sentence without cooking inside a dish */
#define COOKING_OUTSIDE 0.02  /* for each unit of cooking left outside */
#define FAREWELL_COST (-0.06) /* a sentence of talk after the dish was named */
#define AFTER_CLOSE 0.32      /* a dish begins after another was closed */
#define ASIDE_COST 0.61       /* talk begins inside a dish that goes on after it */
#define ASIDE_TALK (-0.08)    /* each sentence of it */
#define RENAMED_COST 1.42     /* a dish gets a second name that has nothing of the first */
#define AGAIN_COST 3.32       /* the dish that was on goes on, after other talk */
#define TASTE_COST 2.74       /* a food that is found in desserts only, in a dish of others */
#define NEW_LEAST (-5.00)     /* what must speak for another dish, so that it is looked at */
/* How many ways are kept. */
#define WAYS_MOST 12

/* What a sentence can be. An aside and a farewell belong to the dish: talk after which the dish
 * goes on, and talk after which it does not, since its name was said. */
enum part { OUTSIDE, INSIDE, ASIDE, FAREWELL };

/* One of the best ways to understand the sentences so far. */
struct way {
    double score;
    enum part part;
    double closed; /* how clearly the dish was closed that the farewell takes leave of */
    const struct segment *at;
    struct standings *dishes;
};

/* How a way goes on with the next sentence. */
struct move {
    double score, closed;
    const struct way *from;
    enum part part;
    size_t dish; /* whose the sentence is; as many as there are: a new one */
    bool begins; /* a segment begins */
    size_t key;  /* of its chain */
};

struct search {
    const struct recording *r;
    const struct feature *f;
    size_t count;
    const struct borders *borders;
    struct way ways[WAYS_MOST];
    size_t ways_count;
    struct standings standings[WAYS_MOST]; /* large, so that they are not moved about */
    struct standings *spare[WAYS_MOST];    /* those that no way has */
    size_t spare_count;
    struct move moves[WAYS_MOST];
    size_t moves_count;
    struct move *worst;   /* of them, once there are so many that one must go */
    struct things things; /* of the sentence at hand and those behind it */
    /* Whose they are, for each chain of the ways: many ways have the same, many chains too. */
    struct links links[WAYS_MOST];
    const struct segment *linked[WAYS_MOST];
    struct links *linked_to[WAYS_MOST];
    size_t links_count, linked_count;
    struct logs logs;
};

/* Nine of ten moves are no better than those that there are. */
static bool is_lost(const struct search *x, double score)
{
    return x->moves_count == WAYS_MOST && score <= x->worst->score;
}

/* Of those that leave the same dishes in the same part only the best is kept: that one; NULL: there
 * is none. */
static struct move *move_alike(struct search *x, const struct move *m)
{
    for (size_t i = 0; i < x->moves_count; i++)
        if (x->moves[i].key == m->key && x->moves[i].part == m->part)
            return &x->moves[i];
    return NULL;
}

static struct move *worst_move(struct search *x)
{
    struct move *worst = x->moves;
    for (size_t i = 1; i < x->moves_count; i++)
        worst = x->moves[i].score < worst->score ? &x->moves[i] : worst;
    return worst;
}

/* Keeps the best moves. */
static void offer(struct search *x, const struct move *m)
{
    if (is_lost(x, m->score))
        return;
    struct move *to = move_alike(x, m);
    if (to && m->score <= to->score)
        return;
    if (!to)
        to = x->moves_count < WAYS_MOST ? &x->moves[x->moves_count++] : x->worst;
    *to = *m;
    if (x->moves_count == WAYS_MOST)
        x->worst = worst_move(x);
}

/* The same dish, or the talk outside, goes on. */
static void go_on(struct search *x, const struct way *w, enum part part, double score)
{
    bool leaves = part == OUTSIDE && w->part != OUTSIDE;
    if (!is_lost(x, w->score + score))
        offer(x, &(struct move){w->score + score, w->closed, w, part,
                                leaves ? NO_DISH : w->at->dish, leaves, w->at->key});
}

static void begin(struct search *x, const struct way *w, size_t i, size_t dish, double score)
{
    if (!is_lost(x, w->score + score))
        offer(x, &(struct move){w->score + score, w->closed, w, INSIDE, dish, true,
                                segment_key(w->at, i, dish)});
}

/* ---- moves */

/* What it costs that sentence `i` is of that dish, when it says a name that is another dish's. */
static double renaming(const struct search *x, const struct way *w, size_t i, size_t dish)
{
    return says_name(&x->f[i]) && dish != NO_DISH
                   && renames(x->r, x->f, standing_of(w->dishes, dish), i)
               ? RENAMED_COST
               : 0;
}

/* How much likelier a dish begins once another was closed. */
static double after_close(const struct way *w)
{
    return w->part == FAREWELL ? AFTER_CLOSE * fmin(w->closed / CLOSE_CLEAR, 1) : 0;
}

/* A name that closes the dish: "it's a traybake", before anything went in, takes leave of none. */
static void take_leave(struct search *x, const struct way *w, double closes, double score)
{
    bool begun = few_lines(standing_of(w->dishes, w->at->dish)) < FEW_LINES;
    offer(x, &(struct move){w->score + (begun ? closes : 0) + score, closes, w, FAREWELL,
                            w->at->dish, false, w->at->key});
}

static void begin_new(struct search *x, const struct way *w, struct move_base *b, double inside,
                      struct links *links)
{
    double score = x->borders->peaks[b->i] + inside + after_close(w) + speaks_for_new(b, links);
    if (w->part == INSIDE || w->part == ASIDE)
        score += another_dish(x->count);
    begin(x, w, b->i, w->dishes->dishes, score);
}

static uint64_t bit(const struct standings *s, size_t dish)
{
    return dish < first_kept(s) ? 0 : dish_bit(dish);
}

/* A dish of which there is its first sentence only is not left for another that was. */
static bool is_only_begun(const struct standings *s)
{
    return s->on != NO_DISH && standing_of(s, s->on)->sentences == 1;
}

/* To a dish of which something is spoken, or to that which was left last; in the order in which
 * they began. */
static void go_back(struct search *x, const struct way *w, struct move_base *b, double inside,
                    struct links *links)
{
    const struct standings *s = w->dishes;
    double score = x->borders->returns[b->i] + inside;
    if (is_only_begun(s))
        return;
    size_t first = first_kept(s), turn = first % DISHES_KEPT;
    uint64_t dishes = (links->any | bit(s, s->left[0])) & ~bit(s, s->on);
    for (dishes = dishes >> turn | dishes << (DISHES_KEPT - turn) % DISHES_KEPT; dishes;
         dishes &= dishes - 1) {
        size_t d = first + (size_t) __builtin_ctzll(dishes);
        begin(x, w, b->i, d, score + speaks_for(b, links, d) - renaming(x, w, b->i, d));
    }
}

/* The dish that was on goes on after its farewell, or after other talk. */
static void go_on_again(struct search *x, const struct way *w, size_t i, double inside)
{
    if (w->dishes->on != NO_DISH && (w->part == FAREWELL || w->part == OUTSIDE))
        begin(x, w, i, w->dishes->on, inside - AGAIN_COST - renaming(x, w, i, w->dishes->on));
}

static struct links *links_of(struct search *x, const struct way *w)
{
    size_t n = 0, same = 0;
    while (n < x->linked_count && x->linked[n] != w->at)
        n++;
    if (n < x->linked_count)
        return x->linked_to[n];
    struct links *links = &x->links[x->links_count];
    find_links(&x->things, w->at, w->dishes, links);
    while (same < x->links_count && !links_equal(&x->things, &x->links[same], links))
        same++;
    x->links_count += same == x->links_count;
    x->linked[x->linked_count++] = w->at;
    return x->linked_to[n] = &x->links[same];
}

/* How much the sentence speaks for the dish that it is in. */
static double inside_of(const struct feature *f)
{
    return f->cooking > 0 ? f->cooking : -CHAT_INSIDE * f->weight;
}

/* The way goes on with what is on. */
static void move_on(struct search *x, const struct way *w, size_t i)
{
    const struct feature *f = &x->f[i];
    double talk = f->cooking > 0 ? -COOKING_OUTSIDE * f->cooking : 0, inside = inside_of(f);
    double named = renaming(x, w, i, w->at->dish) + TASTE_COST * clash(w->dishes, f, w->at->dish);
    go_on(x, w, OUTSIDE, talk);
    if (w->part == INSIDE || w->part == ASIDE) {
        go_on(x, w, INSIDE, inside - named);
        go_on(x, w, ASIDE, talk - (w->part == INSIDE ? ASIDE_COST : 0) - ASIDE_TALK * f->weight);
    }
    if (w->part == FAREWELL)
        go_on(x, w, FAREWELL, talk - FAREWELL_COST);
    if (w->part == INSIDE && f->closes > 0)
        take_leave(x, w, f->closes, inside - named);
}

/* It turns to another dish, or back to one. */
static void turn(struct search *x, const struct way *w, size_t i)
{
    double inside = inside_of(&x->f[i]);
    struct links *links = links_of(x, w);
    struct move_base base =
        find_base(w->dishes, &(struct move_place){x->f, &x->things, &x->logs,
                                                  x->borders->both + i * BOTHS, i, x->count});
    if (x->borders->peaks[i] > NEW_LEAST)
        begin_new(x, w, &base, inside, links);
    go_on_again(x, w, i, inside);
    go_back(x, w, &base, inside, links);
}

/* ---- the search */

/* A way that goes on has its dishes where they stood, when it is the last that goes on from there:
 * others need a copy. */
static struct standings *take_standings(struct search *x, const struct way *from, bool last)
{
    if (last)
        return from->dishes;
    struct standings *copy = x->spare[--x->spare_count];
    standings_copy(copy, from->dishes);
    return copy;
}

static void go_way(struct search *x, const struct move *m, size_t i, bool last, struct way *next)
{
    *next =
        (struct way){m->score, m->part, m->closed, m->from->at, take_standings(x, m->from, last)};
    if (m->begins) {
        struct segment *s = arena_alloc(x->r->arena, sizeof *s);
        *s = segment_after(next->at, i, m->dish, m->key);
        next->at = s;
    }
    if (next->at->dish != NO_DISH)
        stand(next->dishes, x->f, i, next->at->dish, next->part == INSIDE);
}

/* The best moves become the ways. */
static void take_moves(struct search *x, size_t i)
{
    size_t left[WAYS_MOST] = {0}; /* moves from each way */
    struct way next[WAYS_MOST];
    for (size_t n = 0; n < x->moves_count; n++)
        left[x->moves[n].from - x->ways]++;
    for (size_t n = 0; n < x->ways_count; n++)
        if (!left[n])
            x->spare[x->spare_count++] = x->ways[n].dishes;
    for (size_t n = 0; n < x->moves_count; n++)
        go_way(x, &x->moves[n], i, --left[x->moves[n].from - x->ways] == 0, &next[n]);
    for (size_t n = 0; n < x->moves_count; n++)
        x->ways[n] = next[n];
    x->ways_count = x->moves_count;
    x->moves_count = 0;
}

static const struct way *best_way(const struct search *x)
{
    const struct way *best = &x->ways[0];
    for (size_t n = 1; n < x->ways_count; n++)
        if (x->ways[n].score > best->score)
            best = &x->ways[n];
    return best;
}

static void begin_search(struct search *x, const struct recording *r, const struct feature *f,
                         const struct borders *b, size_t count, const struct segment *nothing)
{
    x->r = r;
    x->f = f;
    x->borders = b;
    x->count = count;
    x->moves_count = 0;
    logs_make(&x->logs, count + 1);
    x->ways_count = 1;
    x->ways[0] = (struct way){0, OUTSIDE, 0, nothing, &x->standings[0]};
    standings_init(x->ways[0].dishes);
    for (x->spare_count = 0; x->spare_count < WAYS_MOST - 1; x->spare_count++)
        x->spare[x->spare_count] = &x->standings[x->spare_count + 1];
}

size_t find_threads(const struct recording *r, const struct feature *f, const struct borders *b,
                    size_t count, struct stretch *out)
{
    const struct segment nothing = {.dish = NO_DISH};
    struct search x; /* large, and mostly room: it is not zeroed */
    begin_search(&x, r, f, b, count, &nothing);
    for (size_t i = 0; i < count; i++) {
        find_things(f, count, i, &x.things);
        x.links_count = x.linked_count = 0;
        /* What goes on first: then nearly all turns are seen to be lost. */
        for (size_t n = 0; n < x.ways_count; n++)
            move_on(&x, &x.ways[n], i);
        for (size_t n = 0; n < x.ways_count; n++)
            turn(&x, &x.ways[n], i);
        take_moves(&x, i);
    }
    return drop_leads(r, f, out, segment_write(best_way(&x)->at, count, out));
}
