/* words/sentence.h: where sentences end, with and without punctuation.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_SENTENCE_H
#define DISHTAKE_WORDS_SENTENCE_H

#include "model/recording.h"
#include "pack/pack.h"

/* Fills in r->sentences: every word belongs to one, none is longer than SENTENCE_WORDS. */
void cut_sentences(struct recording *r, const struct pack *k);

#endif
