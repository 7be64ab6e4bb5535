/* edits/anchor.h: words with what stands around them and when they were said, so that they are
 * found again in a newer transcript of the same recording.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_ANCHOR_H
#define DISHTAKE_EDITS_ANCHOR_H

#include "edits/edits.h"

/* Words on either side that an anchor remembers. */
#define ANCHOR_CONTEXT 5

/* An anchor of these words, as they were captioned; `reach` 0 leaves it out. NULL: no memory. The
 * caller owns it. */
json_t *anchor_make(const struct recording *r, struct span words, size_t reach);

/* Finds all anchors of all edits in the recording as it was captioned; `run->at` gets them. */
void anchors_place(const struct recording *r, struct edit_run *run);

#endif
