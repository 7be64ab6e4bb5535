/* split/affinity.c
 * SPDX-License-Identifier: MIT */
#include "split/affinity.h"

#include <string.h>

#define NUMBERS 1 /* the columns */
#define LEAD 2
#define HUNDREDTH 0.01F /* the table's unit */
#define KEY_MOST 64
#define NUMBER_MOST 10000000 /* so that no digits run over */
/* The lead of a food of no common dish. */
#define UNKNOWN_LEAD 0.12F

/* The next whole number of a cell, behind which `*at` goes. */
static int next_number(const char **at, const char *end)
{
    bool negative = *at < end && **at == '-';
    int number = 0;
    for (*at += negative; *at < end && **at != ' '; ++*at)
        if (number < NUMBER_MOST)
            number = 10 * number + (**at - '0');
    *at += *at < end;
    return negative ? -number : number;
}

void affinity_add(struct affinity *sum, const struct table *t, const char *how, struct text word)
{
    char key[KEY_MOST];
    const struct text kind = text_from(how);
    const size_t length = kind.length + word.length;
    if (!t || length >= KEY_MOST)
        return;
    memcpy(key, kind.at, kind.length);
    if (word.length)
        memcpy(key + kind.length, word.at, word.length);
    size_t row = table_find(t, (struct text){key, length});
    struct text numbers = table_cell(t, row, NUMBERS);
    if (row >= t->rows)
        return;
    const char *at = numbers.at, *end = at + numbers.length;
    for (size_t n = 0; n < AFFINITY_SIZE && at < end; n++)
        sum->at[n] += HUNDREDTH * (float) next_number(&at, end);
    sum->count++;
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
