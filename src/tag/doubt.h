/* tag/doubt.h: which words may be wrong at all, told by what they are themselves; small words that
 * may be a part of what was said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_DOUBT_H
#define DISHTAKE_TAG_DOUBT_H

#include "tag/hearing.h"

/* Hundredths: a word of the kitchen is less likely wrong than one that has no place in it. */
#define KNOWN_COST 10
#define JOINED_WORDS 3 /* the most units that are one misheard thing */

/* Words that hold a sentence together are right as they are, unless a pair is listed. */
bool may_be_wrong(const struct word *w);
/* Ordinary talk, which has no second word or a weak one in the pairs' first row for it, is never
 * taken for something else by its sound. */
bool never_wrong(const struct hearing *h, size_t row);
/* "Card a mom", "cash you": a small word may be a part of what was said. */
bool is_small(const struct word *w);
/* Whether a name may begin with the small word: "am sure", "S Carol"; "a flower" is one. */
bool small_begins(const struct word *w);

/* Of units [begin, end): */

/* Whether there are several, a small word among them. */
bool small_among(const struct hearing *h, const struct sentence_units *u, size_t begin, size_t end);
/* Whether they may be misheard at all. */
bool units_doubtful(const struct hearing *h, const struct sentence_units *u, size_t begin,
                    size_t end);
/* "Gira", "bus mati": whether a word of them is none of the language. */
bool strange_among(const struct hearing *h, const struct sentence_units *u, size_t begin,
                   size_t end);
/* What it costs that they are misheard, in hundredths. */
int doubt_cost(const struct hearing *h, const struct sentence_units *u, size_t begin, size_t end);
/* Whether a stop or comma stands inside them. */
bool units_divided(const struct hearing *h, const struct sentence_units *u, size_t begin,
                   size_t end);

#endif
