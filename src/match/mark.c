/* match/mark.c
 * SPDX-License-Identifier: MIT */
#include "match/mark.h"

#include "match/capture.h"
#include "match/clause.h"
#include "match/resume.h"
#include "match/scope.h"
#include "match/matches.h"

/* A story that begins within so many words is what its whole sentence tells. */
#define STORY_WORDS 4

static const unsigned short SCOPES[RULE_KINDS] = {
    [RULE_unreal] = SCOPE_UNREAL,   [RULE_supposed] = SCOPE_SUPPOSED,
    [RULE_negated] = SCOPE_NEGATED, [RULE_instead] = SCOPE_INSTEAD,
    [RULE_until] = SCOPE_UNTIL,     [RULE_optional] = SCOPE_OPTIONAL,
    [RULE_beside] = SCOPE_BESIDE,   [RULE_garnish] = SCOPE_GARNISH,
    [RULE_taste] = SCOPE_TASTE,     [RULE_yield] = SCOPE_YIELD,
};

/* "For garnish" says so, "over the top" may be part of the dish. */
static unsigned scope_of(enum rule_kind kind, const struct entry *said)
{
    bool adorns = kind == RULE_garnish && said && said->marks & MARK_OF(garnishes);
    return SCOPES[kind] | (adorns ? SCOPE_ADORNS : 0U);
}

/* "I added two cups of flour", "I minced those earlier": told as done, but of this dish. A story
 * has words of its own that say so. */
static bool tells_of_dish(const struct recording *r, const struct sentence *s,
                          const struct match *m)
{
    const uint64_t dish = MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(seasons) | MARK_OF(finishes)
                          | MARK_OF(cuts) | MARK_OF(takes) | MARK_OF(prep);
    struct span verb = match_slot(m, SLOT_action);
    size_t next = next_word(r, s, verb.last);
    const struct entry *e = r->words.at[verb.last].entry;
    if (!e || !(e->marks & dish))
        return false;
    while (next < s->last && word_tag(r, s, next) == TAG_AND
           && word_tag(r, s, next_word(r, s, next)) == TAG_DONE)
        next = next_word(r, s, next_word(r, s, next)); /* "I drained and rinsed those" */
    unsigned char tag = next <= s->last ? word_tag(r, s, next) : (unsigned char) TAG_SO,
                  before = TAG_SO;
    if (m->words.first > s->first)
        before = word_tag(r, s, m->words.first - 1);
    if (e->marks & MARK_OF(prep) && (before == TAG_THE || before == TAG_FOOD))
        return true; /* "a carrot that I peeled" */
    return tag == TAG_IT || tag == TAG_THE
           || match_at(r, s, next, KIND_OF(line) | KIND_OF(mention));
}

/* "serve it with rice", "garnish with parsley": what stands behind the verb and a "with" or "over"
 * is beside or on top of the dish, not in it. */
static void mark_verbs(struct recording *r, const struct sentence *s)
{
    unsigned scope = 0;
    bool with = false, verb = false;
    for (size_t i = s->first; i <= s->last; i++) {
        struct word *w = &r->words.at[i];
        uint64_t marks = w->tag == TAG_ACTION && w->entry ? w->entry->marks : 0;
        if (marks) {
            scope = marks & MARK_OF(serves)      ? SCOPE_BESIDE
                    : marks & MARK_OF(garnishes) ? SCOPE_GARNISH | SCOPE_ADORNS
                                                 : 0;
            with = w->entry->words_count > 1;
            verb = true;
        }
        if (w->tag == TAG_SERVE) { /* "feeds four, with bread" */
            scope = SCOPE_BESIDE;
            with = false;
        }
        with |= w->tag == TAG_WITH || (w->tag == TAG_INTO && verb);
        if (scope && with)
            w->scope |= (unsigned short) scope;
        if (clause_ends(r, s, i))
            scope = 0;
    }
}

/* Whether the sentence does anything: a verb that is more than "have" or "go". */
static bool does_something(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry
            && !(w->entry->marks & (MARK_OF(light) | MARK_OF(hidden) | MARK_OF(idle))))
            return true;
    }
    return false;
}

/* "Ice cream with it", "a blob of yogurt with those": what is named with the dish, where nothing is
 * done. */
