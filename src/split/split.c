/* split/split.c: which sentences belong to which dish, and what each dish is called.
 * SPDX-License-Identifier: MIT */
#include "split/split.h"

#include "base/arena.h"
#include "split/begin.h"
#include "split/border.h"
#include "split/choose.h"
#include "split/end.h"
#include "split/join.h"
#include "split/name.h"
#include "split/snap.h"
#include "split/talked.h"
#include "split/thread.h"
#include "split/unite.h"

static struct dish *add_dish(struct recording *r, size_t first_word)
{
    struct dish *d = LIST_ADD(r->arena, &r->dishes);
    *d = (struct dish){.id = first_word,
                       .words = {first_word, first_word},
                       .start = r->words.at[first_word].start};
    return d;
}

static void add_stretch(struct recording *r, struct stretch s, struct dish *d)
{
    struct span words = {r->sentences.at[s.first].first, r->sentences.at[s.last].last};
    d->words.last = words.last;
    d->end = r->words.at[words.last].end;
    *LIST_ADD(r->arena, &d->spans) = words;
}

/* Makes one of dishes that are alike, and none where all is talk; returns how many are left. */
static size_t keep_dishes(const struct wholes *w, size_t *dish)
{
    if (w->r->told_dishes || !is_only_talk(w))
        return unite_dishes(w, w->r->told_dishes, dish);
    for (size_t k = 0; k < w->count; k++)
        dish[k] = NO_DISH;
    return 0;
}

/* Which stretches are one dish's, and what each is called. */
static struct naming share_stretches(struct recording *r, const struct pack *k,
                                     const struct feature *f, const struct borders *b,
                                     struct stretch *s, size_t count, size_t *dish)
{
    struct wholes w = {.r = r, .k = k, .f = f, .b = b, .s = s, .dish = dish, .count = count};
    w.dishes = join_stretches(r, f, s, count, dish);
    snap_stretches(r, f, b, s, count);
    wholes_make(&w);
    size_t left = keep_dishes(&w, dish);
    /* As many as before: they are the same ones, and are called the same. */
    if (left == w.dishes)
        return w.names;
    struct naming n = name_by_rules(r, f, s, count, dish, left);
    choose_names(&n, k);
    return n;
}

static void make_dishes(struct recording *r, const struct pack *k, const struct feature *f,
                        const struct borders *b, struct stretch *s, size_t count)
{
    size_t *dish = arena_alloc(r->arena, (count + 1) * sizeof *dish);
    struct naming n = share_stretches(r, k, f, b, s, count, dish);
    begin_named(&n, s);
    for (size_t i = 0; i < count; i++) {
        if (dish[i] == NO_DISH)
            continue;
        bool begins = dish[i] == r->dishes.count;
        struct dish *d =
            begins ? add_dish(r, r->sentences.at[s[i].first].first) : &r->dishes.at[dish[i]];
        add_stretch(r, s[i], d);
    }
    title_dishes(r, &n);
    find_ends(r, f, s, count, dish);
}

static void make_one_dish(struct recording *r, const struct pack *k, const struct feature *f)
{
    const struct stretch all = {.last = r->sentences.count - 1};
    const size_t dish = 0;
    add_stretch(r, all, add_dish(r, 0));
    struct naming n = name_by_rules(r, f, &all, 1, &dish, 1);
    choose_names(&n, k);
    title_dishes(r, &n);
}

/* So much more speaks for another dish at each turn, where more dishes were told of than are found;
 * so often it is tried. */
#define MORE_EACH 1.0
#define MORE_MOST 4.0

static size_t count_threads(struct recording *r, const struct feature *f, const struct stretch *s,
                            size_t count)
{
    return join_stretches(r, f, s, count, arena_alloc(r->arena, (count + 1) * sizeof(size_t)));
}

/* The threads; as many as dishes were told of, if there are. */
static size_t find_told(struct recording *r, const struct feature *f, struct borders *b,
                        struct stretch *s)
{
    const size_t count = r->sentences.count;
    size_t found = find_threads(r, f, b, count, s);
    while (r->told_dishes && b->more < MORE_MOST
           && count_threads(r, f, s, found) < r->told_dishes) {
        b->more += MORE_EACH;
        found = find_threads(r, f, b, count, s);
    }
    return found;
}

static void note_dishes(const struct recording *r, struct problems *p)
{
    if (r->told_dishes && r->dishes.count != r->told_dishes)
        problem_note(p, (struct place){.file = r->file},
                     "dishes found: %zu, where %zu were told of", r->dishes.count, r->told_dishes);
}

/* What dishes are told by stands aside, and goes once they are found. */
bool split_dishes(struct recording *r, const struct pack *k, struct problems *p)
{
    size_t count = r->sentences.count, found = 0;
    if (!count)
        return true;
    arena_aside(r->arena);
    struct feature *f = features_make(r, k);
    struct stretch *stretches = arena_alloc(r->arena, (count + 1) * sizeof *stretches);
    struct borders b = {0};
    if (!r->one_dish) {
        b = weigh_borders(r, f, count);
        found = find_told(r, f, &b, stretches);
    }
    arena_back(r->arena);
    if (r->one_dish)
        make_one_dish(r, k, f);
    else
        make_dishes(r, k, f, &b, stretches, found);
    note_dishes(r, p);
    arena_drop(r->arena);
    return true;
}
