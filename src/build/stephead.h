/* build/stephead.h: what the written words of a verb have said already, and foods behind them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPHEAD_H
#define DISHTAKE_BUILD_STEPHEAD_H

#include "build/writer.h"

/* Chunk `rest`, or the one behind what the text says from byte `head` on: "let it sit | it", "heat
 * the pan over low heat | low". */
size_t skip_said(const struct writer *w, size_t rest, size_t end, size_t head);
/* Whether that text ends in a word that leads to a place: "lift out onto". */
bool ends_in_place(const struct writer *w, size_t head);
/* Whether the words are in the text from there on. */
bool is_written_from(const struct writer *w, size_t head, struct text words);
/* Whether it wants no object, as the verb in chunk `c` says all or the pan has its heat: foods
 * behind it are not what it is done to. */
bool is_whole(const struct writer *w, const struct chunk *c, size_t head);
/* Leads to the foods that follow, if any: "remove from the heat, and add | the basil". `*rest`
 * becomes their first chunk. */
bool say_added(struct writer *w, size_t *rest, size_t end);
/* "In a big bowl | cream the butter": the vessel of chunk `i` is where it is done. */
bool is_lead_place(const struct writer *w, size_t begin, size_t i);

#endif
