/* build/implied.h: what is done in a sentence without a verb: "Then half a cup of cream." "Oven at
 * three fifty."
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_IMPLIED_H
#define DISHTAKE_BUILD_IMPLIED_H

#include "build/context.h"

struct implied {
    struct text action; /* of the pack's table implied-actions */
    size_t chunk;       /* the chunk that implies it */
};

#define IMPLIED_MOST 4

/* The actions that the sentence in b->chunks implies and does not say, at most IMPLIED_MOST;
 * returns how many. `said` has the marks of all verbs in it that are instructions. */
size_t implied_actions(const struct builder *b, uint64_t said, struct implied *out);

/* The action of that row of the table implied-actions; empty where it has none. */
struct text implied_row(const struct pack *k, const char *name);
/* The same where the dish is now: what the table context-actions has for the action, else for the
 * row. */
struct text implied_in_context(const struct builder *b, const char *name);
/* The action of a list of foods without a verb. */
struct text implied_list(const struct pack *k);
/* The same of foods that are listed in a bowl. */
struct text implied_bowl(const struct pack *k);
/* That of a temperature alone, by what it is of; empty where that tells nothing. */
struct text implied_heat(const struct pack *k, struct text of);
/* Whether the sentence begins with foods that go in before its first verb: "Two tablespoons of oil,
 * swirl it around." */
bool lists_before_verb(const struct builder *b);

/* impliedtime.c. What is done for the length of time in chunk `i`, where no verb takes it: "chuck
 * them in, four minutes"; empty where a verb says it, or chunk `i` is no time. What stands before
 * it in the sentence must be in the dish's steps already. */
struct text implied_time(const struct builder *b, size_t i);

/* The dish's last step, when the time in chunk `i`, which stands in a sentence without a verb, goes
 * on with it: "Onions in. Five minutes."; else NULL. */
struct step *step_of_time(const struct builder *b, size_t i);

/* What both look at. Whether the chunk speaks of what is done here and now. */
bool is_done(const struct chunk *c);
/* The first chunk with `tag` that is done here; NOWHERE when there is none. */
size_t find_done(const struct builder *b, unsigned char tag);
/* Whether the sentence names a fridge or a freezer. */
bool says_cold(const struct builder *b);
/* The dish's last step, when it ends shortly before chunk `i`; else NULL. */
const struct step *step_near(const struct builder *b, size_t i);
/* The first food with this scope; with `plain`, the first one that has no scope and an amount. */
size_t find_line(const struct builder *b, unsigned scope, bool plain);
/* A sentence that comes this many seconds after a step may go on with it. */
#define NEAR_SECONDS 6.0

/* impliedplace.c; each NOWHERE when there is none. "And then into the tin"; "out of the oven",
 * "another minute, and off"; what the dish is served in, once it was cooked: "so, dal in bowls". */
size_t find_into(const struct builder *b);
size_t find_bowl(const struct builder *b); /* the first food of "in another bowl, two eggs, ..." */
size_t find_out(const struct builder *b);
size_t find_served(const struct builder *b);
size_t find_paper(const struct builder *b); /* "on kitchen paper", of what was fried */
size_t find_cover(const struct builder *b); /* the towel of "under a towel" */
size_t find_fire(const struct builder *b);  /* the coals of "straight on the coals" */
size_t find_cold(const struct builder *b); /* the fridge of "fridge, an hour", "back in the cold" */

/* impliedheat.c; each NOWHERE when there is none. The chunk of a pan that is put on the heat; that
 * of a pan in which a fat gets hot; that of a temperature that a thermometer shows. */
size_t find_pan_heat(const struct builder *b);
size_t find_fat_pan(const struct builder *b);
size_t find_thermometer(const struct builder *b);
/* The "down" of "then down to one seventy". */
size_t find_lowered(const struct builder *b);

/* impliedsalt.c. "And salt, a teaspoon": salt alone in what is being cooked. "Salt and pepper on
 * both sides." */
bool is_seasoning(const struct builder *b);

#endif
