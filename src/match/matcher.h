/* match/matcher.h: runs a pack's rules over the tag strings of a recording.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_MATCHER_H
#define DISHTAKE_MATCH_MATCHER_H

#include "model/recording.h"
#include "pack/pack.h"

/* What one thread needs to match: room for what is found, and what PCRE2 needs, which is made when
 * a rule first needs PCRE2. Made before an arena opens. */
struct matcher;
/* For the rules of that pack, which must outlive it (NULL: none can be matched). NULL when there is
 * no memory; matcher_free frees. */
struct matcher *matcher_new(const struct pack *k);
void matcher_free(struct matcher *m);

/* Fills in r->matches. Jumps to where the recording's arena was opened when there is no memory for
 * a rule's code. */
bool match_rules(struct recording *r, const struct pack *k, struct matcher *m, struct problems *p);

#endif
