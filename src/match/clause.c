/* match/clause.c
 * SPDX-License-Identifier: MIT */
#include "match/clause.h"

unsigned char word_tag(const struct recording *r, const struct sentence *s, size_t i)
{
    while (i < s->last && r->words.at[i].tag == TAG_INSIDE)
        i++;
    return i <= s->last ? r->words.at[i].tag : (unsigned char) TAG_OTHER;
}

size_t next_word(const struct recording *r, const struct sentence *s, size_t i)
{
    do
        i++;
    while (i <= s->last && r->words.at[i].filler);
    return i;
}

/* Whether a clause begins with this tag when a comma stands before it. */
static bool begins_clause(unsigned char tag)
{
    switch (tag) {
    case TAG_SO:
    case TAG_ME:
    case TAG_YOU:
    case TAG_IT:
    case TAG_THERE:
    case TAG_ACTION:
    case TAG_WILL:
    case TAG_IF:
    case TAG_UNTIL:
    case TAG_WHEN:
    case TAG_MEANWHILE:
    case TAG_STORY:
    case TAG_CLOSER:
    case TAG_OPENER:
    case TAG_INSTEAD:
        return true;
    default:
        return false;
    }
}

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
        return begins_clause(third)
               || (third == TAG_THE && verb <= s->last && word_tag(r, s, verb) == TAG_ACTION
                   && r->words.at[i].after == AFTER_COMMA); /* ", and that goes in" */
    }
    return (r->words.at[i].after == AFTER_COMMA || begins_with_and(&r->words.at[n]))
           && begins_clause(tag);
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
