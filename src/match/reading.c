/* match/reading.c
 * SPDX-License-Identifier: MIT */
#include "match/reading.h"

#include "match/capture.h"

bool has_comma(const struct recording *r, struct span words)
{
    for (size_t i = words.first; i < words.last; i++)
        if (r->words.at[i].after == AFTER_COMMA)
            return true;
    return false;
}

/* "This one's barley": the word is looked up without its ending (src/words/entry.c), and has it. */
static bool is_owner(const struct recording *r, const struct match *match)
{
    const struct word *w = &r->words.at[match_slot(match, SLOT_word).last];
    const struct entry *e = w->entry;
    return e && w->key.length > entry_words(e).length && e->words_count == 1;
}

/* "Cheese; drizzle with oil": a comma, or more, before the word. */
static bool is_apart(const struct recording *r, struct span word)
{
    return word.first && r->words.at[word.first - 1].after >= AFTER_COMMA;
}

/* "Cream butter and sugar", with no comma between: what the word becomes mixes. */
static bool is_mixing(const struct recording *r, const struct match *match)
{
    const struct entry *e =
        entry_as(r->words.at[match_slot(match, SLOT_word).last].readings, match->rule->retag);
    return e && e->marks & MARK_OF(mixes) && !has_comma(r, match->words);
}

/* What a rule's option asks of a word that is to be read as another. */
static bool suits(const struct recording *r, const struct rule *rule, const struct match *match)
{
    if (text_is(rule->option, "owner"))
        return is_owner(r, match);
    if (text_is(rule->option, "apart"))
        return is_apart(r, match_slot(match, SLOT_word));
    if (text_is(rule->option, "mixes"))
        return is_mixing(r, match);
    return !(text_is(rule->option, "tight") && has_comma(r, match->words));
}

bool can_retag(const struct recording *r, const struct match *match)
{
    struct span word = match_slot(match, SLOT_word);
    return !span_is_empty(word) && entry_as(r->words.at[word.last].readings, match->rule->retag)
           && suits(r, match->rule, match);
}
