/* read/line.c: a file line by line, and what its bytes are.
 * SPDX-License-Identifier: MIT */
#include "read/reader.h"

bool next_line(struct lines *l, struct line *line)
{
    if (l->at >= l->source.length)
        return false;
    size_t end = text_find(l->source, '\n', l->at);
    *line = (struct line){text_slice(l->source, l->at, end), l->at, ++l->number};
    l->at = end + 1;
    return true;
}

bool line_is_blank(struct text line)
{
    for (size_t i = 0; i < line.length; i++)
        if (line.at[i] != ' ' && line.at[i] != '\t' && line.at[i] != '\n' && line.at[i] != '\f')
            return false;
    return true;
}

bool line_is_heading(struct text line)
{
    size_t hashes = 0;
    while (hashes < line.length && line.at[hashes] == '#')
        hashes++;
    return hashes && hashes < 7 && (hashes == line.length || line.at[hashes] == ' ');
}

bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (unsigned char) c >= 0x80;
}
