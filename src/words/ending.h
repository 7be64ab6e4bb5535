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
};

struct endings {
    LIST(struct unit_of_words) units; /* of the whole recording */
    struct ending_row *rows;          /* open addressing */
    size_t room; /* of `rows`: a power of two, or 0 where the pack has no such table */
    uint64_t tag_codes[TAG_CODES]; /* what each tag is in a key */
};

/* Reads the table and lays out the recording's units. */
void endings_make(struct endings *e, struct recording *r, const struct pack *k);
/* For a sentence that ends with unit `unit`, and has so many words then; in hundredths of log odds:
 * over 0 an end is likelier than not. */
int ending_points(const struct endings *e, size_t unit, size_t words);

#endif
