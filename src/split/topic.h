/* split/topic.h: what a stretch is about, and a title made of that.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TOPIC_H
#define DISHTAKE_SPLIT_TOPIC_H

#include "split/border.h"

/* As much of the stretch as is read to tell what it is about. */
struct stretch telling_part(struct stretch s);
/* How often the stretch names this kind of food. */
size_t times_named(const struct feature *f, struct stretch s, struct text kind);
/* How much a dish is about a food of these marks, 0.1 to 2: flour and milk are in everything, and a
 * dish with meat is named by it. */
double telling(uint64_t marks);
/* How much the stretch is about this kind of food, as a share of the food that it is most about. */
double share_about(const struct feature *f, struct stretch s, struct text kind);
/* "Turkey" and "ground turkey". */
bool is_same_food(struct text a, struct text b);
/* A title for a dish that the cook never names: main foods and dish's word; empty when there is
 * neither. Arena. */
struct text made_name(struct recording *r, const struct feature *f, struct stretch s);
/* The name as it was said; one word with a food that the stretch is clearly about: "stew" is a beef
 * stew. Arena. */
struct text fuller_name(struct recording *r, const struct feature *f, struct stretch s,
                        struct span name);

#endif
