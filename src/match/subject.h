/* match/subject.h: a sentence as rules see it: one code unit a word, fillers left out.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_SUBJECT_H
#define DISHTAKE_MATCH_SUBJECT_H

#include "model/recording.h"
#include "pack/pack.h"
#include "words/limits.h"

struct subject {
    unsigned char tags[SENTENCE_WORDS];
    unsigned words[SENTENCE_WORDS]; /* the word number of each unit */
    struct ratio
        low[SENTENCE_WORDS]; /* of a unit that ends a number: its value, both equal when exact */
    struct ratio high[SENTENCE_WORDS];
    size_t length;
    struct unit_set present; /* the code units in `tags` */
    uint64_t at[256];        /* where each of them stands: bit n is tags[n]; 0 for all others */
};

/* ", no," between commas takes back what was said before it; "no sugar" leaves sugar out. */
bool is_no_by_itself(const struct recording *r, size_t word);
void subject_make(struct subject *s, const struct recording *r, const struct sentence *sentence);
/* After tags changed: what is in it now. */
void subject_count(struct subject *s);
/* Units [begin, end) become one of class `tag`. */
void subject_join(struct subject *s, size_t begin, size_t end, unsigned char tag);
/* The unit after the entry that holds unit `at`. */
size_t subject_entry_end(const struct subject *s, size_t at);

#endif
