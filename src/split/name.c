/* split/name.c
 * SPDX-License-Identifier: MIT */
#include "split/name.h"

#include "base/arena.h"
#include "match/capture.h"
#include "split/owner.h"
#include "split/title.h"
#include "split/topic.h"

/* A name that is only told is of a food that tells at least so much. */
#define TOLD_WEIGHT 0.5
/* What each of its foods that the dish has adds to that. */
#define TOLD_FIT 0.1
#define TELLING_LEAST 0.5
#define FOREIGN_WEIGHT 0.45
#define AHEAD_SENTENCES 5
/* So many sentences behind a dish are still said of it, where they fit no other. */
#define BEHIND_SENTENCES 3
/* Such a food is one that the dish is about, beside its main one. */
#define ABOUT_SHARE 0.34
/* A name's weight (title_weight) that has a dish's word. */
#define KIND_WEIGHT 3
/* A name is surer in so many sentences at the beginning and at the end, where the cook no longer
 * says "the fish". */
#define NAMING_SENTENCES 3
#define OPENING_BONUS 1.0
/* A sentence that is nothing but a name is as likely an ingredient in the middle of a dish:
 * "English muffins, four of them". */
#define BARE_SHARE 0.5
#define BARE_FOOD_SHARE 0.1
#define CLOSING_BONUS 1.5
/* How much of a name has to fit a dish that may be a part of another, and what it weighs there. */
#define PART_SHARE 0.5
#define PART_WEIGHT 0.25
/* How much of a weak name has to fit a dish in which it was not said. */
#define SURE_SHARE 0.9

/* "Pudding" names less than "rhubarb crumble", "colcannon" does not. */
static double name_weight(const struct recording *r, struct span title)
{
    bool kind = title.first == title.last && !is_own_name(&r->words.at[title.first]);
    return title_weight(r, title) * (kind ? 1.0 : 2.0);
}

/* Keeps the surest name of dish `d`; of two that are as sure the later. */
static void offer(struct naming *n, size_t d, struct span name, double weight)
{
    if (d == NO_DISH || weight < n->weight[d])
        return;
    n->weight[d] = weight;
    n->best[d] = name;
}

/* Whether it names a food of dish `d` that tells something; one that the dish is about, unless it
 * says what kind of dish it is: "that's dried mint" names no cucumbers in yogurt. */
static bool is_told_of(const struct naming *n, size_t d, size_t k, size_t i, struct span told)
{
    bool kind = title_weight(n->r, told) >= KIND_WEIGHT;
    for (size_t w = told.first; w <= told.last; w++) {
        const struct word *word = &n->r->words.at[w];
        if (word->tag == TAG_FOOD && word->entry && telling(word->entry->marks) >= TELLING_LEAST
            && name_fits(n, d, k, i, (struct span){w, w}) > 0
            && (kind || share_of_dish(n, d, k, entry_value(word->entry)) >= ABOUT_SHARE))
            return true;
    }
    return false;
}

/* Notes that sentence `i` names dish `d`. */
static void note(struct naming *n, size_t i, size_t d)
{
    if (n->named && d != NO_DISH)
        n->named[i] = d;
}

/* Offers the name to the dish that it fits best. The one in which it is said may be a part of that
 * dish which was taken for another: where nothing else is called so there, it is called so too. */
static void offer_owner(struct naming *n, size_t home, size_t k, size_t i, struct span name,
                        double weight)
{
    size_t best = name_owner(n, home, k, i, name);
    note(n, i, best);
    offer(n, best, name, weight);
    if (best != home && home != NO_DISH
        && name_fits(n, home, k, i, name) >= PART_SHARE * name_tells(n->r, name))
        offer(n, home, name, PART_WEIGHT * weight);
}

