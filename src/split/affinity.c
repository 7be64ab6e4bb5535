/* split/affinity.c
 * SPDX-License-Identifier: MIT */
#include "split/affinity.h"

#include <stdio.h>

#define NUMBERS 1 /* the columns */
#define LEAD 2
#define HUNDREDTH 0.01F /* the table's unit */
#define KEY_MOST 64
/* The lead of a food of no common dish. */
#define UNKNOWN_LEAD 0.12F

void affinity_add(struct affinity *sum, const struct table *t, const char *how, struct text word)
{
    char key[KEY_MOST];
    int length = snprintf(key, sizeof key, "%s%.*s", how, (int) word.length, word.at);
    if (!t || length >= KEY_MOST)
        return;
    size_t row = table_find(t, (struct text){key, (size_t) length});
    struct text rest = table_cell(t, row, NUMBERS), number;
    for (size_t n = 0; n < AFFINITY_SIZE && text_part(&rest, ' ', &number); n++)
        sum->at[n] += HUNDREDTH * (float) text_whole(number);
    sum->count += row < t->rows;
}

void affinity_join(struct affinity *sum, const struct affinity *more)
{
    for (size_t n = 0; n < AFFINITY_SIZE; n++)
        sum->at[n] += more->at[n];
    sum->count += more->count;
}

float affinity_lead(const struct table *t, struct text food)
{
    size_t row = t ? table_find(t, food) : 0;
    struct text lead = t && t->columns > LEAD ? table_cell(t, row, LEAD) : TEXT_EMPTY;
    return lead.length ? HUNDREDTH * (float) text_whole(lead) : UNKNOWN_LEAD;
}
