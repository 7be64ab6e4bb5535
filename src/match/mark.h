/* match/mark.h: words that a phrase makes unreal, negated, optional ...
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_MARK_H
#define DISHTAKE_MATCH_MARK_H

#include "model/recording.h"
#include "pack/pack.h"

/* Sets word.scope in the sentence from the matches of its phrase rules. */
void mark_scopes(struct recording *r, struct sentence *s);
/* What they mark is not done here: a story, a condition, an alternative. */
#define UNREAL_KINDS (KIND_OF(unreal) | KIND_OF(supposed) | KIND_OF(instead))

#endif
