/* check/times_again.c: two times that cannot both be right.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "check/again.h"
#include "match/clause.h"

/* "An hour at least" is as long as nothing in particular. */
static bool same_time(const struct match *a, const struct match *b)
{
    if (!ratio_finite(a->high) || !ratio_finite(b->high))
        return ratio_equal(a->low, b->low);
    return overlap(ratio_double(a->low), ratio_double(a->high), ratio_double(b->low),
                   ratio_double(b->high));
}

/* What was told longer ago is of a dish that is over, unless it is this one's. */
#define LONG_AGO_WORDS 400

bool time_said(const struct checker *c, const struct match *time)
{
    const size_t now = time->words.first;
    size_t from = now > LONG_AGO_WORDS ? now - LONG_AGO_WORDS : 0;
    if (from > c->dish->words.first)
        from = c->dish->words.first;
    struct matches times = matches_among(c->r, (struct span){from, now}, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times)) && m->words.first < now;)
        if (ratio_finite(m->low) && same_time(m, time))
            return true;
    return false;
}

/* "They've had their ten minutes, haven't they?": a time that is spent is none to cook for, so a
 * story or a question tells nothing here. */
#define NOT_SPENT (SCOPE_NEGATED | SCOPE_INSTEAD)

/* Which of the dish's own times before `time` was meant: the nearest, as times go. NULL: there is
 * none, or one that is the same. */
static const struct match *own_other(const match_list *own, const struct match *time, bool strict)
{
    const struct match *nearest = NULL;
    double seconds = ratio_double(time->low), least = INFINITY;
    for (size_t i = 0; i < own->count && own->at[i]->words.first < time->words.first; i++) {
        double far = fabs(log(ratio_double(own->at[i]->low) / seconds));
        if (strict && same_time(own->at[i], time))
            return NULL;
        if (far <= least) {
            least = far;
            nearest = own->at[i];
        }
    }
    return nearest;
}

/* ---- what a time that looks back is about, where it is not told by the dish */

/* A thing is spoken of so near its time, and one wait is told again so soon. */
#define THING_WORDS 20
#define SOON_WORDS 80

#define AFTER_WAIT_WORDS 4

static bool is_thing(const struct word *w)
{
    return w->entry && (w->tag == TAG_FOOD || w->tag == TAG_DISH || w->tag == TAG_PART);
}

/* "And the scones, they've had their ten minutes": the scones; NULL: nothing is named. */
static const struct word *thing_before(const struct checker *c, const struct match *time)
{
    const struct sentence *s = sentence_of(c->r, time->words.first);
    for (size_t i = time->words.first; s && i-- > s->first;)
        if (is_thing(&c->r->words.at[i]))
            return &c->r->words.at[i];
    return NULL;
}

/* Whether the last thing that is named before the match is that one. */
static bool near_thing(const struct checker *c, const struct word *thing, const struct match *m)
{
    size_t from = m->words.first > THING_WORDS ? m->words.first - THING_WORDS : 0;
    for (size_t i = m->words.first; thing && i-- > from;) {
        const struct word *w = &c->r->words.at[i];
        if (is_thing(w))
            return text_equal(entry_value(w->entry), entry_value(thing->entry));
    }
    return false;
}

/* The verb nearest before the time in its sentence, or else the first behind it. */
static const struct entry *verb_with(const struct checker *c, const struct match *time)
{
    const struct sentence *s = sentence_of(c->r, time->words.first);
    for (size_t i = time->words.first; s && i-- > s->first;)
        if (word_acts(&c->r->words.at[i]))
            return c->r->words.at[i].entry;
    for (size_t i = time->words.last + 1; s && i <= s->last; i++)
        if (word_acts(&c->r->words.at[i]))
            return c->r->words.at[i].entry;
    return NULL;
}

/* "Twenty minutes it sits there", after "let it sit for fifteen". */
static bool same_wait(const struct checker *c, const struct match *time, const struct match *m)
{
    const struct entry *now = verb_with(c, time), *then = verb_with(c, m);
    return now && then && text_equal(entry_value(now), entry_value(then))
           && m->words.last + SOON_WORDS >= time->words.first;
}

/* The last time before that is of the same thing, or the same wait; NULL: there is none, or one
 * that is the same. */
static const struct match *linked_other(const struct checker *c, const struct match *time)
{
    const struct word *thing = thing_before(c, time);
    const struct match *other = NULL;
    struct matches times = matches_all(c->r, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times)) && m->words.first < time->words.first;) {
        if (!ratio_finite(m->low) || c->r->words.at[m->words.last].scope & SCOPE_NOT_DONE
            || !(near_thing(c, thing, m) || same_wait(c, time, m)))
            continue;
        if (same_time(m, time))
            return NULL;
        other = m;
    }
    return other;
}

/* A time that looks back, in this dish's words or where it is named. Where it is named, only its
 * own times count; else another dish may be meant. */
