/* write/index.h: what the parts of a published folder's first page share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_INDEX_H
#define DISHTAKE_WRITE_INDEX_H

#include "write/html.h"
#include "write/write.h"

struct sheet {
    struct html *h;
    const struct recording *r;
    const struct writing *w;
};

/* "from 0:12 to 3:40"; in the scratch arena, as all of these. */
struct text index_span_text(const struct sheet *s, double start, double end);
/* The dish's card, at a step where one is given. */
struct text index_card_link(const struct sheet *s, size_t dish, const size_t *step);
/* The id of the `i`th finding on the page. */
struct text index_anchor(const struct sheet *s, size_t i);
void index_put_band(struct sheet *s);

#endif
