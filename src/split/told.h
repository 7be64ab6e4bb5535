/* split/told.h: names that are only told, where nobody says a surer one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TOLD_H
#define DISHTAKE_SPLIT_TOLD_H

#include "model/recording.h"
#include "pack/pack.h"

/* Whether a naming may be of a dish though it is no sure name: "that's curd rice", "it's your
 * carrot and lentil"; neither "that's the water" nor an amount. `title` are the words of the name.
 */
bool may_be_told(const struct recording *r, const struct match *m, struct span title);
/* Whether the rule's names are only told, whatever they are: none closes a dish. */
bool is_only_told(const struct match *m);
/* Whether the words that such a rule asks for are there: "the garlic prawns are ready", by the word
 * at the end, which is not any state's. True of every other rule. */
bool is_told_so(const struct recording *r, const struct match *m);

/* "It's called shakriyeh", "that's our bagna cauda": the words of a naming's slot that are no words
 * of the language; first > last where they are, or where a name there is known. */
struct span foreign_name(const struct recording *r, const struct pack *k, const struct sentence *s,
                         const struct match *m);

#endif
