/* match/clause.c
 * SPDX-License-Identifier: MIT */
#include "match/clause.h"

size_t entry_last(const struct recording *r, const struct sentence *s, size_t i)
{
    while (i < s->last && r->words.at[i].tag == TAG_INSIDE)
        i++;
    return i;
}

unsigned char word_tag(const struct recording *r, const struct sentence *s, size_t i)
{
    i = entry_last(r, s, i);
    return i <= s->last ? r->words.at[i].tag : (unsigned char) TAG_OTHER;
}

size_t next_word(const struct recording *r, const struct sentence *s, size_t i)
{
    do
        i++;
    while (i <= s->last && r->words.at[i].filler);
    return i;
}

/* With these a clause begins when a comma stands before it. */
static const bool CLAUSE_BEGINS[TAG_CODES] = {
    [TAG_SO] = true,     [TAG_ME] = true,     [TAG_YOU] = true,       [TAG_IT] = true,
    [TAG_THERE] = true,  [TAG_ACTION] = true, [TAG_WILL] = true,      [TAG_IF] = true,
    [TAG_UNTIL] = true,  [TAG_WHEN] = true,   [TAG_MEANWHILE] = true, [TAG_STORY] = true,
    [TAG_CLOSER] = true, [TAG_OPENER] = true, [TAG_INSTEAD] = true};

/* "And you" is one entry, and divides as "and" does. */
static bool begins_with_and(const struct word *w)
{
    return w->tag == TAG_INSIDE && w->alone && w->alone->tag == TAG_AND;
}

bool clause_ends(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t n = next_word(r, s, i);
    if (i >= s->last || n > s->last)
        return true;
    if (r->words.at[i].tag == TAG_INSIDE)
        return false;
    unsigned char tag = word_tag(r, s, n);
    if (tag == TAG_SO || tag == TAG_MEANWHILE)
        return true;
    if (tag == TAG_AND || tag == TAG_OR) {
        size_t after = next_word(r, s, n);
        unsigned char third = after <= s->last ? word_tag(r, s, after) : (unsigned char) TAG_OTHER;
        size_t verb = next_word(r, s, after);
        return CLAUSE_BEGINS[third]
               || (third == TAG_THE && verb <= s->last && word_tag(r, s, verb) == TAG_ACTION
                   && r->words.at[i].after == AFTER_COMMA); /* ", and that goes in" */
    }
    return (r->words.at[i].after == AFTER_COMMA || begins_with_and(&r->words.at[n]))
           && CLAUSE_BEGINS[tag];
}

struct span clause_around(const struct recording *r, const struct sentence *s, size_t i)
{
    struct span clause = {i, i};
    while (clause.first > s->first && !clause_ends(r, s, clause.first - 1))
        clause.first--;
    while (clause.last < s->last && !clause_ends(r, s, clause.last))
        clause.last++;
    return clause;
}

bool word_acts(const struct word *w)
{
    return w->tag == TAG_ACTION && w->entry
           && !(w->entry->marks & (MARK_OF(light) | MARK_OF(hidden)));
}
