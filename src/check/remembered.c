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

/* Whether one of the set stands right behind the words. */
static bool stands_behind(const struct checker *c, const char *set, struct span words)
{
    const struct span behind = {words.last + 1, words.last + 4};
    struct span where;
    return behind.last < c->r->words.count && said_find(&c->sayings, c->r, set, behind, &where)
           && where.first == behind.first;
}

/* "So forty minutes on the beans": what it takes, summed up. */
static bool sums_up(const struct checker *c, const struct match *m)
{
    struct span where, before = {m->words.first ? m->words.first - 1 : 0, m->words.first - 1};
    return m->words.first && said_find(&c->sayings, c->r, "sums_up", before, &where)
           && stands_behind(c, "time_of", m->words);
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

void find_remembered(struct checker *c)
{
    match_list times = {0};
    add_matches(c, RULE_duration, SCOPE_NEGATED | SCOPE_INSTEAD, &times);
    for (size_t n = 1; n < times.count; n++) {
        const struct match *m = times.at[n], *other = NULL;
        if (sums_up(c, m))
            other = other_than(c, &times, n, NULL);
        else if (must_be(c, m))
            other = other_than(c, &times, n, verb_of(c, m));
        else if (stands_before(c, "eaten_after", m->words))
            other = wait_before(c, &times, n);
        if (other)
            REPORT(c, said_otherwise, subject_words(c, m->words), said_words(c->r, other->words));
    }
}
