/* match/reading.h: whether a word can be read as a rule of the stage `repair` wants.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_READING_H
#define DISHTAKE_MATCH_READING_H

#include "model/recording.h"

/* Whether a comma stands among these words. */
bool has_comma(const struct recording *r, struct span words);
/* Whether the word in the match's slot has the reading that the rule gives, and is what the rule's
 * option asks for. */
bool can_retag(const struct recording *r, const struct match *match);

#endif
