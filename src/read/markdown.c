/* read/markdown.c: Markdown around and between captions.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "read/cleaner.h"

static bool is_rule(struct text line)
{
    size_t signs = 0;
    for (size_t i = 0; i < line.length; i++) {
        if (line.at[i] != ' ' && !strchr("-*_=|:", line.at[i]))
            return false;
        signs += line.at[i] != ' ';
    }
    return signs > 2;
}

/* Headings and rules are no speech; quote marks and bullets go, but ">>" is another speaker. */
void take_line_start(struct cleaner *c)
{
    struct text rest = text_slice(c->in, c->at, c->in.length);
    struct text line = text_slice(rest, 0, text_find(rest, '\n', 0));
    size_t blanks = 0;
    while (blanks < line.length && line.at[blanks] == ' ')
        blanks++;
    struct text marked = text_slice(line, blanks, line.length);
    if (line_is_heading(marked) || is_rule(marked))
        c->at += line.length;
    else if (text_starts(marked, "* ") || text_starts(marked, "+ ")
             || (text_starts(marked, ">") && !text_starts(marked, ">>")))
        c->at += blanks + 1;
}

static bool is_word_byte(char c)
{
    return is_letter(c) || is_digit(c);
}

/* "**add**", "_add_", "`add`": signs that touch a word on one side only; "2*3" and " __ " stay. */
bool take_emphasis(struct cleaner *c)
{
    size_t run = 1;
    while (clean_peek(c, run) == clean_peek(c, 0))
        run++;
    char next = clean_peek(c, run), before = c->length && !c->pending ? c->last : ' ';
    bool blank_before = before == ' ', blank_after = !next || next == ' ' || next == '\n';
    if ((blank_before && blank_after) || (is_word_byte(before) && is_word_byte(next)))
        return false;
    c->at += run;
    return true;
}

/* The bar that ends a table's row. */
bool take_bar(struct cleaner *c)
{
    char next = clean_peek(c, 1);
    if (next && next != '\n')
        return false;
    c->at++;
    return true;
}
