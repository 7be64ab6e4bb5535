/* kitchen/time.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/time.h"

#include <math.h>

#include "kitchen/print.h"

#define HUNDRED_YEARS (100.0 * 366 * 86400)
#define HOT_STEPS 12 /* so many steps back a pan may have come to the heat */

/* The word is compared first: it differs in most rows, `by` in few. */
static const struct time_rule *find_rule(const struct kitchen *k, const char *by, struct text word)
{
    for (size_t i = 0; i < k->time_rules.count; i++)
        if (text_equal(k->time_rules.at[i].word, word) && text_is(k->time_rules.at[i].by, by))
            return &k->time_rules.at[i];
    return NULL;
}

bool action_cooks(const struct kitchen *k, struct text action)
{
    const struct time_rule *rule = find_rule(k, "action", action);
    return rule && rule->counts == COUNTS_COOK;
}

bool dish_cooks(const struct kitchen *k, const struct dish *dish)
{
    for (size_t i = 0; i < dish->steps.count; i++)
        for (size_t n = 0; n < dish->steps.at[i].actions.count; n++)
            if (action_cooks(k, dish->steps.at[i].actions.at[n]))
                return true;
    return false;
}

/* One of the two sides of a stretch of time: the main work, and what runs beside it. */
struct side {
    double min[COUNTS_SUMMED], max[COUNTS_SUMMED]; /* by enum counts: active, cook, rest */
    struct text from[COUNTS_SUMMED];
    bool known;
};

/* Steps from one that does not run beside another, to the next such one. */
struct stretch {
    struct side main, beside;
};

struct sums {
    struct time_sum by[COUNTS_SUMMED];
    text_list from[COUNTS_SUMMED]; /* what was added, in words */
    text_list beside;              /* what was not */
};

static double side_min(const struct side *s)
{
    return s->min[0] + s->min[1] + s->min[2];
}

static double side_max(const struct side *s)
{
    return s->max[0] + s->max[1] + s->max[2];
}

/* "fry 5 minutes × 2" */
static struct text describe(const struct kitchen *k, struct arena *a, const struct duration *d,
                            size_t times, bool unknown)
{
    struct text length = print_time(k, a, d->min, d->max, WORDS_WHOLE);
    if (d->approx)
        length = PHRASE_TEXT(k, a, about, length);
    if (times > 1)
        length = PHRASE_TEXT(k, a, times, length, arena_format(a, "%zu", times));
    if (unknown)
        length = PHRASE_TEXT(k, a, per_unknown, length, d->each);
    return d->of.length ? PHRASE_TEXT(k, a, each_time, d->of, length) : length;
}

/* How often a time for each side or batch is spent; `unknown` when nobody said. */
static size_t times_of(const struct kitchen *k, const struct duration *d, size_t batches,
                       bool *unknown)
{
    const struct time_rule *rule = d->each.length ? find_rule(k, "each", d->each) : NULL;
    *unknown = false;
    if (!rule)
        return 1;
    if (rule->times)
        return rule->times;
    *unknown = batches == 0;
    return batches ? batches : 1;
}

static void add_duration(const struct kitchen *k, struct arena *a, struct side *side,
                         enum counts counts, const struct duration *d, size_t batches)
{
    bool unknown;
    size_t times = times_of(k, d, batches, &unknown);
    if (!(d->min >= 0) || d->min > HUNDRED_YEARS || !(d->max >= d->min))
        return;
    side->known = true;
    side->min[counts] += d->min * (double) times;
    side->max[counts] += d->max * (double) times;
    side->from[counts] = phrase_listed(k, a, side->from[counts], describe(k, a, d, times, unknown));
}

/* Whether the dish was on the heat before step `at`: by the last action that tells, not long
 * before.
 */
static bool is_hot(const struct kitchen *k, const struct dish *dish, size_t at)
{
    for (size_t far = 0; far < HOT_STEPS && at-- > 0; far++)
        for (size_t n = dish->steps.at[at].actions.count; n-- > 0;) {
            const struct time_rule *rule = find_rule(k, "action", dish->steps.at[at].actions.at[n]);
            if (rule && rule->counts != COUNTS_BESIDE)
                return rule->counts == COUNTS_COOK;
        }
    return false;
}

/* What is stirred or added on the heat cooks. */
static enum counts counts_as(const struct kitchen *k, const struct dish *dish, size_t at,
                             const struct duration *d)
{
    const struct step *step = &dish->steps.at[at];
    struct text action = d->of.length || !step->actions.count ? d->of : step->actions.at[0];
    const struct time_rule *rule = find_rule(k, "action", action);
    if (rule)
        return rule->counts;
    return is_hot(k, dish, at) ? COUNTS_COOK : COUNTS_ACTIVE;
}

