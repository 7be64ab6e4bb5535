/* build/dangling.h: what the parts that read amounts without a food share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_DANGLING_H
#define DISHTAKE_BUILD_DANGLING_H

#include "build/prep.h"

/* "Mustard, the smooth sort, about four teaspoons": an amount so many seconds after a food without
 * one is that food's. */
#define DELAY_SECONDS 9.0
/* "A tin of tuna on top of that, the 145 gram size": so many words at most behind the package. */
#define SIZE_WORDS 16

/* Whether the line's amount was taken back since it was said. */
bool is_taken_back(const struct builder *b, const struct ingredient *line, size_t first);
/* "200 grams of rice, 250 actually": the word behind takes back what stood before. */
bool is_actual(const struct builder *b, const struct ingredient *line, const struct chunk *c);
/* The amount of chunk `c`, chunk `index` of the sentence, is the line's. */
void give_amount(struct builder *b, struct ingredient *line, const struct chunk *c, size_t index,
                 const struct said_amount *said);
/* Another line of the last food, with the amount of chunk `c`; valid until the next one is added.
 */
struct ingredient *add_again(struct builder *b, const struct chunk *c,
                             const struct said_amount *said);
/* anew.c. "And carrots, the fat ones, four" where carrots went in before: whether chunk `c` is an
 * amount of what was named again, and the line that it makes. */
bool is_named_again(const struct builder *b, const struct chunk *c, size_t index);
void add_named_again(struct builder *b, const struct chunk *c, size_t index,
                     const struct said_amount *said);
/* piecefood.c. "Four cloves" where no garlic is: the words `amount` of chunk `c` name a food by
 * themselves, and make a line of it; false where they do not. */
bool build_piece_food(struct builder *b, const struct chunk *c, struct span amount,
                      const struct said_amount *said);
/* package.c. */
/* Whether chunk `index` stands right behind the line, but for "about", "that's", "the". */
bool follows_line(const struct builder *b, size_t index, const struct ingredient *line);
/* "a can of beans, fifteen ounces": the amount behind a package is its size. */
bool is_package_of(const struct builder *b, const struct chunk *c, size_t index,
                   const struct ingredient *line, const struct said_amount *said);
/* "A bottle of stout. That's 500 mil.", "two jars, from the shop, 700 mil each": what a package
 * holds, told of it some words behind. */
bool tells_size_of_package(const struct builder *b, const struct chunk *c,
                           const struct ingredient *line, const struct said_amount *said);
/* "The four hundred gram ones": a size told with "the", of a package named some words before. */
bool is_size_of_package(const struct builder *b, const struct chunk *c, size_t index,
                        const struct ingredient *line, const struct said_amount *said);
/* "A chuck roast, about three pounds": of one piece the weight is what a recipe prints. */
bool weighs_one(const struct builder *b, const struct chunk *c, size_t index,
                const struct ingredient *line, const struct said_amount *said);
/* "A can of beans, fifteen ounces, drained": what stands behind the size is said of the food. */
void give_package(struct builder *b, struct ingredient *line, size_t index,
                  const struct said_amount *said);
/* recount.c. "Two spoons, soup spoons, so two tablespoons", "a glass of wine, a hundred mils": how
 * big those are that were counted. */
bool sizes_spoons(const struct builder *b, const struct ingredient *line, const struct chunk *c,
                  const struct said_amount *said);

#endif
