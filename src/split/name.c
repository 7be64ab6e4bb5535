/* split/name.c
 * SPDX-License-Identifier: MIT */
#include "split/name.h"

#include "base/arena.h"
#include "match/capture.h"
#include "split/passing.h"
#include "split/title.h"
#include "split/topic.h"

/* A name that is only told is of a food that tells at least so much. */
#define TOLD_WEIGHT 0.5
/* What each of its foods that the dish has adds to that. */
#define TOLD_FIT 0.1
/* A dish's word said in passing whose food the dish has not. */
#define PASSING_WEIGHT 0.65
#define TELLING_LEAST 0.5
#define COOKED_WEIGHT 0.5
#define AHEAD_SENTENCES 5
/* So many sentences behind a dish are still said of it, where they fit no other. */
#define BEHIND_SENTENCES 3
/* A dish's own name said in passing: more than "tart", less than what is announced. */
#define OWN_WEIGHT 3.5
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
#define CLOSING_BONUS 1.5
/* How far off a name's dish is looked for, so that time does not grow with the square. */
#define STRETCHES_AWAY 10
/* A dish's word tells less of which dish it is than a food. */
#define KIND_TELLS 0.25
#define LIKE_SHARE 0.75
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

/* How far the stretch speaks of such a food or such a dish elsewhere than once in sentence `but`: 1
 * of the very one, LIKE_SHARE of one that may be meant by it ("the potatoes" are sweet potatoes).
 */
static double speaks_elsewhere(const struct feature *f, struct stretch s, size_t but,
                               struct text kind)
{
    double found = 0;
    size_t there = 0; /* how often in sentence `but`; once is the name's own */
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            bool equal = text_equal(f[i].mentions[n].kind, kind);
            if (equal && (i != but || there++ > 0))
                return 1;
            if (i != but && is_same_food(f[i].mentions[n].kind, kind))
                found = LIKE_SHARE;
        }
    return found;
}

/* What names are chosen from. */
struct naming {
    const struct recording *r;
    const struct feature *f;
    const struct stretch *s;
    const size_t *dish; /* of each stretch; NO_DISH is possible */
    size_t count;
    struct span *best; /* of each dish; first > last while there is none */
    double *weight;
    size_t *named; /* of each sentence, the dish that it names, or NO_DISH; NULL: not asked for */
};

/* "Zucchini slice", in one entry. */
static bool is_long_own_name(const struct word *w)
{
    return w->tag == TAG_DISH && w->entry && w->entry->words_count > 1 && is_own_name(w);
}

/* How much a word of a name tells of which dish it is: its foods, and less what kind it is. */
static double word_tells(const struct word *w)
{
    if (!w->entry)
        return 0;
    if (w->tag == TAG_FOOD || is_long_own_name(w))
        return 1;
    return w->tag == TAG_DISH ? KIND_TELLS : 0;
}

/* "Sausage", of "curried sausages". */
static bool has_food(struct text words, struct text kind)
{
    struct text part;
    while (words.length && text_part(&words, ' ', &part))
        if (part.length >= kind.length && part.length <= kind.length + 1
            && text_equal(text_slice(part, 0, kind.length), kind))
            return true;
    return false;
}

/* Whether the stretch speaks of a food that is in a dish's own name. */
static bool speaks_of_its_food(const struct feature *f, struct stretch s, const struct entry *name)
{
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            if (!f[i].mentions[n].part && has_food(entry_words(name), f[i].mentions[n].kind))
                return true;
    return false;
}

/* How far the stretch speaks of what a word of a name says, but for sentence `i`: 0 to 1. */
static double word_fits(const struct naming *n, struct stretch s, size_t i, const struct word *w)
{
    double said = speaks_elsewhere(n->f, s, i, entry_value(w->entry));
    if (said < LIKE_SHARE && is_long_own_name(w) && speaks_of_its_food(n->f, s, w->entry))
        said = LIKE_SHARE;
    return said;
}

static double name_tells(const struct recording *r, struct span name)
{
    double tells = 0;
    for (size_t w = name.first; w <= name.last; w++)
        tells += word_tells(&r->words.at[w]);
    return tells;
}

