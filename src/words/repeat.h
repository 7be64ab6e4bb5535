/* words/repeat.h: fillers and false starts, which no rule should see.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_REPEAT_H
#define DISHTAKE_WORDS_REPEAT_H

#include "model/recording.h"
#include "pack/pack.h"

/* Marks words as filler: those that the lexicon calls so, and the first of two equal runs ("into
 * the into the pan"). Numbers are never marked: "two two-inch pieces". */
void mark_repeats(struct recording *r, const struct pack *k);

#endif