static void check_spent(struct checker *c, const match_list *own, const struct spent *spent)
{
    const struct match *time = spent->time, *other;
    bool named = spent->dish != NO_DISH;
    if (named)
        other = spent->dish == c->number ? own_other(own, time, true) : NULL;
    else if (in_dish(c, time->words.first) && !time_said(c, time))
        other = own_other(own, time, false);
    else
        other = spent->linked && in_dish(c, spent->linked->words.first) ? spent->linked : NULL;
    if (other)
        REPORT(c, said_otherwise, subject_words(c, time->words), said_words(c->r, other->words));
}

/* "So after that thirty-five minutes, this is what they look like", not "after that ten minutes in
 * the oven". */
static bool after_wait(const struct checker *c, const struct match *m)
{
    struct span where, behind = {m->words.last + 1, m->words.last + AFTER_WAIT_WORDS};
    return behind.last < c->r->words.count && stands_before(c, "after_wait", m->words)
           && said_find(&c->sayings, c->r, "looks_at", behind, &where)
           && where.first == behind.first;
}

static struct spent look_back(const struct checker *c, const struct match *time)
{
    size_t dish = dish_named(c, time->words);
    return (struct spent){time, dish, dish == NO_DISH ? linked_other(c, time) : NULL};
}

static void list_spent(struct checker *c)
{
    struct matches times = matches_all(c->r, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times));)
        if (ratio_finite(m->low) && !(c->r->words.at[m->words.last].scope & NOT_SPENT)
            && (looks_back(c, "recap_time", m->words) || after_wait(c, m))
            && !said_with(c, "total", m->words))
            *LIST_ADD(c->r->arena, &c->spent) = look_back(c, m);
    c->spent_known = true;
}

static void find_spent(struct checker *c)
{
    match_list own = {0};
    if (!c->spent_known)
        list_spent(c);
    if (!c->spent.count)
        return;
    add_matches(c, KIND_OF(duration), NOT_SPENT, &own);
    for (size_t i = 0; i < c->spent.count && own.count; i++)
        check_spent(c, &own, &c->spent.at[i]);
}

/* ---- a wait that was longer */

/* "It's been two hours" after a wait of ten minutes is about something else. */
#define LONGER_MOST 3

/* The longest of the times before the nth, where it and all sums of times up to there are shorter;
 * NULL: one is as long, or there is none. */
static const struct match *all_shorter(const struct checker *c, const match_list *times, size_t n)
{
    const struct match *longest = NULL;
    double most = 0;
    for (size_t i = n; i-- > 0;) {
        const struct match *m = times->at[i];
        if (!ratio_finite(m->high))
            return NULL;
        most += ratio_double(m->high) * (each_side(c, m) ? 2 : 1);
        if (!longest || ratio_double(m->high) > ratio_double(longest->high))
            longest = m;
    }
    return longest && most * 1.001 < ratio_double(times->at[n]->low) ? longest : NULL;
}

/* "Two hours at least", "at least two hours": the words stand so near. */
#define LEAST_WORDS 3
static bool at_least(const struct checker *c, const struct match *m)
{
    struct span near = {m->words.first > LEAST_WORDS ? m->words.first - LEAST_WORDS : 0,
                        m->words.last + LEAST_WORDS};
    if (near.last >= c->r->words.count)
        near.last = c->r->words.count - 1;
    return span_has_tag(c->r, near, TAG_ATLEAST);
}

/* "It's been in the fridge for half an hour, so let's roll it", after "two hours at least": the
 * last wait before the nth of which so much was asked; NULL: it is as long, or goes on. */
static const struct match *cut_short(const struct checker *c, const match_list *times, size_t n)
{
    const struct match *m = times->at[n];
    for (size_t i = n; i-- > 0 && stands_behind(c, "ready_now", m->words);)
        if (at_least(c, times->at[i]))
            return ratio_double(m->high) * 1.001 < ratio_double(times->at[i]->low) ? times->at[i]
                                                                                   : NULL;
    return NULL;
}

/* "It's been forty minutes", after "bake it for thirty": what is shorter is a look at it half way.
 */
static const struct match *ran_over(const struct checker *c, const match_list *times, size_t n)
{
    const struct match *other = all_shorter(c, times, n);
    return other && !at_least(c, other)
                   && ratio_double(times->at[n]->low) <= LONGER_MOST * ratio_double(other->high)
               ? other
               : NULL;
}

static void find_been(struct checker *c)
{
    match_list times = {0};
    add_matches(c, KIND_OF(duration), NOT_SPENT, &times);
    for (size_t n = 1; n < times.count; n++) {
        const struct match *m = times.at[n], *other;
        if (!stands_before(c, "been_so_far", m->words) || time_said(c, m)
            || ((other = ran_over(c, &times, n)) == NULL
                && (other = cut_short(c, &times, n)) == NULL))
            continue;
        REPORT(c, said_otherwise, subject_words(c, m->words), said_words(c->r, other->words));
    }
}

void find_times_again(struct checker *c)
{
    find_spent(c);
    find_been(c);
}
