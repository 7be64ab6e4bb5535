/* write/markdown.c
 * SPDX-License-Identifier: MIT */
#include "write/markdown.h"

#include <string.h>

/* CommonMark 0.31, 2.4: any ASCII punctuation may be escaped. These are the ones that can begin
 * something inside a line; '&' begins an entity, '<' a tag, '|' a table cell in a common extension.
 */
static bool is_markup(char c)
{
    return c && strchr("\\`*_[]<>&|~^", c);
}

/* Only at the front of a line: a heading, a list, a quote. "1." and "1)" would begin a numbered
 * list. */
static size_t opener_length(struct text t)
{
    size_t digits = 0;
    while (is_digit_at(t, digits))
        digits++;
    if (digits && digits < t.length && strchr(".)", t.at[digits]))
        return digits;
    return !digits && t.length && strchr("#+-=", t.at[0]) ? 0 : t.length;
}

void put_markdown(struct buffer *b, struct text t)
{
    size_t opener = opener_length(t);
    for (size_t i = 0; i < t.length; i++) {
        char c = t.at[i];
        if (is_markup(c) || i == opener)
            buffer_put_char(b, '\\');
        buffer_put_char(b, c == '\n' || c == '\r' ? ' ' : c);
    }
}
