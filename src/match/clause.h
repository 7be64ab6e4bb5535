/* match/clause.h: how far a clause reaches inside its sentence.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_CLAUSE_H
#define DISHTAKE_MATCH_CLAUSE_H

#include "model/recording.h"
#include "pack/pack.h"

/* Whether a new clause begins after word `i`: at a comma, an "and" or a sequence word with a
 * subject or a verb behind it. "Two carrots, an onion and salt" is one clause. */
bool clause_ends(const struct recording *r, const struct sentence *s, size_t i);
/* The first and last word of the clause in which word `i` stands. */
struct span clause_around(const struct recording *r, const struct sentence *s, size_t i);
/* The last word of the entry in which word `i` stands. */
size_t entry_last(const struct recording *r, const struct sentence *s, size_t i);
/* The tag of the entry in which word `i` stands. */
unsigned char word_tag(const struct recording *r, const struct sentence *s, size_t i);
/* The next word after `i` that rules see; one past the sentence when there is none. */
size_t next_word(const struct recording *r, const struct sentence *s, size_t i);

/* Whether it is a verb that tells of work: neither too weak by itself ("get") nor talk. */
bool word_acts(const struct word *w);

#endif
