/* check/heats_again.c: two temperatures that cannot both be right.
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "check/again.h"

/* One heat in two scales is named within so many words, and rounded to a dial's marks: 25 F, 10 C,
 * a gas mark. */
#define SAME_HEAT_WORDS 12
#define NEXT_WORDS 4
#define SCALE_SLACK_C 11.0
/* A fan oven is set so much lower (common practice). */
#define FAN_LESS_C 20.0
/* An oven that is cooler only keeps things warm (common practice, no source). */
#define WARM_C 115.0
/* No dial has less. */
#define COLDEST_OVEN_C 30.0
/* The same heat said again. */
#define AGAIN_SLACK_C 3.0

/* A gas mark's heat, from the pack's table; NAN for a mark that is not there. */
static double mark_celsius(const struct checker *c, struct ratio mark)
{
    const struct table *t = pack_table(c->k, "oven-marks");
    for (size_t row = 0; t && row < t->rows; row++) {
        struct text name = table_cell(t, row, 0), heat = table_cell(t, row, 1);
        if (ratio_equal(ratio_read(name.at, name.length), mark))
            return (ratio_double(ratio_read(heat.at, heat.length)) - 32) / 1.8;
    }
    return NAN;
}

static double celsius(const struct checker *c, const struct temperature *t)
{
    double value = ratio_double(t->value);
    double heat = t->unit == 'C'   ? value
                  : t->unit == 'F' ? (value - 32) / 1.8
                                   : mark_celsius(c, t->value);
    return t->fan ? heat + FAN_LESS_C : heat;
}

typedef LIST(const struct temperature *) heat_list;

static int by_words(const void *a, const void *b)
{
    size_t x = (*(const struct temperature *const *) a)->words.first,
           y = (*(const struct temperature *const *) b)->words.first;
    return x < y ? -1 : x > y;
}

/* As they were said, which steps need not follow. */
static void add_heats(struct checker *c, heat_list *heats)
{
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        for (size_t n = 0; n < s->temperatures.count; n++)
            *LIST_ADD(c->r->arena, heats) = &s->temperatures.at[n];
    }
    if (heats->count)
        qsort(heats->at, heats->count, sizeof *heats->at, by_words);
}

/* "200 Celsius, that's 350 Fahrenheit": neighbours in two scales, of one thing. A number that no
 * oven is set to has no scale that could be told by it. */
static bool scales_disagree(const struct checker *c, const struct temperature *a,
                            const struct temperature *b)
{
    if (!text_equal(a->of, b->of) || (text_is(b->of, "oven") && celsius(c, b) < COLDEST_OVEN_C))
        return false;
    bool near = b->words.first > a->words.last && b->words.first - a->words.last <= SAME_HEAT_WORDS;
    return near && a->unit != b->unit && fabs(celsius(c, a) - celsius(c, b)) > SCALE_SLACK_C;
}

/* "325, like I said", where nothing like it was said. */
static const struct temperature *never_said(const struct checker *c, const heat_list *heats,
                                            size_t n)
{
    const struct temperature *t = heats->at[n], *other = NULL;
    if (!looks_back(c, "recap_before", t->words))
        return NULL;
    for (size_t i = 0; i < n; i++) {
        if (!text_equal(heats->at[i]->of, t->of))
            continue;
        if (fabs(celsius(c, heats->at[i]) - celsius(c, t)) <= AGAIN_SLACK_C)
            return NULL;
        other = heats->at[i];
    }
    return other;
}

/* "It's a hundred and ninety", "180", and then somebody says "before, you said something else". */
#define REMARK_WORDS 12
static bool remarked(const struct checker *c, const struct temperature *t)
{
    struct span where, behind = {t->words.last + 1, t->words.last + REMARK_WORDS};
    if (behind.last >= c->r->words.count)
        behind.last = c->r->words.count - 1;
    return behind.first <= behind.last
           && said_find(&c->sayings, c->r, "says_again", behind, &where);
}

/* Whether the sentence puts something into the oven: "bake it at 425", "the cake goes in,
 * thirty-five minutes at 180". */
static bool bakes(const struct checker *c, const struct sentence *s)
{
    if (match_in(c->r, s, KIND_OF(duration)))
        return true;
    for (size_t i = s ? s->first : 1; s && i <= s->last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & MARK_OF(ovens))
            return true;
    }
    return false;
}

/* "350, or 325 in a glass dish", "425, it's 450 at my sister's": the two stand near each other, and
 * nothing is baked at the second, or words turn from one to the other. */
static bool alternative(const struct checker *c, const struct temperature *a,
                        const struct temperature *b)
{
    static const unsigned char TURNS[] = {TAG_OR, TAG_SORRY, TAG_IF, TAG_NOT};
    if (b->words.first >= a->words.last + SAME_HEAT_WORDS)
        return false;
    for (size_t i = a->words.last + 1; i < b->words.first; i++)
        if (memchr(TURNS, c->r->words.at[i].tag, sizeof TURNS))
            return true;
    return b->words.first < a->words.last + NEXT_WORDS
           || !(bakes(c, sentence_of(c->r, b->words.first)) || remarked(c, b));
}

