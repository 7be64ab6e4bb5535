/* tag/sound.h: how far apart two words sound, by the pack's table sounds.tsv (what each letter of a
 * pronunciation is, and what is easily heard for it).
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_SOUND_H
#define DISHTAKE_TAG_SOUND_H

#include "pack/pack.h"

#define SOUND_LETTERS 128

struct sounds {
    /* Hundredths of a whole slip: one sound heard for another; one heard too many or too few. */
    unsigned char apart[SOUND_LETTERS][SOUND_LETTERS], lost[SOUND_LETTERS];
};

/* False where the pack has no such table: then nothing can be compared. */
bool sounds_load(struct sounds *s, const struct pack *k);

/* The least number of slips, in hundredths, that make one the other, for each sound of the longer.
 * More than `most`: some number above it. */
unsigned sound_distance(const struct sounds *s, struct text a, struct text b, unsigned most);
/* Sounds and the bits of their letters, sound_letters(). */
struct sounding {
    struct text sounds;
    uint64_t letters;
};
/* Whether the two can be as near as `most` at all, by their lengths and their letters. */
bool sounds_may_be_near(const struct sounding *a, const struct sounding *b, unsigned most);

#endif
