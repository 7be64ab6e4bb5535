/* read/clean.h: a caption's text without tags, entities, sound tags and Markdown.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_CLEAN_H
#define DISHTAKE_READ_CLEAN_H

#include "read/reader.h"

void clean_text(struct reader *rd, struct text in, struct cleaned *out);
/* Where in `in` the byte at `offset` of the cleaned text came from; in.length when it has fewer.
 * Exact where the text was in NFC already, else a few bytes off. */
size_t clean_origin(enum transcript_kind kind, struct text in, size_t offset);

#endif