/* "Four hundred for an hour": how long stands beside the heat, the nearest; NULL: nobody says. */
#define TIME_WORDS 6
static const struct match *time_beside(const struct checker *c, const struct temperature *t)
{
    const struct match *nearest = NULL, *m;
    size_t first = t->words.first, last = t->words.last, least = TIME_WORDS + 1;
    struct span near = {first > TIME_WORDS ? first - TIME_WORDS : 0, last + TIME_WORDS};
    struct matches times = matches_among(c->r, near, KIND_OF(duration));
    while ((m = matches_next(&times))) {
        size_t away = m->words.first > last   ? m->words.first - last
                      : m->words.last < first ? first - m->words.last
                                              : 0;
        if (away < least) {
            nearest = m;
            least = away;
        }
    }
    return nearest;
}

/* Two heats that each have their time are of two things, one after the other. */
static bool two_bakes(const struct checker *c, const struct temperature *a,
                      const struct temperature *b)
{
    const struct match *time = time_beside(c, a), *other = time_beside(c, b);
    return time && other && time != other && !remarked(c, b);
}

/* "Bake at 350" after "oven at 375", and nothing said that turns it down. */
static const struct temperature *unturned(const struct checker *c, const heat_list *heats, size_t n)
{
    const struct temperature *t = heats->at[n], *other = NULL;
    for (size_t i = 0; i < n && text_is(t->of, "oven"); i++)
        if (text_is(heats->at[i]->of, "oven"))
            other = heats->at[i];
    if (!other || other->unit != t->unit || other->fan != t->fan
        || said_with(c, "turns_heat", t->words)
        || (said_with(c, "turns_heat", other->words) && !said_with(c, "turns_on", other->words))
        || span_has_tag(c->r, other->words, TAG_CLOCK) || alternative(c, other, t)
        || two_bakes(c, other, t))
        return NULL;
    bool warms = celsius(c, t) < WARM_C || celsius(c, other) < WARM_C;
    return !warms
                   && fabs(celsius(c, other) - celsius(c, t))
                          > (remarked(c, t) ? AGAIN_SLACK_C : SCALE_SLACK_C)
               ? other
               : NULL;
}

/* "200 Celsius, that's 350 Fahrenheit, and 180 if it's a fan": one that fits an earlier one is
 * right, whatever stands between. */
static bool agrees(const struct checker *c, const heat_list *heats, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (fabs(celsius(c, heats->at[i]) - celsius(c, heats->at[n])) <= SCALE_SLACK_C)
            return true;
    return false;
}

/* "I thought you baked it at one seventy": a number told again, in the scale of the oven's. */
static void check_told(struct checker *c, const heat_list *heats, const struct match *m)
{
    const struct temperature *other = NULL;
    for (size_t i = 0; i < heats->count; i++) {
        const struct temperature *t = heats->at[i];
        if (t->words.first <= m->words.last && m->words.first <= t->words.last)
            return; /* a step has it */
        if (t->words.first > m->words.first || !text_is(t->of, "oven"))
            continue;
        if (ratio_equal(t->value, m->low))
            return;
        other = t;
    }
    if (other && looks_back(c, "recap_before", m->words))
        REPORT(c, said_otherwise, subject_words(c, m->words), said_words(c->r, other->words));
}

/* "I told you three fifty, but if your oven is a good one do three seventy-five": the number that
 * comes behind a "but" is the other one. */
#define BUT_WORDS 20
static void check_but(struct checker *c, const match_list *told, size_t n)
{
    const struct match *a = told->at[n - 1], *b = told->at[n];
    struct span where, between = {a->words.last + 1, b->words.first - 1};
    if (!stands_before(c, "told_heat", a->words) || span_is_empty(between)
        || between.last > a->words.last + BUT_WORDS || ratio_equal(a->low, b->low)
        || !said_find(&c->sayings, c->r, "but", between, &where))
        return;
    REPORT(c, said_otherwise, subject_words(c, b->words), said_words(c->r, a->words));
}

static void find_told(struct checker *c, const heat_list *heats)
{
    match_list told = {0};
    if (!heats->count)
        return;
    add_matches(c, KIND_OF(temperature), SCOPE_NEGATED | SCOPE_INSTEAD, &told);
    for (size_t n = 0; n < told.count; n++)
        check_told(c, heats, told.at[n]);
    for (size_t n = 1; n < told.count; n++)
        check_but(c, &told, n);
}

void find_heats_again(struct checker *c)
{
    heat_list heats = {0};
    add_heats(c, &heats);
    find_told(c, &heats);
    for (size_t n = 0; n < heats.count; n++) {
        const struct temperature *other = never_said(c, &heats, n);
        struct subject_of what = subject_words(c, heats.at[n]->words);
        const struct temperature *before = other ? NULL : unturned(c, &heats, n);
        if (other)
            REPORT(c, said_otherwise, what, said_words(c->r, other->words));
        if (before)
            REPORT(c, two_heats, what, said_words(c->r, before->words));
        for (size_t i = 0; i < n && !other && !agrees(c, &heats, n); i++)
            if (scales_disagree(c, heats.at[i], heats.at[n])) {
                REPORT(c, two_scales, what, said_words(c->r, heats.at[i]->words));
                break;
            }
    }
}
