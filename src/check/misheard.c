/* check/misheard.c: words that were read as others (tag/misheard.h), and amounts whose food was
 * lost.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

/* The last word that was read as the same entry as word `i`. */
static size_t heard_last(const struct recording *r, size_t i, size_t last)
{
    size_t end = i;
    while (end < last && r->words.at[end + 1].heard_as == r->words.at[i].heard_as)
        end++;
    return end;
}

static void report_heard(struct checker *c, struct span words)
{
    const struct word *w = &c->r->words.at[words.first];
    struct subject_of what = {w->start, words, said_words(c->r, words)};
    if (w->heard_or)
        REPORT(c, misheard_or, what, entry_shown(w->heard_as), entry_shown(w->heard_or));
    else
        REPORT(c, misheard, what, entry_shown(w->heard_as));
}

static void find_heard(struct checker *c, struct span part)
{
    for (size_t i = part.first; i <= part.last; i++) {
        if (!c->r->words.at[i].heard_as)
            continue;
        size_t end = heard_last(c->r, i, part.last);
        report_heard(c, (struct span){i, end});
        i = end;
    }
}

/* "And half a teaspoon of -- get down": what the set "cut_off" listens for, where no food follows.
 */
static void find_cut_off(struct checker *c, const struct sentence *s)
{
    struct span within = {s->first, s->last}, where;
    while (within.first <= within.last && said_find(&c->sayings, c->r, "cut_off", within, &where)) {
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        REPORT_PLAIN(c, cut_off, what);
        within.first = where.last + 1;
    }
}

/* Talk so near a dish is told with it: a caption is to be mended wherever a border was drawn. */
#define BESIDE_WORDS 60

/* How far the word is from the dish's stretches; 0 inside. */
static size_t words_from(const struct dish *d, size_t word)
{
    size_t least = SIZE_MAX;
    for (size_t i = 0; i < d->spans.count; i++) {
        struct span s = d->spans.at[i];
        size_t far = word < s.first ? s.first - word : word > s.last ? word - s.last : 0;
        least = far < least ? far : least;
    }
    return least;
}

/* Whether no dish is nearer to the word: the later one of two as near, since talk leads up to a
 * dish. */
static bool nearest(const struct checker *c, size_t word)
{
    size_t own = words_from(c->dish, word);
    for (size_t i = 0; i < c->r->dishes.count; i++) {
        size_t far = words_from(&c->r->dishes.at[i], word);
        if (far < own || (far == own && i > c->number))
            return false;
    }
    return own <= BESIDE_WORDS;
}

/* Words that no dish has, before or behind this one. */
static void find_beside(struct checker *c, struct span talk)
{
    for (size_t i = talk.first; i < talk.last; i++) {
        const struct entry *heard = c->r->words.at[i].heard_as;
        size_t end = heard ? heard_last(c->r, i, talk.last - 1) : i;
        if (heard && nearest(c, i))
            report_heard(c, (struct span){i, end});
        i = end;
    }
}

void find_misheard(struct checker *c)
{
    struct span around = talk_around(c);
    for (size_t i = 0; i < c->parts.count; i++)
        find_heard(c, c->parts.at[i]);
    find_beside(c, (struct span){around.first, c->dish->words.first});
    find_beside(c, (struct span){c->dish->words.last + 1, around.last + 1});
    for (size_t i = 0; i < c->r->sentences.count; i++)
        if (in_dish(c, c->r->sentences.at[i].first))
            find_cut_off(c, &c->r->sentences.at[i]);
}
