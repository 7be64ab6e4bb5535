/* tag/longname.h: a long name in several short words, at any place: "card a mom", "bus mati".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_LONGNAME_H
#define DISHTAKE_TAG_LONGNAME_H

#include "tag/hearing.h"

void hear_long_names(struct hearing *h, const struct sentence *s);

#endif
