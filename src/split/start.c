/* split/start.c: the threads say which sentences are cooked for a dish. That it is cooked now is
 * often said before, in words about something else: "Right. Parkin. If you're not from round here
 * ...". Of all sentences up to the first cooking the one is taken that makes the best border.
 * SPDX-License-Identifier: MIT */
#include "split/start.h"

#define SUSTAINED_SENTENCES 5
#define SUSTAINED_LEAST 2.5

static size_t first_cooking(const struct feature *f, struct stretch s)
{
    for (size_t i = s.first; i <= s.last; i++) {
        double soon = 0;
        for (size_t n = i; n <= s.last && n < i + SUSTAINED_SENTENCES; n++)
            soon += f[n].cooking;
        if (f[i].cooking >= COOKING_LEAST && soon >= SUSTAINED_LEAST)
            return i;
    }
    return s.first;
}

size_t find_start(const struct feature *f, const struct borders *b, size_t floor, struct stretch s)
{
    size_t cooking = first_cooking(f, s);
    size_t first = cooking - floor > TALK_MOST ? cooking - TALK_MOST : floor;
    size_t best = first < s.first ? first : s.first;
    for (size_t i = best + 1; i <= cooking; i++)
        if (b->places[i] > b->places[best])
            best = i;
    return best;
}
