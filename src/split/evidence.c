/* split/evidence.c
 * SPDX-License-Identifier: MIT */
#include "split/evidence.h"

#include <math.h>

#include "base/arena.h"
#include "split/spoken.h"
#include "words/clock.h"

/* A talk of fewer sentences has room for less of a dish, and is asked for less. */
#define SHORT_TALK 24
/* What cooks do in so many sentences: their style. */
#define STYLE_SENTENCES 25
#define STYLE_UNSURE 25 /* a talk of few more sentences tells little of it */
/* Sentences no further apart announce the same dish, or take leave of it. */
#define SAME_SENTENCES 6
/* The weight of an opening phrase, and of closing ones. */
#define OPEN_WEIGHT 3
#define CLOSED_WEIGHT 2.5
/* So many sentences are its beginning. */
#define START_SENTENCES 8
/* A sentence of less weight is short. */
#define SHORT_WEIGHT 0.45
/* How many sentences before and after a border are looked at. */
#define SOON_SENTENCES 2
#define TIMED_SENTENCES 3
#define NEAR_SENTENCES 4
#define PHASE_SENTENCES 6
#define CLOSED_SENTENCES 8
#define LINES_SENTENCES 10
#define TASTE_SENTENCES 12
#define UNITS_SENTENCES 3
#define UNITS_MOST 4
/* No more than this counts. */
#define SILENCE_MOST 10.0
/* Log odds of words: what speaks against a border is the rule, and tells little. */
#define WORDS_LEAST 4.0
#define WORDS_MOST 8.0
#define WORDS_NONE 2.0
#define WORDS_UNIT 0.5
#define PHASE_MOST 3
#define LATER_MOST 6
#define LINES_MOST 8
#define COOKING_MOST 10
#define CLOSED_MOST 6
#define PLAIN_LINK 0.41 /* of salt, water, oil, spice: every dish has them */
#define LINK 0.30
#define AGAIN_LINK (-0.13) /* of a food that goes in anew, with an amount */

static void add_range(double *at, size_t first, size_t last, double weight)
{
    at[first] += weight;
    at[last + 1] -= weight;
}

/* What a mention adds to the borders since its thing was named last. A food that goes in with an
 * amount begins its chain anew. */
static double link(const struct mention *m)
{
    return m->fresh ? AGAIN_LINK : m->marks & PLAIN_MARKS ? PLAIN_LINK : LINK;
}

/* Lexical chains (Morris and Hirst 1991): for each border, the weight of the things that are spoken
 * of on both sides of it, far or near. */
