/* build/talk.h: whether a recording is only talk of food: a cupboard shown, letters answered, a
 * market walked round. What cooks say then has other words than what they say at the stove.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_TALK_H
#define DISHTAKE_BUILD_TALK_H

#include "model/recording.h"

/* Log odds that nothing is cooked in it; a short one tells too little. */
double talk_points(const struct recording *r);

#endif
