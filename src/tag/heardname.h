/* tag/heardname.h: one wrong word in a name of several, told by the word beside it: "chicken sock".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_HEARDNAME_H
#define DISHTAKE_TAG_HEARDNAME_H

#include "tag/hearing.h"

void hear_names(struct hearing *h, const struct sentence *s);

#endif
