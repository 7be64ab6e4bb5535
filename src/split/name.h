/* split/name.h: what a dish is called.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_NAME_H
#define DISHTAKE_SPLIT_NAME_H

#include "split/owner.h"

/* The surest name said in the stretch; first > last when none is. */
struct span name_said(const struct recording *r, const struct feature *f, struct stretch s);
/* The surest name that the rules of phrases find for each dish, in its own stretches or, where it
 * fits no dish there, in another's; first > last where there is none. `dish` says which of so many
 * dishes each of the `count` stretches belongs to, or NO_DISH. Borrows all of it. Arena. */
struct naming name_by_rules(struct recording *r, const struct feature *f, const struct stretch *s,
                            size_t count, const size_t *dish, size_t dishes);
/* Gives the recording's dishes their titles: the names chosen (choose_names), or titles made of a
 * dish's main food and the dish's word said most. Leaves word with each sentence which dish it
 * names. */
void title_dishes(struct recording *r, const struct naming *n);

#endif
