/* review/state.h: what the parts of a session share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_STATE_H
#define DISHTAKE_REVIEW_STATE_H

#include "review/session.h"

/* Names the state of the edits as they are on the disk. */
void session_revision(const struct session *s, char out[REVISION_LETTERS]);
/* Works the recording out anew: with these edits, or with those that are on the disk. */
enum dishtake_result session_read(struct session *s, struct text edits);
enum dishtake_result session_read_disk(struct session *s);
/* Answers with the recipes. `has` is the revision that the asker shows (NULL: none): of what stands
 * there too, only the place is told. */
void session_put_recipes(struct session *s, struct reply *r, const char *has);

#endif