static size_t near_first(size_t k)
{
    return k > STRETCHES_AWAY ? k - STRETCHES_AWAY : 0;
}

/* How much of what the name tells is spoken of in dish `d`, near stretch `k`, but for sentence `i`
 * in which the name was said. */
static double fits(const struct naming *n, size_t d, size_t k, size_t i, struct span name)
{
    double found = 0;
    for (size_t w = name.first; w <= name.last; w++) {
        const struct word *word = &n->r->words.at[w];
        double most = 0;
        if (word_tells(word) == 0)
            continue;
        for (size_t j = near_first(k); most < 1 && j < n->count && j <= k + STRETCHES_AWAY; j++) {
            double said = n->dish[j] == d ? word_fits(n, telling_part(n->s[j]), i, word) : 0;
            if (said > most)
                most = said;
        }
        found += most * word_tells(word);
    }
    return found;
}

/* The dish that the name fits best; the one in which it is said, `home`, when none fits better.
 * "White bean soup. And rosemary focaccia": two dishes are named in the last one's stretch. NO_DISH
 * where it is said outside of all and fits none. */
static size_t owner(const struct naming *n, size_t home, size_t k, size_t i, struct span name)
{
    size_t best = home;
    double most = home != NO_DISH ? fits(n, home, k, i, name) : 0;
    if (home != NO_DISH && (most >= name_tells(n->r, name) || name_tells(n->r, name) < 1))
        return home;
    for (size_t j = near_first(k); j < n->count && j <= k + STRETCHES_AWAY; j++) {
        double found =
            n->dish[j] != NO_DISH && n->dish[j] != best ? fits(n, n->dish[j], k, i, name) : 0;
        if (found > most) {
            most = found;
            best = n->dish[j];
        }
    }
    return best;
}

/* Keeps the surest name of dish `d`; of two that are as sure the later. */
static void offer(struct naming *n, size_t d, struct span name, double weight)
{
    if (d == NO_DISH || weight < n->weight[d])
        return;
    n->weight[d] = weight;
    n->best[d] = name;
}

/* How much dish `d`, near stretch `k`, is about a food, as a share of the one it is most about. */
static double share_of_dish(const struct naming *n, size_t d, size_t k, struct text kind)
{
    double most = 0;
    for (size_t j = near_first(k); j < n->count && j <= k + STRETCHES_AWAY; j++) {
        double share = n->dish[j] == d ? share_about(n->f, telling_part(n->s[j]), kind) : 0;
        most = share > most ? share : most;
    }
    return most;
}

/* Whether it names a food of dish `d` that tells something; one that the dish is about, unless it
 * says what kind of dish it is: "that's dried mint" names no cucumbers in yogurt. */
