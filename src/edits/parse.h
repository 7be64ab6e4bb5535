/* edits/parse.h: what the parts of edits/ share about the file's form.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_PARSE_H
#define DISHTAKE_EDITS_PARSE_H

#include "base/json_text.h"
#include "edits/edits.h"

enum edit_kind edit_kind_read(const char *written); /* NULL is unknown */
enum edit_target edit_kind_on(enum edit_kind kind);
enum edit_target edit_kind_to(enum edit_kind kind);
enum edit_stage edit_kind_stage(enum edit_kind kind);
/* Whether the edit has all the parts of its kind, of the right types. */
bool edit_fits(enum edit_kind kind, const json_t *edit);
/* An empty file for that transcript; NULL: no memory. The caller owns it. */
json_t *edits_new_root(struct text file);

/* A whole number from 0 up. */
bool json_count(const json_t *value, size_t *n);

#endif
