/* match/scope.c
 * SPDX-License-Identifier: MIT */
#include "match/scope.h"

#include "match/clause.h"
#include "match/reach.h"
#include "match/matches.h"

/* Where captions have no full stops, what looks like one sentence is several: a condition or a
 * story reaches so many words at most. */
#define LOOSE_WORDS 10

static size_t sentence_end(const struct recording *r, const struct sentence *s, size_t i)
{
    return r->punctuated || i + LOOSE_WORDS > s->last ? s->last : i + LOOSE_WORDS;
}

static bool has_commas(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first; i < s->last; i++)
        if (r->words.at[i].after == AFTER_COMMA)
            return true;
    return false;
}

static bool has_food(const struct recording *r, size_t first, size_t last)
{
    for (size_t i = first; i <= last; i++)
        if (r->words.at[i].tag == TAG_FOOD || r->words.at[i].tag == TAG_DISH)
            return true;
    return false;
}

/* "I'm not fancy about it | a tablespoon of sugar": where captions have no commas, a word that
 * takes no object ends what is said. */
static bool is_said_to_end(const struct recording *r, const struct sentence *s, size_t i)
{
    unsigned char tag = word_tag(r, s, i);
    bool verb =
        i > s->first && word_tag(r, s, i - 1) == TAG_ACTION; /* "give it a spoon of sugar" */
    return !r->punctuated && !verb
           && (tag == TAG_IT || tag == TAG_STATE || tag == TAG_MANNER || tag == TAG_PLACE);
}

/* "Oats, not the quick ones, a teaspoon of salt": what a comma and the next amount follow is a list
 * that goes on. */
static size_t list_after(const struct recording *r, const struct sentence *s, struct span scope)
{
    for (size_t i = scope.first; i < scope.last; i++)
        if ((r->words.at[i].after == AFTER_COMMA || is_said_to_end(r, s, i))
            && line_begins(r, s, next_word(r, s, i)))
            return i;
    return scope.last;
}

/* What is not so reaches to the next amount, or to the caption that begins with a place. */
static size_t list_or_place(const struct recording *r, const struct sentence *s, struct span scope)
{
    for (size_t i = scope.first; i < scope.last; i++) {
        size_t next = next_word(r, s, i);
        bool place =
            r->words.at[i].cue != r->words.at[i + 1].cue && word_tag(r, s, next) == TAG_INTO;
        if (place || line_begins(r, s, next))
            return i;
    }
    return scope.last;
}

/* "As wide as the beef half an onion": behind the food that something is compared with, an amount
 * is a new one. */
static size_t amount_after(const struct recording *r, const struct sentence *s, struct span scope)
{
    for (size_t i = scope.first + 1; i < scope.last; i++)
        if (has_food(r, scope.first, i) && line_begins(r, s, next_word(r, s, i)))
            return i;
    return scope.last;
}

/* "If you run the cup under hot water": water is used for much, and seldom goes in. */
static bool is_water(const struct word *w)
{
    return w->entry && w->entry->marks & MARK_OF(water);
}

/* "My neighbour grows them, and a cup of prunes": the list goes on where the story had no food. */
static bool list_goes_on(const struct recording *r, const struct sentence *s, size_t first,
                         size_t comma)
{
    size_t and = next_word(r, s, comma), amount = next_word(r, s, and);
    unsigned char tag = word_tag(r, s, amount);
    for (size_t i = first; i <= comma; i++)
        if (r->words.at[i].tag == TAG_FOOD && !is_water(&r->words.at[i]))
            return false;
    return word_tag(r, s, and) == TAG_AND
           && (tag == TAG_NUMBER || tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_ARTICLE
               || tag == TAG_FRACTION);
}

/* "My mum always did, and pat it dry": the instruction goes on. */
static bool order_goes_on(const struct recording *r, const struct sentence *s, size_t comma)
{
    size_t and = next_word(r, s, comma), verb = next_word(r, s, and);
    if (word_tag(r, s, and) != TAG_AND || verb > s->last || !is_base_verb(r, s, verb))
        return false;
    if (r->words.at[verb].tag == TAG_INSIDE)
        return true; /* "pat it dry" */
    unsigned char object = word_tag(r, s, next_word(r, s, verb));
    return object == TAG_IT || object == TAG_THE;
}

/* "I said a cup of sugar, it's half a cup of sugar": what is told is put right. */
static bool amount_is(const struct recording *r, const struct sentence *s, size_t comma)
{
    size_t is = next_word(r, s, comma);
    return word_tag(r, s, is) == TAG_THERE && line_begins(r, s, next_word(r, s, is));
}

/* So many words a verb has before its food. */
#define VERB_WORDS 3