static bool is_told_of(const struct naming *n, size_t d, size_t k, size_t i, struct span told)
{
    bool kind = title_weight(n->r, told) >= KIND_WEIGHT;
    for (size_t w = told.first; w <= told.last; w++) {
        const struct word *word = &n->r->words.at[w];
        if (word->tag == TAG_FOOD && word->entry && telling(word->entry->marks) >= TELLING_LEAST
            && fits(n, d, k, i, (struct span){w, w}) > 0
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
    size_t best = owner(n, home, k, i, name);
    note(n, i, best);
    offer(n, best, name, weight);
    if (best != home && home != NO_DISH
        && fits(n, home, k, i, name) >= PART_SHARE * name_tells(n->r, name))
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
        size_t d = several || ends ? owner(n, home, k, i, name) : NO_DISH;
        double fit = d != NO_DISH ? fits(n, d, k, i, name) : 0;
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
    if (title_weight(n->r, f->opening_title) > 1) {
        size_t d = inside ? home : owner(n, home, k, i, f->opening_title);
        note(n, i, d);
        offer(n, d, f->opening_title, name_weight(n->r, f->opening_title) + OPENING_BONUS * begins);
    }
    if (title_weight(n->r, f->closing_title) > 1)
        offer_owner(n, home, k, i, f->closing_title,
                    name_weight(n->r, f->closing_title) * (f->bare > 0 && !ends ? BARE_SHARE : 1)
                        + CLOSING_BONUS * ends);
}

/* Whether the stretch has a food that a dish's word of several words names: rhubarb, of "rhubarb
 * crumble". "Fish pie" where there is no fish is as likely another day's. */
static bool has_its_food(const struct naming *n, size_t k, struct span name)
{
    const struct word *w = &n->r->words.at[name.last];
    struct stretch s = telling_part(n->s[k]);
    if (w->entry_first > name.first || !w->entry || w->entry->words_count < 2)
        return true;
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t m = 0; m < n->f[i].mentions_count; m++)
            if (!n->f[i].mentions[m].part
                && text_has_part(entry_words(w->entry), ' ', n->f[i].mentions[m].kind))
                return true;
    return false;
}

/* The stretch with what is said right before it and behind it, and in no other. */
static struct stretch with_edges(const struct naming *n, size_t k)
{
    struct stretch s = n->s[k];
    size_t from = k > 0 ? n->s[k - 1].last + 1 : 0;
    size_t to = k + 1 < n->count ? n->s[k + 1].first : n->r->sentences.count;
    s.first = s.first > from + AHEAD_SENTENCES ? s.first - AHEAD_SENTENCES : from;
    s.last = s.last + BEHIND_SENTENCES < to ? s.last + BEHIND_SENTENCES : to - 1;
    return s;
}

/* "Jollof now", "taste that colcannon": one word is the whole name. */
static void offer_own(struct naming *n, size_t k)
{
    size_t sentence = n->s[k].first, d = n->dish[k];
    struct stretch s = with_edges(n, k);
    struct span name = own_name(n->r, s, &sentence);
    if (name.first <= name.last && OWN_WEIGHT > n->weight[d] && owner(n, d, k, sentence, name) == d)
        offer(n, d, name, OWN_WEIGHT);
    name = cooked_name(n->r, n->f, s, &sentence);
    if (name.first <= name.last && COOKED_WEIGHT > n->weight[d])
        offer(n, d, name, COOKED_WEIGHT);
}

static void offer_stretch(struct naming *n, size_t k)
{
    size_t sentence = n->s[k].first;
    struct span passing = named_in_passing(n->r, n->s[k], &sentence);
    for (size_t i = n->s[k].first; i <= n->s[k].last; i++)
        offer_names(n, n->dish[k], k, i);
    offer_own(n, k);
    if (passing.first > passing.last)
        return;
    double weight = has_its_food(n, k, passing) ? name_weight(n->r, passing) : PASSING_WEIGHT;
    size_t d = owner(n, n->dish[k], k, sentence, passing);
    if (weight > n->weight[d])
        offer_owner(n, n->dish[k], k, sentence, passing, weight);
}

/* Names said between the stretches belong to the dish that they fit. */
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

void name_dishes(struct recording *r, const struct feature *f, const struct stretch *s,
                 size_t count, const size_t *dish)
{
    struct naming n = {.r = r, .f = f, .s = s, .dish = dish, .count = count};
    n.best = arena_alloc(r->arena, (r->dishes.count + 1) * sizeof *n.best);
    n.weight = arena_alloc(r->arena, (r->dishes.count + 1) * sizeof *n.weight);
    n.named = arena_alloc(r->arena, r->sentences.count * sizeof *n.named);
    for (size_t d = 0; d < r->dishes.count; d++)
        n.best[d] = (struct span){1, 0};
    for (size_t i = 0; i < r->sentences.count; i++)
        n.named[i] = NO_DISH;
    offer_all(&n);
    tell_sentences(r, &n);
    for (size_t k = 0; k < count; k++)
        if (dish[k] != NO_DISH)
            set_title(r, &n, k);
}

struct span name_said(const struct recording *r, const struct feature *f, struct stretch s)
{
    const size_t dish = 0;
    struct span best = {1, 0};
    double weight = 0;
    struct naming n = {r, f, &s, &dish, 1, &best, &weight, NULL};
    offer_stretch(&n, 0);
    return best;
}
