/* check/check.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_CHECK_H
#define DISHTAKE_CHECK_CHECK_H

#include "model/recording.h"
#include "pack/pack.h"

struct ingredient_list;

/* `list` is what the cook shows of the ingredients, which must agree with the voice; NULL: there is
 * none. What it listens for has been set: listen_for. */
bool check_recipes(struct recording *r, const struct pack *k, const struct ingredient_list *list,
                   struct problems *p);

#endif
