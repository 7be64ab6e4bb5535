/* tag/place_set.h: sets of places by their numbers, which are more than a unit_set holds.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_PLACE_SET_H
#define DISHTAKE_TAG_PLACE_SET_H

#include <stddef.h>
#include <stdint.h>

#define PLACES_MOST 384
#define PLACE_SET_WORDS (PLACES_MOST / 64)

struct place_set {
    uint64_t bits[PLACE_SET_WORDS];
};

static inline void place_set_add(struct place_set *s, size_t place)
{
    s->bits[place / 64] |= (uint64_t) 1 << place % 64;
}

/* What either has. */
static inline void place_set_join(struct place_set *s, const struct place_set *more)
{
    for (size_t i = 0; i < PLACE_SET_WORDS; i++)
        s->bits[i] |= more->bits[i];
}

/* The least one of the set that is `from` or more; -1: there is none. */
static inline int place_set_next(const struct place_set *s, int from)
{
    for (int i = from / 64; i < PLACE_SET_WORDS; i++, from = i * 64) {
        uint64_t rest = s->bits[i] >> from % 64;
        if (rest)
            return from + __builtin_ctzll(rest);
    }
    return -1;
}

#endif
