/* split/told.c
 * SPDX-License-Identifier: MIT */
#include "split/told.h"

#include "match/capture.h"

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
