/* check/remembered.c: times told again as advice: "so forty minutes on the beans", "remember, it
 * must simmer for twenty minutes", and what may be eaten "after an hour already" of a wait of
 * three.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"
#include "match/clause.h"

/* A number that is further from the time is of something else. */
#define FURTHEST 4
/* What is eaten so early stands so near the wait. */
#define WAIT_WORDS 60

/* Whether the dish named the food or part behind the words before them: what is only now begun has
 * no time yet ("so ten minutes on the onions first"). */
#define BEHIND_WORDS 4
static bool named_before(const struct checker *c, struct span words)
{
    const struct entry *what = NULL;
    for (size_t i = words.last + 1; !what && i <= words.last + BEHIND_WORDS; i++) {
        const struct word *w = i < c->r->words.count ? &c->r->words.at[i] : NULL;
        if (w && (w->tag == TAG_FOOD || w->tag == TAG_PART || w->tag == TAG_DISH))
            what = w->entry;
    }
    for (size_t i = c->dish->words.first; what && i < words.first; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->entry && w->tag != TAG_INSIDE
            && one_names_both(entry_value(w->entry), entry_value(what)))
            return true;
    }
    return false;
}

/* "So forty minutes on the beans": what it takes, summed up. */
static bool sums_up(const struct checker *c, const struct match *m)
{
    struct span where, before = {m->words.first ? m->words.first - 1 : 0, m->words.first - 1};
    return m->words.first && said_find(&c->sayings, c->r, "sums_up", before, &where)
           && stands_behind(c, "time_of", m->words) && named_before(c, m->words);
}

/* The last verb before the time, in its sentence. */
static const struct entry *verb_of(const struct checker *c, const struct match *m)
{
    const struct sentence *s = sentence_of(c->r, m->words.first);
    for (size_t i = m->words.first; s && i-- > s->first;)
        if (c->r->words.at[i].tag == TAG_ACTION && c->r->words.at[i].entry)
            return c->r->words.at[i].entry;
    return NULL;
}

/* "Remember, after the boil it must simmer for twenty minutes". */
static bool must_be(const struct checker *c, const struct match *m)
{
    const struct sentence *s = sentence_of(c->r, m->words.first);
    struct span where;
    return s && m->words.first > s->first && verb_of(c, m)
           && said_find(&c->sayings, c->r, "must_be", (struct span){s->first, m->words.first - 1},
                        &where);
}

static bool as_long(const struct match *a, const struct match *b)
{
    return overlap(ratio_double(a->low), ratio_double(a->high), ratio_double(b->low),
                   ratio_double(b->high));
}

static bool comparable(const struct match *a, const struct match *b)
{
    double one = ratio_double(a->low), other = ratio_double(b->low);
    return one > 0 && other > 0 && one <= other * FURTHEST && other <= one * FURTHEST;
}

/* The last of the times before the nth that is like it, and not as long; NULL where one is as long,
 * or none is like it. `verb`: of the same verb only. */
static const struct match *other_than(const struct checker *c, const match_list *times, size_t n,
                                      const struct entry *verb)
{
    const struct match *other = NULL;
    for (size_t i = 0; i < n; i++) {
        const struct match *m = times->at[i];
        const struct entry *then = verb ? verb_of(c, m) : NULL;
        if (as_long(m, times->at[n]))
            return NULL;
        if (comparable(m, times->at[n])
            && (!verb || (then && text_equal(entry_value(then), entry_value(verb)))))
            other = m;
    }
    return other;
}

/* "Chill it for at least three hours. You can eat it after an hour already". */
static const struct match *wait_before(const struct checker *c, const match_list *times, size_t n)
{
    const struct match *m = times->at[n];
    for (size_t i = n; i-- > 0;) {
        const struct match *wait = times->at[i];
        if (wait->words.last + WAIT_WORDS < m->words.first)
            return NULL;
        if (span_has_tag(c->r, wait->words, TAG_ATLEAST))
            return ratio_compare(m->low, wait->low) < 0 ? wait : NULL;
    }
    return NULL;
}

/* ---- "the potatoes had their hour": a time without its number */

#define HOUR_SECONDS 3600
#define NEAR_HOUR 2
#define LONG_AGO_WORDS 400

/* Whether an hour, or a range that has one, was told before the word, of this dish or another. */
static bool hour_told(const struct checker *c, size_t before)
{
    const size_t from = before > LONG_AGO_WORDS ? before - LONG_AGO_WORDS : 0;
    struct matches times = matches_among(c->r, (struct span){from, before}, KIND_OF(duration));
    for (const struct match *m; (m = matches_next(&times)) && m->words.first < before;)
        if (overlap(HOUR_SECONDS, HOUR_SECONDS, ratio_double(m->low), ratio_double(m->high)))
            return true;
    return false;
}

/* The last of the dish's times before the word that an hour may be meant for; NULL: there is none,
 * or one is an hour.
 */
static const struct match *near_hour(const match_list *times, size_t before)
{
    const struct match *last = NULL;
    for (size_t i = 0; i < times->count && times->at[i]->words.last < before; i++) {
        double seconds = ratio_double(times->at[i]->low);
        if (overlap(HOUR_SECONDS, HOUR_SECONDS, seconds, ratio_double(times->at[i]->high)))
            return NULL;
        if (seconds * NEAR_HOUR >= HOUR_SECONDS && seconds <= HOUR_SECONDS * NEAR_HOUR)
            last = times->at[i];
    }
    return last;
}

/* "Its hour and a half". */
static bool and_more(const struct checker *c, size_t last)
{
    return last + 1 < c->r->words.count && c->r->words.at[last + 1].tag == TAG_AND
           && c->r->words.at[last].after < AFTER_COMMA;
}

static void find_hours(struct checker *c, const match_list *times)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        struct span where, rest = c->parts.at[i];
        while (rest.first <= rest.last && said_find(&c->sayings, c->r, "had_hour", rest, &where)) {
            const struct match *other =
                hour_told(c, where.first) ? NULL : near_hour(times, where.first);
            rest.first = where.last + 1;
            if (other && !and_more(c, where.last))
                REPORT(c, said_otherwise, subject_words(c, where), said_words(c->r, other->words));
        }
    }
}

void find_remembered(struct checker *c)
{
    match_list times = {0};
    add_matches(c, KIND_OF(duration), SCOPE_NEGATED | SCOPE_INSTEAD, &times);
    find_hours(c, &times);
    for (size_t n = 1; n < times.count; n++) {
        const struct match *m = times.at[n], *other = NULL;
        if (sums_up(c, m))
            other = other_than(c, &times, n, NULL);
        else if (must_be(c, m) || (stands_behind(c, "all_it_needs", m->words) && verb_of(c, m)))
            other = other_than(c, &times, n, verb_of(c, m));
        else if (stands_behind(c, "all_it_took", m->words))
            other = other_than(c, &times, n, NULL);
        else if (stands_before(c, "eaten_after", m->words))
            other = wait_before(c, &times, n);
        if (other)
            REPORT(c, said_otherwise, subject_words(c, m->words), said_words(c->r, other->words));
    }
}
