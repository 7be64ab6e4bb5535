/* pack/unit_set.h: sets of code units.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_UNIT_SET_H
#define DISHTAKE_PACK_UNIT_SET_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* A set of numbers below 256: of code units, most often. */
struct unit_set {
    uint64_t bits[4];
};

static inline void unit_set_add(struct unit_set *s, unsigned char unit)
{
    s->bits[unit / 64] |= (uint64_t) 1 << unit % 64;
}

static inline void unit_set_remove(struct unit_set *s, unsigned char unit)
{
    s->bits[unit / 64] &= ~((uint64_t) 1 << unit % 64);
}

/* What either has. */
static inline void unit_set_join(struct unit_set *s, const struct unit_set *more)
{
    for (size_t i = 0; i < 4; i++)
        s->bits[i] |= more->bits[i];
}

static inline bool unit_set_has(const struct unit_set *s, unsigned char unit)
{
    return s->bits[unit / 64] >> unit % 64 & 1;
}

/* What both have. */
static inline void unit_set_meet(struct unit_set *s, const struct unit_set *with)
{
    for (size_t i = 0; i < 4; i++)
        s->bits[i] &= with->bits[i];
}

static inline bool unit_set_empty(const struct unit_set *s)
{
    return !(s->bits[0] | s->bits[1] | s->bits[2] | s->bits[3]);
}

/* The least one of the set that is `from` or more; -1: there is none. */
static inline int unit_set_next(const struct unit_set *s, int from)
{
    for (int i = from / 64; i < 4; i++, from = i * 64) {
        uint64_t rest = s->bits[i] >> from % 64;
        if (rest)
            return from + __builtin_ctzll(rest);
    }
    return -1;
}

/* Whether they have a unit in common. */
static inline bool unit_set_meets(const struct unit_set *a, const struct unit_set *b)
{
    return (a->bits[0] & b->bits[0]) | (a->bits[1] & b->bits[1]) | (a->bits[2] & b->bits[2])
           | (a->bits[3] & b->bits[3]);
}

/* Whether `s` has all of `part`; letters first, since most lack one of them. */
static inline bool unit_set_holds(const struct unit_set *s, const struct unit_set *part)
{
    return !(part->bits[1] & ~s->bits[1]) && !(part->bits[0] & ~s->bits[0])
           && !(part->bits[2] & ~s->bits[2]) && !(part->bits[3] & ~s->bits[3]);
}

#endif
