/* build/cooling.h: what cools with no verb that says so: "nine minutes, then into cold water", "it
 * must be stone cold", "out of the tin and onto a rack".
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_COOLING_H
#define DISHTAKE_BUILD_COOLING_H

#include "build/context.h"

/* The cold water that what was just boiled goes into, with no verb; NOWHERE when there is none. */
size_t find_iced(const struct builder *b);
/* The word for cold of "it must be stone cold", of what was cooked; NOWHERE when there is none. */
size_t find_cold_wait(const struct builder *b);
/* Whether the verb in chunk `verb` moves what was just boiled into cold water. */
bool is_iced(const struct builder *b, size_t verb);
/* The rack of "then out onto a rack", of what was baked; NOWHERE when there is none. */
size_t find_rack(const struct builder *b);
/* Whether the verb in chunk `verb` puts on a rack what was baked; `heat` as last_heat() has it. */
bool is_racked(const struct builder *b, uint64_t heat, size_t verb);

#endif
