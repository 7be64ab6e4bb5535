/* words/entry.h: the longest entry of the lexicon that begins at a word.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_ENTRY_H
#define DISHTAKE_WORDS_ENTRY_H

#include "model/recording.h"
#include "pack/pack.h"

/* Looks the word up by itself, which most stages ask for; again after its key was changed. */
void word_look_up(struct word *w, const struct pack *k);

/* The longest entry that begins at word `i` and ends before word `end`, over no comma; sets
 * `*last`, the entry's last word. NULL, with `*last` untouched, when no entry begins there. */
const struct entry *entry_longest(const struct recording *r, const struct pack *k, size_t i,
                                  size_t end, size_t *last);

#endif
