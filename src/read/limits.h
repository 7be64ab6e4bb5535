/* read/limits.h: how much of a hostile file the readers look at. READ_BYTES_MAX is in read.h.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_LIMITS_H
#define DISHTAKE_READ_LIMITS_H

#define READ_CUES_MAX 2000000u
#define TIME_SECONDS_MAX 10000000.0 /* about 2,700 hours; a later time is no time */
#define TAG_BYTES_MAX 300u          /* from "<" to ">"; a longer one is text */
#define SOUND_BYTES_MAX 80u         /* from "[" to "]"; a longer one is speech */
#define NAME_BYTES_MAX 40u          /* of a speaker */
#define QUOTE_BYTES 40u             /* of what a message quotes */
#define CAPTION_PARTS_MAX 32u       /* speakers' turns in one caption; the rest stays in the last */
#define MARKS_MAX 30u               /* on one letter (Unicode Annex 15, Stream-Safe Text, has 30) */
#define LABELS_MAX 16u              /* different "Name:" labels that make a file a dialogue */
#define TTML_DEPTH_MAX 64u          /* elements in elements */
#define TTML_ATTRIBUTES_MAX 64u     /* of one element */
#define JSON_DEPTH_MAX 8u           /* how deep the list of segments may lie */
#define WORD_SEEK_BYTES 120u        /* how far ahead a timed word is looked for in its segment */

/* More control bytes than one in this many: no text file. */
#define CONTROL_BYTES_SHARE 20u

/* Reading speed that times a caption without an end (common practice, no source: captions run at 15
 * to 20 letters a second). */
#define LETTERS_PER_SECOND 15.0
/* Captions that are at most this far apart touch. */
#define TOUCH_SECONDS 0.05
/* Rolling captions hold the finished line for about 10 ms before the next one comes. */
#define HOLD_SECONDS 0.05
/* Whole numbers may be seconds or milliseconds. Speech takes about 0.07 seconds or 70 milliseconds
 * a letter, pauses included up to ten times that; more units a letter than this are milliseconds.
 */
#define UNITS_PER_LETTER 5.0

#endif
