/* check/said.h: what a checker listens for: sets of short patterns over words and classes, from
 * check-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_SAID_H
#define DISHTAKE_CHECK_SAID_H

#include "model/recording.h"
#include "pack/pack.h"
#include "tag/slot.h"

#define SAYING_TOKENS 10

/* "i've|i set|put * out": tokens as in hearing.tsv; `*` lets up to GAP_WORDS words pass. */
struct saying {
    struct text set;
    struct token tokens[SAYING_TOKENS];
    bool gap[SAYING_TOKENS];
    size_t count;
};
#define GAP_WORDS 4

/* Rows [first, end) of the table, and what any of them may begin with: most words are refused by
 * that alone. */
struct saying_set {
    struct text name;
    size_t first, end;
    struct token begins;
    bool anything; /* one begins with a gap */
};

/* What may begin at a word: a bit for each row, `row_words` of them, then one for each set. It
 * depends on nothing but the word, and in an entry of several words on its last one; so each word
 * of the language is looked at once, however often it is said. */
struct saying_word {
    struct text key;
    const struct entry *entry, *whole; /* of the word, and of the last one of its entry */
    unsigned char tag;
    uint64_t *bits;
    struct saying_word *next;
};

struct sayings {
    LIST(struct saying) all;
    LIST(struct saying_set) sets;
    const uint64_t **opens; /* of each word of the recording: bits, see saying_word */
    size_t row_words, set_words;
};

/* Reads the pack's table, for one recording; false with a problem where a row is wrong. Arena. */
bool sayings_load(struct sayings *list, struct arena *a, const struct pack *k,
                  const struct recording *r, struct problems *p);
/* The first place in words [first, last] of that recording where one of the set is said; false when
 * there is none. */
bool said_find(const struct sayings *list, const struct recording *r, const char *set,
               struct span within, struct span *where);

#endif
