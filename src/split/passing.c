/* split/passing.c
 * SPDX-License-Identifier: MIT */
#include "split/passing.h"

#include "split/title.h"
#include "split/topic.h"

/* So near its end a dish's word of several words names by itself. */
#define PASSING_SENTENCES 8

static bool may_stand_before(unsigned char tag)
{
    return tag == TAG_FOOD || tag == TAG_DONE || tag == TAG_STATE || tag == TAG_PART
           || tag == TAG_INSIDE;
}

/* "And" of "squash and kale salad". */
static bool joins_foods(const struct recording *r, struct span words, size_t i)
{
    return r->words.at[i].tag == TAG_AND && i > words.first && r->words.at[i - 1].tag == TAG_FOOD
           && r->words.at[i - 1].after < AFTER_COMMA && r->words.at[i + 1].tag == TAG_FOOD;
}

/* The words before the dish's word at `i` that go with it; empty when there is no food among them.
 * "Stir-fry" and "rhubarb crumble" are one entry each: such a one names near the stretch's ends
 * only.
 */
static struct span name_before(const struct recording *r, struct span words, size_t i, bool near)
{
    size_t first = r->words.at[i].entry_first;
    bool food = near && first < i;
    while (first > words.first
           && (may_stand_before(r->words.at[first - 1].tag) || joins_foods(r, words, first - 1))
           && r->words.at[first - 1].after < AFTER_COMMA)
        food |= r->words.at[--first].tag == TAG_FOOD;
    return food ? (struct span){first, i} : (struct span){1, 0};
}

/* How much the dish is about a food that it is called after, as a share of its main one. */
#define COOKED_SHARE 0.25
/* So many of a dish's own names are looked at, so that time does not grow with the square. */
#define OWN_NAMES 100
/* So near the beginning one is enough: "jollof now". */
#define OWN_SENTENCES 3

/* The dishes' own names that a stretch says, each time. */
struct own_names {
    size_t at[OWN_NAMES], sentence[OWN_NAMES];
    size_t count;
};

static struct text own_value(const struct word *w)
{
    return entry_value(w->tag == TAG_DISH ? w->entry : entry_as(w->readings, TAG_DISH));
}

static void find_own(const struct recording *r, struct stretch s, struct own_names *own)
{
    own->count = 0;
    for (size_t k = s.first; k <= s.last; k++)
        for (size_t i = r->sentences.at[k].first; i <= r->sentences.at[k].last; i++) {
            const struct word *w = &r->words.at[i];
            if ((w->tag != TAG_DISH && w->tag != TAG_FOOD) || !is_own_name(w)
                || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE | SCOPE_NEGATED))
                continue;
            if (own->count == OWN_NAMES)
                return;
            own->at[own->count] = i;
            own->sentence[own->count++] = k;
        }
}

static size_t times_own(const struct recording *r, const struct own_names *own, size_t n)
{
    size_t times = 0;
    for (size_t i = 0; i < own->count; i++)
        times +=
            text_equal(own_value(&r->words.at[own->at[i]]), own_value(&r->words.at[own->at[n]]));
    return times;
}

struct span own_name(const struct recording *r, struct stretch s, size_t *sentence)
{
    struct own_names own;
    struct span best = {1, 0};
    size_t most = 0;
    find_own(r, s, &own);
    for (size_t n = 0; n < own.count; n++) {
        size_t times = times_own(r, &own, n), k = own.sentence[n];
        bool near = k < s.first + OWN_SENTENCES || k + PASSING_SENTENCES > s.last;
        if (times <= most || (times == 1 && !near))
            continue;
        most = times;
        *sentence = k;
        best = (struct span){r->words.at[own.at[n]].entry_first, own.at[n]};
    }
    return best;
}

struct span named_in_passing(const struct recording *r, struct stretch s, size_t *sentence)
{
    struct span none = {1, 0};
    struct span all = {r->sentences.at[s.first].first, r->sentences.at[s.last].last};
    for (size_t k = s.last + 1; k-- > s.first;)
        for (size_t i = r->sentences.at[k].last + 1; i-- > r->sentences.at[k].first;) {
            const struct word *w = &r->words.at[i];
            if (w->tag != TAG_DISH || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE))
                continue;
            struct span name = name_before(r, all, i, k + PASSING_SENTENCES > s.last);
            *sentence = k;
            if (name.first <= name.last)
                return name;
        }
    return none;
}

static bool leads_in(unsigned char tag)
{
    switch (tag) {
    case TAG_THE:
    case TAG_ARTICLE:
    case TAG_ACTION:
    case TAG_UNIT:
    case TAG_OF:
    case TAG_WITH:
    case TAG_INTO:
    case TAG_ONES:
    case TAG_NUMBER:
    case TAG_INSIDE:
    case TAG_FOOD:
        return true; /* "add the fried cabbage": it goes in */
    default:
        return false;
    }
}

static bool is_cooked_food(const struct recording *r, size_t done)
{
    const struct word *w = &r->words.at[done], *food = w + 1;
    while (food->tag == TAG_INSIDE)
        food++;
    return w->tag == TAG_DONE && w->entry && w->entry->marks & MARK_OF(heats)
           && w->after < AFTER_COMMA && food->tag == TAG_FOOD && food->entry
           && !(w->scope & (SCOPE_UNREAL | SCOPE_BESIDE)) && (!done || !leads_in(w[-1].tag));
}

struct span cooked_name(const struct recording *r, const struct feature *f, struct stretch s,
                        size_t *sentence)
{
    struct span best = {1, 0};
    for (size_t k = s.first; k <= s.last; k++) {
        if (k >= s.first + OWN_SENTENCES && k + PASSING_SENTENCES <= s.last)
            continue;
        for (size_t i = r->sentences.at[k].first; i < r->sentences.at[k].last; i++) {
            size_t last = i + 1;
            while (last < r->sentences.at[k].last && r->words.at[last].tag == TAG_INSIDE)
                last++;
            if (!is_cooked_food(r, i)
                || share_about(f, telling_part(s), entry_value(r->words.at[last].entry))
                       < COOKED_SHARE)
                continue;
            best = (struct span){i, last};
            *sentence = k;
        }
    }
    return best;
}
