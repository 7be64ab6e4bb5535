/* check/absent_again.c: a food that was said to be left out, and went in: "there's no garlic in
 * this", and then "four cloves of garlic".
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* "No butter in the pan yet" says when, or where. */
#define LATER_WORDS 4

/* The food that the words say is left out; NULL: it is only not in yet. */
static const struct entry *left_out(const struct checker *c, struct span said)
{
    const struct entry *food = NULL;
    struct span where, near = {said.first, said.last + LATER_WORDS};
    if (near.last >= c->r->words.count)
        near.last = c->r->words.count - 1;
    for (size_t i = said.first; i <= said.last; i++)
        if (c->r->words.at[i].tag == TAG_FOOD)
            food = c->r->words.at[i].entry;
    return said_find(&c->sayings, c->r, "none_of_now", near, &where) ? NULL : food;
}

/* The dish's first line of the food, with an amount, behind the word; NULL: there is none. */
static const struct ingredient *line_behind(const struct checker *c, const struct entry *food,
                                            size_t word)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id > word && line->amount.known && !line->optional
            && line->role == ROLE_INGREDIENT && text_equal(line->kind, entry_value(food)))
            return line;
    }
    return NULL;
}

static void check_left_out(struct checker *c, struct span said)
{
    const struct entry *food = left_out(c, said);
    const struct ingredient *line = food ? line_behind(c, food, said.last) : NULL;
    if (line)
        REPORT(c, amount_otherwise, subject_line(line), amount_words(c, line),
               said_words(c->r, said));
}

void find_absent_again(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        struct span where, rest = c->parts.at[i];
        for (; rest.first <= rest.last && said_find(&c->sayings, c->r, "says_none", rest, &where);
             rest.first = where.last + 1)
            check_left_out(c, where);
    }
}
