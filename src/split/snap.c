/* split/snap.c
 * SPDX-License-Identifier: MIT */
#include "split/snap.h"

#include "split/name.h"
#include "split/title.h"

/* How many sentences of talk may stand between an opening phrase and the first amount, and between
 * a dish's last instruction and its name or yield. */
#define OPENING_SENTENCES 7
#define FAREWELL_SENTENCES 6
/* Less cooking than this is talk. */
#define COOKING_LEAST 0.5
#define SUSTAINED_SENTENCES 5
#define SUSTAINED_LEAST 2.5
#define LEADING_SENTENCES 2
#define MAIN_TIMES 3
/* Talk of the dish before its first cooking: so many sentences about something else may stand in
 * between. */
#define TALK_SENTENCES 4
#define TELLING_SENTENCES 150

/* Whether sentence `i` names a food that the stretch names at least MAIN_TIMES times. */
static bool speaks_of(const struct feature *f, size_t i, struct stretch s)
{
    for (size_t n = 0; n < f[i].mentions_count; n++) {
        size_t times = 0;
        for (size_t j = s.first; j <= s.last && j < s.first + TELLING_SENTENCES; j++)
            for (size_t m = 0; m < f[j].mentions_count; m++)
                times += text_equal(f[j].mentions[m].kind, f[i].mentions[n].kind);
        if (times >= MAIN_TIMES)
            return true;
    }
    return false;
}

static bool opens(const struct feature *f)
{
    return f->opens >= 3;
}

/* The first sentence from `first` on in which something goes in or is done, and goes on being done.
 */
static size_t first_cooking(const struct feature *f, size_t first, size_t last)
{
    for (size_t i = first; i <= last; i++) {
        double soon = 0;
        for (size_t n = i; n <= last && n < i + SUSTAINED_SENTENCES; n++)
            soon += f[n].cooking;
        if (f[i].cooking >= COOKING_LEAST && soon >= SUSTAINED_LEAST)
            return i;
    }
    return first;
}

/* The opening phrase before sentence `cooking`, with no other dish's farewell after it: the
 * nearest, and those that lead up to it ("On we go. Now this next one is my favourite"). */
static size_t opening_before(const struct feature *f, size_t floor, size_t cooking)
{
    size_t best = cooking, reach = OPENING_SENTENCES;
    for (size_t i = cooking; i-- > floor && best - i <= reach;) {
        if (f[i].closes >= 3)
            break;
        if (!opens(&f[i]))
            continue;
        best = i;
        reach = LEADING_SENTENCES;
    }
    return best;
}

/* Whether sentence `i` says a word of the dish's name. */
static bool says_name(const struct recording *r, size_t i, struct span name)
{
    for (size_t n = name.first; n <= name.last; n++) {
        const struct word *w = &r->words.at[n];
        if (w->entry && (w->tag == TAG_FOOD || w->tag == TAG_DISH)
            && sentence_says(r, &r->sentences.at[i], w->entry))
            return true;
    }
    return false;
}

/* "We don't get salmon off the rocks here": talk of the dish, or of its main food, leads up to it.
 */
static size_t talk_before(const struct recording *r, const struct feature *f, size_t floor,
                          struct stretch s, struct span name)
{
    size_t best = s.first;
    for (size_t i = s.first; i-- > floor && best - i <= TALK_SENTENCES;) {
        if (f[i].closes > 0)
            break;
        if (speaks_of(f, i, s) || says_name(r, i, name))
            best = i;
    }
    return best;
}

static bool names_dish(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first + 1; i <= s->last; i++) {
        const struct word *w = &r->words.at[i], *before = w - 1;
        bool said = !(w->scope & (SCOPE_UNREAL | SCOPE_BESIDE | SCOPE_SUPPOSED));
        if (said && w->tag == TAG_DISH && (before->tag == TAG_FOOD || before->tag == TAG_DONE))
            return true;
    }
    return false;
}

static size_t farewell(const struct recording *r, const struct feature *f, struct stretch s,
                       size_t next)
{
    size_t end = s.first;
    for (size_t i = s.first; i < next && i <= s.last + FAREWELL_SENTENCES; i++) {
        bool speaks = f[i].closes > 0 || names_dish(r, &r->sentences.at[i]);
        if (i > s.last && f[i].opens > 0)
            break;
        if (speaks || (i <= s.last && f[i].cooking >= COOKING_LEAST))
            end = i;
    }
    return end;
}

void snap_stretches(const struct recording *r, const struct feature *f, struct stretch *s,
                    size_t count)
{
    size_t floor = 0;
    for (size_t k = 0; k < count; k++) {
        size_t next = k + 1 < count ? s[k + 1].first : r->sentences.count;
        if (s[k].first < floor)
            s[k].first = floor;
        size_t last = farewell(r, f, s[k], next);
        size_t cooking = first_cooking(f, s[k].first, s[k].last);
        s[k].first = opening_before(f, floor, cooking);
        if (s[k].first == cooking)
            s[k].first =
                talk_before(r, f, floor, (struct stretch){.first = cooking, .last = s[k].last},
                            name_said(r, f, s[k]));
        s[k].last = last > s[k].first ? last : s[k].first;
        floor = s[k].last + 1;
    }
}
