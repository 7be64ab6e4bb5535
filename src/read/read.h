/* read/read.h: a transcript's bytes -> timed cues, whatever the format.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_READ_H
#define DISHTAKE_READ_READ_H

#include "model/recording.h"

/* The most bytes a transcript may have. */
#define READ_BYTES_MAX ((size_t) 64 << 20)

/* Fills in r->source, kind, language, cues (by start) and length from `bytes` (borrowed while r
 * lives). What could be repaired is a note in `p`, with its line; false, with an error that says
 * what was expected, when no cue could be read. Nothing but the arena is allocated when it returns.
 */
bool read_cues(struct recording *r, struct text bytes, struct problems *p);

/* Fills in r->source alone, from text of any of the encodings that transcripts come in. False, with
 * nothing told, when it is no text. */
bool read_text(struct recording *r, struct text bytes, struct problems *p);

/* The file's line and column, from 1, of the letter at `offset` of the cue's text. In TTML and
 * JSON, where a caption stands in the file otherwise than it reads, it is the caption's first
 * letter. */
void cue_place(const struct recording *r, const struct cue *c, size_t offset, unsigned *line,
               unsigned *column);

/* Where in r->source the byte at `offset` of the cue's text came from; only in formats where a
 * caption stands in the file as it reads. */
size_t cue_origin(const struct recording *r, const struct cue *c, size_t offset);

#endif
