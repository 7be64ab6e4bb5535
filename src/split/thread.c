/* split/thread.c
 * SPDX-License-Identifier: MIT */
#include "split/thread.h"

#include <math.h>
#include <string.h>

#include "base/arena.h"
#include "split/evidence.h"
#include "split/segment.h"
#include "split/title.h"

/* Scores of a sentence, in the units of border.def. */
#define CHAT_INSIDE 0.19     /* a sentence without cooking inside a dish */
#define COOKING_OUTSIDE 0.23 /* for each unit of cooking left outside */
#define FAREWELL_COST 0.09   /* a sentence of talk after the dish was named */
#define AFTER_CLOSE 0.13     /* a dish begins after another was closed */
#define ASIDE_COST 1.35      /* talk begins inside a dish that goes on after it */
#define ASIDE_TALK 0.02      /* each sentence of it */
#define RENAMED_COST 3.01    /* a dish gets a second name that has nothing of the first */
#define BACK_COST 1.83       /* a dish that was left goes on */
#define BACK_LEAST (-4.00)   /* what must speak for it, so that it is looked at */
#define BACK_LINK 0.27       /* for each of its things spoken of, and each not of the other dish */
#define NEW_LINK 0.35        /* a dish begins, and a thing of the one that was on is spoken of */
#define NEW_OTHER 0.24       /* ... or of those that were left */
#define LINKS_MOST 6.94
#define PLAIN_LINK 0.02  /* salt, water, oil, spice: every dish has them */
#define COMMON_LINK 0.25 /* milk, eggs, flour */
/* Things are looked for in so many sentences. */
#define LINK_SENTENCES 13
#define LINK_AT_ONCE 1.66 /* in the first one */
#define LINK_LATER 6      /* after so many ... */
#define LINK_LATE 0.23    /* ... a thing tells less */
#define LINK_TIMES 16     /* so often back a thing is looked for before them */
#define LINK_AGAIN 0.22   /* what it counts for a dish that spoke of it earlier, each time */
/* How many ways are kept; and a dish can be gone back to while no more than so many others have
 * begun since. */
#define WAYS_MOST 12
#define DISHES_KEPT 64

#define FEW_LINES 3     /* a dish of fewer foods is hardly over ... */
#define FEW_COST 0.16   /* ... for each that it lacks when another begins */
#define TASTE_COST 1.41 /* for each food that is found in desserts only, in a dish of others */
#define TASTE_SURE 2.60 /* ... once it has many more than so many of these */

#define COMMON (MARK_OF(dairy) | MARK_OF(egg) | MARK_OF(flour))

/* What a sentence can be. An aside and a farewell belong to the dish: talk after which the dish
 * goes on, and talk after which it does not, since its name was said. */
enum part { OUTSIDE, INSIDE, ASIDE, FAREWELL };

/* What a dish has so far. */
struct tally {
    float sweet, savory; /* foods that are found in desserts only, and in no dessert */
    float lines;         /* foods with an amount */
};

/* One of the best ways to understand the sentences so far. */
struct way {
    double score;
    enum part part;
    double closed; /* how clearly the dish was closed that the farewell takes leave of */
    size_t dishes; /* how many there are */
    const struct segment *at;
    struct tally tallies[DISHES_KEPT]; /* dish d's is [d % DISHES_KEPT] */
};

/* How a way goes on with the next sentence. */
struct move {
    double score, closed;
    const struct way *from;
    enum part part;
    size_t dish; /* whose the sentence is; way.dishes: a new one */
    bool begins; /* a segment begins */
    size_t key;  /* of its chain */
};

struct search {
    const struct recording *r;
    const struct feature *f;
    size_t count;
    const struct borders *borders;
    const size_t *named;           /* as segment_named wants it */
    struct way room[2][WAYS_MOST]; /* ways are large, so that they are not moved about */
    struct way *ways, *next;       /* one of these, and the other */
    size_t ways_count;
    struct move moves[WAYS_MOST];
    size_t moves_count;
};

