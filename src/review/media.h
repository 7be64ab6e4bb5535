/* review/media.h: the video or audio file that was named on the command line; opened once, before
 * anybody can ask for another.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_MEDIA_H
#define DISHTAKE_REVIEW_MEDIA_H

#include <stdint.h>

#include "base/problem.h"

struct media {
    int file; /* a descriptor; -1: none was named */
    const char *type;
    bool pictures; /* else it is only heard */
};

/* False, with a problem, when it cannot be read or is of no type that browsers play. */
bool media_open(struct media *m, const char *name, struct problems *p);
void media_close(struct media *m);
/* Bytes; 0 when it cannot be told. */
uint64_t media_size(const struct media *m);

#endif
