/* build/doer.h: who does what a verb says: the food itself, or who is told to.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_DOER_H
#define DISHTAKE_BUILD_DOER_H

#include "build/builder.h"

/* "Goes" */
bool is_third_person(const struct entry *e);
/* A verb that makes no step by itself; "leave" makes one where it says how long. */
bool is_weak(const struct builder *b, uint64_t marks);
/* "That", "these": a word that stands for the food alone. */
bool is_that(const struct builder *b, const struct chunk *c);
/* Whether a food, or a word for it, stands right before chunk `i`. */
bool is_thing_before(const struct builder *b, size_t i);
/* Verbs of which the food can be the subject: "the fish goes in", "it bakes". What it does by
 * itself on the stove is told with its time: "it simmers for ten minutes". */
bool is_done_by_thing(const struct builder *b, size_t i, uint64_t marks);
/* "Wash them wash them", "slit it, wash it": an order with its object behind a thing or a comma,
 * not what that thing does. */
bool is_order(const struct builder *b, size_t i);
/* "Get that in the oven", "get them onto a rack": it is put there. */
bool is_get_into(const struct builder *b, size_t i);

#endif
