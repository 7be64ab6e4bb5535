/* build/wetpan.h: whether what cooks on the stove cooks in liquid or in fat; what fat is cut into.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WETPAN_H
#define DISHTAKE_BUILD_WETPAN_H

#include "build/builder.h"

/* Whether more than a spoonful of liquid went in since the pan was named, or since the last frying.
 */
bool is_wetted(const struct builder *b);
/* Whether the sentence says a time too short for simmering; for frying. */
bool is_brief_time(const struct builder *b);
bool is_moment(const struct builder *b);
/* Whether it says how long for a side, of what no oven, grill or water heats. */
bool is_sided(const struct builder *b, uint64_t heat);
/* Whether the last step put a lid on, and the sentence says a time in which things burn that fry.
 */
bool is_lidded(const struct builder *b);
/* Whether it fries although no verb says so: in fat that just went in. `heat`: of last_heat(). */
bool is_oiled(const struct builder *b, uint64_t heat);
/* "Cut in the cold butter": a fat behind the verb of chunk `verb`, which ends in "in"; NOWHERE for
 * no verb. */
bool has_fat_behind(const struct builder *b, size_t verb);

#endif
