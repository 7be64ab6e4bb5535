/* build/noorder.h: verbs of which a sentence tells nothing to do: how a thing is, what is seen,
 * why, what would happen.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_NOORDER_H
#define DISHTAKE_BUILD_NOORDER_H

#include "build/builder.h"

/* Whether the word of chunk `c` may also be read so: "dry" is how a thing is, "skin" a food. */
bool has_reading(const struct builder *b, const struct chunk *c, unsigned char tag);
/* Whether a thing stands behind chunk `i`: "dry it", "brown the mince". "Dry limes" are not dried.
 */
bool has_object(const struct builder *b, size_t i);
/* The same inside the words of chunk `i`: "take it out". */
bool has_object_inside(const struct builder *b, size_t i);
/* "It's brown", "they stay open", "a pan of warm ...": the word tells how a thing is, not what to
 * do. */
bool is_quality(const struct builder *b, size_t i, unsigned char before);
/* "Cored and cut in half", "an onion, sliced": cut is how they are, though it could be a verb. */
bool is_participle(const struct builder *b, size_t i);
/* Whether the sentence says for how long, until when, or where. */
bool says_how_long(const struct builder *b);
/* "That raw taste", "a good rub": a thing that a word for how it is stands before. */
bool is_noun_behind(const struct builder *b, size_t i);
/* "It comes out clean", "comes out like a potato": behind chunk `i` it is said how the thing is
 * then. */
bool says_how_it_is(const struct builder *b, size_t i);
/* "Turn it off", said at the recording's end, is said to who films. */
bool is_camera(const struct builder *b, size_t i);
/* "I put mine on the porch": what this cook does, and nobody has to. */
bool is_cooks_own(const struct builder *b, size_t i);
/* "You'll see tears come out", "hear it start to fry": what is perceived, not done. */
bool is_perceived(const struct builder *b, size_t i);
/* "Or it'll stick", "so they set": what would happen, or what for. */
bool is_consequence(const struct builder *b, size_t i);
/* "Use a fork to press it down": what the tool is taken for is what is done. */
bool is_with_tool(const struct builder *b, size_t i);
/* "because it would take the roof off your mouth": why, not what to do. A comma or "and" ends it.
 */
bool gives_reason(const struct builder *b, size_t i);

#endif
