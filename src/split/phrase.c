/* split/phrase.c
 * SPDX-License-Identifier: MIT */
#include "split/phrase.h"

#include "match/capture.h"
#include "match/clause.h"
#include "split/title.h"
#include "split/told.h"

bool is_unreal(const struct recording *r, struct span words)
{
    return r->words.at[words.first].scope & (SCOPE_UNREAL | SCOPE_INSTEAD);
}

/* Names whatever the phrase has in its slot `title`; a phrase that names nothing weighs less. */
static struct span named(const struct recording *r, const struct sentence *s, const struct match *m)
{
    struct span slot = match_slot(m, SLOT_title);
    return slot.first <= slot.last ? title_span(r, s, slot.first) : (struct span){1, 0};
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
    size_t head = s->first;
    while (head < s->last && r->words.at[head].tag == TAG_INSIDE)
        head++;
    return r->words.at[head].tag == TAG_SO && title.last == s->last && title.first > s->first
           && r->words.at[title.first - 1].tag == TAG_THE
           && r->words.at[title.last].entry_first <= title.first
           && r->words.at[title.last].tag == TAG_FOOD;
}

static bool is_longer(struct span title, struct span than)
{
    return than.first > than.last || title.last - title.first > than.last - than.first;
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

/* "Squeeze the third one": of several pieces, no dish. */
static bool numbers_pieces(const struct recording *r, const struct sentence *s,
                           const struct match *m)
{
    const struct entry *e = r->words.at[m->words.first].entry;
    if (!e || e->tag != TAG_OPENER || !(e->marks & MARK_OF(counts)))
        return false;
    for (size_t i = s->first; i < m->words.first; i++)
        if (word_acts(&r->words.at[i]))
            return true;
    return false;
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

void read_phrase(const struct recording *r, const struct sentence *s, const struct match *m,
                 struct feature *f)
{
    bool opens = m->rule->kind == RULE_opening;
    struct span title = named(r, s, m);
    int sure = title_weight(r, title);
    if (sure == 0 && text_is(m->rule->option, "meanwhile-the") && span_has_tag(r, title, TAG_FOOD))
        sure = 1; /* "in the meantime, the fish" */
    double weight = m->rule->weight;
    bool counted = is_counted(r, m, title) && sure > 1;
    bool announces = sure < 2 && announces_food(r, s, m, title);
    if (announces)
        sure = 2;
    if (!opens && sure > 1 && is_one_word(r, title))
        sure = 1;
    bool told_only = is_only_told(m);
    bool made = told_only && !(s->flags & SENTENCE_STORY); /* "I made you a coconut cake" */
    if ((!made && is_told(r, s, m)) || !may_name(r, m) || (opens && numbers_pieces(r, s, m)))
        return;
    if (m->rule->kind == RULE_naming && is_told_so(r, m) && is_longer(title, f->told_title)
        && (told_only ? sure > 0 && title.last > title.first
                      : (sure > 0 && has_match(r, s, RULE_count)) || may_be_told(r, m, title)))
        f->told_title = title;
    if (match_slot(m, SLOT_title).first <= match_slot(m, SLOT_title).last && sure == 0)
        return;
    if (told_only)
        return;
    if (m->rule->kind == RULE_naming
        && sure < (has_match(r, s, RULE_yield) || counted || text_is(m->rule->option, "bare") ? 1
                                                                                              : 2))
        return;
    bool bare = text_is(m->rule->option, "bare"), turn = bare && turns_to(r, s, title);
    if (bare && !turn && (!title_alone(r, s, title) || span_has_tag(r, title, TAG_UNIT)))
        return; /* "a scoop of ice cream" */
    if (opens && sure < sure_enough(r, m) && !is_strong(r, m)) {
        f->opens_food = true;
        return;
    }
    if (m->rule->kind == RULE_naming && sure < 2 && tells_only(r, m))
        return;
    f->weak |= m->rule->kind == RULE_naming && tells_only(r, m);
    f->returns |= text_is(m->rule->option, "return");
    if (bare) {
        f->bare = weight + sure;
        f->bare_title = title;
    }
    if (turn)
        return;
    double *sum = opens ? &f->opens : &f->closes;
    struct span *name = opens ? &f->opening_title : &f->closing_title;
    if (weight + sure > *sum)
        *sum = weight + sure;
    if (sure && is_longer(title, *name)) {
        *name = title;
        f->announces_food = announces;
        if (sure > 1)
            mark_title(r, title);
    }
}

/* Amounts in so many whole sentences after a name that stands alone make it the beginning of that
 * dish. */
#define BARE_SENTENCES 5.0
#define BARE_LINES 3

/* "White bean soup. One onion, two carrots ...": the name opens; with no amounts behind it, it ends
 * a dish. */
void settle_bare(const struct recording *r, struct feature *f, size_t i)
{
    size_t count = r->sentences.count;
    size_t lines = 0;
    double seen = 0;
    for (size_t n = i + 1; n < count && seen < BARE_SENTENCES; n++) {
        lines += f[n].lines;
        seen += f[n].weight;
    }
    if (f[i].bare == 0 || lines < BARE_LINES || f[i].finished || f[i].past
        || f[i].bare_title.last < r->sentences.at[i].last)
        return;
    f[i].opens = f[i].opens > f[i].bare ? f[i].opens : f[i].bare;
    f[i].closes = 0;
    f[i].opening_title = f[i].bare_title;
    f[i].closing_title = (struct span){1, 0};
}

/* How many sentences before and after a name are searched for what it names. */
#define NAME_BEFORE 20
#define NAME_AFTER 12

/* How often the entry's food or dish is said where something is cooked, in sentences [first, last].
 */
static size_t times_said(const struct recording *r, const struct feature *f, size_t first,
                         size_t last, const struct entry *e)
{
    size_t times = 0;
    for (size_t s = first; s <= last; s++) {
        for (size_t i = r->sentences.at[s].first; f[s].cooking > 0 && i <= r->sentences.at[s].last;
             i++) {
            const struct word *w = &r->words.at[i];
            times +=
                w->tag == e->tag && w->entry && text_equal(entry_value(w->entry), entry_value(e));
        }
    }
    return times;
}

/* How often what a name says is spoken of before sentence `i`, and after it. */
struct lean {
    size_t before, after;
};

static struct lean lean_of(const struct recording *r, const struct feature *f, size_t i,
                           struct span title)
{
    struct lean lean = {0, 0};
    size_t last = i + NAME_AFTER;
    unsigned char tag = span_has_tag(r, title, TAG_FOOD)
                            ? TAG_FOOD
                            : TAG_DISH; /* the food tells more than "traybake" */
    if (last >= r->sentences.count)
        last = r->sentences.count - 1;
    for (size_t w = title.first; w <= title.last; w++) {
        const struct entry *e = r->words.at[w].entry;
        if (!e || e->tag != tag || r->words.at[w].tag != tag)
            continue;
        if (i > 0)
            lean.before += times_said(r, f, i > NAME_BEFORE ? i - NAME_BEFORE : 0, i - 1, e);
        if (i < last)
            lean.after += times_said(r, f, i + 1, last, e);
    }
    return lean;
}

/* "It's lemon couscous": a name of what comes is an opening, a name of what was is a closing. */
void settle_name(const struct recording *r, struct feature *f, size_t i)
{
    struct span title = f[i].closing_title;
    struct lean lean = lean_of(r, f, i, title);
    f[i].past = lean.before > 0 && lean.after <= lean.before;
    if (lean.after <= lean.before) {
        if (f[i].weak) {
            f[i].closes = 0;
            f[i].closing_title = (struct span){1, 0};
        }
        return;
    }
    if (f[i].opens < f[i].closes)
        f[i].opens = f[i].closes;
    f[i].closes = 0;
    f[i].opening_title = title;
    f[i].closing_title = (struct span){1, 0};
}