/* What is only told, or names no kind of dish: "curd rice", "raspberry and almond slices". */
static void offer_weak(struct naming *n, size_t home, size_t k, size_t i)
{
    const struct feature *f = &n->f[i];
    const struct span names[] = {f->opening_title, f->closing_title, f->told_title};
    for (size_t t = 0; t < sizeof names / sizeof *names; t++) {
        struct span name = names[t];
        bool several = name.first < name.last && n->r->words.at[name.last].entry_first > name.first;
        bool ends =
            home != NO_DISH && n->s[k].last - i < NAMING_SENTENCES && name.first < name.last;
        size_t d = several || ends ? name_owner(n, home, k, i, name) : NO_DISH;
        double fit = d != NO_DISH ? name_fits(n, d, k, i, name) : 0;
        bool whole = fit >= SURE_SHARE * name_tells(n->r, name),
             kind = title_weight(n->r, name) >= KIND_WEIGHT;
        if (d == NO_DISH || (d == home ? fit <= 0 : !whole)
            || !((d != home && kind) || is_told_of(n, d, k, i, name)))
            continue;
        bool sure = whole && several && kind
                    && (n->r->words.at[name.last].tag == TAG_DISH
                        || span_has_tag(n->r, name, TAG_WITH)); /* no "gravy boat" */
        note(n, i, d);
        offer(n, d, name, (sure ? name_weight(n->r, name) : TOLD_WEIGHT) + TOLD_FIT * fit);
    }
}

/* What is a food first of all, "English muffins", is less a name than "fish pie". */
static double bare_share(const struct recording *r, struct span name)
{
    return r->words.at[name.last].tag == TAG_FOOD ? BARE_FOOD_SHARE : BARE_SHARE;
}

/* The names said in sentence `i`, which dish `home` has, or none, at stretch `k` or just before it.
 */
static void offer_names(struct naming *n, size_t home, size_t k, size_t i)
{
    const struct feature *f = &n->f[i];
    const struct stretch *s = &n->s[k];
    bool inside = home != NO_DISH;
    bool begins = inside && i - s->first < NAMING_SENTENCES,
         ends = inside && s->last - i < NAMING_SENTENCES;
    offer_weak(n, home, k, i);
    if (inside && f->foreign_title.first <= f->foreign_title.last)
        offer(n, home, f->foreign_title, FOREIGN_WEIGHT);
    if (title_weight(n->r, f->opening_title) > 1 || f->announces_food) {
        size_t d = inside ? home : name_owner(n, home, k, i, f->opening_title);
        note(n, i, d);
        offer(n, d, f->opening_title, name_weight(n->r, f->opening_title) + OPENING_BONUS * begins);
    }
    if (title_weight(n->r, f->closing_title) > 1)
        offer_owner(n, home, k, i, f->closing_title,
                    name_weight(n->r, f->closing_title)
                            * (f->bare > 0 && !ends ? bare_share(n->r, f->closing_title) : 1)
                        + CLOSING_BONUS * ends);
}

static void offer_stretch(struct naming *n, size_t k)
{
    for (size_t i = n->s[k].first; i <= n->s[k].last; i++)
        offer_names(n, n->dish[k], k, i);
}

/* "Brownie in a mug. Serves one. Garlic shrimp, now ...": a yield behind a name that stands alone,
 * which looked like the next dish's. */
static bool takes_leave(const struct naming *n, size_t i)
{
    return n->f[i].bare > 0 && i + 1 < n->r->sentences.count && n->f[i + 1].finished
           && n->f[i + 1].lines == 0;
}

/* What is said right behind stretch `k`, before any other, and fits no dish: leave is taken of its
 * dish, and a yield is its own ("Brownie in a mug. Serves one."). */
static void offer_behind(struct naming *n, size_t k, size_t i)
{
    struct span name = takes_leave(n, i) ? n->f[i].opening_title : n->f[i].closing_title;
    if (n->dish[k] == NO_DISH || i > n->s[k].last + BEHIND_SENTENCES
        || (n->named && n->named[i] != NO_DISH))
        return;
    if (title_weight(n->r, name) > 1)
        offer(n, n->dish[k], name, name_weight(n->r, name));
    if (title_weight(n->r, name) > 1 || n->f[i].finished)
        note(n, i, n->dish[k]);
}

