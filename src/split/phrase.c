/* split/phrase.c
 * SPDX-License-Identifier: MIT */
#include "split/phrase.h"

#include "match/capture.h"
#include "match/clause.h"
#include "split/title.h"
#include "split/told.h"
#include "split/turn.h"

bool is_unreal(const struct recording *r, struct span words)
{
    return r->words.at[words.first].scope & (SCOPE_UNREAL | SCOPE_INSTEAD);
}

/* Names whatever the phrase has in its slot `title`; a phrase that names nothing weighs less. */
static struct span named(const struct recording *r, const struct sentence *s, const struct match *m)
{
    struct span slot = match_slot(m, SLOT_title);
    return span_is_empty(slot) ? NO_WORDS : title_span(r, s, slot.first);
}

static void mark_title(const struct recording *r, struct span title)
{
    for (size_t i = title.first; i <= title.last; i++)
        r->words.at[i].scope |= SCOPE_TITLE;
}

static bool is_strong(const struct recording *r, const struct match *m)
{
    const struct entry *e = r->words.at[m->words.first].entry;
    bool waited =
        text_is(m->rule->option, "return") && e && m->words.first + e->words_count <= m->words.last;
    return (e && e->marks & MARK_OF(strong)) || waited;
}

/* "It's a curry" names what was made; "it's fried bread that went to school" only tells of it, and
 * names at best what comes. */
static bool tells_only(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    if (!w->entry || w->entry->tag != TAG_THERE || !(w->entry->marks & MARK_OF(tells)))
        return false;
    size_t next = m->words.first + w->entry->words_count;
    return next > m->words.last
           || (r->words.at[next].tag != TAG_ARTICLE && r->words.at[next].tag != TAG_THE);
}

/* "That's a plum cake" names; "there's garlic" only shows. And "don't look at that" closes nothing.
 */
static bool may_name(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    if (r->words.at[m->words.last].scope & SCOPE_NEGATED)
        return false;
    return m->rule->kind != RULE_naming || !w->entry || w->entry->tag != TAG_THERE
           || w->entry->marks & (MARK_OF(names) | MARK_OF(tells));
}

/* "That's meatloaf", "this is breakfast": a word without "a" or "your" before it is talk, no name.
 */
static bool is_one_word(const struct recording *r, struct span title)
{
    unsigned char before =
        title.first ? r->words.at[title.first - 1].tag : (unsigned char) TAG_OTHER;
    return title.first == title.last && before != TAG_ARTICLE && before != TAG_THE;
}

/* "That's tomato and peach, and it's enough for four": a yield beside it makes a weak name a sure
 * one. */
static bool has_match(const struct recording *r, const struct sentence *s, enum rule_kind kind)
{
    for (size_t i = 0; i < s->match_count; i++)
        if (r->matches.at[s->match_first + i].rule->kind == kind)
            return true;
    return false;
}

/* "So that's eight fish cakes." */
static bool is_counted(const struct recording *r, const struct match *m, struct span title)
{
    struct span said = match_slot(m, SLOT_title);
    unsigned char tag =
        said.first < title.first ? r->words.at[said.first].tag : (unsigned char) TAG_OTHER;
    return tag == TAG_NUMBER || tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS
           || tag == TAG_DOZEN;
}

/* "Okay so then the corn.": a dish, if amounts follow. */
static bool turns_to(const struct recording *r, const struct sentence *s, struct span title)
{
    return word_tag(r, s, s->first) == TAG_SO && title.last == s->last && title.first > s->first
           && r->words.at[title.first - 1].tag == TAG_THE
           && r->words.at[title.last].entry_first <= title.first
           && r->words.at[title.last].tag == TAG_FOOD;
}

static bool is_longer(struct span title, struct span than)
{
    return span_is_empty(than) || title.last - title.first > than.last - than.first;
}

/* Whether a story, a supposition or an alternative has begun before the phrase ends: "my aunt made
 * a stew". What comes after an announcement does not take it back. */
static bool is_told(const struct recording *r, const struct sentence *s, const struct match *m)
{
    if (!is_unreal(r, m->words))
        return false;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *told = &r->matches.at[s->match_first + i];
        bool unreal = told->rule->kind == RULE_unreal || told->rule->kind == RULE_instead
                      || told->rule->kind == RULE_supposed;
        if (unreal && told->words.first <= m->words.last)
            return true;
    }
    return (s->flags & SENTENCE_STORY) != 0;
}

/* "Squeeze the third one", "the second one went in the fire": of several pieces, no dish. */
static bool numbers_pieces(const struct recording *r, const struct sentence *s,
                           const struct match *m)
{
    const struct entry *e = r->words.at[m->words.first].entry;
    if (!e || e->tag != TAG_OPENER || !(e->marks & MARK_OF(counts)))
        return false;
    for (size_t i = s->first; i < m->words.first; i++)
        if (word_acts(&r->words.at[i]))
            return true;
    return tells_of_one(r, s, m->words.first + e->words_count - 1);
}

/* How sure a name must be that opens a dish: "meanwhile the rice" turns to it, "meanwhile two
 * onions" does not. */
