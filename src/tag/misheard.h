/* tag/misheard.h: words that the captions have wrong: what is expected at their place, and sounds
 * like them. Runs between tag_words and match_rules. A word is touched only where its place asks
 * for something that it is not.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_MISHEARD_H
#define DISHTAKE_TAG_MISHEARD_H

#include "model/recording.h"
#include "tag/ear.h"

/* One sure reading is applied: tag, entry and heard_as of the words. Where two fit about as well
 * the words stay as they were captioned, and heard_as and heard_or name both. Does nothing where
 * the pack has no tables for it. */
bool hear_words(struct recording *r, struct ear *ear, struct problems *p);

#endif
