/* split/told.c
 * SPDX-License-Identifier: MIT */
#include "split/told.h"

#include "match/capture.h"
#include "split/plainword.h"

/* "Date squares", "cheese straws", "braised cabbage": a food and, behind it, what it was made into,
 * which need not be a dish's word. */
static bool is_made_into(const struct recording *r, struct span title)
{
    const struct word *head = &r->words.at[title.last];
    bool thing = head->tag == TAG_COUNTER || head->tag == TAG_UNIT || head->tag == TAG_VESSEL
                 || head->tag == TAG_EATER || head->tag == TAG_FOOD || head->tag == TAG_ACTION
                 || head->tag == TAG_PART || (head->tag == TAG_OTHER && !head->entry);
    if (!thing || head->entry_first <= title.first)
        return false;
    const struct word *before = &r->words.at[head->entry_first - 1];
    return before->tag == TAG_FOOD
           || (before->tag == TAG_DONE && before->entry->marks & MARK_OF(heats));
}

bool may_be_told(const struct recording *r, const struct match *m, struct span title)
{
    bool made = is_made_into(r, title);
    for (size_t i = match_slot(m, SLOT_title).first; !made && i < title.first; i++)
        if (!r->words.at[i].entry || !(r->words.at[i].entry->marks & MARK_OF(names)))
            return false;
    size_t before = title.first ? title.first - 1 : title.first;
    bool the = r->words.at[before].tag == TAG_THE || r->words.at[before].tag == TAG_ARTICLE;
    unsigned char last = r->words.at[title.last].tag;
    bool thing = last == TAG_VESSEL || last == TAG_OVEN || last == TAG_CONTAINER
                 || last == TAG_COUNTER || last == TAG_UNIT; /* "brown sugar on a plate" */
    return title.last > title.first && r->words.at[title.first].tag != TAG_UNIT && (!thing || made)
           && (!the || made || r->words.at[before].entry->marks & MARK_OF(names));
}

bool is_only_told(const struct match *m)
{
    return text_is(m->rule->option, "told") || text_is(m->rule->option, "ready")
           || text_is(m->rule->option, "made");
}

/* "I made a coconut cake" names one, "I chopped a carrot" does not: "make" is too light a verb for
 * a step. */
static bool is_made(const struct recording *r, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (r->words.at[i].tag == TAG_DONE && r->words.at[i].entry->marks & MARK_OF(light))
            return true;
    return false;
}

bool is_told_so(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.last];
    if (text_is(m->rule->option, "made"))
        return is_made(r, m);
    return !text_is(m->rule->option, "ready") || (w->entry && w->entry->marks & MARK_OF(serves));
}

/* A foreign name has at most so many words, and at least so many letters in all. */
#define FOREIGN_WORDS 3
#define FOREIGN_BYTES 5

/* Neither in the lexicon nor a plain word of the language, and no "granddad's". */
static bool is_foreign(const struct recording *r, const struct plain_words *plain, size_t i)
{
    const struct word *w = &r->words.at[i];
    return w->tag == TAG_OTHER && !w->entry && !w->filler && !text_ends(w->key, "'s")
           && !is_plain_word(plain, w->key);
}

/* "This is Despina" is a person; "that's our bagna cauda" is none. */
static bool may_be_foreign(const struct recording *r, const struct match *m, size_t first)
{
    unsigned char before = first ? r->words.at[first - 1].tag : (unsigned char) TAG_OTHER;
    const struct word *w = &r->words.at[m->words.last];
    return before == TAG_THE || before == TAG_ARTICLE || before == TAG_NAMED
           || (before == TAG_OPENER && !(w->scope & SCOPE_NEGATED));
}

struct span foreign_name(const struct recording *r, const struct pack *k, const struct sentence *s,
                         const struct match *m)
{
    const struct plain_words plain = plain_words_of(k);
    struct span slot = match_slot(m, SLOT_title), name = {slot.first, slot.first};
    size_t bytes = 0;
    if (span_is_empty(slot) || !plain.sounding || !may_be_foreign(r, m, slot.first))
        return NO_WORDS;
    for (size_t i = slot.first; i <= s->last && i < slot.first + FOREIGN_WORDS; i++) {
        if (!is_foreign(r, &plain, i))
            break;
        name.last = i;
        bytes += r->words.at[i].key.length;
        if (r->words.at[i].after >= AFTER_COMMA)
            break;
    }
    return bytes >= FOREIGN_BYTES ? name : NO_WORDS;
}
