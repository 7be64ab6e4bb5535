/* split/name.h: what a dish is called.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_NAME_H
#define DISHTAKE_SPLIT_NAME_H

#include "split/owner.h"

/* The surest name said in the stretch; first > last when none is. */
struct span name_said(const struct recording *r, const struct feature *f, struct stretch s);
/* What the rules of phrases choose, and how sure they are, for each of so many dishes. Arena. */
struct naming name_by_rules(struct recording *r, const struct feature *f, const struct stretch *s,
                            size_t count, const size_t *dish, size_t dishes);
/* Gives each dish its title: the surest name that was said of it, in its own stretches or, where it
 * fits no dish there, in another's; where none was, one made of its main food and the dish's word
 * said most. Leaves word with each sentence which dish it names. `dish` says which dish each of the
 * `count` stretches belongs to, or NO_DISH. */
void name_dishes(struct recording *r, const struct pack *k, const struct feature *f,
                 const struct stretch *s, size_t count, const size_t *dish);

#endif
