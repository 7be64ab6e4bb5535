/* split/order.h: a cook who counts the dishes: "six is my comfort food", "okay, seventh".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_ORDER_H
#define DISHTAKE_SPLIT_ORDER_H

#include "split/feature.h"

/* Marks as `order` the sentences that begin with numbers one after the other, where enough do: one
 * number alone is an amount or a chance. */
void find_order(const struct recording *r, struct feature *f);

#endif
