/* match/reach.h: where what a phrase says ends inside its sentence: at a comma, before the next
 * thing to do, before the cook's next clause.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_REACH_H
#define DISHTAKE_MATCH_REACH_H

#include "model/recording.h"
#include "pack/pack.h"

/* Whether the entry at word `i` is a verb in its base form. */
bool is_base_verb(const struct recording *r, const struct sentence *s, size_t i);
/* Whether an amount with its food begins at the word. */
bool line_begins(const struct recording *r, const struct sentence *s, size_t word);

/* Each the last word: of the condition whose mark ends at word `m`; */
size_t comma_after(const struct recording *r, const struct sentence *s, size_t m);
/* of a likeness, which may reach all of `scope`; */
size_t clause_goes_on(const struct recording *r, const struct sentence *s, struct span scope);
/* of a denial, the same. */
size_t denial_end(const struct recording *r, const struct sentence *s, struct span scope);

#endif
