/* check/said.h: where in a recording something is said that a checker listens for.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAID_H
#define DISHTAKE_CHECK_SAID_H

#include "check/saying.h"
#include "model/recording.h"

#define SET_NAMES 512

struct set_name {
    struct text name;
    size_t row;
};

/* What is listened for, and where it may be, while the words are what they are. */
struct sayings {
    const struct saying_list *list;
    uint64_t **places; /* for each set a bit for each word with which one of it may begin, so that a
                          look for the set passes over all others; where a look has found that none
                          does, however it is bounded, the bit goes */
    struct set_name *names; /* SET_NAMES that were asked for, by where they stand */
};

/* Sets r->sayings, for the words as they are. `list` NULL: reads the pack's table; false with a
 * problem where a row is wrong. */
bool listen_for(struct recording *r, const struct saying_list *list, const struct pack *k,
                struct problems *p);
/* The first place in words [first, last] of that recording where one of the set is said; false when
 * there is none. */
bool said_find_set(const struct sayings *sayings, const struct recording *r, struct text set,
                   struct span within, struct span *where);
/* Here, so that a literal's length is known at the call. */
static inline bool said_find(const struct sayings *sayings, const struct recording *r,
                             const char *set, struct span within, struct span *where)
{
    return said_find_set(sayings, r, (struct text){set, strlen(set)}, within, where);
}

#endif
