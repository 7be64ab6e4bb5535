/* split/alike.c
 * SPDX-License-Identifier: MIT */
#include "split/alike.h"

#include <math.h>

#include "split/candidate.h"
#include "split/evidence.h"
#include "split/standing.h"
#include "split/title.h"

/* In so many sentences a dish is announced. */
#define CALLED_SENTENCES 3
/* So often back a thing is looked for. */
#define BACK_TIMES 8
/* A few sentences tell little: as if so many more told nothing. */
#define UNSURE 2.0
#define BEGINS_LEAST (-10.0)
/* A name of rules (name_weight) that is one. */
#define NAME_SURE 3.0
/* A title for which so much more speaks than for none is sure. */
#define TITLE_SURE 4.0

static double log_of(size_t n)
{
    return log(1 + (double) n);
}

static double share(size_t part, size_t all)
{
    return (double) part / ((double) all + UNSURE);
}

/* A name with a dish's word, not a food's alone. */
static bool is_kind(const struct wholes *w, struct span name)
{
    return !span_is_empty(name) && title_weight(w->r, name) > 1;
}

/* ---- the recording */

/* Names that announce a dish; a cook who says the same one again announces no other. */
static size_t announced(const struct wholes *w)
{
    struct span before = NO_WORDS;
    size_t found = 0;
    for (size_t i = 0; i < w->r->sentences.count; i++) {
        const struct span name = w->f[i].opening_title;
        if (w->f[i].opens < ANNOUNCED || !is_kind(w, name))
            continue;
        found += span_is_empty(before) || !titles_alike(w->r, before, name);
        before = name;
    }
    return found;
}

void find_all_alike(const struct wholes *w, double *x)
{
    size_t named = 0, closed = 0, talk = 0, sentences = 0, measured = 0;
    const double dishes = (double) w->dishes;
    for (const struct whole *d = w->of; d < w->of + w->dishes; d++) {
        named += d->name_weight >= NAME_SURE;
        closed += d->closes > 0;
        talk += d->talk;
        sentences += d->sentences;
        measured += d->measured;
    }
    x[ALIKE_ONE_DISH] = 1;
    x[ALIKE_ALL_DISHES] = log(1 + dishes);
    x[ALIKE_ALL_SENTENCES] = log((1 + (double) w->r->sentences.count) / dishes);
    x[ALIKE_ALL_MEASURED] = log(1 + (double) measured / dishes);
    x[ALIKE_ALL_NAMED] = (double) named / dishes;
    x[ALIKE_ALL_CLOSED] = (double) closed / dishes;
    x[ALIKE_ALL_TALK] = share(talk, sentences);
    x[ALIKE_ALL_ANNOUNCED] = log_of(announced(w));
}

/* ---- each of them */

static void find_left_at(const struct wholes *w, struct stretch s, size_t next, double *x)
{
    x[ALIKE_LEFT_CLOSED] = x[ALIKE_LEFT_FINISHED] = x[ALIKE_LEFT_LATE] = x[ALIKE_LEFT_WAITS] = 0;
    size_t first = s.last - s.first < ENDED_SENTENCES ? s.first : s.last + 1 - ENDED_SENTENCES;
    for (size_t i = first; i < next; i++)
        if (i <= s.last || w->owner[i] == NO_DISH)
            x[ALIKE_LEFT_CLOSED] = fmax(x[ALIKE_LEFT_CLOSED], w->f[i].closes);
    for (size_t i = first; i <= s.last; i++) {
        x[ALIKE_LEFT_FINISHED] = fmax(x[ALIKE_LEFT_FINISHED], w->f[i].finished);
        x[ALIKE_LEFT_LATE] = fmax(x[ALIKE_LEFT_LATE], w->f[i].late > 0);
        if (s.last - i < TIMED_SENTENCES)
            x[ALIKE_LEFT_WAITS] = fmax(x[ALIKE_LEFT_WAITS], w->f[i].timed);
    }
}

/* How `a` was left when `b` began. */
static void find_left(const struct wholes *w, size_t a, size_t b, double *x)
{
    size_t k = w->of[b].first_stretch, others = 0;
    while (k > w->of[a].first_stretch && w->dish[k - 1] != a)
        others += w->dish[--k] != NO_DISH;
    x[ALIKE_LEFT_NOW] = others == 0;
    find_left_at(w, w->s[k > 0 ? k - 1 : 0], w->of[b].first, x);
}

static double silence_before(const struct wholes *w, size_t sentence)
{
    const struct word *first = &w->r->words.at[w->r->sentences.at[sentence].first];
    return first > w->r->words.at ? fmax(0, first->start - first[-1].end) : 0;
}

/* Whether what begins with that sentence is announced by a name that is not that dish's. */
static bool is_called_otherwise(const struct wholes *w, const struct whole *one, size_t first)
{
    for (size_t i = first; i < w->r->sentences.count && i < first + CALLED_SENTENCES; i++) {
        const struct span name = w->f[i].opening_title;
        if (w->f[i].opens >= ANNOUNCED && is_kind(w, name)
            && (span_is_empty(one->name) || !titles_alike(w->r, name, one->name)))
            return true;
    }
    return false;
}