/* Keeps the best moves; of those that leave the same dishes in the same part only the best. */
static void offer(struct search *x, const struct move *m)
{
    struct move *worst = NULL;
    for (size_t i = 0; i < x->moves_count; i++) {
        struct move *other = &x->moves[i];
        if (other->part == m->part && other->key == m->key) {
            if (m->score > other->score)
                *other = *m;
            return;
        }
        if (!worst || other->score < worst->score)
            worst = other;
    }
    if (x->moves_count < WAYS_MOST)
        x->moves[x->moves_count++] = *m;
    else if (m->score > worst->score)
        *worst = *m;
}

/* The same dish, or the talk outside, goes on. */
static void go_on(struct search *x, const struct way *w, enum part part, double score)
{
    bool leaves = part == OUTSIDE && w->part != OUTSIDE;
    offer(x, &(struct move){w->score + score, w->closed, w, part, leaves ? NO_DISH : w->at->dish,
                            leaves, w->at->key});
}

static void begin(struct search *x, const struct way *w, size_t i, size_t dish, double score)
{
    offer(x, &(struct move){w->score + score, w->closed, w, INSIDE, dish, true,
                            segment_key(w->at, i, dish)});
}

/* ---- names */

static struct span name_in(const struct feature *f)
{
    return f->closing_title.first <= f->closing_title.last ? f->closing_title : f->opening_title;
}

static const size_t *find_named(const struct recording *r, const struct feature *f, size_t count)
{
    size_t *named = arena_alloc(r->arena, (count + 1) * sizeof *named), last = 0;
    for (size_t i = 0; i < count; i++) {
        struct span name = name_in(&f[i]);
        named[i] = last = name.first <= name.last ? i + 1 : last;
    }
    return named;
}

/* What it costs that sentence `i` is of that dish, when it says a name that is another dish's. */
static double renaming(const struct search *x, const struct way *w, size_t i, size_t dish)
{
    struct span name = name_in(&x->f[i]);
    if (name.first > name.last || dish == NO_DISH)
        return 0;
    size_t before = segment_named(w->at, dish, i, x->named);
    return before == SIZE_MAX || titles_alike(x->r, name_in(&x->f[before]), name) ? 0
                                                                                  : RENAMED_COST;
}

/* ---- things spoken of again */

static double link_weight(uint64_t marks)
{
    return marks & PLAIN_MARKS ? PLAIN_LINK : marks & COMMON ? COMMON_LINK : 1;
}

/* What is said at once tells more of what the talk turns to than what is said later. */
static double nearness(size_t sentences)
{
    return sentences == 0 ? LINK_AT_ONCE : sentences > LINK_LATER ? LINK_LATE : 1;
}

static size_t first_kept(const struct way *w)
{
    return w->dishes > DISHES_KEPT ? w->dishes - DISHES_KEPT : 0;
}

/* How many things of each of a way's dishes are spoken of: dish d's are of[d % DISHES_KEPT], set
 * where there is a bit in `some`. */
struct links {
    uint64_t some;
    double of[DISHES_KEPT];
    double all;
};

static void add_link(struct links *links, size_t kept, double weight)
{
    const uint64_t bit = (uint64_t) 1 << kept;
    links->of[kept] = (links->some & bit ? links->of[kept] : 0) + weight;
    links->some |= bit;
    links->all += weight;
}

static double links_of(const struct way *w, const struct links *links, size_t dish)
{
    bool none = dish == NO_DISH || dish < first_kept(w) || !(links->some >> dish % DISHES_KEPT & 1);
    return none ? 0 : links->of[dish % DISHES_KEPT];
}

