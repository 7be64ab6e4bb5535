/* read/normalise.h: letters and their accents in one form, Unicode's NFC.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_NORMALISE_H
#define DISHTAKE_READ_NORMALISE_H

#include "read/reader.h"

/* `t` in NFC; `t` itself when it is so already, else in the arena. */
struct text normalise(struct reader *rd, struct text t);
/* The pieces between word times and voices are normalised one by one, so that the offsets stay
 * exact. Where a mark composes across such a border the text as a whole would differ: then the
 * times go. */
void normalise_cleaned(struct reader *rd, struct cleaned *out);

#endif
