/* build/wordodds.h: what words speak for, by tables that were learned (line-odds, step-odds,
 * prep-odds). A row has the words, where they stand ("near", "food"), and a column or two of odds.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WORDODDS_H
#define DISHTAKE_BUILD_WORDODDS_H

#include "pack/pack.h"

/* The unit of those columns: hundredths of log odds, whole numbers. */
#define HUNDREDTH 0.01
/* The first of those columns. */
enum { COLUMN_ODDS = 2 };

/* Log odds of the words where they stand so; 0: no row has them, or there is no table (NULL). */
double word_odds(const struct table *t, struct text words, struct text where, size_t column);
/* The sum of so many. */
double words_odds(const struct table *t, const struct text *words, size_t count, struct text where,
                  size_t column);

#endif
