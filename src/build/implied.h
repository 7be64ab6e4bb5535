/* build/implied.h: what is done in a sentence without a verb: "Then half a cup of cream." "Oven at
 * three fifty."
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_IMPLIED_H
#define DISHTAKE_BUILD_IMPLIED_H

#include "build/builder.h"

struct implied {
    struct text action; /* of the pack's table implied-actions */
    size_t chunk;       /* the chunk that implies it */
};

#define IMPLIED_MOST 4

/* The actions that the sentence in b->chunks implies and does not say, at most IMPLIED_MOST;
 * returns how many. `said` has the marks of all verbs in it that are instructions. */
size_t implied_actions(const struct builder *b, uint64_t said, struct implied *out);

/* The action of a list of foods without a verb. */
struct text implied_list(const struct pack *k);
/* That of a temperature alone, by what it is of; empty where that tells nothing. */
struct text implied_heat(const struct pack *k, struct text of);
/* What `said` means where the dish is now: "leave it an hour" in a pot that boils is to simmer it.
 * The pack's table context-actions knows; without a row it is what was said. */
struct text action_in_context(const struct builder *b, struct text said);

#endif
