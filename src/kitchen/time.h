/* kitchen/time.h: how long a dish takes: what its steps said, added up; what runs side by side is
 * not added twice. Which action is cooking and which is waiting: the language's action-times.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_TIME_H
#define DISHTAKE_KITCHEN_TIME_H

#include "kitchen/kitchen.h"
#include "model/recipe.h"

/* Fills dish->active, cook, rest and total from the steps. Only what was said counts: a step
 * without a duration adds nothing. The first three add up to the total; each says in words what it
 * was made of. `batches` multiplies what was said of each batch; 0 when their number is not known:
 * then a batch counts once, and `from` says so. */
void time_dish(const struct kitchen *k, struct arena *a, struct dish *dish, size_t batches);

/* ISO 8601: "PT1H30M", "P1DT2H", "PT0S"; of a range the upper end is meant to be given. Empty for
 * what is no length of time: negative, not a number, without an end, or over a hundred years. */
struct text iso8601_duration(struct arena *a, double seconds);

/* Whether the language's table calls this action cooking by heat. */
bool action_cooks(const struct kitchen *k, struct text action);
/* Whether a step of the dish does. */
bool dish_cooks(const struct kitchen *k, const struct dish *dish);

#endif