/* Counts a thing for the dishes that spoke of it before sentence `begin`, the last one most. */
static void count_thing(const struct search *x, const struct way *w, size_t begin, size_t i,
                        const struct mention *m, struct links *links)
{
    double weight = link_weight(m->marks) * nearness(i - begin);
    uint64_t counted = 0; /* a bit for each dish that is kept */
    size_t times = 0;
    while (m && m->before < i && times < LINK_TIMES) {
        i = m->before;
        m = mention_of(&x->f[i], m->kind);
        size_t dish = i < begin ? segment_dish(w->at, i) : NO_DISH;
        times += i < begin;
        if (dish < first_kept(w) || dish == NO_DISH || counted >> dish % DISHES_KEPT & 1)
            continue;
        add_link(links, dish % DISHES_KEPT, weight);
        weight *= LINK_AGAIN;
        counted |= (uint64_t) 1 << dish % DISHES_KEPT;
    }
}

/* "Now let's make the burgers": named in a run-down before, perhaps, but of no dish so far. */
static bool is_announced(const struct search *x, size_t i, const struct mention *m)
{
    return !x->f[i].returns && title_has(x->r, x->f[i].opening_title, m->kind);
}

/* Those of the sentences from `i` on. */
static void count_links(const struct search *x, const struct way *w, size_t i, struct links *links)
{
    links->some = 0;
    links->all = 0;
    for (size_t s = i; s < x->count && s < i + LINK_SENTENCES; s++)
        for (size_t n = 0; n < x->f[s].mentions_count; n++) {
            const struct mention *m = &x->f[s].mentions[n];
            if (!m->fresh && !(s == i && is_announced(x, i, m)))
                count_thing(x, w, i, s, m, links);
        }
}

/* ---- tastes */

/* What it costs that sentence `i` goes into a dish: a chocolate in a soup. */
static double clash(const struct search *x, const struct way *w, size_t i, size_t dish)
{
    if (dish == NO_DISH || dish < first_kept(w))
        return 0;
    const struct tally *had = &w->tallies[dish % DISHES_KEPT];
    double all = had->sweet + had->savory + TASTE_SURE;
    return TASTE_COST * (x->f[i].sweet * had->savory + x->f[i].savory * had->sweet) / all;
}

/* ---- moves */

/* How much likelier a dish begins once another was closed. */
static double after_close(const struct way *w)
{
    return w->part == FAREWELL ? AFTER_CLOSE * fmin(w->closed / CLOSE_CLEAR, 1) : 0;
}

/* What speaks against another dish while the one that is on has few foods. */
static double hardly_begun(const struct way *w, size_t dish)
{
    if (dish == NO_DISH || dish < first_kept(w))
        return 0;
    return FEW_COST * fmax(FEW_LINES - (double) w->tallies[dish % DISHES_KEPT].lines, 0);
}

static void begin_new(struct search *x, const struct way *w, size_t i, double inside,
                      const struct links *links)
{
    size_t now = segment_last_dish(w->at);
    double on = links_of(w, links, now);
    double score = x->borders->peaks[i] + inside + after_close(w) - NEW_LINK * fmin(on, LINKS_MOST)
                   - NEW_OTHER * fmin(links->all - on, LINKS_MOST);
    if (w->part == INSIDE || w->part == ASIDE)
        score += another_dish(x->count) - hardly_begun(w, now);
    begin(x, w, i, w->dishes, score);
}

/* The first dish from `d` on of which something is spoken, or which is on; way.dishes: there is
 * none. */
static size_t next_linked(const struct way *w, const struct links *links, size_t now, size_t d)
{
    while (d < w->dishes && d != now && !(links->some >> d % DISHES_KEPT & 1))
        d++;
    return d;
}

static void go_back(struct search *x, const struct way *w, size_t i, double inside,
                    const struct links *links)
{
    size_t now = segment_last_dish(w->at);
    bool left = w->part == FAREWELL || w->part == OUTSIDE;
    double score = inside - BACK_COST + x->borders->returns[i], on = links_of(w, links, now);
    for (size_t d = next_linked(w, links, now, first_kept(w)); d < w->dishes;
         d = next_linked(w, links, now, d + 1)) {
        double found = links_of(w, links, d), more = found - (d == now ? 0 : on);
        if (d == now ? left : found > 0)
            begin(x, w, i, d, score + BACK_LINK * more - renaming(x, w, i, d) - clash(x, w, i, d));
    }
}

