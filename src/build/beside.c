/* build/beside.c
 * SPDX-License-Identifier: MIT */
#include "build/beside.h"

#include "pack/pack.h"

/* So many words back or on stands the word beside it. */
#define BESIDE_WORDS 3

static unsigned char pause_tag(unsigned char after)
{
    return after == AFTER_COMMA ? BESIDE_COMMA : BESIDE_STOP;
}

static bool is_passed(const struct word *w)
{
    return w->tag == TAG_INSIDE || w->filler;
}

unsigned char tag_before(const struct recording *r, size_t first)
{
    const struct word *at = r->words.at;
    unsigned char after = first ? at[first - 1].after : (unsigned char) AFTER_STOP;
    if (after >= AFTER_COMMA)
        return pause_tag(after);
    for (size_t i = first; i-- > 0 && i + BESIDE_WORDS >= first;)
        if (!is_passed(&at[i]))
            return at[i].tag;
    return BESIDE_STOP;
}

unsigned char tag_behind(const struct recording *r, size_t last)
{
    const struct word *at = r->words.at;
    if (at[last].after >= AFTER_COMMA)
        return pause_tag(at[last].after);
    for (size_t i = last + 1; i < r->words.count && i <= last + BESIDE_WORDS; i++)
        if (!is_passed(&at[i]))
            return at[i].tag;
    return BESIDE_STOP;
}
