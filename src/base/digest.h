/* base/digest.h: a short number that stands for bytes, to see whether they are still the same.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_DIGEST_H
#define DISHTAKE_BASE_DIGEST_H

#include <stdint.h>

#include "base/text.h"

/* FNV-1a of 64 bits (Fowler, Noll, Vo; draft-eastlake-fnv). It tells apart what changed by accident
 * or by editing, not what somebody made alike on purpose. */
#define DIGEST_BEGIN UINT64_C(0xcbf29ce484222325)
uint64_t digest_add(uint64_t digest, struct text bytes);
/* With its length, so that "ab" + "c" is another thing than "a" + "bc". */
uint64_t digest_add_part(uint64_t digest, struct text bytes);

#endif
