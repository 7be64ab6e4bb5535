/* check/dishwords.c: which words are the dish's that is looked at, and which are spoken beside it.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

bool in_dish(const struct checker *c, size_t word)
{
    for (size_t i = 0; i < c->parts.count; i++)
        if (word >= c->parts.at[i].first && word <= c->parts.at[i].last)
            return true;
    return false;
}

const struct sentence *next_sentence(const struct checker *c, const struct sentence *s)
{
    do
        s = sentence_next(c->r, c->dish->words, s);
    while (s && !in_dish(c, s->first));
    return s;
}

const uint32_t *count_owned(const struct recording *r)
{
    uint32_t *owned = arena_alloc(r->arena, (r->words.count + 1) * sizeof *owned);
    for (size_t i = 0; i < r->dishes.count; i++)
        for (size_t n = 0; n < r->dishes.at[i].spans.count; n++) {
            const struct span s = r->dishes.at[i].spans.at[n];
            for (size_t w = s.first; w <= s.last; w++)
                owned[w + 1] = 1;
        }
    for (size_t w = 0; w < r->words.count; w++)
        owned[w + 1] += owned[w];
    return owned;
}

/* Whether a dish has words among [first, last]. */
static bool taken(const struct checker *c, size_t first, size_t last)
{
    return first <= last && c->owned[last + 1] > c->owned[first];
}

struct span talk_around(const struct checker *c)
{
    struct span around = c->dish->words;
    while (around.first > 0 && !taken(c, around.first - 1, around.first - 1))
        around.first--;
    while (around.last + 1 < c->r->words.count && !taken(c, around.last + 1, around.last + 1))
        around.last++;
    return around;
}

/* Talk so near a dish is told with it. */
#define BESIDE_WORDS 120

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
    for (size_t i = 0; i < c->r->dishes.count && own <= BESIDE_WORDS; i++) {
        const struct dish *d = &c->r->dishes.at[i];
        if (word + own < d->words.first || word > d->words.last + own)
            continue;
        size_t far = words_from(d, word);
        if (far < own || (far == own && i > c->number))
            return false;
    }
    return own <= BESIDE_WORDS;
}

/* Cuts the words that are not nearest to this dish off both ends; false where none are left. */
static bool keep_nearest(const struct checker *c, struct span *part)
{
    while (part->first <= part->last && !nearest(c, part->first))
        part->first++;
    while (part->first <= part->last && part->last && !nearest(c, part->last))
        part->last--;
    return part->first <= part->last;
}

/* Talk there may be of the dish, though no dish has it. */
static void find_beside(struct checker *c)
{
    struct span around = talk_around(c), own = c->dish->words;
    struct span parts[2] = {
        {own.first > around.first + BESIDE_WORDS ? own.first - BESIDE_WORDS : around.first,
         own.first ? own.first - 1 : 0},
        {own.last + 1,
         own.last + BESIDE_WORDS < around.last ? own.last + BESIDE_WORDS : around.last}};
    c->beside_count = 0;
    for (size_t i = 0; i < 2; i++)
        if ((i || own.first > around.first) && parts[i].last < c->r->words.count
            && keep_nearest(c, &parts[i]))
            c->beside[c->beside_count++] = parts[i];
}

void look_at(struct checker *c, size_t dish)
{
    c->number = dish;
    c->dish = &c->r->dishes.at[dish];
    LIST_CUT(&c->parts, 0);
    for (size_t i = 0; i < c->dish->spans.count; i++) {
        struct span s = c->dish->spans.at[i];
        struct span *before = c->parts.count ? &c->parts.at[c->parts.count - 1] : NULL;
        if (before && s.first > before->last
            && (s.first == before->last + 1 || !taken(c, before->last + 1, s.first - 1)))
            before->last = s.last;
        else
            *LIST_ADD(c->r->arena, &c->parts) = s;
    }
    find_beside(c);
}

bool in_talk(const struct checker *c, size_t word)
{
    for (size_t i = 0; i < c->beside_count; i++)
        if (word >= c->beside[i].first && word <= c->beside[i].last)
            return true;
    return in_dish(c, word);
}

struct span talk_near(const struct checker *c)
{
    struct span all = c->dish->words;
    for (size_t i = 0; i < c->beside_count; i++) {
        all.first = c->beside[i].first < all.first ? c->beside[i].first : all.first;
        all.last = c->beside[i].last > all.last ? c->beside[i].last : all.last;
    }
    return all;
}
