/* split/thread.h: the threads of a recording: dishes that begin, are left, are returned to and end.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_THREAD_H
#define DISHTAKE_SPLIT_THREAD_H

#include "split/border.h"

/* Chooses over the whole recording at once which sentences belong together: a beam search over the
 * ways in which dishes may take turns. Writes at most `count` stretches to `out`, in order; threads
 * are numbered from 0 in the order in which they begin. Returns how many stretches there are.
 * Linear in `count`. */
size_t find_threads(const struct recording *r, const struct feature *f, const struct borders *b,
                    size_t count, struct stretch *out);

#endif
