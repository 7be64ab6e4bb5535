/* build/yieldof.h: of what a yield counts pieces.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_YIELDOF_H
#define DISHTAKE_BUILD_YIELDOF_H

#include "build/builder.h"

/* "Feeds", "does", "makes": nothing but a yield is said so. */
bool yield_serves(const struct recording *r, const struct match *m);
/* "That makes", behind an amount. */
bool is_counting_verb(const struct recording *r, size_t i);
/* What a dish's title says in the plural: "muffin" of "Banana oat muffins with nuts", "slice" of
 * "Almond slices". */
const struct entry *title_piece(const struct pack *k, struct text title);
/* The same of the dish that is being built. */
const struct entry *dish_piece(const struct builder *b);
/* The word for what is counted; "twenty squares" is one match, whose last word it is. NULL: none.
 */
const struct entry *yield_eater(const struct builder *b, const struct match *m);
/* "Big bowls" are bowls, which people eat from; NULL for what they do not. */
const struct entry *eater_reading(const struct pack *k, const struct entry *e);
/* Whether they count what the dish makes, and nothing else. Pieces that are only cut count where
 * the dish is named after them; vessels where people eat from them. */
bool yield_counts(const struct builder *b, const struct match *m);
/* "Apple turnovers" are counted as turnovers, cheeseburgers as burgers. */
struct text piece_name(const struct entry *e);
/* Whether the words count pieces without saying of what: the title, which may not be made yet,
 * says. */
bool yield_needs_title(const struct builder *b, const struct match *m);
/* Whether pieces were made of the dish: rolled, cut, filled one by one. */
bool is_portioned(const struct builder *b);
/* Whether that is no yield where the title names no pieces. */
bool yield_needs_pieces(const struct builder *b, const struct match *m);
/* What is counted: "serving", or a piece by its name. */
struct text yield_counted(const struct builder *b, const struct match *m);

#endif