static void move_on(struct search *x, const struct way *w, size_t i)
{
    const struct feature *f = &x->f[i];
    double talk = f->cooking > 0 ? -COOKING_OUTSIDE * f->cooking : 0;
    double inside = f->cooking > 0 ? f->cooking : -CHAT_INSIDE * f->weight;
    double named = renaming(x, w, i, w->at->dish) + clash(x, w, i, w->at->dish);
    struct links links;
    go_on(x, w, OUTSIDE, talk);
    if (w->part == INSIDE || w->part == ASIDE) {
        go_on(x, w, INSIDE, inside - named);
        go_on(x, w, ASIDE, talk - (w->part == INSIDE ? ASIDE_COST : 0) - ASIDE_TALK * f->weight);
    }
    if (w->part == FAREWELL)
        go_on(x, w, FAREWELL, talk - FAREWELL_COST);
    if (w->part == INSIDE && f->closes > 0)
        offer(x, &(struct move){w->score + f->closes + inside - named, f->closes, w, FAREWELL,
                                w->at->dish, false, w->at->key});
    bool begins = x->borders->peaks[i] != IMPOSSIBLE, turns = x->borders->returns[i] > BACK_LEAST;
    if (begins || turns)
        count_links(x, w, i, &links);
    if (begins)
        begin_new(x, w, i, inside, &links);
    if (turns)
        go_back(x, w, i, inside, &links);
}

/* ---- the search */

/* The dish that sentence `i` goes into has its foods from now on. */
static void count_up(const struct search *x, struct way *w, size_t i, bool begins)
{
    size_t dish = w->at->dish;
    if (dish == NO_DISH || w->part != INSIDE)
        return;
    struct tally *t = &w->tallies[dish % DISHES_KEPT];
    if (begins)
        *t = (struct tally){0};
    t->lines += (float) x->f[i].lines;
    t->sweet += x->f[i].sweet;
    t->savory += x->f[i].savory;
}

static void go_way(const struct search *x, const struct move *m, size_t i, struct way *next)
{
    const struct way *from = m->from;
    bool new_dish = m->begins && m->dish == from->dishes;
    size_t tallies = from->dishes < DISHES_KEPT ? from->dishes : DISHES_KEPT;
    next->score = m->score;
    next->part = m->part;
    next->closed = m->closed;
    next->dishes = from->dishes;
    next->at = from->at;
    memcpy(next->tallies, from->tallies, tallies * sizeof *next->tallies);
    if (m->begins) {
        struct segment *s = arena_alloc(x->r->arena, sizeof *s);
        *s = (struct segment){m->from->at, i, m->dish, m->key};
        next->at = s;
        next->dishes += new_dish;
    }
    count_up(x, next, i, new_dish);
}

/* The best moves become the ways. */
static void take_moves(struct search *x, size_t i)
{
    struct way *now = x->ways;
    for (size_t n = 0; n < x->moves_count; n++)
        go_way(x, &x->moves[n], i, &x->next[n]);
    x->ways = x->next;
    x->next = now;
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

size_t find_threads(const struct recording *r, const struct feature *f, const struct borders *b,
                    size_t count, struct stretch *out)
{
    const struct segment nothing = {.dish = NO_DISH};
    struct search x = {.r = r, .f = f, .borders = b, .count = count, .ways_count = 1};
    x.named = find_named(r, f, count);
    x.ways = x.room[0];
    x.next = x.room[1];
    x.ways[0] = (struct way){.at = &nothing};
    for (size_t i = 0; i < count; i++) {
        for (size_t n = 0; n < x.ways_count; n++)
            move_on(&x, &x.ways[n], i);
        take_moves(&x, i);
    }
    return segment_write(best_way(&x)->at, count, out);
}
