/* tag/hearing.h: what was heard in one recording so far: how often each thing is named, which words
 * were wrong. The files share it that look for misheard words.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_HEARING_H
#define DISHTAKE_TAG_HEARING_H

#include "model/recording.h"
#include "tag/ear.h"

#define KEY_BYTES 80
#define COUNT_BUCKETS 512
#define SOUND_BUCKETS 256
#define SEEN_MOST 3 /* a thing that is heard more often than this is no likelier for it */

struct heard_count;
struct known_sound;

/* A candidate that sounds alike. */
struct found {
    const struct entry *entry;
    int distance;
};

/* All of it in the recording's arena. */
struct hearing {
    struct recording *r;
    const struct ear *ear;
    LIST(struct text) heard; /* each word that was taken for another one, once */
    struct heard_count *counts[COUNT_BUCKETS];
    LIST(size_t) foods;       /* numbers of the pronounced foods that were heard, now or before */
    LIST(struct found) found; /* of one look through all candidates */
    struct known_sound *sounds[SOUND_BUCKETS];
    bool foods_known; /* no other value was counted since they were listed */
    /* Only pairs that leave little doubt count, since the captions are written with care: in such
     * ones words are hardly ever wrong, and where they are, several are. */
    bool wary;
};

/* Counts what the words are read as. Both are borrowed. */
struct hearing *hearing_begin(struct recording *r, const struct ear *ear);
/* Whether enough words were wrong for captions that are written with care. */
bool many_wrong(const struct hearing *h);
/* How often the candidate was heard as it is, up to SEEN_MOST. */
int times_heard(const struct hearing *h, const struct entry *e);
/* Lists h->foods anew. */
void list_heard_foods(struct hearing *h);
/* How folded words sound; in the arena. */
struct text sounds_of(struct hearing *h, struct text words);
/* Words [first, last] as a key of mishearings.tsv, fillers left out; in `out`. */
struct text joined_key(const struct hearing *h, size_t first, size_t last, char out[KEY_BYTES]);
/* Whether the word was taken for another one elsewhere in the recording. */
bool heard_before(const struct hearing *h, struct text key);
/* Words [first, last] become the entry; `wrong` are the ones that were heard as something else. */
void apply_entry(struct hearing *h, struct span words, struct span wrong, const struct entry *e);

#endif