static void mark_beside(struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first; i + 1 <= s->last; i++) {
        unsigned char next = r->words.at[i + 1].tag;
        bool ends = i + 1 == s->last || r->words.at[i + 1].after >= AFTER_COMMA;
        if (r->words.at[i].tag != TAG_WITH || !ends || (next != TAG_IT && next != TAG_THE)
            || does_something(r, s))
            continue;
        for (size_t n = clause_around(r, s, i).first; n <= i; n++)
            r->words.at[n].scope |= SCOPE_BESIDE;
    }
}

/* "With rice, of course.", "and with it some cream": a sentence that begins with what is served
 * beside the dish, where nothing is done, and "with it" not so much of anything. */
static void mark_with(struct recording *r, const struct sentence *s)
{
    size_t i = s->first;
    while (i < s->last && (word_tag(r, s, i) == TAG_SO || word_tag(r, s, i) == TAG_AND))
        i = next_word(r, s, i);
    if (word_tag(r, s, i) != TAG_WITH || i >= s->last || does_something(r, s))
        return;
    size_t next = next_word(r, s, i), food = next;
    bool it = word_tag(r, s, next) == TAG_IT && !match_in(r, s, KIND_OF(number));
    while (food < s->last && word_tag(r, s, food) != TAG_FOOD && word_tag(r, s, food) != TAG_DISH)
        food = next_word(r, s, food);
    const struct entry *e = r->words.at[food].entry;
    if (!it && !(e && e->marks & MARK_OF(aside) && food == next))
        return;
    for (size_t n = s->first; n <= s->last; n++)
        r->words.at[n].scope |= SCOPE_BESIDE;
}

/* "Last night that went in the dish with half a cup of oil": another day, but this dish. */
static bool tells_of_this(const struct recording *r, const struct sentence *s,
                          const struct match *m)
{
    const struct entry *e = r->words.at[m->words.last].entry;
    size_t subject = next_word(r, s, m->words.last), verb = next_word(r, s, subject);
    if (!e || !(e->marks & MARK_OF(past)) || verb > s->last)
        return false;
    unsigned char tag = word_tag(r, s, subject), does = word_tag(r, s, verb);
    const struct word *w = &r->words.at[verb];
    while (w->tag == TAG_INSIDE)
        w++;
    return (tag == TAG_IT || tag == TAG_THE) && (does == TAG_DONE || does == TAG_ACTION) && w->entry
           && w->entry->marks & (MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(waits));
}

/* "My aunt got married by the sea. They had oysters.": a sentence that begins with "they" goes on
 * with a story, unless it tells how long: "they bake for twelve minutes". */
static void go_on_with_story(struct recording *r, struct sentence *s)
{
    bool story = s->flags & SENTENCE_STORY || match_in(r, s, KIND_OF(duration));
    const struct sentence *before = s > r->sentences.at ? s - 1 : NULL;
    if (!story && before && before->flags & SENTENCE_STORY && word_tag(r, s, s->first) == TAG_IT
        && !r->words.at[s->first].new_speaker) {
        for (size_t w = s->first; w <= s->last; w++)
            r->words.at[w].scope |= SCOPE_UNREAL;
        s->flags |= SENTENCE_STORY;
    }
}

void mark_scopes(struct recording *r, struct sentence *s)
{
    struct matches all = matches_of(r, s, KINDS_ALL);
    for (const struct match *m; (m = matches_next(&all));) {
        unsigned scope = scope_of(m->rule->kind, r->words.at[m->words.last].entry);
        if (!scope || (text_is(m->rule->option, "past") && tells_of_dish(r, s, m))
            || (text_is(m->rule->option, "story") && tells_of_this(r, s, m)))
            continue;
        struct span words = scope_reach(r, s, m);
        if (scope & (SCOPE_UNREAL | SCOPE_NEGATED | SCOPE_SUPPOSED | SCOPE_UNTIL))
            words.last = list_resumes(r, s, m, words);
        if (text_is(m->rule->option, "story") && words.last == s->last
            && words.first <= s->first + STORY_WORDS)
            s->flags |= SENTENCE_STORY;
        for (size_t w = words.first; w <= words.last; w++)
            r->words.at[w].scope |= (unsigned short) scope;
    }
    mark_verbs(r, s);
    mark_beside(r, s);
    mark_with(r, s);
    go_on_with_story(r, s);
}
