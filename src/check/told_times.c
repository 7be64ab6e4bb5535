/* check/told_times.c: a time told again by its bare number: "I said twenty-five, it was more like
 * thirty-five in the end", "forty minutes ... what does the card say? It says thirty-five".
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* What it took stands so near what was said; what is written, so near the time. */
#define TOOK_WORDS 12
#define WRITTEN_WORDS 30
/* "What have I got it written down as?" stands so near before the answer. */
#define ASKED_WORDS 8
/* A number that is further from the time counts something else. */
#define FURTHEST 3

/* The seconds that one of the time's units has: "forty minutes" counts in 60; none where it has no
 * number. */
static struct ratio time_unit(const struct checker *c, const struct match *time)
{
    const struct sentence *s = sentence_of(c->r, time->words.first);
    struct amount number;
    struct span where;
    if (!s || !first_number(c, s, time->words, &number, &where) || ratio_double(number.min) <= 0)
        return RATIO_NONE;
    return ratio_divide(time->low, number.min);
}

/* The first time, or number that no unit makes an amount of, in a part of one sentence; `*count` in
 * seconds, where `unit` has so many. */
static bool bare_time(const struct checker *c, struct span within, struct ratio unit,
                      struct amount *count, struct span *where)
{
    const struct sentence *s = sentence_of(c->r, within.first);
    if (!s || !ratio_known(unit) || !first_number(c, s, within, count, where)
        || match_over(c->r, s, *where, KIND_OF(amount)))
        return false;
    const struct match *time = match_over(c->r, s, *where, KIND_OF(duration));
    *where = time ? time->words : *where;
    count->min = time ? time->low : ratio_multiply(count->min, unit);
    count->max = time ? time->high : ratio_multiply(count->max, unit);
    return ratio_finite(count->max);
}

static bool as_long(const struct match *time, const struct amount *count)
{
    return overlap(ratio_double(time->low), ratio_double(time->high), ratio_double(count->min),
                   ratio_double(count->max));
}

static bool comparable(const struct match *time, const struct amount *count)
{
    double one = ratio_double(time->high), other = ratio_double(count->min);
    return other > 0 && one <= other * FURTHEST && other <= one * FURTHEST;
}

/* The last of the dish's times before the word that is as long as the number there says. */
static const struct match *time_meant(const struct checker *c, const match_list *times,
                                      struct span where)
{
    struct amount count;
    struct span number;
    for (size_t i = times->count; i-- > 0;)
        if (times->at[i]->words.last < where.first && ratio_finite(times->at[i]->high)
            && bare_time(c, where, time_unit(c, times->at[i]), &count, &number)
            && as_long(times->at[i], &count))
            return times->at[i];
    return NULL;
}

/* A time that is told in place of another one, and where. */
struct instead {
    struct amount count;
    struct span words;
};

/* Whether one that is comparable is told in a part of a sentence; false where `time` is NULL. */
static bool tells_instead(const struct checker *c, const struct match *time, struct span within,
                          struct instead *told)
{
    return time && ratio_finite(time->high)
           && bare_time(c, within, time_unit(c, time), &told->count, &told->words)
           && comparable(time, &told->count);
}

static void report_instead(struct checker *c, const struct instead *told, const struct match *time)
{
    REPORT(c, said_otherwise, subject_words(c, told->words), said_words(c->r, time->words));
}

/* "I said twenty-five, it was more like thirty-five". */
static void check_gave(struct checker *c, const match_list *times, const struct sentence *s)
{
    struct span where, took;
    struct instead told;
    if (!said_in(c, "gave_time", s, &where))
        return;
    struct span said = {where.last, where.last + 1 < s->last ? where.last + 1 : s->last};
    const struct match *time = time_meant(c, times, said);
    const struct sentence *next = s;
    struct span rest = {said.last + 1, s->last};
    if (span_is_empty(rest) && (size_t) (s + 1 - c->r->sentences.at) < c->r->sentences.count) {
        next = s + 1;
        rest = sentence_words(next);
    }
    if (rest.last > said.last + TOOK_WORDS)
        rest.last = said.last + TOOK_WORDS;
    if (rest.first <= rest.last && said_find(&c->sayings, c->r, "really_took", rest, &took)
        && tells_instead(c, time, (struct span){took.last + 1, next->last}, &told)
        && !as_long(time, &told.count))
        report_instead(c, &told, time);
}

