/* split/segment.h: one way to share the sentences among dishes, as a chain of segments. Ways that
 * begin alike share the beginning of their chains.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_SEGMENT_H
#define DISHTAKE_SPLIT_SEGMENT_H

#include "split/border.h"

/* The sentences from `first` on, up to the next segment's, are of one dish. */
struct segment {
    const struct segment *before; /* NULL: the first */
    const struct segment *jump;   /* one long before, by which a search leaps */
    size_t depth;                 /* how many stand before it */
    size_t first;
    size_t dish; /* NO_DISH: talk outside of any */
    size_t key;  /* the same for chains whose dishes begin and go on alike */
};

/* The chain with one more segment. */
struct segment segment_after(const struct segment *s, size_t first, size_t dish, size_t key);
/* The key of a chain with this one that goes on with `dish` at sentence `first`. */
size_t segment_key(const struct segment *s, size_t first, size_t dish);
/* The segment of a sentence, in time that grows with the logarithm of the chain; NULL: none. */
const struct segment *segment_at(const struct segment *s, size_t sentence);
/* Writes the dishes' stretches in order; sentences are counted to `count`. Returns how many. */
size_t segment_write(const struct segment *s, size_t count, struct stretch *out);

#endif
