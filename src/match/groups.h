/* match/groups.h: where a rule matches, and which words are in which slot, by its sieve's codes:
 * what PCRE2 would find, at a third of what a run of it costs.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_GROUPS_H
#define DISHTAKE_MATCH_GROUPS_H

#include "match/subject.h"

/* A group that took no part, as PCRE2 has it. */
#define GROUP_UNSET SIZE_MAX

/* The match itself, then one group for each slot: the unit that it begins at, and the one after it.
 */
struct groups {
    size_t at[2 * (MATCH_SLOTS + 1)];
};

enum groups_found {
    GROUPS_NONE,
    GROUPS_FOUND,
    GROUPS_UNSURE /* it takes too many steps, or cannot be told by the codes: PCRE2 knows */
};

/* The first match that begins at unit `from` or later. Of several that begin there it is the one
 * that PCRE2 takes: repeats take as much as they can, or as little, and earlier choices come first.
 */
enum groups_found groups_find(const struct rule *rule, const struct subject *s, size_t from,
                              struct groups *out);

#endif
