/* check/misheard.c: words that were read as others (tag/misheard.h), and amounts whose food was
 * lost.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

/* The last word that was read as the same entry as word `i`. */
static size_t heard_last(const struct recording *r, size_t i, size_t last)
{
    size_t end = i;
    while (end < last && r->words.at[end + 1].rare->heard_as == r->words.at[i].rare->heard_as)
        end++;
    return end;
}

static void report_heard(struct checker *c, struct span words)
{
    const struct word *w = &c->r->words.at[words.first];
    struct subject_of what = {w->start, words, said_words(c->r, words)};
    if (w->rare->heard_or)
        REPORT(c, misheard_or, what, entry_shown(w->rare->heard_as),
               entry_shown(w->rare->heard_or));
    else
        REPORT(c, misheard, what, entry_shown(w->rare->heard_as));
}

/* "Chilli" for the dish is taken for the pepper: both are spelled so, and nothing is to be mended.
 */
static bool spelled_so(const struct checker *c, struct span words)
{
    const struct word *w = &c->r->words.at[words.first];
    const struct entry *e = words.first == words.last ? pack_find(c->k, w->key, NULL) : NULL;
    while (e && !text_equal(entry_value(e), entry_value(w->rare->heard_as)))
        e = entry_next(e);
    return e;
}

static void find_heard(struct checker *c, struct span part)
{
    for (size_t i = part.first; i <= part.last; i++) {
        if (!c->r->words.at[i].rare->heard_as)
            continue;
        size_t end = heard_last(c->r, i, part.last);
        if (!spelled_so(c, (struct span){i, end}))
            report_heard(c, (struct span){i, end});
        i = end;
    }
}

/* "A quarter teaspoon of. Nutmeg": the stop was set by a machine, and the rest is said at once. */
#define AT_ONCE_SECONDS 1.0
static bool goes_on(const struct checker *c, size_t last)
{
    if (last + 2 >= c->r->words.count)
        return false;
    const struct word *w = &c->r->words.at[last], *next = w + 1;
    if (next->tag == TAG_THE)
        next++;
    while (next->tag == TAG_INSIDE)
        next++;
    return w[1].start - w->end < AT_ONCE_SECONDS
           && (next->tag == TAG_FOOD || next->tag == TAG_PART || next->tag == TAG_STATE);
}

/* "Half a teaspoon of, hang on, what is this jar. Smoked paprika.": the food is said after all, by
 * itself. */
#define ASIDE_WORDS 8
#define BEFORE_WORDS (ASIDE_WORDS + 6) /* with the amount that breaks off */
#define BY_ITSELF_WORDS 3
static bool food_by_itself(const struct checker *c, const struct sentence *s)
{
    const struct word *w = &c->r->words.at[s->first];
    while (w->tag == TAG_INSIDE)
        w++;
    return s->last - s->first < BY_ITSELF_WORDS && w->tag == TAG_FOOD;
}

bool resumes(const struct checker *c, size_t last)
{
    const struct span aside = {last + 1, last + ASIDE_WORDS};
    for (const struct sentence *s = NULL; (s = sentence_next(c->r, aside, s));)
        if (s->first > last && food_by_itself(c, s))
            return true;
    return false;
}

bool resumed(const struct checker *c, size_t food)
{
    const struct sentence *s = sentence_of(c->r, food);
    struct span where, before;
    if (!s || !s->first || !food_by_itself(c, s))
        return false;
    before = (struct span){s->first > BEFORE_WORDS ? s->first - BEFORE_WORDS : 0, s->first - 1};
    return said_find(&c->sayings, c->r, "cut_off", before, &where) && resumes(c, where.last);
}

/* "And half a teaspoon of -- get down": what the set "cut_off" listens for, where no food follows.
 */
static void find_cut_off(struct checker *c, const struct sentence *s)
{
    struct span within = {s->first, s->last}, where;
    while (within.first <= within.last && said_find(&c->sayings, c->r, "cut_off", within, &where)) {
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        struct span state;
        if (!goes_on(c, where.last) && !resumes(c, where.last)
            && !said_find(&c->sayings, c->r, "whole_state", where, &state))
            REPORT_PLAIN(c, cut_off, what);
        within.first = where.last + 1;
    }
}

void find_misheard(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++)
        find_heard(c, c->parts.at[i]);
    for (size_t i = 0; i < c->beside_count; i++)
        find_heard(c, c->beside[i]);
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));)
        find_cut_off(c, s);
}
