/* write/wrap.c
 * SPDX-License-Identifier: MIT */
#include "write/wrap.h"

#include <string.h>

void put_rule(struct buffer *b, char c, size_t columns)
{
    while (columns--)
        buffer_put_char(b, c);
    buffer_put_char(b, '\n');
}

static bool next_word(struct text *rest, struct text *word)
{
    *rest = text_trim(*rest);
    size_t n = 0;
    while (n < rest->length && !strchr(" \t\r\n\v\f", rest->at[n]))
        n++;
    *word = text_slice(*rest, 0, n);
    *rest = text_slice(*rest, n, rest->length);
    return n > 0;
}

void put_wrapped(struct buffer *b, const char *first, struct text t)
{
    size_t indent = text_letters(text_from(first)), column = indent;
    struct text word;
    bool begin = true;
    buffer_put_string(b, first);
    while (next_word(&t, &word)) {
        size_t width = text_letters(word);
        if (!begin && column + 1 + width > WRAP_COLUMNS) {
            buffer_format(b, "\n%*s", (int) indent, "");
            column = indent;
            begin = true;
        }
        if (!begin)
            buffer_put_char(b, ' ');
        buffer_put(b, word);
        column += width + !begin;
        begin = false;
    }
    buffer_put_char(b, '\n');
}
