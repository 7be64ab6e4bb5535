/* read/json_place.h: where in the file the texts of JSON segments stand, which Jansson does not
 * say.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_JSON_PLACE_H
#define DISHTAKE_READ_JSON_PLACE_H

#include "read/drafts.h"

/* The names that a segment's text may have, likeliest first; NULL at the end. */
extern const char *const JSON_TEXT_NAMES[];

/* Gives drafts that stand in the order of the file their line, column and bytes. A text that was
 * joined from words has the line of the text before it. */
void json_place(struct drafts *drafts, struct text source);

#endif
