/* build/chunk.h: a sentence as the builder reads it: what the rules put together, and the words
 * between.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_CHUNK_H
#define DISHTAKE_BUILD_CHUNK_H

#include "model/recording.h"
#include "pack/pack.h"
#include "words/limits.h"

struct chunk {
    unsigned char tag;         /* of the match's rule, else of the word's entry */
    size_t first, last;        /* word numbers */
    const struct match *match; /* NULL for an entry that no rule took */
    const struct entry *entry; /* of such an entry; NULL for an unknown word */
    unsigned scope;            /* enum scope bits of its words */
};

struct chunks {
    struct chunk at[SENTENCE_WORDS];
    size_t count;
    uint64_t shapes; /* of all its words, as text_shape() has them */
    const struct sentence *sentence;
};

/* Fillers are left out; phrase matches are no chunks. */
void chunks_make(struct chunks *c, const struct recording *r, const struct sentence *s);
/* The match of `kind` that covers exactly these words; NULL when there is none. */
const struct match *chunk_match(const struct recording *r, const struct sentence *s,
                                struct span words, enum rule_kind kind);
static inline struct span chunk_words(const struct chunk *c)
{
    return (struct span){c->first, c->last};
}

uint64_t chunk_marks(const struct chunk *c);
/* The food of a line's chunk; NULL where it names none, of any other chunk and of none (NULL). */
const struct entry *chunk_food(const struct recording *r, const struct chunk *c);
/* The tag of chunk `i`; behind the last one TAG_SO, as before what comes next. */
unsigned char chunk_tag(const struct chunks *c, size_t i);

#endif
