/* words/limits.h: how words and sentences are cut.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_LIMITS_H
#define DISHTAKE_WORDS_LIMITS_H

/* A rule's subject must stay short: a longer one costs quadratic time and can lose every match. */
#define SENTENCE_WORDS 60
/* In captions without full stops a sentence ends where more points speak for it than this, in
 * hundredths of log odds. Under 0, since a cut too many costs less than one too few: most of them
 * fall where a comma would stand (found by trial: make accuracy-stripped). */
#define ENDING_POINTS_LEAST (-25)
/* The same where nobody can tell: in too few words to say whether the captions have full stops at
 * all, and where somebody set commas, so that what has none is likely to go on. */
#define SURE_ENDING_POINTS 100
/* At the end of a cue, where each of them is an utterance. */
#define LINE_ENDING_POINTS (-50)
/* Stops behind "of", "and", "until" from which on they are a machine's, and misplaced. */
#define ASTRAY_STOPS_LEAST 3
/* Commas from which on it tells that none of them ends a cue, and how many a single one that does
 * must stand against. */
#define UTTERANCE_COMMAS_LEAST 20
/* Cues without a stop before a cue with a capital, from which on they tell that its capital is the
 * only sign of an end; and how many of them every other end of a cue must stand against. */
#define BARE_CAPITALS_LEAST 8
/* Silence between two words that ends a sentence where captions have no full stops. */
#define PAUSE_SECONDS 1.2
/* The same where they have them: only a long silence says more than the punctuation does. */
#define LONG_PAUSE_SECONDS 4.0
/* Captions with fewer full stops than one in so many words are taken to have none. */
#define WORDS_PER_STOP_MOST 60
/* A cue that stands so many times longer than its words take at the recording's own pace ends in
 * silence: captions stay on the screen until the next one, and lines of text say no end at all. */
#define SLOW_CUE 2.0
/* The longest repetition that is taken for a false start: "into the into the pan". */
#define REPEAT_WORDS 3

#endif
