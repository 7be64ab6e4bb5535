/* write/ingredient_line.h: "2 large red onions, finely chopped": one line of a card's list.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_INGREDIENT_LINE_H
#define DISHTAKE_WRITE_INGREDIENT_LINE_H

#include "write/write.h"

/* In the scratch arena. Where `sum` is given the line stands for all of that food's lines: their
 * amounts added up. */
struct text ingredient_line(const struct writing *w, const struct ingredient *in,
                            const struct shopping_line *sum);
/* A food's name as print has it: "Greek yogurt", "self-raising flour"; rows of the table
 * food-writing. The scratch arena's, or `name` itself. */
struct text food_written(const struct writing *w, struct text name);
/* "red onion" or "red onions", as its amount and what was said ask for. */
struct text food_name(const struct writing *w, const struct ingredient *in,
                      const struct amount *amount);
/* The same text with its first letter large. */
struct text capital(const struct writing *w, struct text t);

#endif
