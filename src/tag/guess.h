/* tag/guess.h: what was meant, by what was heard: candidates that sound alike.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_GUESS_H
#define DISHTAKE_TAG_GUESS_H

#include "tag/hearing.h"

/* Shorter words are all near each other: only homophones and listed pairs. */
#define SOUNDS_LEAST 4
/* What is as near, in hundredths, sounds the same. */
#define HOMOPHONE 5

/* The best and the second best reading of some words. Distances are in hundredths, as of
 * sound_distance. */
struct guess {
    const struct entry *entry, *other;
    int distance, other_distance;
};

/* What was heard, as candidates are held against it. */
struct asked {
    struct text key;
    struct sounding as;
    bool plural;
    int cost; /* of being wrong there at all */
    int most; /* the largest distance that is taken of it */
};

/* The entry takes its place among the two best. */
void consider(struct guess *g, const struct entry *e, int distance);
bool is_plural(struct text word);
/* All candidates that the slot expects, by their sound; where only a food that was heard is
 * trusted, only those. */
void guess_by_sound(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                    struct guess *g);

#endif
