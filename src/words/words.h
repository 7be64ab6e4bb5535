/* words/words.h: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_WORDS_H
#define DISHTAKE_WORDS_WORDS_H

#include "model/recording.h"
#include "pack/pack.h"

bool number_words(struct recording *r, const struct pack *k, struct problems *p);

#endif
