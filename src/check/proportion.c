/* check/proportion.c: "equal amounts of sugar and butter", "twice as much water as rice", and the
 * amounts of the two that are told right behind it.
 * SPDX-License-Identifier: MIT */
#include "build/quantity.h"
#include "check/again.h"

/* The two foods stand within so many words of what says the proportion, and their amounts behind
 * them. */
#define FOOD_WORDS 8
#define AMOUNT_WORDS 30
/* Cooks round: "equal parts" are so near. */
#define NEAR_ENOUGH 1.1

/* The first food from word `*i` on, up to `last`, which `*i` is set behind. */
static const struct entry *next_food(const struct checker *c, size_t *i, size_t last)
{
    while (*i <= last && *i < c->r->words.count) {
        const struct word *w = &c->r->words.at[(*i)++];
        if (w->tag == TAG_FOOD && w->entry)
            return w->entry;
    }
    return NULL;
}

/* The line behind word `from` that gives an amount of the food; NULL: there is none so near. */
static const struct match *line_of(const struct checker *c, const struct entry *food, size_t from,
                                   struct amount *amount)
{
    struct matches lines =
        matches_among(c->r, (struct span){from, from + AMOUNT_WORDS}, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&lines));) {
        const struct entry *e = match_entry(c->r, m, SLOT_food);
        struct said_amount said = {0};
        if (!e || !text_equal(entry_value(e), entry_value(food)))
            continue;
        line_amount(c->r, sentence_of(c->r, m->words.first), m, &said);
        *amount = said.amount;
        if (said.amount.known && !said.vague && !said.more && ratio_finite(said.amount.max))
            return m;
    }
    return NULL;
}

/* The first of the two is `times` as much as the second. */
static void check_proportion(struct checker *c, const struct sentence *s, const char *set,
                             double times)
{
    struct span where;
    struct amount one, other;
    if (!said_in(c, set, s, &where) || c->r->words.at[where.first].scope & SCOPE_NOT_DONE)
        return;
    size_t next = where.last + 1;
    const struct entry *x = next_food(c, &next, where.last + FOOD_WORDS),
                       *y = next_food(c, &next, where.last + FOOD_WORDS);
    const struct match *a = x && y ? line_of(c, x, next, &one) : NULL,
                       *b = a ? line_of(c, y, next, &other) : NULL;
    if (!a || !b)
        return;
    double have = amount_in(c, &one, one.unit, other.unit), want = ratio_double(other.min) * times;
    if (have <= 0 || want <= 0 || (have <= want * NEAR_ENOUGH && want <= have * NEAR_ENOUGH))
        return;
    const struct match *last = a->words.first > b->words.first ? a : b;
    REPORT(c, said_otherwise, subject_words(c, last->words), said_words(c->r, where));
}

void find_proportions(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        check_proportion(c, s, "equal_parts", 1);
        check_proportion(c, s, "twice_as", 2);
    }
}
