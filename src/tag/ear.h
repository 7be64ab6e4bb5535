/* tag/ear.h: what is listened with for misheard words (tag/misheard.h): where they may stand, what
 * is heard for what. Made once for a thread, when its first recording is read.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_EAR_H
#define DISHTAKE_TAG_EAR_H

#include "tag/slot.h"
#include "tag/sound.h"

#define PAIR_BUCKETS 512
#define LONG_BUCKETS 1024
#define LONG_SOUNDS 6

/* What must stand before a slot, side by side for all slots, since every unit is held against each.
 */
struct opening {
    const struct token *last; /* the place right before it; NULL: there is none */
    const struct hearing_slot *slot;
    struct unit_set tags; /* copies of the last one's */
    uint64_t word_shapes, value_shapes;
};

struct ear {
    struct arena memory;  /* of all that follows */
    const struct pack *k; /* borrowed */
    bool ready;
    const struct table *pairs; /* mishearings.tsv: heard, meant */
    struct sounds sounds;
    slot_list slots;
    LIST(struct opening) openings[2]; /* of the same by their `again`, in order */
    size_t pair_rows[PAIR_BUCKETS],
        *pair_next;         /* rows of `pairs` + 1 by their first cell; 0: the end */
    struct unit_set wanted; /* tags that slots ask for */
    /* Names of foods of LONG_SOUNDS or more by their sound_frame(): 1 + the number among
     * pack_pronounced(), and the next one of the bucket; 0: the end. */
    uint32_t long_names[LONG_BUCKETS], *long_next;
};

/* NULL: no memory. ear_free frees; the pack must outlive it. */
struct ear *ear_new(const struct pack *k);
void ear_free(struct ear *ear); /* NULL is fine */

enum ear_state { EAR_READY, EAR_DEAF, EAR_NO_MEMORY };
/* Fills it, the first time. Deaf: the pack has no tables for it, or, with a problem, wrong ones. */
enum ear_state ear_ready(struct ear *ear, struct problems *p);

/* How words sound, in the arena. */
struct text ear_sound(const struct ear *ear, struct arena *a, struct text words);
/* Whether the folded word is one of the language: one that pronunciations.tsv has. */
bool ear_knows(const struct ear *ear, struct text word);
/* The first long name that may sound like that, 0 for none; ear->long_next has the next one. */
uint32_t ear_long_find(const struct ear *ear, struct text sounds);
/* The first row of `pairs` for the heard word, and the next one after `row`; pairs->rows when there
 * is none. */
size_t ear_pair_find(const struct ear *ear, struct text key);
size_t ear_pair_after(const struct ear *ear, struct text key, size_t row);

#endif
