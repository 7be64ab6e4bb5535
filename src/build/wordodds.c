/* build/wordodds.c
 * SPDX-License-Identifier: MIT */
#include "build/wordodds.h"

static int hundredths(const struct table *t, struct text words, struct text where, size_t column)
{
    return t ? text_whole(table_cell(t, table_find_pair(t, words, where), column)) : 0;
}

double word_odds(const struct table *t, struct text words, struct text where, size_t column)
{
    return HUNDREDTH * hundredths(t, words, where, column);
}

double words_odds(const struct table *t, const struct text *words, size_t count, struct text where,
                  size_t column)
{
    int sum = 0;
    for (size_t n = 0; n < count; n++)
        sum += hundredths(t, words[n], where, column);
    return HUNDREDTH * sum;
}
