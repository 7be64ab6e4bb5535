/* match/resume.c
 * SPDX-License-Identifier: MIT */
#include "match/resume.h"

#include <stdint.h>

#include "match/capture.h"
#include "match/matches.h"

/* "A teaspoon of salt", "two onions", and not "an onion", which any story may have. */
static bool counts(const struct match *line)
{
    return !text_is(line->rule->option, "one");
}

/* The word before `i` that rules see; `first` where there is none. */
static size_t word_before(const struct recording *r, size_t first, size_t i)
{
    do
        i--;
    while (i > first && r->words.at[i].filler);
    return i;
}

/* What the words behind belong to: "he always put | two eggs in", "a pan with | two cups of". */
static const bool GOVERNS[TAG_CODES] = {
    [TAG_ACTION] = true,  [TAG_DOING] = true,   [TAG_HAVE] = true, [TAG_BE] = true,
    [TAG_THERE] = true,   [TAG_NOT] = true,     [TAG_OR] = true,   [TAG_AND] = true,
    [TAG_OF] = true,      [TAG_TO] = true,      [TAG_FOR] = true,  [TAG_WITH] = true,
    [TAG_AT] = true,      [TAG_INTO] = true,    [TAG_FROM] = true, [TAG_LIKE] = true,
    [TAG_THE] = true,     [TAG_ARTICLE] = true, [TAG_IF] = true,   [TAG_UNTIL] = true,
    [TAG_INSTEAD] = true, [TAG_HEDGE] = true,   [TAG_MORE] = true};

/* "It's not a museum | a hundred grams of sugar", "she wrote it on the wall | two cups of flour":
 * a caption, or what a comma divides, that begins with an amount is the next thing of the list. */
static bool begins_anew(const struct recording *r, const struct match *m, const struct match *line,
                        size_t i)
{
    const struct word *w = &r->words.at[i];
    if (GOVERNS[w->tag])
        return false;
    return w->cue != r->words.at[line->words.first].cue
           || (w->after >= AFTER_COMMA && counts(line)
               && !span_has_tag(r, (struct span){m->words.last, i}, TAG_FOOD));
}

/* "Not too thin, and one cup of rice", "it says so on the box and half a cucumber" */
static bool adds_to_list(const struct recording *r, const struct match *m, const struct match *line,
                         size_t i)
{
    return counts(line) && !GOVERNS[r->words.at[i].tag]
           && (m->rule->kind == RULE_negated
               || !span_has_tag(r, (struct span){m->words.last, i}, TAG_FOOD));
}

/* The last word before the line, if the list goes on with it; SIZE_MAX where it does not. */
static size_t end_before(const struct recording *r, const struct match *m, const struct match *line)
{
    const size_t first = m->words.last, before = word_before(r, first, line->words.first);
    if (begins_anew(r, m, line, before))
        return before;
    if (r->words.at[before].tag != TAG_AND || before == first)
        return SIZE_MAX;
    const size_t end = word_before(r, first, before);
    return adds_to_list(r, m, line, end) ? end : SIZE_MAX;
}

size_t list_resumes(const struct recording *r, const struct sentence *s, const struct match *m,
                    struct span scope)
{
    size_t last = scope.last;
    struct matches lines = matches_of(r, s, KIND_OF(line));
    for (const struct match *line; (line = matches_next(&lines));) {
        if (line->words.first <= m->words.last || line->words.first > last)
            continue;
        const size_t end = end_before(r, m, line);
        if (end < last)
            last = end;
    }
    return last;
}