static void add_step(const struct kitchen *k, struct arena *a, struct stretch *s,
                     const struct dish *dish, size_t at, size_t batches)
{
    const struct step *step = &dish->steps.at[at];
    for (size_t i = 0; i < step->durations.count; i++) {
        if (step->durations.at[i].instead)
            continue; /* of two waits in place of each other the first counts */
        enum counts counts = counts_as(k, dish, at, &step->durations.at[i]);
        bool beside = step->beside || counts == COUNTS_BESIDE;
        add_duration(k, a, beside ? &s->beside : &s->main,
                     counts == COUNTS_BESIDE ? COUNTS_COOK : counts, &step->durations.at[i],
                     batches);
    }
}

/* Only heating the oven up, or nothing that takes time: no stretch of its own. */
static bool begins_stretch(const struct kitchen *k, const struct dish *dish, size_t at)
{
    const struct step *step = &dish->steps.at[at];
    for (size_t i = 0; !step->beside && i < step->durations.count; i++)
        if (counts_as(k, dish, at, &step->durations.at[i]) != COUNTS_BESIDE)
            return true;
    return false;
}

static struct text side_words(const struct kitchen *k, struct arena *a, const struct side *s)
{
    return phrase_listed(k, a, phrase_listed(k, a, s->from[0], s->from[1]), s->from[2]);
}

/* The longer side is what the stretch takes. */
static void end_stretch(const struct kitchen *k, struct arena *a, struct stretch *s,
                        struct sums *sums)
{
    bool longer = side_max(&s->beside) > side_max(&s->main)
                  || (side_max(&s->beside) == side_max(&s->main)
                      && side_min(&s->beside) > side_min(&s->main));
    const struct side *taken = longer ? &s->beside : &s->main,
                      *left = longer ? &s->main : &s->beside;
    for (size_t i = 0; taken->known && i < COUNTS_SUMMED; i++) {
        if (!taken->from[i].length)
            continue;
        sums->by[i].known = true;
        sums->by[i].min += taken->min[i];
        sums->by[i].max += taken->max[i];
        *LIST_ADD(a, &sums->from[i]) = taken->from[i];
    }
    if (left->known)
        *LIST_ADD(a, &sums->beside) = PHRASE_TEXT(k, a, meanwhile, side_words(k, a, left));
    *s = (struct stretch){.main = {.known = false}};
}

void time_dish(const struct kitchen *k, struct arena *a, struct dish *dish, size_t batches)
{
    struct sums sums = {.beside = {0}};
    struct stretch stretch = {.main = {.known = false}};
    for (size_t i = 0; i < dish->steps.count; i++) {
        if (begins_stretch(k, dish, i))
            end_stretch(k, a, &stretch, &sums);
        add_step(k, a, &stretch, dish, i, batches);
    }
    end_stretch(k, a, &stretch, &sums);
    for (size_t i = 0; i < COUNTS_SUMMED; i++)
        sums.by[i].from = phrase_all_listed(k, a, sums.from[i].at, sums.from[i].count);
    dish->active = sums.by[COUNTS_ACTIVE];
    dish->cook = sums.by[COUNTS_COOK];
    dish->rest = sums.by[COUNTS_REST];
    dish->total = (struct time_sum){.known = false, .from = TEXT_EMPTY};
    for (size_t i = 0; i < COUNTS_SUMMED; i++) {
        dish->total.known |= sums.by[i].known;
        dish->total.min += sums.by[i].min;
        dish->total.max += sums.by[i].max;
        dish->total.from = phrase_listed(k, a, dish->total.from, sums.by[i].from);
    }
    dish->total.from = phrase_listed(k, a, dish->total.from,
                                     phrase_all_listed(k, a, sums.beside.at, sums.beside.count));
}

struct text iso8601_duration(struct arena *a, double seconds)
{
    if (!(seconds >= 0) || seconds > HUNDRED_YEARS)
        return TEXT_EMPTY;
    unsigned long long left = (unsigned long long) round(seconds);
    unsigned long long days = left / 86400, hours = left / 3600 % 24, minutes = left / 60 % 60;
    struct text done = days ? arena_format(a, "P%lluD", days) : TEXT_OF("P");
    if (left % 86400 || !left)
        done = arena_format(a, "%.*sT", TEXT(done));
    if (hours)
        done = arena_format(a, "%.*s%lluH", TEXT(done), hours);
    if (minutes)
        done = arena_format(a, "%.*s%lluM", TEXT(done), minutes);
    return left % 60 || !left ? arena_format(a, "%.*s%lluS", TEXT(done), left % 60) : done;
}
