/* write/recipe_ld.h: a dish as schema.org's Recipe, for a file of its own and inside a page.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_RECIPE_LD_H
#define DISHTAKE_WRITE_RECIPE_LD_H

#include "write/card.h"
#include "write/json_print.h"

/* The whole node, "@context" included. The same words as the card has; what was not heard is left
 * out, and no author, date, rating or picture is made up. */
void put_recipe_ld(struct json *j, const struct recording *r, const struct writing *w,
                   const struct card *c);

#endif