static void find_other(const struct wholes *w, const struct whole *other, double *x)
{
    x[ALIKE_OTHER_SENTENCES] = log_of(other->sentences);
    x[ALIKE_OTHER_MEASURED] = log_of(other->measured);
    x[ALIKE_OTHER_ACTIONS] = log_of(other->actions);
    x[ALIKE_OTHER_PARTS] = log_of(other->parts);
    x[ALIKE_OTHER_TALK] = share(other->talk, other->sentences);
    x[ALIKE_OTHER_TIMED] = share(other->timed, other->sentences);
    x[ALIKE_OTHER_NAME] = other->name_weight;
    x[ALIKE_OTHER_OPENS] = other->opens;
    x[ALIKE_OTHER_BEGINS] = fmax(BEGINS_LEAST, w->b->begins[other->first]);
    x[ALIKE_OTHER_PAUSE] = log(1 + silence_before(w, other->first));
}

/* ---- both */

/* Whether the dish named that thing before sentence `i`. */
static bool named_by(const struct wholes *w, const struct mention *m, size_t i, size_t dish)
{
    for (int n = 0; n < BACK_TIMES && (m = mention_before(w->f, m, &i)); n++)
        if (w->owner[i] == dish)
            return true;
    return false;
}

/* The dish that named the thing first. */
static size_t first_of(const struct wholes *w, const struct mention *m, size_t i)
{
    size_t dish = w->owner[i];
    for (int n = 0; n < BACK_TIMES && (m = mention_before(w->f, m, &i)); n++)
        dish = w->owner[i] != NO_DISH ? w->owner[i] : dish;
    return dish;
}

/* Whose the things are that the second dish names. */
struct whose {
    size_t all, first, elsewhere, twice;
};

static void count_thing(const struct wholes *w, const struct mention *m, size_t i, size_t a,
                        size_t b, struct whose *n)
{
    if (m->marks & PLAIN_MARKS || named_by(w, m, i, b))
        return;
    bool its = named_by(w, m, i, a);
    n->all++;
    n->twice += m->fresh && its;
    n->first += !m->fresh && its;
    n->elsewhere += !m->fresh && !its && m->before < i;
}

static bool names_both(const struct wholes *w, size_t i, size_t a, size_t b)
{
    bool one = false, other = false;
    for (size_t n = 0; n < w->f[i].mentions_count; n++) {
        const struct mention *m = &w->f[i].mentions[n];
        if (m->marks & PLAIN_MARKS || m->fresh || m->before >= i)
            continue;
        size_t dish = first_of(w, m, i);
        one |= dish == a;
        other |= dish == b;
    }
    return one && other;
}

static void find_things_of(const struct wholes *w, size_t a, size_t b, double *x)
{
    const struct whole *other = &w->of[b];
    struct whose n = {0};
    size_t together = 0, last = other->last > w->of[a].last ? other->last : w->of[a].last;
    for (size_t i = other->first; i <= last; i++) {
        for (size_t k = 0; w->owner[i] == b && k < w->f[i].mentions_count; k++)
            count_thing(w, &w->f[i].mentions[k], i, a, b, &n);
        together += (w->owner[i] == a || w->owner[i] == b) && names_both(w, i, a, b);
    }
    x[ALIKE_LINKED] = share(n.first, n.all);
    x[ALIKE_LINKED_ELSEWHERE] = share(n.elsewhere, n.all);
    x[ALIKE_TWICE] = log_of(n.twice);
    x[ALIKE_TOGETHER] = log_of(together);
}

static double clash_of(const struct whole *one, const struct whole *other)
{
    float all = (one->sweet + one->savory + 1) * (other->sweet + other->savory + 1);
    return (double) ((one->sweet * other->savory + one->savory * other->sweet) / all);
}

/* ---- titles */

/* Whether a word stands in both, in the singular or the plural. */
static bool share_word(const struct recording *r, struct span a, struct span b)
{
    for (size_t i = a.first; i <= a.last; i++)
        for (size_t n = b.first; n <= b.last; n++)
            if (name_hash(r, (struct span){i, i}) == name_hash(r, (struct span){n, n}))
                return true;
    return false;
}

static void find_titles(const struct wholes *w, size_t a, size_t b, double *x)
{
    const struct span one = w->names.best[a], other = w->names.best[b];
    x[ALIKE_OTHER_TITLE] = fmin(TITLE_SURE, w->names.sure[b]);
    x[ALIKE_TITLES_DIFFER] =
        !span_is_empty(one) && !span_is_empty(other) && !share_word(w->r, one, other);
}

void find_alike(const struct wholes *w, size_t a, size_t b, double *x)
{
    const struct whole *one = &w->of[a], *other = &w->of[b];
    x[ALIKE_ITS_SENTENCES] = log_of(one->sentences);
    x[ALIKE_ITS_NAME] = one->name_weight;
    x[ALIKE_IS_FIRST] = a == 0;
    find_left(w, a, b, x);
    find_other(w, other, x);
    x[ALIKE_OTHER_CALLED] = is_called_otherwise(w, one, other->first);
    x[ALIKE_BOTH_NAMED] = !span_is_empty(one->name) && !span_is_empty(other->name);
    x[ALIKE_BOTH_KINDS] = is_kind(w, one->name) && is_kind(w, other->name)
                          && !titles_alike(w->r, one->name, other->name);
    x[ALIKE_BOTH_GO] = affinity_between(&one->about, &other->about);
    x[ALIKE_BOTH_CLASH] = clash_of(one, other);
    find_titles(w, a, b, x);
    find_things_of(w, a, b, x);
    x[ALIKE_BETWEEN] = (double) (b - a - 1);
}
