/* match/scope.h: how far what a phrase says reaches.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_SCOPE_H
#define DISHTAKE_MATCH_SCOPE_H

#include "model/recording.h"
#include "pack/pack.h"

/* The words a match speaks of, by the rule's option: the match, from it to the end of its clause or
 * sentence, its clause up to it, or all its clause. A phrase that is a clause by itself speaks of
 * the clause before it. */
struct span scope_reach(const struct recording *r, const struct sentence *s, const struct match *m);

#endif