/* "My sister puts three | rub in four ounces of butter": the next caption begins with an order. */
static bool is_ordered_next(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t verb = next_word(r, s, i);
    if (r->words.at[i].cue == r->words.at[i + 1].cue || !is_base_verb(r, s, verb))
        return false;
    for (size_t n = verb + 1; n <= s->last && n <= verb + VERB_WORDS; n++)
        if (line_begins(r, s, n))
            return true;
    return false;
}

/* Another clause with a cook of its own, or "but", ends a story. */
static size_t story_end(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t first = i;
    bool commas = has_commas(r, s);
    for (; i < s->last; i++) {
        unsigned char next = word_tag(r, s, next_word(r, s, i));
        bool comma = r->words.at[i].after == AFTER_COMMA;
        bool other =
            next == TAG_SO || next == TAG_ME || next == TAG_HAVE
            || (comma
                && (list_goes_on(r, s, first, i) || order_goes_on(r, s, i) || amount_is(r, s, i)));
        bool list = !r->punctuated && next == TAG_AND
                    && line_begins(r, s, next_word(r, s, next_word(r, s, i)))
                    && list_goes_on(r, s, first, i);
        bool order = !r->punctuated && !commas && is_ordered_next(r, s, i);
        if (r->words.at[i].tag != TAG_INSIDE
            && ((comma && other) || (next == TAG_SO && !commas) || list || order))
            return i;
    }
    return sentence_end(r, s, first);
}

static bool counts(unsigned char tag)
{
    return tag == TAG_ARTICLE || tag == TAG_ONES || tag == TAG_NUMBER || tag == TAG_FRACTION;
}

/* The nearest food before word `end` and those listed with it: "salt and pepper to taste", but not
 * what has an amount of its own or is only done to: "the peas with a cup of water and salt". */
static size_t list_begin(const struct recording *r, const struct sentence *s, size_t first,
                         size_t end)
{
    size_t begin = end, last_joined = 0;
    bool food = false;
    while (begin > first) {
        unsigned char tag = word_tag(r, s, begin - 1);
        bool joins = tag == TAG_AND || tag == TAG_OR || r->words.at[begin - 1].after == AFTER_COMMA;
        if (food && ((joins && tag != TAG_AND && tag != TAG_OR) || tag == TAG_WITH))
            break;
        if (last_joined && tag == TAG_UNIT)
            return last_joined;
        if (food && tag == TAG_AND && !counts(word_tag(r, s, begin))) /* not "a cup and a half" */
            last_joined = begin;
        food |= tag == TAG_FOOD || tag == TAG_DISH;
        begin--;
    }
    return begin;
}

/* What a phrase like "on the side" or "if you like" is said of: what follows it in its clause, when
 * there is a food, else what stands before it; a clause that is nothing but the phrase speaks of
 * the one before. */
static struct span around(const struct recording *r, const struct sentence *s,
                          const struct match *m)
{
    size_t last = clause_around(r, s, m->words.last).last;
    size_t first = clause_around(r, s, m->words.first).first;
    bool after_only = m->words.first == s->first || word_tag(r, s, m->words.first - 1) == TAG_AND
                      || !has_food(r, first, m->words.first);
    bool ends = m->words.last < s->last && m->words.first == s->first
                && r->words.at[m->words.last].after == AFTER_COMMA;
    if (ends) /* "to serve, yogurt and flatbreads" */
        last = clause_around(r, s, m->words.last + 1).last;
    if (has_food(r, m->words.last + 1 <= last ? m->words.last + 1 : last, last) && after_only)
        return (struct span){m->words.first, last};
    if (first == m->words.first && first > s->first)
        first = clause_around(r, s, first - 1).first;
    if (word_tag(r, s, first) == TAG_SO && first > s->first && !has_food(r, first, m->words.first))
        first = clause_around(r, s, first - 1).first; /* "a cup of nuts, but you can skip those" */
    if (m->rule->kind == RULE_optional || m->rule->kind == RULE_taste)
        first = list_begin(r, s, first, m->words.first);
    return (struct span){first, m->words.last};
}

/* "Until you don't see any more flour", "till there's no more milk": none of it is left. */
static bool is_denied_line(const struct recording *r, const struct sentence *s,
                           const struct match *line)
{
    const size_t before = line->words.first - 1;
    bool more = word_tag(r, s, line->words.first) == TAG_MORE;
    bool verb = before > s->first && r->words.at[before].tag == TAG_ACTION;
    return more && word_tag(r, s, verb ? before - 1 : before) == TAG_NOT;
}

/* A sign of doneness ends at a comma, with its clause, or before the next amount; where captions
 * have no commas, also before the next thing to do. */
