/* split/thread.c
 * SPDX-License-Identifier: MIT */
#include "split/thread.h"

#include <math.h>

#include "base/arena.h"
#include "split/evidence.h"
#include "split/lead.h"
#include "split/move.h"
#include "split/rename.h"
#include "split/way.h"

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

struct search {
    const struct recording *r;
    const struct feature *f;
    size_t count;
    const struct borders *borders;
    struct ways ways;
    struct things things; /* of the sentence at hand and those behind it */
    /* Whose they are, for each chain of the ways: many ways have the same, many chains too. */
    struct links links[WAYS_MOST];
    const struct segment *linked[WAYS_MOST];
    struct links *linked_to[WAYS_MOST];
    size_t links_count, linked_count;
    struct logs logs;
};

/* The same dish, or the talk outside, goes on. */
static void go_on(struct search *x, const struct way *w, enum part part, double score)
{
    bool leaves = part == OUTSIDE && w->part != OUTSIDE;
    if (!ways_lose(&x->ways, w->score + score))
        ways_offer(&x->ways, &(struct move){w->score + score, w->closed, w, part,
                                            leaves ? NO_DISH : w->at->dish, leaves, w->at->key});
}

static void begin(struct search *x, const struct way *w, size_t i, size_t dish, double score)
{
    if (!ways_lose(&x->ways, w->score + score))
        ways_offer(&x->ways, &(struct move){w->score + score, w->closed, w, INSIDE, dish, true,
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
    ways_offer(&x->ways, &(struct move){w->score + (begun ? closes : 0) + score, closes, w,
                                        FAREWELL, w->at->dish, false, w->at->key});
}

static void begin_new(struct search *x, const struct way *w, struct move_base *b, double inside,
                      struct links *links)
{
    double score = x->borders->peaks[b->i] + x->borders->more + inside + after_close(w)
                   + speaks_for_new(b, links);
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

static void begin_search(struct search *x, const struct recording *r, const struct feature *f,
                         const struct borders *b, size_t count, const struct segment *nothing)
{
    x->r = r;
    x->f = f;
    x->borders = b;
    x->count = count;
    logs_make(&x->logs, count + 1);
    ways_begin(&x->ways, nothing);
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
        for (size_t n = 0; n < x.ways.count; n++)
            move_on(&x, &x.ways.way[n], i);
        for (size_t n = 0; n < x.ways.count; n++)
            turn(&x, &x.ways.way[n], i);
        ways_take(&x.ways, r->arena, f, i);
    }
    return drop_leads(r, f, out, segment_write(ways_best(&x.ways)->at, count, out));
}
