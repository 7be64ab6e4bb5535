/* tag/listen.h: places that ask for something that is not there: rows of hearing.tsv, with the
 * units between them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_LISTEN_H
#define DISHTAKE_TAG_LISTEN_H

#include "tag/hearing.h"

/* Reads units of the sentence as what was said. `again`: only by the slots for what was heard in a
 * better place. */
void hear_units(struct hearing *h, const struct sentence *s, bool again);

#endif