static double *chains_make(const struct recording *r, const struct feature *f, size_t count)
{
    double *links = arena_alloc(r->arena, (count + 2) * sizeof *links);
    for (size_t i = 0; i < count; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            if (f[i].mentions[n].before < i)
                add_range(links, f[i].mentions[n].before + 1, i, link(&f[i].mentions[n]));
    for (size_t i = 1; i <= count; i++)
        links[i] += links[i - 1];
    return links;
}

/* How many sentences of a kind there are, of those near each other one, in STYLE_SENTENCES; 1 at
 * most. */
static double rate(const struct feature *f, size_t count, bool is(const struct feature *))
{
    size_t found = 0, last = 0;
    for (size_t i = 0; i < count; i++) {
        if (!is(&f[i]))
            continue;
        found += !found || i - last > SAME_SENTENCES;
        last = i;
    }
    return fmin((double) (found * STYLE_SENTENCES) / (double) (count + STYLE_UNSURE), 1);
}

static bool announces_dish(const struct feature *f)
{
    return f->opens >= ANNOUNCED || f->order;
}

static bool ends_dish(const struct feature *f)
{
    return f->closes >= CLOSE_CLEAR;
}

struct talk talk_make(const struct recording *r, const struct feature *f, size_t count)
{
    return (struct talk){.r = r,
                         .f = f,
                         .count = count,
                         .announces = rate(f, count, announces_dish),
                         .takes_leave = rate(f, count, ends_dish),
                         .chains = chains_make(r, f, count)};
}

double room(size_t count)
{
    return count < SHORT_TALK ? (double) count / SHORT_TALK : 1;
}

/* ---- what sentences [first, end) come to, each count by itself: a border asks for few */

static inline double sum(const struct feature *f, size_t first, size_t end,
                         double count(const struct feature *))
{
    double all = 0;
    for (size_t i = first; i < end; i++)
        all += count(&f[i]);
    return all;
}

#define COUNT(name, value)                      \
    static double name(const struct feature *f) \
    {                                           \
        return (double) (value);                \
    }
COUNT(cooking, f->cooking)
COUNT(quiet, f->cooking <= 0)
COUNT(lines, f->lines)
COUNT(units, f->units)
COUNT(early, f->early)
COUNT(late, f->late + f->finished)
COUNT(sweet, f->sweet)
COUNT(savory, f->savory)
COUNT(vessel, f->vessel)

static size_t first_of(size_t i, size_t sentences)
{
    return i > sentences ? i - sentences : 0;
}

static size_t end_of(const struct talk *t, size_t i, size_t sentences)
{
    return i + sentences < t->count ? i + sentences : t->count;
}

static inline double before(const struct talk *t, size_t i, size_t sentences,
                            double count(const struct feature *))
{
    return sum(t->f, first_of(i, sentences), i, count);
}

static inline double next(const struct talk *t, size_t i, size_t sentences,
                          double count(const struct feature *))
{
    return sum(t->f, i, end_of(t, i, sentences), count);
}

static double closes_before(const struct talk *t, size_t i)
{
    double most = 0;
    for (size_t n = first_of(i, CLOSED_SENTENCES); n < i; n++)
        most = t->f[n].closes > most ? t->f[n].closes : most;
    return most;
}

/* What sentences [first, end) are about. */
static struct affinity about(const struct feature *f, size_t first, size_t end)
{
    struct affinity all = {0};
    for (size_t i = first; i < end; i++)
        affinity_join(&all, &f[i].about);
    return all;
}

/* Of foods found in desserts only, and of those in none: from -1, savory, to 1, sweet. */
static double taste(double sweet_foods, double savory_foods)
{
    return (sweet_foods - savory_foods) / (sweet_foods + savory_foods + 1);
}

/* What the table's points come to, none over the least of a place that says nothing. */
static double words_speak(double points)
{
    return fmax(fmin(points + WORDS_LEAST, WORDS_MOST), -WORDS_NONE) * WORDS_UNIT;
}

static bool before_timed(const struct feature *f, size_t i)
{
    for (size_t n = i; n-- > 0 && i - n <= TIMED_SENTENCES;)
        if (f[n].timed)
            return true;
    return false;
}

/* The phrases at the border and before it. */
static void find_phrases(const struct talk *t, size_t i, double *x)
{
    const struct feature *here = &t->f[i];
    x[OPENS] = here->returns ? 0 : here->opens;
    x[OPENS_FOOD] = t->f[i].opens_food;
    x[NAMED] = here->opening_title.first <= here->opening_title.last;
    x[ORDER] = here->order;
    x[RETURNS] = here->returns;
    x[CLOSED] = fmin(closes_before(t, i), CLOSED_MOST);
    x[CLOSED_NOW] = i ? fmin(t->f[i - 1].closes, CLOSED_MOST) : 0;
    x[MEANWHILE] = here->meanwhile;
    x[LEAVES] = t->takes_leave;
    x[UNANNOUNCED] = here->opens < OPEN_WEIGHT ? t->announces : 0;
    x[UNCLOSED] = x[CLOSED] < CLOSED_WEIGHT ? t->takes_leave : 0;
}

/* How the sentence begins, and after what silence. */
static void find_words(const struct talk *t, size_t i, double *x)
{
    const struct feature *here = &t->f[i];
    size_t first = t->r->sentences.at[i].first;
    x[TURNS] = here->turns;
    x[FOLLOWS] = here->follows;
    x[GOES_ON] = here->goes_on;
    x[POINTS] = here->points;
    x[HEADING] = here->heading;
    x[SHORT] = here->weight < SHORT_WEIGHT;
    x[PRONOUN] = here->pronoun && here->opens <= 0;
    x[FIRST_THE] = here->beginning == OF_THE;
    x[FIRST_ME] = here->beginning == OF_ME;
    x[FIRST_DEPENDENT] = here->beginning == OF_DEPENDENT;
    x[FIRST_ACTION] = here->beginning == OF_ACTION;
    x[VESSEL] = next(t, i, SOON_SENTENCES, vessel) > 0;
    x[VESSEL_FIRST] = here->vessel_first;
    x[OTHER_BOWL] = here->other_bowl;
    x[PAUSE] = t->r->words.at[first].pause;
    x[SILENCE] = fmin(silence_before(t->r, first), SILENCE_MOST);
    x[SPEAKER] = t->r->words.at[first].new_speaker;
    x[WORDS_NEW] = words_speak(here->turn.begins);
    x[WORDS_BACK] = words_speak(here->turn.returns);
}

/* How much is cooked on both sides, and what. */
static void find_cooking(const struct talk *t, size_t i, double *x)
{
    const struct affinity last = about(t->f, first_of(i, NEAR_SENTENCES), i),
                          coming = about(t->f, i, end_of(t, i, NEAR_SENTENCES));
    x[COOKING_NEXT] = fmin(next(t, i, NEAR_SENTENCES, cooking), COOKING_MOST);
    x[COOKING_BEFORE] = fmin(before(t, i, NEAR_SENTENCES, cooking), COOKING_MOST);
    x[HERE_COOKING] = fmin(t->f[i].cooking, PHASE_MOST);
    x[LINES_NEXT] = fmin(next(t, i, LINES_SENTENCES, lines), LINES_MOST);
    x[LINES_BEFORE] = fmin(before(t, i, PHASE_SENTENCES, lines), LATER_MOST);
    x[LINES_HERE] = fmin((double) t->f[i].lines, PHASE_MOST);
    x[UNITS_BEFORE] = fmin(before(t, i, UNITS_SENTENCES, units), UNITS_MOST);
    x[MAIN_FIRST] = t->f[i].main_first;
    x[TALK_BEFORE] = before(t, i, NEAR_SENTENCES, quiet);
    x[TIMED] = before_timed(t->f, i);
    x[EARLY_BEFORE] = fmin(before(t, i, PHASE_SENTENCES, early), PHASE_MOST);
    x[EARLY_NEXT] = fmin(next(t, i, PHASE_SENTENCES, early), PHASE_MOST);
    x[LATE_BEFORE] = fmin(before(t, i, PHASE_SENTENCES, late), PHASE_MOST);
    x[GOES_WITH] = affinity_between(&last, &coming);
    x[TASTE] =
        fabs(taste(next(t, i, TASTE_SENTENCES, sweet), next(t, i, TASTE_SENTENCES, savory))
             - taste(before(t, i, TASTE_SENTENCES, sweet), before(t, i, TASTE_SENTENCES, savory)));
}

void find_evidence(const struct talk *t, size_t i, double *x)
{
    x[BEGINS] = room(t->count);
    x[AT_START] = i < START_SENTENCES;
    find_phrases(t, i, x);
    find_words(t, i, x);
    find_cooking(t, i, x);
    find_spoken(t, i, x);
}