static int sure_enough(const struct recording *r, const struct match *m)
{
    struct span title = match_slot(m, SLOT_title);
    if (text_is(m->rule->option, "meanwhile"))
        return 1;
    if (!text_is(m->rule->option, "meanwhile-the") || title.first > title.last || !title.first)
        return 2;
    return r->words.at[title.first].tag == TAG_THE || r->words.at[title.first - 1].tag == TAG_THE
               ? 1
               : 2;
}

/* "Today we're making custard.", "next up is my garlic bread": what is made is a dish, whatever
 * else it is put into. */
static bool announces_food(const struct recording *r, const struct sentence *s,
                           const struct match *m, struct span title)
{
    const struct entry *e = r->words.at[m->words.first].entry;
    return m->rule->kind == RULE_opening && e && e->tag == TAG_OPENER && e->marks & MARK_OF(strong)
           && (e->marks & MARK_OF(names) || text_is(m->rule->option, "is"))
           && span_has_tag(r, title, TAG_FOOD)
           && (title.last == s->last || r->words.at[title.last].after >= AFTER_COMMA);
}

/* The name that a phrase has, and how sure it is. */
struct name_said {
    struct span title;
    int sure;
    bool counted;   /* so many of them, which says that they are made */
    bool announces; /* a food that is made */
};

static struct name_said name_said(const struct recording *r, const struct sentence *s,
                                  const struct match *m)
{
    struct name_said n = {.title = named(r, s, m)};
    n.sure = title_weight(r, n.title);
    if (!n.sure && text_is(m->rule->option, "meanwhile-the") && span_has_tag(r, n.title, TAG_FOOD))
        n.sure = 1; /* "in the meantime, the fish" */
    n.counted = n.sure > 1 && is_counted(r, m, n.title);
    n.announces = n.sure < 2 && announces_food(r, s, m, n.title);
    if (n.announces)
        n.sure = 2;
    if (m->rule->kind != RULE_opening && n.sure > 1 && is_one_word(r, n.title))
        n.sure = 1;
    return n;
}

/* Whether the phrase only tells a name, less sure than those that open or close. */
static bool tells_name(const struct recording *r, const struct sentence *s, const struct match *m,
                       const struct name_said *n)
{
    if (m->rule->kind != RULE_naming || !is_told_so(r, m))
        return false;
    if (is_only_told(m))
        return n->sure > 0 && n->title.last > n->title.first;
    return (n->sure > 0 && has_match(r, s, RULE_count)) || may_be_told(r, m, n->title);
}

/* Whether a phrase that names must be that sure, and is. */
static bool names_surely(const struct recording *r, const struct sentence *s, const struct match *m,
                         const struct name_said *n)
{
    const struct span slot = match_slot(m, SLOT_title);
    const bool bare = text_is(m->rule->option, "bare");
    if (n->sure == 0 && slot.first <= slot.last)
        return false;
    if (m->rule->kind != RULE_naming)
        return true;
    return n->sure >= (has_match(r, s, RULE_yield) || n->counted || bare ? 1 : 2)
           && (n->sure > 1 || !tells_only(r, m));
}

/* "A scoop of ice cream": words that stand alone, and no name. */
static bool is_bare_talk(const struct recording *r, const struct sentence *s, struct span title)
{
    return !turns_to(r, s, title)
           && (!title_alone(r, s, title) || span_has_tag(r, title, TAG_UNIT));
}

/* The phrase opens the dish that it names, or closes it. */
static void take_name(const struct recording *r, const struct match *m, const struct name_said *n,
                      struct feature *f)
{
    const bool opens = m->rule->kind == RULE_opening;
    double *sum = opens ? &f->opens : &f->closes, weight = m->rule->weight + n->sure;
    struct span *name = opens ? &f->opening_title : &f->closing_title;
    if (weight > *sum)
        *sum = weight;
    if (!n->sure || !is_longer(n->title, *name))
        return;
    *name = n->title;
    f->announces_food = n->announces;
    if (n->sure > 1)
        mark_title(r, n->title);
}

void read_phrase(const struct recording *r, const struct sentence *s, const struct match *m,
                 struct feature *f)
{
    const bool opens = m->rule->kind == RULE_opening, bare = text_is(m->rule->option, "bare");
    const struct name_said n = name_said(r, s, m);
    const struct span slot = match_slot(m, SLOT_title);
    const bool made = is_only_told(m) && !(s->flags & SENTENCE_STORY); /* "I made you a cake" */
    if ((!made && is_told(r, s, m)) || !may_name(r, m) || (opens && numbers_pieces(r, s, m)))
        return;
    if (tells_name(r, s, m, &n) && is_longer(n.title, f->told_title))
        f->told_title = n.title;
    if (is_only_told(m) || (bare && is_bare_talk(r, s, n.title)))
        return;
    if (opens && n.sure < sure_enough(r, m) && !is_strong(r, m)
        && (n.sure || span_is_empty(slot))) {
        f->opens_food = true;
        return;
    }
    if (!names_surely(r, s, m, &n))
        return;
    f->weak |= m->rule->kind == RULE_naming && tells_only(r, m);
    f->returns |= text_is(m->rule->option, "return");
    if (bare) {
        f->bare = m->rule->weight + n.sure;
        f->bare_title = n.title;
    }
    if (!bare || !turns_to(r, s, n.title))
        take_name(r, m, &n, f);
}
