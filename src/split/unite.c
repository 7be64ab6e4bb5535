/* split/unite.c: the threads are chosen sentence by sentence, by what stands around each. What a
 * dish comes to in all can be told only now: that two have each their name and their yield, or that
 * one is the other's sauce.
 * SPDX-License-Identifier: MIT */
#include "split/unite.h"

#include <stdlib.h>

#include "base/arena.h"
#include "split/weighted.h"

/* What must speak for it, in the units of alike.def. */
#define UNITE_LEAST 0.0
/* A dish is compared with so many that began before it ... */
#define DISHES_BACK 8
/* ... and what is one was taken for fewer than so many. */
#define PIECES_SPAN 32

static const double WEIGHTS[ALIKES] = {
#define ALIKE(name, weight, what) weight,
#include "split/alike.def"
#undef ALIKE
};

/* How much speaks for it that two dishes are one. */
struct pair {
    double score;
    size_t a, b;
};

struct uniting {
    const struct wholes *w;
    struct pair *pairs; /* by `b`, then by `a` */
    size_t count;
    size_t *from; /* the first pair of each dish as `b`; one more for the end */
    /* For each dish the first of those that it is one with, and for that one the last. */
    size_t *first, *last;
    size_t left, wanted; /* dishes that are left; 0: nobody knows how many there are */
};

static size_t first_near(size_t dish)
{
    return dish > DISHES_BACK ? dish - DISHES_BACK : 0;
}

void tell_pairs(const struct wholes *w, pair_teller *tell, void *to)
{
    double x[ALIKES];
    if (w->dishes < 2)
        return;
    find_all_alike(w, x);
    for (size_t b = 1; b < w->dishes; b++)
        for (size_t a = first_near(b); a < b; a++) {
            find_alike(w, a, b, x);
            tell(to, a, b, x);
        }
}

static void add_pair(void *to, size_t a, size_t b, const double *x)
{
    struct uniting *u = to;
    u->pairs[u->count++] = (struct pair){weighted_sum(x, WEIGHTS, ALIKES), a, b};
    u->from[b + 1] = u->count;
}

/* Whether one dish of the pair is among each of those, which are one already. */
static bool is_between(const struct uniting *u, const struct pair *p, size_t one, size_t other)
{
    size_t a = u->first[p->a], b = u->first[p->b];
    return (a == one && b == other) || (a == other && b == one);
}

/* Two that are alike are one with what they are one with only where all are alike on average
 * (average linkage: Sokal, Michener 1958). */
static bool are_alike(const struct uniting *u, size_t one, size_t other)
{
    size_t begin = one < other ? one : other;
    size_t end = u->last[one] > u->last[other] ? u->last[one] : u->last[other];
    double sum = 0, count = 0;
    if (end - begin >= PIECES_SPAN)
        return false;
    for (size_t n = u->from[begin]; n < u->from[end + 1]; n++)
        if (is_between(u, &u->pairs[n], one, other)) {
            sum += u->pairs[n].score;
            count++;
        }
    return sum > UNITE_LEAST * count;
}

static void unite(struct uniting *u, size_t one, size_t other)
{
    size_t into = one < other ? one : other,
           end = u->last[one] > u->last[other] ? u->last[one] : u->last[other];
    size_t gone = one + other - into;
    for (size_t d = gone; d <= u->last[gone]; d++)
        if (u->first[d] == gone)
            u->first[d] = into;
    u->last[into] = end;
    u->left--;
}

/* The surest first; of two that are as sure that which is said first. */
static int by_score(const void *a, const void *b)
{
    const struct pair *one = a, *other = b;
    if (one->score < other->score || one->score > other->score)
        return one->score > other->score ? -1 : 1;
    if (one->b != other->b)
        return one->b < other->b ? -1 : 1;
    return one->a < other->a ? -1 : one->a > other->a;
}

/* Makes one of the surest pairs first; `likest`: of all pairs, until as many dishes are left as the
 * cook has told of, else of those that are alike. */
static void unite_pairs(struct uniting *u, bool likest)
{
    struct pair *sure = arena_alloc(u->w->r->arena, (u->count + 1) * sizeof *sure);
    size_t count = 0;
    for (size_t n = 0; n < u->count; n++)
        if (likest || u->pairs[n].score > UNITE_LEAST)
            sure[count++] = u->pairs[n];
    qsort(sure, count, sizeof *sure, by_score);
    for (size_t n = 0; n < count && u->left > u->wanted; n++) {
        size_t one = u->first[sure[n].a], other = u->first[sure[n].b];
        if (one != other && (likest || are_alike(u, one, other)))
            unite(u, one, other);
    }
}

/* Numbers them anew. */
static size_t renumber(const struct uniting *u, size_t *dish)
{
    size_t left = 0, *number = u->last; /* which is not asked any more */
    for (size_t d = 0; d < u->w->dishes; d++)
        number[d] = u->first[d] == d ? left++ : number[u->first[d]];
    for (size_t k = 0; k < u->w->count; k++)
        if (dish[k] != NO_DISH)
            dish[k] = number[dish[k]];
    return left;
}

size_t unite_dishes(const struct wholes *w, size_t wanted, size_t *dish)
{
    struct arena *arena = w->r->arena;
    const size_t room = (w->dishes + 2) * sizeof(size_t);
    struct uniting u = {.w = w,
                        .pairs =
                            arena_alloc(arena, (w->dishes * DISHES_BACK + 1) * sizeof *u.pairs),
                        .from = arena_alloc(arena, room),
                        .first = arena_alloc(arena, room),
                        .last = arena_alloc(arena, room),
                        .left = w->dishes,
                        .wanted = wanted};
    tell_pairs(w, add_pair, &u);
    for (size_t d = 0; d < w->dishes; d++)
        u.first[d] = u.last[d] = d;
    unite_pairs(&u, false);
    if (wanted)
        unite_pairs(&u, true);
    return renumber(&u, dish);
}
