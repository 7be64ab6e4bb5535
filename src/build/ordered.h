/* build/ordered.h: whether a verb in its plain form, or one that a food does ("goes in"), tells
 * what to do.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_ORDERED_H
#define DISHTAKE_BUILD_ORDERED_H

#include "build/builder.h"

/* Whether chunk `i` is a verb that tells what to do here and now: "chop it", "the dough goes in",
 * but not "a chop", "or it'll stick", "before you cut it". */
bool is_ordered(const struct builder *b, size_t i);

/* "Get that in the oven", "get them onto a rack": it is put there. */
bool is_get_into(const struct builder *b, size_t i);
/* "Goes" */
bool is_third_person(const struct entry *e);
/* A verb that makes no step by itself; "leave" makes one where it says how long. */
bool is_weak(const struct builder *b, uint64_t marks);
/* Whether a food, or a word for it, stands right before chunk `i`. */
bool is_thing_before(const struct builder *b, size_t i);

#endif
