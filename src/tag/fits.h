/* tag/fits.h: which of many places of patterns a word fits: one look for each of its texts, instead
 * of one at each place.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_FITS_H
#define DISHTAKE_TAG_FITS_H

#include "tag/place_set.h"
#include "tag/slot.h"

struct fits_text {
    struct text text;
    struct place_set places; /* that list it */
};

/* Texts to places, by open addressing. */
struct fits_texts {
    LIST(struct fits_text) list;
    uint32_t *slots; /* 1 + the number in the list; 0: free */
    size_t room;     /* of the slots; a power of two */
    uint64_t shapes; /* text_shape() of all */
};

struct fits {
    struct place_set tags[256]; /* the places that take this tag */
    struct fits_texts words, values;
};

/* Place `number` takes what the token takes. In the arena. */
void fits_add(struct fits *f, struct arena *a, const struct token *t, size_t number);
/* Joins to `places` all those that take the word, as token_fits() has it. */
void fits_find(const struct fits *f, const struct word *w, bool any_reading,
               struct place_set *places);

#endif
