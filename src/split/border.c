/* split/border.c
 * SPDX-License-Identifier: MIT */
#include "split/border.h"

#include <math.h>

#include "base/arena.h"
#include "words/clock.h"

/* A talk of fewer sentences has room for less of a dish, and is asked for less. */
#define SHORT_TALK 24
/* How many sentences before and after a border are looked at. */
#define LINES_SENTENCES 10
#define BEFORE_SENTENCES 6
#define NEAR_SENTENCES 4
#define CLOSED_SENTENCES 8
#define PEAK_SENTENCES 6
#define PEAK_LINES 3
#define ANNOUNCED 5.0 /* the weight of an opening phrase with a name in it */
#define LINKS_MOST 6.0
#define SILENCE_MOST 10.0
#define PLAIN_LINK 0.25 /* of salt, water, oil, spice: every dish has them */
#define LINK 0.3
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

/* Sums over sentences [first, end). */
struct sums {
    double cooking, lines, closes;
    size_t quiet; /* sentences without cooking */
    bool component, vessel;
};

static struct sums sum(const struct feature *f, size_t first, size_t end)
{
    struct sums s = {0};
    for (size_t i = first; i < end; i++) {
        s.cooking += f[i].cooking;
        s.lines += (double) f[i].lines;
        s.closes = f[i].closes > s.closes ? f[i].closes : s.closes;
        s.quiet += f[i].cooking <= 0;
        s.component |= f[i].component;
        s.vessel |= f[i].vessel;
    }
    return s;
}

static struct sums sum_before(const struct feature *f, size_t i, size_t sentences)
{
    return sum(f, i > sentences ? i - sentences : 0, i);
}

static struct sums sum_after(const struct feature *f, size_t count, size_t i, size_t sentences)
{
    return sum(f, i, i + sentences < count ? i + sentences : count);
}

enum evidence {
#define EVIDENCE(name, weight, what) name,
#include "split/border.def"
#undef EVIDENCE
    EVIDENCES
};

static const double WEIGHTS[EVIDENCES] = {
#define EVIDENCE(name, weight, what) weight,
#include "split/border.def"
#undef EVIDENCE
};

/* How much room for dishes there is, of 1. */
static double room(size_t count)
{
    return count < SHORT_TALK ? (double) count / SHORT_TALK : 1;
}

/* What speaks for a dish that begins with sentence `i`, and against it. */
static void find_evidence(const struct recording *r, const struct feature *f, size_t count,
                          const double *links, size_t i, double *x)
{
    const struct feature *here = &f[i];
    const struct sums near = sum_before(f, i, NEAR_SENTENCES);
    x[BEGINS] = room(count);
    x[OPENS] = here->returns ? 0 : here->opens;
    x[RETURNS] = here->returns;
    x[NAMED] = here->opening_title.first <= here->opening_title.last;
    x[CLOSED] = fmin(sum_before(f, i, CLOSED_SENTENCES).closes, 6);
    x[MEANWHILE] = here->meanwhile;
    x[LINES_NEXT] = fmin(sum_after(f, count, i, LINES_SENTENCES).lines, 8);
    x[LINES_BEFORE] = fmin(sum_before(f, i, BEFORE_SENTENCES).lines, 6);
    x[LINKS] = fmin(links[i], LINKS_MOST);
    x[COOKING_NEXT] = fmin(sum_after(f, count, i, NEAR_SENTENCES).cooking, 10);
    x[COOKING_BEFORE] = fmin(near.cooking, 10);
    x[TALK_BEFORE] = (double) near.quiet;
    x[COMPONENT] = sum_after(f, count, i, 3).component;
    x[VESSEL] = sum_after(f, count, i, 2).vessel;
    x[TURNS] = here->turns;
    x[GOES_ON] = here->goes_on;
    x[PRONOUN] = here->pronoun && here->opens <= 0;
    x[HEADING] = here->heading;
    x[PAUSE] = r->words.at[r->sentences.at[i].first].pause;
    x[SILENCE] = fmin(silence_before(r, r->sentences.at[i].first), SILENCE_MOST);
}

static double start_score(const struct recording *r, const struct feature *f, size_t count,
                          const double *links, size_t i)
{
    double x[EVIDENCES], score = 0;
    find_evidence(r, f, count, links, i, x);
    for (int n = 0; n < EVIDENCES; n++)
        score += WEIGHTS[n] * x[n];
    return score;
}

static bool is_announced(const struct feature *f)
{
    return f->opens >= ANNOUNCED && f->opening_title.first <= f->opening_title.last;
}

/* Which of two borders is the better one; an announcement is better than the first amount after it.
 */
static bool beats(const struct feature *f, const double *begins, size_t n, size_t i)
{
    bool one = is_announced(&f[n]), other = is_announced(&f[i]);
    return one != other ? one : begins[n] > begins[i] || (n < i && begins[n] == begins[i]);
}

/* Whether a better border than `i` stands so near that no dish fits between them: within a few
 * sentences and a few foods. */
static bool is_beaten(const struct feature *f, const double *begins, size_t count, size_t i)
{
    size_t lines = 0;
    for (size_t n = i; n-- > 0 && i - n <= PEAK_SENTENCES && (lines += f[n].lines) < PEAK_LINES;)
        if (beats(f, begins, n, i))
            return true;
    lines = f[i].lines;
    for (size_t n = i + 1; n < count && n - i <= PEAK_SENTENCES && lines < PEAK_LINES; n++) {
        if (beats(f, begins, n, i))
            return true;
        lines += f[n].lines;
    }
    return false;
}

double another_dish(size_t count)
{
    return WEIGHTS[BEGINS] * (1 - room(count));
}

double *weigh_borders(const struct recording *r, const struct feature *f, size_t count)
{
    const double *links = chains_make(r, f, count);
    double *begins = arena_alloc(r->arena, (count + 1) * sizeof *begins);
    double *best = arena_alloc(r->arena, (count + 1) * sizeof *best);
    for (size_t i = 0; i < count; i++)
        begins[i] = start_score(r, f, count, links, i);
    for (size_t i = 0; i < count; i++)
        best[i] = is_beaten(f, begins, count, i) ? IMPOSSIBLE : begins[i];
    return best;
}