/* What is announced right before stretch `k`, and fits no dish, is its dish's name. */
static void offer_ahead(struct naming *n, size_t k, size_t i)
{
    struct span name = n->f[i].opening_title;
    if (n->dish[k] == NO_DISH || i + AHEAD_SENTENCES < n->s[k].first || takes_leave(n, i)
        || (n->named && n->named[i] != NO_DISH) || title_weight(n->r, name) <= 1)
        return;
    offer(n, n->dish[k], name, name_weight(n->r, name));
    note(n, i, n->dish[k]);
}

/* Names said between the stretches belong to the dish that they fit. */
static void offer_all(struct naming *n)
{
    size_t i = 0;
    for (size_t k = 0; k < n->count; k++) {
        for (; i < n->s[k].first; i++) {
            offer_names(n, NO_DISH, k, i);
            offer_ahead(n, k, i);
            if (k > 0)
                offer_behind(n, k - 1, i);
        }
        if (n->dish[k] != NO_DISH)
            offer_stretch(n, k);
        if (i <= n->s[k].last)
            i = n->s[k].last + 1;
    }
    for (; n->count && i < n->r->sentences.count; i++) {
        offer_names(n, NO_DISH, n->count - 1, i);
        offer_behind(n, n->count - 1, i);
    }
}

static void set_title(struct recording *r, const struct naming *n, size_t k)
{
    struct dish *d = &r->dishes.at[n->dish[k]];
    struct span name = n->best[n->dish[k]];
    if (d->title.length)
        return;
    d->title_said = name.first <= name.last;
    d->title = d->title_said ? fuller_name(r, n->f, n->s[k], name) : made_name(r, n->f, n->s[k]);
}

/* Leaves word with each sentence which dish it names, for what else it says of it. */
static void tell_sentences(struct recording *r, const struct naming *n)
{
    for (size_t i = 0; i < r->sentences.count; i++) {
        struct sentence *s = &r->sentences.at[i];
        const struct feature *f = &n->f[i];
        bool opens = f->opening_title.first <= f->opening_title.last;
        s->names = n->named[i] != NO_DISH ? r->dishes.at[n->named[i]].id + 1 : 0;
        s->flags &= ~(unsigned) SENTENCE_LEAVING;
        s->flags |= s->names && !opens ? SENTENCE_LEAVING : 0;
    }
}

struct naming name_by_rules(struct recording *r, const struct feature *f, const struct stretch *s,
                            size_t count, const size_t *dish, size_t dishes)
{
    struct naming n = {.r = r, .f = f, .s = s, .dish = dish, .count = count, .dishes = dishes};
    n.best = arena_alloc(r->arena, (dishes + 1) * sizeof *n.best);
    n.weight = arena_alloc(r->arena, (dishes + 1) * sizeof *n.weight);
    n.named = arena_alloc(r->arena, r->sentences.count * sizeof *n.named);
    for (size_t d = 0; d < dishes; d++)
        n.best[d] = NO_WORDS;
    for (size_t i = 0; i < r->sentences.count; i++)
        n.named[i] = NO_DISH;
    offer_all(&n);
    return n;
}

void title_dishes(struct recording *r, const struct naming *n)
{
    tell_sentences(r, n);
    for (size_t k = 0; k < n->count; k++)
        if (n->dish[k] != NO_DISH)
            set_title(r, n, k);
}

struct span name_said(const struct recording *r, const struct feature *f, struct stretch s)
{
    const size_t dish = 0;
    struct span best = NO_WORDS;
    double weight = 0;
    struct naming n = {.r = r,
                       .f = f,
                       .s = &s,
                       .dish = &dish,
                       .count = 1,
                       .dishes = 1,
                       .best = &best,
                       .weight = &weight};
    offer_stretch(&n, 0);
    return best;
}
