/* build/yieldor.c
 * SPDX-License-Identifier: MIT */
#include "build/yieldor.h"

#include "match/matches.h"

/* So many words tell at most who the first ones are: "people who are hungry". */
#define WHO_WORDS 5
/* "It cuts into eight. Ten if it's for the neighbours.": so near behind. */
#define MORE_WORDS 3

static bool is_counted_otherwise(unsigned char tag)
{
    return tag == TAG_TIME || tag == TAG_UNIT || tag == TAG_LENGTH || tag == TAG_DEGREE
           || tag == TAG_CONTAINER || tag == TAG_FOOD;
}

/* The number that begins at word `i` and counts eaters or pieces; NULL: none does. */
static const struct match *number_from(const struct builder *b, size_t i)
{
    const struct sentence *s = b->sentence;
    const struct match *found = NULL;
    struct matches numbers = matches_of(b->r, s, KIND_OF(number));
    for (const struct match *m; (m = matches_next(&numbers));)
        if (m->words.first == i)
            found = m;
    bool last = !found || found->words.last >= s->last;
    return last || !is_counted_otherwise(b->r->words.at[found->words.last + 1].tag) ? found : NULL;
}

/* The number of "six, eight if there's children", from word `i` on; 0: none. */
static size_t before_if(const struct builder *b, size_t i)
{
    const struct word *at = b->r->words.at;
    size_t last = b->sentence->last;
    const struct match *m = i <= last && at[i - 1].after == AFTER_COMMA ? number_from(b, i) : NULL;
    return m && m->words.last < last && at[m->words.last + 1].tag == TAG_IF ? i : 0;
}

/* The word behind "or", a little behind the match; 0: none. */
static size_t behind_or(const struct builder *b, const struct match *m)
{
    const struct word *at = b->r->words.at;
    size_t i = m->words.last + 1, last = b->sentence->last;
    while (i <= last && i <= m->words.last + WHO_WORDS && at[i].tag != TAG_OR)
        if (at[i].tag == TAG_AND || at[i].tag == TAG_SO || is_counted_otherwise(at[i++].tag))
            return 0;
    if (i > last || at[i].tag != TAG_OR)
        return 0;
    while (++i <= last && (at[i].tag == TAG_FOR || at[i].tag == TAG_HEDGE))
        continue;
    return i <= last ? i : 0;
}

void yield_with_other(const struct builder *b, const struct match *m, struct ratio *high)
{
    size_t number = before_if(b, m->words.last + 1);
    if (!number)
        number = behind_or(b, m);
    const struct match *other = number ? number_from(b, number) : NULL;
    if (!other || !ratio_equal(m->low, m->high) || !ratio_finite(other->high))
        return;
    /* "feeds eight, or four of my brothers" is a joke */
    if (ratio_compare(other->high, *high) > 0
        && ratio_compare(other->high, ratio_multiply(*high, RATIO(2))) <= 0)
        *high = other->high;
}

void yield_with_more(struct builder *b, const struct match *m)
{
    struct yield *said = &b->dish->yield;
    bool near = said->known && m->words.first > said->words.last
                && m->words.first <= said->words.last + MORE_WORDS
                && ratio_equal(said->min, said->max);
    if (near && ratio_compare(m->high, said->max) > 0
        && ratio_compare(m->high, ratio_multiply(said->max, RATIO(2))) <= 0)
        said->max = m->high;
}
