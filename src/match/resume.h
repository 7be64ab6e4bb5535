/* match/resume.h: where a list goes on behind what is denied, told or supposed.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_RESUME_H
#define DISHTAKE_MATCH_RESUME_H

#include "model/recording.h"
#include "pack/pack.h"

/* The last word of `scope`, which is what the phrase `m` is said of, before an amount with its food
 * that can be no part of it: `scope.last` where there is none. */
size_t list_resumes(const struct recording *r, const struct sentence *s, const struct match *m,
                    struct span scope);

#endif
