/* match/reach.c
 * SPDX-License-Identifier: MIT */
#include "match/reach.h"

#include "match/clause.h"
#include "match/matches.h"

static bool is_any_verb(unsigned char tag)
{
    return tag == TAG_ACTION || tag == TAG_BE || tag == TAG_DOING || tag == TAG_DONE;
}

/* A verb in its base form: what to do, where no subject stands before it. */
bool is_base_verb(const struct recording *r, const struct sentence *s, size_t i)
{
    i = entry_last(r, s, i);
    const struct entry *e = r->words.at[i].entry;
    return r->words.at[i].tag == TAG_ACTION && e && text_equal(entry_words(e), entry_shown(e));
}

/* "And then you", "you just": what the cook does is another clause, also where captions have no
 * stops. */
static bool is_next_clause(const struct recording *r, const struct sentence *s, size_t word)
{
    return r->words.at[word].tag == TAG_INSIDE && word_tag(r, s, word) == TAG_WILL;
}

/* Behind so many words of a sign of doneness the cook's next clause is no part of it, though no
 * verb was heard: "till it's like um like gravel | and you scatter that". */
#define COOK_WORDS 2

/* "... there's no dry flour do not over mix it", "... it's thick don't let it burn": told not to.
 */
static bool is_order_denied(const struct recording *r, const struct sentence *s, size_t i)
{
    const size_t denial = entry_last(r, s, i), verb = entry_last(r, s, next_word(r, s, denial));
    return r->words.at[denial].tag == TAG_NOT && verb < s->last && is_base_verb(r, s, verb)
           && (word_tag(r, s, verb + 1) == TAG_IT || word_tag(r, s, verb + 1) == TAG_THE);
}

/* To the first comma; where there is none, to before the first verb that has no subject before it,
 * or before the cook who does what comes then: "when it comes out | you wrap it", "when it's
 * rolling | you put in the pasta". */
size_t comma_after(const struct recording *r, const struct sentence *s, size_t m)
{
    bool verb = false, cooks = false;
    for (size_t i = m; i < s->last; i++) {
        if (r->words.at[i].after == AFTER_COMMA)
            return i;
        unsigned char tag = word_tag(r, s, i), next = word_tag(r, s, i + 1);
        bool does = i > m && word_tag(r, s, next_word(r, s, i + 1)) == TAG_ACTION;
        bool cook = (next == TAG_YOU || next == TAG_ME) && (verb || does);
        cook |= (verb || i > m + COOK_WORDS) && is_next_clause(r, s, i + 1);
        bool thing = tag == TAG_FOOD || tag == TAG_PART;
        bool subject = tag == TAG_IT || tag == TAG_YOU || tag == TAG_ME || (thing && !verb)
                       || tag == TAG_NOT || tag == TAG_THERE || tag == TAG_WILL || tag == TAG_TO
                       || tag == TAG_THE || i == m;
        bool list = !r->punctuated && verb && !cooks && r->words.at[i].tag != TAG_INSIDE
                    && line_begins(r, s, next_word(r, s, i));
        bool denied = (!subject || thing) && is_order_denied(r, s, i + 1);
        if (r->words.at[i].tag != TAG_INSIDE
            && (cook || list || denied || (!subject && is_base_verb(r, s, i + 1))))
            return i; /* "when it starts to pop | one onion": nobody pops one */
        verb |= i > m && is_any_verb(tag);
        cooks |= tag == TAG_YOU || tag == TAG_ME;
    }
    return s->last;
}

bool line_begins(const struct recording *r, const struct sentence *s, size_t word)
{
    return match_at(r, s, word, KIND_OF(line));
}

/* Whether a length of time begins at the word, or behind one more: "like thirty seconds". */
static bool time_begins(const struct recording *r, const struct sentence *s, size_t word)
{
    return match_at(r, s, word, KIND_OF(duration)) || match_at(r, s, word + 1, KIND_OF(duration));
}

/* "You'll end up with, like, a ball | and you cut that in thirds." */
size_t clause_goes_on(const struct recording *r, const struct sentence *s, struct span scope)
{
    for (size_t i = scope.first; i < scope.last; i++) {
        bool clause = !r->punctuated && i > scope.first && r->words.at[i].tag != TAG_INSIDE
                      && is_next_clause(r, s, i + 1);
        if (clause || (r->words.at[i].after == AFTER_COMMA && time_begins(r, s, i + 1)))
            return i;
    }
    return scope.last;
}

/* "Don't open it | it sits another ten minutes", "don't stir it | leave it": the denied verb has
 * its object, and what comes is another one's. "Don't let it boil" goes on. */
size_t denial_end(const struct recording *r, const struct sentence *s, struct span scope)
{
    const struct entry *denied = NULL;
    for (size_t i = scope.first + 1; i < scope.last; i++) {
        const struct word *w = &r->words.at[i];
        if (w->tag == TAG_INSIDE)
            continue;
        unsigned char next = word_tag(r, s, i + 1), after = word_tag(r, s, next_word(r, s, i + 1));
        if (i > scope.first + 1 && is_next_clause(r, s, i + 1))
            return i;
        if (!r->punctuated && w->tag == TAG_STATE && is_base_verb(r, s, i + 1))
            return i; /* "not too thin | sprinkle salt" */
        if (w->tag == TAG_ACTION && !denied)
            denied = w->entry;
        if (!denied || denied->marks & MARK_OF(light))
            continue;
        if (w->tag == TAG_IT && next == TAG_AND && line_begins(r, s, next_word(r, s, i + 1)))
            return i; /* "don't drain it and one can of black beans" */
        bool object = w->tag == TAG_IT || w->tag == TAG_FOOD || w->tag == TAG_OTHER;
        bool thing = (next == TAG_IT || next == TAG_THE) && after == TAG_ACTION;
        if (w->tag == TAG_THE && is_base_verb(r, s, i + 1) && (after == TAG_IT || after == TAG_THE))
            return i; /* "I don't know about that | drain it" */
        if (denied != w->entry && w->tag == TAG_WILL && is_base_verb(r, s, i + 1)
            && (after == TAG_IT || after == TAG_THE))
            return i; /* "don't rinse | just squeeze it" */
        if (object && (next == TAG_YOU || next == TAG_ME || thing || is_base_verb(r, s, i + 1)))
            return i;
    }
    return scope.last;
}
