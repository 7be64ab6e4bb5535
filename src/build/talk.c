/* build/talk.c: the weights of talk.def.
 * SPDX-License-Identifier: MIT */
#include "build/talk.h"

#include <limits.h>

#include "pack/pack.h"

/* So many words are needed; with fewer it is taken for cooking. */
#define WORDS_LEAST 150
#define COOKING (-9.0)
#define HUNDRED 100.0

static const double ALWAYS_ODDS =
#define ALWAYS(odds) odds
#include "build/talk.def"
    ;
static const double TAG_ODDS[UCHAR_MAX + 1] = {
#define TAGGED(tag, odds) [TAG_##tag] = (odds),
#include "build/talk.def"
};

double talk_points(const struct recording *r)
{
    double sum = 0;
    if (r->words.count < WORDS_LEAST)
        return COOKING;
    for (size_t i = 0; i < r->words.count; i++)
        sum += TAG_ODDS[r->words.at[i].tag];
    return ALWAYS_ODDS + HUNDRED * sum / (double) r->words.count;
}
