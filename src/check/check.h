/* check/check.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_CHECK_H
#define DISHTAKE_CHECK_CHECK_H

#include "model/recording.h"
#include "pack/pack.h"

struct ingredient_list;
struct saying_list;

/* `list` is what the cook shows of the ingredients, which must agree with the voice; NULL: there is
 * none. `sayings` are those of the pack; NULL: it reads them itself. */
bool check_recipes(struct recording *r, const struct pack *k, const struct saying_list *sayings,
                   const struct ingredient_list *list, struct problems *p);

#endif
