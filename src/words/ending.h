/* words/ending.h: how much speaks for a sentence's end at a place, where captions have no full
 * stops. Rows of sentence-ends.tsv give points to what stands before and behind the place.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_ENDING_H
#define DISHTAKE_WORDS_ENDING_H

#include "model/recording.h"
#include "pack/pack.h"

/* One entry of the lexicon, or a word that it lacks; fillers are no unit. */
struct unit_of_words {
    struct text head, tail; /* its first and its last word */
    size_t last;            /* word number */
    size_t words;           /* with the fillers behind it */
    unsigned char tag;      /* of its likeliest reading */
    bool kinds;             /* "spices", "herbs": foods of a kind, which are named behind it */
};

#define ENDING_LENGTHS 10

struct endings {
    LIST(struct unit_of_words) units; /* of the whole recording */
    const struct table *table;        /* borrowed; NULL: the pack has none */
    int always;                       /* points of any place */
    int of_length[ENDING_LENGTHS];    /* by how long the sentence is */
};

/* Lays out the recording's units. */
void endings_make(struct endings *e, struct recording *r, const struct pack *k);
/* For a sentence that ends with unit `unit`, and has so many words then; in hundredths of log odds:
 * over 0 an end is likelier than not. */
int ending_points(const struct endings *e, size_t unit, size_t words);

#endif
