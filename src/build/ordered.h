/* build/ordered.h: whether a verb in its plain form, or one that a food does ("goes in"), tells
 * what to do.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_ORDERED_H
#define DISHTAKE_BUILD_ORDERED_H

#include "build/builder.h"

/* What rules say of a verb: nothing, that it does not tell what to do, that it does; or that it is
 * never a step, whatever the odds. */
enum verdict { PASS, NO, YES, NEVER };

static inline enum verdict yes_or_no(bool yes)
{
    return yes ? YES : NO;
}

/* YES where chunk `i` is a verb that tells what to do here and now: "chop it", "the dough goes in",
 * but not "a chop", "or it'll stick", "before you cut it" (NO); NEVER for "wash the boards", in
 * whichever form: what is done to the kitchen, not to the food. */
enum verdict order_of(const struct builder *b, size_t i);

#endif