static size_t until_end(const struct recording *r, const struct sentence *s, const struct match *m)
{
    size_t last = clause_around(r, s, m->words.last).last;
    size_t order = r->punctuated ? last : comma_after(r, s, m->words.last);
    last = order < last ? order : last;
    for (size_t i = m->words.last; i < last; i++)
        if (r->words.at[i].after == AFTER_COMMA)
            last = i;
    struct matches lines = matches_of(r, s, KIND_OF(line));
    for (const struct match *line; (line = matches_next(&lines));)
        if (line->words.first > m->words.last + 1 && line->words.first <= last
            && !is_denied_line(r, s, line))
            last = line->words.first - 1; /* not of "until a drop of water skates" */
    struct matches asides = matches_of(r, s, KIND_OF(unreal));
    for (const struct match *aside; (aside = matches_next(&asides));)
        if (text_is(aside->rule->option, "match") && aside->words.first > m->words.last + 1
            && aside->words.first <= last)
            last = aside->words.first - 1; /* "until it's brown mine took an hour" */
    return last;
}

/* "You can use the same oven, but raise it", "rather than frying it, bake it", "you can use what
 * you have and then one yellow onion": what is done comes behind what could be done instead. */
static size_t instead_end(const struct recording *r, const struct sentence *s,
                          const struct match *m, size_t last)
{
    const size_t from = m->words.last;
    for (size_t i = from; i < last; i++)
        if (r->words.at[i].after >= AFTER_COMMA && word_tag(r, s, next_word(r, s, i)) == TAG_SO)
            return i;
    for (size_t i = from; m->words.first == s->first && i < last; i++)
        if (r->words.at[i].after == AFTER_COMMA && is_base_verb(r, s, next_word(r, s, i)))
            return i;
    for (size_t i = from + 1; !r->punctuated && i < last; i++) {
        unsigned char next = word_tag(r, s, i + 1);
        bool joined = next == TAG_SO || next == TAG_AND;
        bool counts = next == TAG_ONES || next == TAG_NUMBER || next == TAG_FRACTION;
        if ((joined && line_begins(r, s, next_word(r, s, i + 1)))
            || (counts && has_food(r, from, i) && line_begins(r, s, i + 1)))
            return i; /* "you can use lard, if you like | two teaspoons of salt" */
    }
    return last;
}

/* "If you warm the cup it slides right out, and a teaspoon of vanilla", "it's good if it's spotty,
 * a third of a cup of oats": the list goes on. */
static size_t condition_end(const struct recording *r, const struct sentence *s,
                            const struct match *m)
{
    size_t last = sentence_end(r, s, m->words.last), first = m->words.first;
    if (m->rule->kind == RULE_instead)
        return instead_end(r, s, m, last);
    unsigned char before = first > s->first ? word_tag(r, s, first - 1) : (unsigned char) TAG_SO;
    bool behind = before != TAG_SO && before != TAG_AND && before != TAG_OR
                  && r->words.at[first - 1].after < AFTER_COMMA;
    for (size_t i = m->words.last; m->rule->kind == RULE_supposed && i < last; i++)
        if (r->words.at[i].after == AFTER_COMMA
            && (list_goes_on(r, s, m->words.last, i)
                || (behind && !has_food(r, m->words.last, i)
                    && line_begins(r, s, next_word(r, s, i)))))
            return i;
    return last;
}

struct span scope_reach(const struct recording *r, const struct sentence *s, const struct match *m)
{
    struct text option = m->rule->option;
    struct span clause = clause_around(r, s, m->words.last);
    if (text_is(option, "sentence"))
        return (struct span){m->words.first, condition_end(r, s, m)};
    if (text_is(option, "until"))
        return (struct span){m->words.first, until_end(r, s, m)};
    if (text_is(option, "comma"))
        return (struct span){m->words.first, comma_after(r, s, m->words.last)};
    if (text_is(option, "clause") || text_is(option, "past")) {
        struct span rest = {m->words.last, clause.last};
        bool negated = m->rule->kind == RULE_negated;
        rest.last = negated ? denial_end(r, s, rest) : clause_goes_on(r, s, rest);
        const bool state = negated && !r->punctuated && m->words.first > s->first
                           && word_tag(r, s, m->words.first - 1) == TAG_BE;
        if (state) /* "till the water is not cloudy | in the pot with two cups of stock" */
            return (struct span){m->words.first, list_or_place(r, s, rest)};
        return (struct span){m->words.first,
                             negated ? list_after(r, s, rest) : amount_after(r, s, rest)};
    }
    if (text_is(option, "story"))
        return (struct span){m->words.first, story_end(r, s, m->words.last)};
    if (m->rule->kind == RULE_negated)
        return (struct span){m->words.first, list_after(r, s, m->words)};
    return text_is(option, "around") ? around(r, s, m) : m->words;
}
