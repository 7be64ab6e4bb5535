/* check/bare_again.c: a weight that is told again without its food: "in goes the spinach, the whole
 * 800 grams", "you asked the butcher for two kilos", and what pieces weigh: "four patties at six
 * ounces apiece" of a pound of meat.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "build/quantity.h"
#include "check/again.h"

/* The food stands so near the words that mean all of it. */
#define FOOD_WORDS 8
/* A weight that is further from what went in is of something else. */
#define FURTHEST 3
/* Cooks round what a piece weighs, and meat has a binder with it (common practice, no source). */
#define ROUNDED 1.25
/* The pieces are counted so near what each weighs. */
#define PIECE_WORDS 8

/* The amount that the match gives in weight; false where it gives none, or a food's own line. */
static bool weight_in(const struct checker *c, const struct sentence *s, const struct match *m,
                      struct amount *said)
{
    const struct entry *unit = match_entry(c->r, m, SLOT_unit);
    if (!unit || !(unit->marks & MARK_OF(weighs)) || !ratio_finite(m->high))
        return false;
    struct matches lines = matches_of(c->r, s, KIND_OF(line));
    for (const struct match *line; (line = matches_next(&lines));)
        if (line->words.first <= m->words.first && line->words.last >= m->words.last
            && !span_is_empty(match_slot(line, SLOT_food)))
            return false;
    *said = (struct amount){true, m->low, m->high, entry_value(unit), false};
    return true;
}

/* The food named last before the word; NULL: none so near. */
static const struct entry *food_before(const struct checker *c, size_t before)
{
    for (size_t i = before; i-- > 0 && before - i <= FOOD_WORDS;)
        if (c->r->words.at[i].tag == TAG_FOOD && c->r->words.at[i].entry)
            return c->r->words.at[i].entry;
    return NULL;
}

static bool is_near(double a, double b)
{
    return a > 0 && b > 0 && a <= b * FURTHEST && b <= a * FURTHEST;
}

/* What went in before the word and weighs about as much, though not as much; NULL where something
 * weighs as much, or nothing is near. */
static const struct ingredient *weight_like(const struct checker *c, size_t before,
                                            const struct amount *said)
{
    const struct ingredient *nearest = NULL;
    double least = INFINITY;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        struct went_in in;
        double have;
        if (line->id >= before || !line->entry || !line->amount.known || line->vague)
            continue;
        if (went_in(c, line->entry, before, said, &in))
            return NULL;
        have = amount_in(c, &line->amount, line->amount.unit, said->unit);
        double far = fabs(log(have / ratio_double(said->min)));
        if (!is_near(have, ratio_double(said->min)) || far > least)
            continue;
        least = far;
        nearest = line;
    }
    return nearest;
}

static void report_weight(struct checker *c, const struct match *m, const struct ingredient *line)
{
    struct subject_of what = {c->r->words.at[m->words.first].start, m->words, line->food};
    REPORT(c, amount_otherwise, what, said_words(c->r, m->words), amount_words(c, line));
}

static void check_weight(struct checker *c, const struct match *m, const struct amount *said)
{
    struct went_in in;
    const struct ingredient *line = NULL;
    if (stands_before(c, "whole_of_it", m->words)) {
        const struct entry *food = food_before(c, m->words.first);
        if (food && !went_in(c, food, m->words.first, said, &in))
            line = in.other;
    } else if (stands_before(c, "told_amount", m->words)) {
        line = weight_like(c, m->words.first, said);
    }
    if (line)
        report_weight(c, m, line);
}

/* ---- what each piece weighs */

/* How many pieces are counted before the amount, in its sentence; false: none are. */
static bool pieces_before(const struct checker *c, const struct sentence *s, const struct match *m,
                          double *count)
{
    struct amount pieces;
    struct span where, before = {s->first, m->words.first - 1};
    if (m->words.first == s->first)
        return false;
    if (before.first + PIECE_WORDS < m->words.first)
        before.first = m->words.first - PIECE_WORDS;
    if (!first_number(c, s, before, &pieces, &where))
        return false;
    *count = ratio_double(pieces.min);
    return *count > 1;
}

/* Grams of all that went in before the word; `*heaviest` is the heaviest line. False where a line's
 * weight is not known, and the heaviest is no meat: then what a piece weighs cannot be told. */
static bool all_grams(const struct checker *c, size_t before, double *grams,
                      const struct ingredient **heaviest)
{
    bool known = true;
    *grams = 0;
    *heaviest = NULL;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id >= before)
            continue;
        known &= line->weight.known;
        if (!line->weight.known)
            continue;
        *grams += line->weight.max;
        if (!*heaviest || line->weight.max > (*heaviest)->weight.max)
            *heaviest = line;
    }
    if (!*heaviest)
        return false;
    if ((*heaviest)->entry && (*heaviest)->entry->marks & (MARK_OF(ground) | MARK_OF(meat)))
        *grams = (*heaviest)->weight.max;
    return known || *grams == (*heaviest)->weight.max;
}

/* "That makes four patties at six ounces apiece", of a pound of meat. */
static void check_apiece(struct checker *c, const struct sentence *s, const struct match *m,
                         const struct amount *said)
{
    struct span where, behind = {m->words.last + 1, s->last};
    const struct ingredient *heaviest;
    double count, grams, each = amount_in(c, said, said->unit, TEXT_OF("gram"));
    if (span_is_empty(behind) || !said_find(&c->sayings, c->r, "apiece", behind, &where)
        || where.first != behind.first || !pieces_before(c, s, m, &count)
        || !all_grams(c, m->words.first, &grams, &heaviest) || each * count <= grams * ROUNDED
        || each * count > grams * FURTHEST)
        return;
    report_weight(c, m, heaviest);
}

void find_bare_again(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        struct matches amounts = matches_of(c->r, s, KIND_OF(amount));
        for (const struct match *m; (m = matches_next(&amounts));) {
            struct amount said;
            if (c->r->words.at[m->words.last].scope & (SCOPE_NEGATED | SCOPE_INSTEAD)
                || !weight_in(c, s, m, &said))
                continue;
            check_weight(c, m, &said);
            check_apiece(c, s, m, &said);
        }
    }
}
