/* build/asked.h: a verb and what stands before it, as the rules see it that say whether it tells
 * what to do.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_ASKED_H
#define DISHTAKE_BUILD_ASKED_H

#include "build/ordered.h"

/* The verb of chunk `i`, with what is looked up of it once. */
struct asked {
    const struct builder *b;
    size_t i;
    const struct chunk *c;
    uint64_t marks;
    const struct chunk *lead; /* "let that soften", "while they rest": what stands before the thing
                                 that the verb is said of; NULL for none */
    unsigned char before;     /* the tag before the verb, or the one it amounts to */
    bool comma;               /* a comma stands before it */
    bool third;               /* "goes" */
};

/* orderedsubject.c. What the word before the verb, its subject most often, makes of it: "goes" of
 * a dough tells what to do, "a chop" does not. A comma is to be taken for the beginning of an order
 * before this is asked. */
enum verdict told_by_subject(const struct asked *q);

#endif
