/* split/talked.c
 * SPDX-License-Identifier: MIT */
#include "split/talked.h"

#include <math.h>

#include "split/evidence.h"
#include "split/weighted.h"

/* What must speak for it: a dish that is lost costs more than one too many. */
#define TALK_LEAST 0.25
/* Of fewer sentences it cannot be told. */
#define TELLING_SENTENCES 10
/* A few things or sentences tell little: as if so many more told nothing. */
#define UNSURE 2.0
#define WORDS_UNSURE 5.0

static const double WEIGHTS[TALKEDS] = {
#define TALKED(name, weight, what) weight,
#include "split/talked.def"
#undef TALKED
};

/* What the sentences of all dishes come to. */
struct talk_sums {
    size_t sentences, measured, talk, timed, vessel, points, questions, things, again;
    double whole, words, names;
};

static void add_whole(const struct whole *d, struct talk_sums *sums)
{
    sums->sentences += d->sentences;
    sums->measured += d->measured;
    sums->talk += d->talk;
    sums->timed += d->timed;
    sums->names += d->name_weight * (double) d->sentences;
}

/* Things, and those of them that the dish named before. */
static void count_things(const struct wholes *w, size_t i, struct talk_sums *sums)
{
    for (size_t n = 0; n < w->f[i].mentions_count; n++) {
        const struct mention *m = &w->f[i].mentions[n];
        if (m->marks & PLAIN_MARKS)
            continue;
        sums->things++;
        sums->again += !m->fresh && m->before < i && w->owner[m->before] == w->owner[i];
    }
}

static void count_sentence(const struct wholes *w, size_t i, struct talk_sums *sums)
{
    const struct feature *f = &w->f[i];
    sums->whole += f->weight;
    sums->vessel += f->vessel;
    sums->points += f->points;
    sums->questions += (w->r->sentences.at[i].flags & SENTENCE_QUESTION) != 0;
    sums->words += (double) f->talked;
    count_things(w, i, sums);
}

void find_talked(const struct wholes *w, double *x)
{
    struct talk_sums sums = {0};
    for (size_t d = 0; d < w->dishes; d++)
        add_whole(&w->of[d], &sums);
    for (size_t i = 0; i < w->r->sentences.count; i++)
        if (w->owner[i] != NO_DISH)
            count_sentence(w, i, &sums);
    const double all = (double) sums.sentences;
    x[TALKED_ONLY_TALKS] = 1;
    x[TALKED_DISHES] = log((double) w->dishes);
    x[TALKED_SENTENCES] = log(1 + all);
    x[TALKED_MEASURED] = (double) sums.measured / fmax(sums.whole, 1);
    x[TALKED_TALK] = (double) sums.talk / all;
    x[TALKED_TIMED] = (double) sums.timed / all;
    x[TALKED_VESSEL] = (double) sums.vessel / all;
    x[TALKED_POINTS] = (double) sums.points / all;
    x[TALKED_QUESTION] = (double) sums.questions / all;
    x[TALKED_AGAIN] = (double) sums.again / ((double) sums.things + UNSURE);
    x[TALKED_NAME] = sums.names / all;
    x[TALKED_WORDS] = sums.words / (all + WORDS_UNSURE);
}

/* "Today we're making a soup", and later "that's our soup": that one is cooked. */
static bool is_made(const struct wholes *w)
{
    bool announced = false;
    for (size_t i = 0; i < w->r->sentences.count; i++) {
        announced |= w->f[i].opens >= ANNOUNCED && !span_is_empty(w->f[i].opening_title);
        if (announced && w->f[i].closes >= CLOSE_CLEAR && !span_is_empty(w->f[i].closing_title))
            return true;
    }
    return false;
}

static bool is_too_short(const struct wholes *w)
{
    size_t sentences = 0;
    for (size_t d = 0; d < w->dishes; d++)
        sentences += w->of[d].sentences;
    return sentences < TELLING_SENTENCES;
}

bool is_only_talk(const struct wholes *w)
{
    double x[TALKEDS];
    if (is_too_short(w) || is_made(w))
        return false;
    find_talked(w, x);
    return weighted_sum(x, WEIGHTS, TALKEDS) > TALK_LEAST;
}
