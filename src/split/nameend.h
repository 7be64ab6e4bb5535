/* split/nameend.h: places where no name of a dish ends, whatever its words are.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_NAMEEND_H
#define DISHTAKE_SPLIT_NAMEEND_H

#include "model/recording.h"

/* Whether what ends with word `last` names a thing ("spring roll sheets") or what is served beside
 * ("ice cream with it."). */
bool no_name_ends(const struct recording *r, size_t last);

#endif
