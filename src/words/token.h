/* words/token.h: the next word in a line of text.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_TOKEN_H
#define DISHTAKE_WORDS_TOKEN_H

#include "base/ratio.h"
#include "base/text.h"

struct token {
    size_t begin, end;   /* offsets of the word in the text */
    struct ratio number; /* of a word of digits; none otherwise */
    bool clock;          /* digits with a colon: 3:50 */
    unsigned char after; /* enum word_after */
};

/* Finds the word at or after `*at` and moves `*at` behind it and its punctuation. False at the end.
 * "1½", "1/2", "2.5" and "3:50" are one word; "10-12", "250g", "350°F" and "9x13" are several. */
bool token_next(struct text t, size_t *at, struct token *token);

#endif
