/* words/clock.h: when each word of a cue is said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_CLOCK_H
#define DISHTAKE_WORDS_CLOCK_H

#include "model/recording.h"

/* What a letter takes in this recording, in seconds: the median of its cues. */
double letter_seconds(const struct recording *r);
/* Seconds between word `i` and the one before it; 0 for the first. */
double silence_before(const struct recording *r, size_t i);
/* Times the words from `first` on, which are all of cue `cue`: exact where the captions time each
 * word, else laid evenly by letters across the cue, or across as much of it as they take at the
 * recording's `pace` (letter_seconds) where it stands far longer. Marks a word before which there
 * was a pause. */
void time_words(struct recording *r, double pace, unsigned cue, size_t first);

#endif
