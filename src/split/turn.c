/* split/turn.c
 * SPDX-License-Identifier: MIT */
#include "split/turn.h"

/* "So while that's going": the word stands so near the beginning. */
#define MEANWHILE_WORDS 5
#define HEADING_WORDS 4
#define VESSEL_WORDS 6
#define POINT_WORDS 4
#define ORDER_WORDS 6
#define FIRST_WORDS 5

/* What no heading has: it is about something done, or an amount, or says it of something else. */
static bool spoils_heading(unsigned char tag)
{
    switch (tag) {
    case TAG_ACTION:
    case TAG_DONE:
    case TAG_IT:
    case TAG_UNIT:
    case TAG_NUMBER:
    case TAG_ONES:
    case TAG_TEENS:
    case TAG_TENS:
    case TAG_NOT:
    case TAG_AND:
    case TAG_TASTE:
        return true;
    default:
        return false;
    }
}

/* "Egg muffins.", "Little pot.": a few words with a food, a dish or a vessel in them. */
static bool is_heading(const struct recording *r, const struct sentence *s)
{
    bool thing = false;
    if (!r->punctuated || s->flags & SENTENCE_QUESTION || s->last - s->first >= HEADING_WORDS)
        return false;
    for (size_t i = s->first; i <= s->last; i++) {
        unsigned char tag = r->words.at[i].tag;
        if (spoils_heading(tag))
            return false;
        thing |= tag == TAG_FOOD || tag == TAG_DISH || tag == TAG_VESSEL;
    }
    return thing;
}

/* The thing that the sentence begins with: "so bananas", "that dough". */
static void find_first_thing(const struct recording *r, const struct sentence *s, struct feature *f)
{
    f->first_thing = MENTIONS_MOST;
    for (size_t i = s->first; i <= s->last && i < s->first + FIRST_WORDS; i++) {
        const struct word *w = &r->words.at[i];
        if (w->tag == TAG_ACTION || w->tag == TAG_IT || w->tag == TAG_INTO || w->tag == TAG_WITH)
            return;
        if (w->tag != TAG_FOOD && w->tag != TAG_PART && w->tag != TAG_DISH)
            continue;
        for (size_t n = 0; w->entry && n < f->mentions_count; n++)
            if (text_equal(f->mentions[n].kind, entry_value(w->entry)))
                f->first_thing = n;
        return;
    }
}

size_t after_so(const struct recording *r, const struct sentence *s)
{
    size_t i = s->first;
    unsigned char tag = r->words.at[i].tag;
    while (i < s->last && (tag == TAG_SO || tag == TAG_INSIDE || tag == TAG_AND))
        tag = r->words.at[++i].tag;
    return i;
}

static enum beginning find_beginning(const struct recording *r, const struct sentence *s)
{
    switch (r->words.at[after_so(r, s)].tag) {
    case TAG_THE:
        return OF_THE;
    case TAG_ME:
        return OF_ME;
    case TAG_ACTION:
        return OF_ACTION;
    case TAG_IF:
    case TAG_WHEN:
    case TAG_UNTIL:
    case TAG_NOT:
    case TAG_CLOSER:
    case TAG_CHANNEL:
    case TAG_SORRY:
    case TAG_DONE:
    case TAG_STATE:
    case TAG_SERVE:
    case TAG_VAGUE:
    case TAG_WITH:
        return OF_DEPENDENT;
    default:
        return OF_OTHER;
    }
}

static bool is_marked(const struct word *w, uint64_t mark)
{
    return w->entry && w->entry->marks & mark;
}

/* "In another bowl": a vessel for a part of the dish, but no second pan on the stove. */
static bool is_other_bowl(const struct recording *r, const struct sentence *s, size_t i)
{
    const struct word *w = &r->words.at[i];
    size_t before = w->entry_first;
    if (w->tag != TAG_VESSEL || !w->entry || w->entry->marks & MARK_OF(wet) || before <= s->first)
        return false;
    w = &r->words.at[before - 1];
    return w->tag == TAG_MORE || is_marked(w, MARK_OF(counts));
}

bool tells_of_one(const struct recording *r, const struct sentence *s, size_t i)
{
    while (++i < s->last && r->words.at[i].tag == TAG_INSIDE)
        ;
    if (i >= s->last || r->words.at[i].tag != TAG_DONE)
        return false;
    const unsigned char next = r->words.at[i + 1].tag;
    return next == TAG_THE || next == TAG_IT || next == TAG_INTO;
}

/* Words by which a sentence turns to something, or goes on with it. */
void read_turn(const struct recording *r, const struct sentence *s, struct feature *f)
{
    const struct word *first = &r->words.at[s->first];
    size_t head = first->entry ? s->first + first->entry->words_count - 1 : s->first;
    bool food = false, acted = false;
    find_first_thing(r, s, f);
    f->beginning = find_beginning(r, s);
    f->turns = r->words.at[head].tag == TAG_SO;
    f->follows = f->turns && first->entry && first->entry->marks & MARK_OF(again);
    f->heading = is_heading(r, s);
    f->goes_on = r->words.at[head].tag == TAG_AND;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        f->meanwhile |= w->tag == TAG_MEANWHILE && i < s->first + MEANWHILE_WORDS;
        f->other_bowl |= is_other_bowl(r, s, i);
        f->vessel |= w->tag == TAG_VESSEL && i > s->first;
        f->order |= w->tag == TAG_OPENER && is_marked(w, MARK_OF(counts))
                    && i < s->first + ORDER_WORDS && !acted && !tells_of_one(r, s, i);
        f->points |= (w->tag == TAG_THE || w->tag == TAG_THERE) && is_marked(w, MARK_OF(strong))
                     && i < s->first + POINT_WORDS;
        f->vessel_first |= w->tag == TAG_VESSEL && i < s->first + VESSEL_WORDS && !acted;
        acted |= w->tag == TAG_ACTION || w->tag == TAG_FOOD || w->tag == TAG_IT;
        food |= w->tag == TAG_FOOD || w->tag == TAG_DISH;
        f->pronoun |= w->tag == TAG_IT && !food;
    }
}
