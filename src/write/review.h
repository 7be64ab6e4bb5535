/* write/review.h: what the parts of the review page's recipes share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_REVIEW_H
#define DISHTAKE_WRITE_REVIEW_H

#include "edits/edits.h"
#include "write/json_values.h"

struct page {
    struct json j;
    const struct recording *r;
    const struct writing *w;
};

/* Null, too, where they are none of the recording's. */
void review_put_words(struct page *g, struct span words);
/* The fields that the cook gave this dish, line or step; "new" for one that was added whole. */
void review_put_edited(struct page *g, enum edit_kind set, enum edit_target target, size_t id);
/* With the line and the step that it is about, and the cook's answer. */
void review_put_finding(struct page *g, const struct finding *f);
/* Every edit with what became of it, and which can be undone or redone. */
void review_put_edits(struct page *g);

#endif
