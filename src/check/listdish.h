/* check/listdish.h: which dish a section of the shown list is of, by its heading or its foods.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_LISTDISH_H
#define DISHTAKE_CHECK_LISTDISH_H

#include "check/list.h"

/* The dish whose title is likest to words `heading` of `lines`; FINDING_NO_DISH where none is like
 * them. */
size_t dish_titled(const struct recording *lines, struct span heading,
                   const struct recording *talk);
/* Finds the dish of each section that has none yet. */
void place_sections(struct ingredient_list *list, const struct recording *talk);

#endif
