/* check/portion.c: portions and their total: all that is said to be "of the butter" must not be
 * more than the butter that was listed.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"
#include "match/capture.h"

/* Two tablespoons "of the butter" are a part of what was listed. */
static bool is_portion(const struct checker *c, const struct match *m, struct span food)
{
    for (size_t i = m->words.first + 1; i < food.last; i++)
        if (c->r->words.at[i].tag == TAG_THE && c->r->words.at[i - 1].tag == TAG_OF)
            return true;
    return false;
}

/* A match of a line of the dish that says a part of what was listed. */
struct portion {
    const struct sentence *sentence;
    const struct match *match;
    struct text kind;
};
typedef LIST(struct portion) portion_list;

static void add_portion(const struct checker *c, const struct sentence *s, const struct match *m,
                        portion_list *to)
{
    struct span food = match_slot(m, SLOT_food);
    const struct entry *e = entry_at(c->r, food);
    if (e && is_portion(c, m, food))
        *LIST_ADD(c->r->arena, to) = (struct portion){s, m, entry_value(e)};
}

static portion_list list_portions(const struct checker *c)
{
    portion_list all = {0};
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        struct matches lines = matches_of(c->r, s, KIND_OF(line));
        for (const struct match *m; (m = matches_next(&lines));)
            add_portion(c, s, m, &all);
    }
    return all;
}

/* How much it is, in the unit of the line; less than 0 where that is not said. */
static double portion_of(const struct checker *c, const struct portion *p,
                         const struct ingredient *line)
{
    struct said_amount said;
    line_amount(c->r, p->sentence, p->match, &said);
    return said.vague ? -1 : amount_in(c, &said.amount, said.amount.unit, line->amount.unit);
}

/* The food's only line is what was listed; all portions of it together must not be more. */
static bool is_only(const struct dish *d, const struct ingredient *line)
{
    for (size_t i = 0; i < d->ingredients.count; i++)
        if (&d->ingredients.at[i] != line && text_equal(d->ingredients.at[i].kind, line->kind))
            return false;
    return line->amount.known && !line->vague && ratio_finite(line->amount.max);
}

static void check_portions(struct checker *c, const portion_list *all,
                           const struct ingredient *line)
{
    const struct match *last = NULL;
    double sum = 0;
    for (size_t i = 0; i < all->count; i++) {
        const struct portion *p = &all->at[i];
        double count = text_equal(p->kind, line->kind) ? portion_of(c, p, line) : -1;
        if (count < 0)
            continue;
        sum += count;
        last = p->match;
    }
    if (last && sum > ratio_double(line->amount.max) * 1.02)
        REPORT(
            c, portions,
            ((struct subject_of){c->r->words.at[last->words.first].start, last->words, line->food}),
            said_words(c->r, line->words));
}

void find_portions(struct checker *c)
{
    const portion_list all = list_portions(c);
    for (size_t i = 0; all.count && i < c->dish->ingredients.count; i++)
        if (is_only(c->dish, &c->dish->ingredients.at[i]))
            check_portions(c, &all, &c->dish->ingredients.at[i]);
}
