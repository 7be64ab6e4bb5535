/* base/json_text.h: a text out of Jansson's JSON.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_JSON_TEXT_H
#define DISHTAKE_BASE_JSON_TEXT_H

#include <jansson.h>

#include "base/text.h"

/* The string's text, borrowed; empty for what is no string, or NULL. */
static inline struct text json_text(const json_t *value)
{
    return json_is_string(value)
               ? (struct text){json_string_value(value), json_string_length(value)}
               : TEXT_EMPTY;
}

#endif
