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
    char kind[SOUND_LETTERS]; /* the second letter of a consonant's kind, which tells it; 0: a
                                 vowel, or faint */
    /* By the bit of a sound, as sound_letters() has it: the bits of those near it; vowels; what is
     * faint. */
    uint64_t near[64], vowels, faint;
};

/* False where the pack has no such table: then nothing can be compared. */
bool sounds_load(struct sounds *s, const struct pack *k);

/* Sounds and the bits of their letters, sound_letters(). */
struct sounding {
    struct text sounds;
    uint64_t letters;
};
static inline struct sounding sounding_of(struct text sounds)
{
    return (struct sounding){sounds, sound_letters(sounds)};
}

/* The least number of slips, in hundredths, that make one the other, for each sound of the longer.
 * More than `most`: some number above it. */
unsigned sound_distance(const struct sounds *s, const struct sounding *a, const struct sounding *b,
                        unsigned most);

/* What tells at a look that a word is too far from another one, as most are: how many letters of
 * the one the other may lack, and one more, by the number of its sounds; 0: none is near. */
struct sound_reach {
    uint64_t letters; /* the other one's */
    unsigned count;   /* of these */
    unsigned char lacks[SOUNDS_MOST + 1];
};
/* None is near where `most` is less than 0. */
struct sound_reach sound_reach_of(const struct sounding *to, int most);
static inline bool sound_reaches(const struct sound_reach *n, const struct pronounced *p)
{
    const unsigned lacks = n->lacks[p->length];
    if (!lacks)
        return false;
    unsigned both = count_bits(n->letters & p->letters);
    return (p->letters_count > n->count ? p->letters_count : n->count) - both < lacks;
}

/* What stays of the sounds when vowels and faint ones are left out, and of the rest only their
 * kinds are kept: words that sound nearly the same nearly always have the same. */
size_t sound_frame(const struct sounds *s, struct text sounds);

#endif
