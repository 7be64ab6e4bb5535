/* check/pieces_again.c: how many pieces it makes, said twice: "this makes twelve", "cut it four by
 * four", and at the end "so that's fifteen tarts".
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "check/again.h"

/* So many pieces, and the words that say so. */
struct pieces {
    struct amount count;
    struct span words;
};
typedef LIST(struct pieces) pieces_list;

static void add_pieces(struct checker *c, pieces_list *list, struct amount count, struct span words)
{
    *LIST_ADD(c->r->arena, list) = (struct pieces){count, words};
}

/* "This makes twelve": a yield of nothing in particular, or of the pieces that word `dish` names.
 */
static bool makes_pieces(const struct checker *c, const struct match *yield, size_t dish)
{
    struct span where;
    const struct entry *e = match_entry(c->r, yield, SLOT_eater);
    return said_find(&c->sayings, c->r, "makes_pieces", yield->words, &where)
           && (!e
               || (c->r->words.at[dish].entry
                   && text_equal(entry_value(e), entry_value(c->r->words.at[dish].entry))));
}

/* "Four by four", "four rows of four". */
static bool multiplies(const struct checker *c, size_t i)
{
    struct span where;
    return c->r->words.at[i].tag == TAG_BY
           || (said_find(&c->sayings, c->r, "rows_of", (struct span){i, i + 1}, &where)
               && where.first == i);
}

/* "Four by four" is sixteen. */
static bool grid_in(const struct checker *c, const struct sentence *s, struct span where,
                    struct amount *count)
{
    struct amount across;
    for (size_t i = where.first + 1; i < where.last; i++) {
        if (!multiplies(c, i))
            continue;
        if (!number_in(c, s, (struct span){where.first, i - 1}, &across)
            || !number_in(c, s, (struct span){i, where.last}, count))
            return false;
        count->min = ratio_multiply(across.min, count->min);
        count->max = ratio_multiply(across.max, count->max);
        return true;
    }
    return number_in(c, s, where, count);
}

/* "This makes twelve", told before the dish began, and the dish is so many tarts. */
static bool makes_told(const struct checker *c, const struct word *piece, size_t before)
{
    const struct yield *y = &c->dish->yield;
    return y->known && y->words.last < before && piece->entry
           && text_equal(y->of, entry_value(piece->entry));
}

/* What was cut before the words, and how many it makes; yields of other things are left out. */
static void list_pieces(struct checker *c, size_t before, size_t dish, pieces_list *list)
{
    match_list yields = {0};
    add_matches(c, KIND_OF(yield), SCOPE_NOT_DONE, &yields);
    for (size_t n = 0; n < yields.count && yields.at[n]->words.last < before; n++)
        if (makes_pieces(c, yields.at[n], dish)) {
            const struct match *m = yields.at[n];
            add_pieces(c, list, (struct amount){true, m->low, m->high, TEXT_EMPTY, false},
                       m->words);
        }
    if (makes_told(c, &c->r->words.at[dish], before)) {
        const struct yield *y = &c->dish->yield;
        add_pieces(c, list, (struct amount){true, y->min, y->max, TEXT_EMPTY, false}, y->words);
    }
    const struct span until = {c->dish->words.first, before};
    for (const struct sentence *s = NULL; (s = sentence_next(c->r, until, s));) {
        struct span where, within = {s->first, s->last < before ? s->last : before - 1};
        struct amount count;
        if (in_dish(c, s->first) && said_find(&c->sayings, c->r, "counts_pieces", within, &where)
            && !(c->r->words.at[where.first].scope & SCOPE_NOT_DONE)
            && grid_in(c, s, where, &count))
            add_pieces(c, list, count, where);
    }
}

/* Whether the same number was said of any yield before. */
static bool said_before(struct checker *c, const struct amount *count, size_t before)
{
    match_list yields = {0};
    add_matches(c, KIND_OF(yield), SCOPE_NOT_DONE, &yields);
    for (size_t n = 0; n < yields.count && yields.at[n]->words.last < before; n++)
        if (overlap(ratio_double(yields.at[n]->low), ratio_double(yields.at[n]->high),
                    ratio_double(count->min), ratio_double(count->max)))
            return true;
    return false;
}

/* "So that's fifteen tarts", after "this makes twelve". */
static void check_pieces(struct checker *c, const struct sentence *s)
{
    pieces_list list = {0};
    const struct pieces *other = NULL;
    struct amount count;
    struct span where;
    if (!said_in(c, "recap_pieces", s, &where) || !number_in(c, s, where, &count)
        || said_before(c, &count, where.first))
        return;
    list_pieces(c, where.first, where.last, &list);
    for (size_t n = 0; n < list.count; n++) {
        const struct pieces *p = &list.at[n];
        if (overlap(ratio_double(p->count.min), ratio_double(p->count.max), ratio_double(count.min),
                    ratio_double(count.max)))
            return;
        other = p;
    }
    if (other)
        REPORT(c, said_otherwise, subject_words(c, where), said_words(c->r, other->words));
}

/* Whether the pieces may be parts of the others, or they of these: halves of a dozen. */
static bool divides(const struct amount *a, const struct amount *b)
{
    const double x = ratio_double(a->max), y = ratio_double(b->max);
    return x < 1 || y < 1 || fmod(x, y) < 0.5 || fmod(y, x) < 0.5;
}

/* "Makes a dozen", and then "divide it into sixteen". */
static void check_divided(struct checker *c, const struct sentence *s)
{
    struct amount count;
    struct span where;
    match_list yields = {0};
    if (!said_in(c, "divides_all", s, &where) || c->r->words.at[where.first].scope & SCOPE_NOT_DONE
        || !grid_in(c, s, where, &count) || said_before(c, &count, where.first))
        return;
    add_matches(c, KIND_OF(yield), SCOPE_NOT_DONE, &yields);
    for (size_t n = 0; n < yields.count && yields.at[n]->words.last < where.first; n++) {
        const struct match *m = yields.at[n];
        const struct amount told = {true, m->low, m->high, TEXT_EMPTY, false};
        struct span makes;
        if (!said_find(&c->sayings, c->r, "makes_pieces", m->words, &makes)
            || match_entry(c->r, m, SLOT_eater) || divides(&told, &count))
            continue;
        REPORT(c, said_otherwise, subject_words(c, where), said_words(c->r, m->words));
        return;
    }
}

void find_pieces_again(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        check_pieces(c, s);
        check_divided(c, s);
    }
}
