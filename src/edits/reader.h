/* edits/reader.h: the readers that fields.def names.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_READER_H
#define DISHTAKE_EDITS_READER_H

#include <jansson.h>

#include "model/recipe.h"

/* Whether the value is one of that kind; where `out` is not NULL, it is put there: into the member
 * that a row of fields.def names. Texts are copied to the arena. */
typedef bool reader(const json_t *v, struct arena *a, void *out);
reader value_text;
reader value_text_or_none;
reader value_texts;
reader value_bool;
reader value_amount;
reader value_yield;
reader value_role;
reader value_temperatures;
reader value_durations;

/* Text that can be printed: not empty, no control characters but line ends. */
bool json_is_text(const json_t *v);
/* True, false or nothing; such a text, null or nothing. */
bool json_is_flag(const json_t *v);
bool json_is_name(const json_t *v);

#endif
