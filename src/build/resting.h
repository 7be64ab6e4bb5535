/* build/resting.h: what food that waits does: it soaks, rests, cools, lies in its marinade.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_RESTING_H
#define DISHTAKE_BUILD_RESTING_H

#include "build/builder.h"

/* Whether the dish has such a component, and nothing was heated since: chicken stays in its
 * marinade. */
bool lies_in(const struct builder *b, struct text part);
/* The shapes (text_shape()) of the components that lies_in() may hold for. */
uint64_t part_shapes(const struct builder *b);
/* Whether raw meat or fish stands with something that gives it taste, and nothing was heated since:
 * ground meat is only kept cold. */
bool lies_raw(const struct builder *b);
/* "Pour boiling water over the couscous and leave it", "cover them with milk": water or milk was
 * just poured over what then waits. */
bool is_soaking(const struct builder *b);
/* "Ten minutes before you cut it": chunk behind the time says what it is let be for. */
bool waits_for_knife(const struct builder *b);
/* "Off the heat, lid on, ten minutes": it was just taken off what heated it. */
bool is_taken_off(const struct builder *b);
/* "Out on kitchen paper": on which fat runs off, not "baking paper". */
bool is_on_paper(const struct builder *b);
/* Whether the dish has meat or fish that is bought raw. */
bool has_raw_meat(const struct dish *d);

#endif
