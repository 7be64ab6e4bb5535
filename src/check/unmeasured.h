/* check/unmeasured.h: what is asked about a line that has no amount, or a vague one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_UNMEASURED_H
#define DISHTAKE_CHECK_UNMEASURED_H

#include "check/report.h"

/* goes_in.c */

/* The word that names the food; NULL for a line that the cook added. Borrowed. */
const struct word *food_word(const struct checker *c, const struct ingredient *line);
/* Whether the food is spoken of where something puts it in; a mention in passing tells nothing. */
bool goes_in(const struct checker *c, const struct ingredient *line);
/* "Salt", and "salt and pepper". */
bool only_seasons(const struct checker *c, const struct ingredient *line);
/* "Pour all of that into the flour": the food is where something else goes, and in already. */
bool is_place(const struct checker *c, const struct ingredient *line);
/* "My sister puts peas in hers": nothing goes in there. */
bool in_passing(const struct checker *c, const struct ingredient *line);
/* Whether a vague amount of it is a judgement, or as much as there is. */
bool no_measure(const struct checker *c, const struct ingredient *line);

/* amount_told.c */

/* "Beer. Three quarters of a cup": whether an amount stands behind the food. */
bool amount_behind(const struct checker *c, const struct ingredient *line);
/* Whether the talk around the food tells how much of it, or that none goes in. The line is a spoken
 * one. */
bool amount_told(const struct checker *c, const struct ingredient *line);

/* vague.c */

/* "A bit of" baking powder: a cake does not rise by that. */
bool vague_matters(const struct ingredient *line);
/* Whether the line's vague amount is one to mend: not to taste, nor a part of what is told. */
bool lacks_measure(const struct checker *c, const struct ingredient *line);
/* "A little more oil": more than before, and nobody said how much. */
bool vague_more(const struct checker *c, const struct ingredient *line);
/* Whether the dish speaks of the food vaguely, and `*where`. */
bool is_vague(const struct checker *c, const struct ingredient *line, struct span *where);

#endif
