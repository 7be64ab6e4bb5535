/* check/known_again.c: amounts of what is known already: "the four cups of flour", "your ten eggs",
 * "all six of them", where less of it, or fewer, went in.
 * SPDX-License-Identifier: MIT */
#include "build/quantity.h"
#include "check/again.h"

/* "The two cups of water" may be a part of what was said; "the four cups" of three are not. */
#define MORE 1.02

/* "The", "your", right before the number of the match, or as its first word. */
static bool is_definite(const struct checker *c, const struct match *m)
{
    struct span where, words = m->words;
    if (c->r->words.at[words.first].tag != TAG_THE) {
        if (!words.first || c->r->words.at[words.first - 1].tag != TAG_THE)
            return false;
        words.first--;
    }
    return said_find(&c->sayings, c->r, "definite", words, &where) && where.first == words.first;
}

/* "With the two tablespoons of sugar it's sweet", "it's the half litre of vinegar that makes it
 * keep": all that there is, not a part of it. Captions without stops may end the sentence there. */
#define JUDGES_WORDS 2
static bool judges_all(const struct checker *c, const struct match *m)
{
    struct span where, behind = {m->words.last + 1, m->words.last + JUDGES_WORDS};
    size_t before = m->words.first;
    before -= before && c->r->words.at[before].tag != TAG_THE;
    if (!before || behind.last >= c->r->words.count
        || c->r->words.at[m->words.last].after >= AFTER_COMMA)
        return false;
    const unsigned char lead = c->r->words.at[before - 1].tag;
    return (lead == TAG_WITH && said_find(&c->sayings, c->r, "answered_so", behind, &where)
            && where.first == behind.first)
           || (lead == TAG_THERE && said_find(&c->sayings, c->r, "that_does", behind, &where)
               && where.first == behind.first);
}

static void check_known(struct checker *c, const struct sentence *s, const struct match *m)
{
    struct said_amount said = {0};
    struct went_in in;
    const struct entry *food = match_entry(c->r, m, SLOT_food);
    if (!food || !is_definite(c, m))
        return;
    line_amount(c->r, s, m, &said);
    if (!said.amount.known || said.vague || said.more || said.each
        || !told_otherwise(c, food, m->words.first, &said.amount, &in)
        || (ratio_double(said.amount.min) <= in.most * MORE && !judges_all(c, m)))
        return;
    report_otherwise(c, m->words, entry_shown(food), c->number, in.other);
}

/* The one line before that counts more than one of something; NULL: there is none, or two, or one
 * with that count. */
static const struct ingredient *only_count(const struct checker *c, size_t before,
                                           const struct amount *count)
{
    const struct ingredient *only = NULL;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (!line->amount.known || line->amount.unit.length || line->id >= before
            || ratio_double(line->amount.max) <= 1)
            continue;
        if (only
            || overlap(ratio_double(count->min), ratio_double(count->max),
                       ratio_double(line->amount.min), ratio_double(line->amount.max)))
            return NULL;
        only = line;
    }
    return only;
}

/* "Turn all six of them", of four chops. */
static void check_all(struct checker *c, const struct sentence *s)
{
    struct span where, all = {s->first, s->last};
    struct amount count;
    const struct ingredient *other;
    if (!said_find(&c->sayings, c->r, "all_of_them", all, &where) || !number_in(c, s, where, &count)
        || (other = only_count(c, where.first, &count)) == NULL)
        return;
    struct subject_of what = {c->r->words.at[where.first].start, where, other->food};
    REPORT(c, amount_otherwise, what, said_words(c->r, where), amount_words(c, other));
}

void find_known_again(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        check_all(c, s);
        struct matches lines = matches_of(c->r, s, KIND_OF(line));
        for (const struct match *m; (m = matches_next(&lines));)
            if (!(c->r->words.at[m->words.last].scope & SCOPE_NOT_DONE))
                check_known(c, s, m);
    }
}
