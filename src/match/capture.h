/* match/capture.h: PCRE2's groups -> slots that are word numbers, and the numbers that a rule works
 * out.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_CAPTURE_H
#define DISHTAKE_MATCH_CAPTURE_H

#include "match/subject.h"

/* Fills in `match` from `groups` (begin and end of the whole and of each group). False when the
 * rule's numbers cannot be worked out (no value, a range that runs down), or its word has no such
 * reading: then it is no match. `match->slots` must have room for MATCH_SLOTS. */
bool capture(const struct recording *r, const struct subject *s, const struct rule *rule,
             const size_t *groups, struct match *match);
/* Gives the word in the slot `word` the reading that a repair rule asks for. */
void retag(struct recording *r, struct subject *s, const struct match *match);
/* The slot's words; first > last when it took no part. When a rule names a slot more than once, the
 * one that did. */
struct span match_slot(const struct match *match, enum slot slot);
/* The entry that ends at the slot's last word, from the pack; NULL when the slot took no part, its
 * word is unknown, or there is no match (NULL). */
const struct entry *match_entry(const struct recording *r, const struct match *match,
                                enum slot slot);

#endif
