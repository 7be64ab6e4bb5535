/* check/sums_again.c: what times come to: parts and their sum, "so that's twenty minutes in all",
 * and "ten minutes a side", told again otherwise.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* "Twelve minutes ..., another five ...: twenty in all": the parts stand within so many words
 * before the total. */
#define TOTAL_WORDS 60
#define SIDE_WORDS 4
#define SUM_UP_WORDS 2

bool each_side(const struct checker *c, const struct match *m)
{
    for (size_t i = m->words.last; i <= m->words.last + SIDE_WORDS && i < c->r->words.count; i++)
        if (c->r->words.at[i].tag == TAG_SIDE)
            return true;
    return false;
}

/* Whether the last two or more of the times before the nth add up to it, or one for each side;
 * `*parts` counts those near enough. */
static bool adds_up(const struct checker *c, const match_list *times, size_t n, size_t *parts)
{
    const struct match *total = times->at[n];
    double low = 0, high = 0, twice_low = 0, twice_high = 0;
    *parts = 0;
    for (size_t i = n; i-- > 0 && total->words.first - times->at[i]->words.last <= TOTAL_WORDS;) {
        double one = ratio_double(times->at[i]->low), most = ratio_double(times->at[i]->high);
        int sides = each_side(c, times->at[i]) ? 2 : 1;
        low += one;
        high += most;
        twice_low += one * sides;
        twice_high += most * sides;
        *parts += (size_t) sides;
        if (overlap(low, high, ratio_double(total->low), ratio_double(total->high))
            || overlap(twice_low, twice_high, ratio_double(total->low), ratio_double(total->high)))
            return true;
    }
    return false;
}

static void check_total(struct checker *c, const match_list *times, size_t n)
{
    const struct match *m = times->at[n];
    size_t parts;
    if (said_with(c, "total", m->words) && !adds_up(c, times, n, &parts) && parts > 1)
        REPORT_PLAIN(c, no_sum, subject_words(c, m->words));
}

/* ---- a side */

/* "So ten minutes a side, and then the slow part": told again. */
static bool sums_up(const struct checker *c, const struct match *m)
{
    const struct sentence *s = sentence_of(c->r, m->words.first);
    return stands_before(c, "just_so", m->words)
           || (s && c->r->words.at[s->first].tag == TAG_SO
               && m->words.first <= s->first + SUM_UP_WORDS);
}

/* "Skin side down, six minutes. Flip 'em, six more": one side's. */
#define FLIP_WORDS 6
static bool one_side(const struct checker *c, const struct match *m)
{
    struct span where, behind = {m->words.last + 1, m->words.last + FLIP_WORDS};
    if (behind.last >= c->r->words.count)
        behind.last = c->r->words.count - 1;
    return each_side(c, m) || said_find(&c->sayings, c->r, "flips", behind, &where);
}

/* Whether so long a side was told before, of this dish or another. */
static bool side_said(const struct checker *c, const struct match *side)
{
    struct matches times = matches_all(c->r, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times)) && m->words.first < side->words.first;)
        if (one_side(c, m)
            && overlap(ratio_double(m->low), ratio_double(m->high), ratio_double(side->low),
                       ratio_double(side->high)))
            return true;
    return false;
}

static void check_sides(struct checker *c, const match_list *times, size_t n)
{
    const struct match *m = times->at[n], *other = NULL;
    if (!each_side(c, m) || !sums_up(c, m) || looks_back(c, "recap_time", m->words))
        return;
    for (size_t i = 0; i < n; i++)
        if (one_side(c, times->at[i]))
            other = times->at[i];
    if (other && !side_said(c, m))
        REPORT(c, said_otherwise, subject_words(c, m->words), said_words(c->r, other->words));
}

void find_sums_again(struct checker *c)
{
    match_list times = {0};
    match_list sides = {0}; /* "I wouldn't, so ten minutes a side" */
    add_matches(c, KIND_OF(duration), SCOPE_NOT_DONE, &times);
    add_matches(c, KIND_OF(duration), SCOPE_NOT_DONE & ~(unsigned) SCOPE_NEGATED, &sides);
    for (size_t n = 1; n < times.count; n++)
        check_total(c, &times, n);
    for (size_t n = 1; n < sides.count; n++)
        check_sides(c, &sides, n);
}
