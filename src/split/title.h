/* split/title.h: the words that name a dish.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TITLE_H
#define DISHTAKE_SPLIT_TITLE_H

#include "model/recording.h"
#include "pack/pack.h"

/* The words of the name that begins at word `first`: to where the noun phrase ends. Empty (first >
 * last) when it names no food and no dish. */
struct span title_span(const struct recording *r, const struct sentence *s, size_t first);
/* How sure it is that these words name a dish, 0 to 3: a dish's word ("stew") is more than a
 * food's. */
int title_weight(const struct recording *r, struct span title);
/* Whether the words are a name by themselves, with nothing after them in the sentence but a yield.
 */
bool title_alone(const struct recording *r, const struct sentence *s, struct span title);
/* Whether the word is a dish's own name, "colcannon", and not what kind it is, "soup". */
bool is_own_name(const struct word *w);
/* Whether a food or a dish's word of the name stands for that value. */
bool title_has(const struct recording *r, struct span title, struct text value);
/* Whether two names have a food or a dish's word in common, or one of them has neither. */
bool titles_alike(const struct recording *r, struct span a, struct span b);
/* "Pork meatballs in gravy": as a title is printed. Arena. */
struct text title_text(const struct recording *r, struct span title);

/* Whether the sentence has a word that stands for the same as `e`. */
bool sentence_says(const struct recording *r, const struct sentence *s, const struct entry *e);

/* The same text with a capital first letter. Arena. */
struct text capitalised(const struct recording *r, struct text t);

#endif