/* "Forty minutes. What have I got it written down as? It says thirty-five." */
static void check_written(struct checker *c, const match_list *times, const struct sentence *s)
{
    struct span where;
    struct instead told;
    const struct match *last = NULL;
    size_t from = s->first > ASKED_WORDS ? s->first - ASKED_WORDS : 0;
    if (!said_find(&c->sayings, c->r, "written_time", (struct span){from, s->last}, &where)
        || where.last < s->first || where.last >= s->last)
        return;
    for (size_t i = 0; i < times->count && times->at[i]->words.last < where.first; i++)
        if (where.first - times->at[i]->words.last <= WRITTEN_WORDS)
            last = times->at[i];
    if (tells_instead(c, last, (struct span){where.last + 1, s->last}, &told)
        && told.words.first <= where.last + 2 && !as_long(last, &told.count))
        report_instead(c, &told, last);
}

/* "They get fifteen minutes. I'm putting the timer on for thirty": nothing else is spoken of
 * between. Less is to have a look. */
#define TIMER_WORDS 16
static void check_timer(struct checker *c, const match_list *times, const struct sentence *s)
{
    struct span where;
    struct instead told;
    const struct match *last = NULL;
    if (!said_in(c, "sets_timer", s, &where) || where.last >= s->last)
        return;
    for (size_t i = 0; i < times->count && times->at[i]->words.last < where.first; i++)
        last = times->at[i];
    if (tells_instead(c, last, (struct span){where.last + 1, s->last}, &told)
        && last->words.last + TIMER_WORDS >= where.first
        && !span_has_tag(c->r, (struct span){last->words.last + 1, where.first}, TAG_FOOD)
        && told.words.first <= where.last + 2 && ratio_compare(told.count.min, last->high) > 0)
        report_instead(c, &told, last);
}

/* Whether the sentence names an oven. */
static bool of_oven(const struct checker *c, const struct sentence *s)
{
    return s && span_has_tag(c->r, sentence_words(s), TAG_OVEN);
}

/* "It's pale still. I give it some minutes more, so forty in this oven": the last of the times
 * before that are about as long, of the oven where this is. */
#define SUM_WORDS 3
static void check_more(struct checker *c, const match_list *times, const struct sentence *s)
{
    struct span where;
    struct instead told;
    const struct match *last = NULL;
    if (!said_in(c, "needs_longer", s, &where) || where.last >= s->last)
        return;
    for (size_t i = 0; i < times->count && times->at[i]->words.last < where.first; i++)
        if (!of_oven(c, s) || of_oven(c, sentence_of(c->r, times->at[i]->words.first)))
            last = times->at[i];
    if (tells_instead(c, last, (struct span){where.last + 1, s->last}, &told)
        && !match_over(c->r, s, told.words, KIND_OF(duration))
        && told.words.first <= where.last + SUM_WORDS
        && ratio_compare(told.count.min, last->high) > 0)
        report_instead(c, &told, last);
}

void find_told_times(struct checker *c)
{
    match_list times = {0};
    add_matches(c, KIND_OF(duration), SCOPE_NEGATED | SCOPE_INSTEAD, &times);
    for (const struct sentence *s = NULL; times.count && (s = next_sentence(c, s));) {
        check_gave(c, &times, s);
        check_written(c, &times, s);
        check_timer(c, &times, s);
        check_more(c, &times, s);
    }
}
