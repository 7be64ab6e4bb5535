/* model/match.h: what one grammar rule found in one sentence.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MODEL_MATCH_H
#define DISHTAKE_MODEL_MATCH_H

#include "base/text.h"
#include "base/ratio.h"

/* Word numbers, both ends included. */
struct span {
    size_t first, last;
};
#define NO_WORDS ((struct span){1, 0})

static inline bool span_is_empty(struct span s)
{
    return s.first > s.last;
}

/* The same where many are kept. */
struct slot_span {
    unsigned first, last;
};

#define MATCH_SLOTS 12

struct rule;

/* A slot that took no part in the match has first > last. */
struct match {
    const struct rule *rule;
    struct span words;
    struct slot_span *slots; /* in the order of rule->slots, as many; NULL where it has none */
    struct ratio low, high;  /* of a rule that gives a number; none otherwise */
};

#endif
