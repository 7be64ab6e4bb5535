/* tag/ear.h: what is listened with for misheard words (tag/misheard.h): where they may stand, what
 * is heard for what. Ready-made for the built-in pack; for another one it is made once for a
 * thread, when its first recording is read.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_EAR_H
#define DISHTAKE_TAG_EAR_H

#include "pack/ready.h"
#include "tag/fits.h"
#include "tag/slot.h"
#include "tag/sound.h"

/* Slots have numbers below this; behind what stands before a unit, what stands after it is counted
 * from here on. */
#define EAR_SLOTS (PLACES_MOST / 2)

#define LONG_BUCKETS 1024
#define LONG_SOUNDS 6

#define EAR_HEADS 4096 /* four times as many as there are such words */

struct ear {
    struct arena memory;     /* of all that follows, and of itself: it begins the one block */
    struct arena_mark begin; /* with nothing in it */
    const struct pack *k;    /* borrowed */
    bool ready;
    const struct table *pairs; /* mishearings.tsv: heard, meant */

    uint64_t heads[EAR_HEADS / 64]; /* bits by the hash of the first words that are heard there */
    struct sounds sounds;
    slot_list slots;
    struct fits
        beside; /* slots that a unit may stand right before, and, from EAR_SLOTS on, behind */
    struct unit_set again[2];         /* the slots by their `again` */
    struct unit_set open, closed;     /* slots that need nothing before them; behind them */
    struct unit_set at_begin, at_end; /* slots that a sentence's begin may stand before; its end
                                         behind */
    struct unit_set farther;          /* slots that need more before them than one unit */
    struct unit_set wanted;           /* tags that slots ask for */
    /* Names of foods of LONG_SOUNDS or more by their sound_frame(): 1 + the number among
     * pack_pronounced() of foods, and the next one of the bucket; 0: the end. */
    uint32_t long_names[LONG_BUCKETS], *long_next;
};

/* Where the tables begin, which pack/ready.h has made. */
#define EAR_TABLES offsetof(struct ear, heads)

/* NULL: no memory. ear_free frees; the pack must outlive it. */
struct ear *ear_new(const struct pack *k);
/* The same, filled; NULL also where the pack's tables are wrong, with a problem, or not there. */
struct ear *ear_made(const struct pack *k, struct problems *p);
/* The same of that image. */
struct ear *ear_open(const struct ready *image, const struct pack *k);
/* The same of the pack that is built in, ready-made; all threads may share it. */
struct ear *ear_builtin(const struct pack *k);
void ear_free(struct ear *ear); /* NULL is fine */

enum ear_state { EAR_READY, EAR_DEAF, EAR_NO_MEMORY };
/* Fills it, the first time. Deaf: the pack has no tables for it, or, with a problem, wrong ones. */
enum ear_state ear_ready(struct ear *ear, struct problems *p);

/* Whether a pair's heard words may begin with the word; most do not. */
bool ear_may_begin(const struct ear *ear, struct text word);
/* How words sound, in the arena. */
struct text ear_sound(const struct ear *ear, struct arena *a, struct text words);
/* Whether the folded word is one of the language: one that pronunciations.tsv has. */
bool ear_knows(const struct ear *ear, struct text word);
/* The first long name that may sound like that, 0 for none; ear->long_next has the next one. */
uint32_t ear_long_find(const struct ear *ear, struct text sounds);

#endif
