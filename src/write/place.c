/* write/place.c
 * SPDX-License-Identifier: MIT */
#include "write/place.h"

/* Where a word stands in the file. A caption of several lines counts from its text's first line. */
static void word_place(const struct recording *r, size_t number, unsigned *line, unsigned *column)
{
    const struct word *word = &r->words.at[number];
    const struct cue *cue = &r->cues.at[word->cue];
    *line = cue->line;
    *column = cue->column;
    for (const char *at = cue->text.at; at < word->text.at && at < cue->text.at + cue->text.length;
         at++) {
        ++*column;
        if (*at == '\n') {
            ++*line;
            *column = 1;
        }
    }
}

bool finding_place(const struct recording *r, const struct finding *f, unsigned *line,
                   unsigned *column)
{
    size_t i = f->words.first <= f->words.last ? f->words.first : 0;
    while (f->words.first > f->words.last && i + 1 < r->words.count && r->words.at[i].start < f->at)
        i++;
    if (i >= r->words.count)
        return false;
    word_place(r, i, line, column);
    return true;
}

unsigned column_characters(const struct recording *r, unsigned line, unsigned column)
{
    size_t at = 0;
    for (unsigned n = 1; n < line && at < r->source.length; n++)
        at = text_find(r->source, '\n', at) + 1;
    unsigned characters = 1;
    for (unsigned n = 1; n < column && at < r->source.length && r->source.at[at] != '\n'; n++, at++)
        characters += !byte_goes_on(r->source.at[at]);
    return characters;
}
