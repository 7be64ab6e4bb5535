/* split/order.c
 * SPDX-License-Identifier: MIT */
#include "split/order.h"

#include "base/arena.h"
#include "split/turn.h"

/* So many numbers in a row are no chance. One between them may be missing: not heard, or said in
 * another way ("number five"). */
#define ORDER_LEAST 4
#define NUMBERS_MISSING 1
#define NUMBER_MOST 60
/* A dish takes at least so many sentences. */
#define DISH_SENTENCES 3
/* What its number opens a dish with. */
#define ORDER_OPENS 3.0

/* The longest row that ends with a sentence. */
struct row {
    size_t length; /* 0: it begins with no number */
    size_t before; /* the sentence with the number before it */
};

/* "Six potatoes", "six minutes", "six more": how much of something. */
static bool counts_things(unsigned char tag)
{
    switch (tag) {
    case TAG_OTHER:
    case TAG_BE:
    case TAG_THE:
    case TAG_ARTICLE:
    case TAG_DISH:
    case TAG_ME:
    case TAG_THERE:
        return false;
    default:
        return true;
    }
}

/* "Third" is a fraction first of all. */
static const struct entry *ordinal_of(const struct word *w)
{
    return w->tag == TAG_ORDINAL    ? w->entry
           : w->tag == TAG_FRACTION ? entry_as(w->readings, TAG_ORDINAL)
                                    : NULL;
}

static size_t number_of(const struct word *w)
{
    const struct entry *ordinal = ordinal_of(w);
    struct text digits = w->tag == TAG_NUMBER ? w->text : entry_value(ordinal ? ordinal : w->entry);
    size_t number = 0;
    for (size_t i = 0; i < digits.length; i++) {
        if (digits.at[i] < '0' || digits.at[i] > '9' || number > NUMBER_MOST)
            return 0;
        number = 10 * number + (size_t) (digits.at[i] - '0');
    }
    return number > NUMBER_MOST ? 0 : number;
}

/* The number that a sentence begins with, after a "so" or an "okay"; 0: none, or it counts things.
 */
static size_t first_number(const struct recording *r, const struct sentence *s)
{
    size_t i = after_so(r, s);
    const struct word *w = &r->words.at[i];
    bool ordinal = ordinal_of(w) != NULL;
    if (!ordinal && w->tag != TAG_ONES && w->tag != TAG_TEENS && w->tag != TAG_NUMBER)
        return 0;
    if (i == s->last)
        return number_of(w);
    return !ordinal && counts_things(r->words.at[i + 1].tag) ? 0 : number_of(w);
}

static void extend(struct row *rows, size_t i, size_t before)
{
    if (before + DISH_SENTENCES <= i && rows[before].length >= rows[i].length)
        rows[i] = (struct row){rows[before].length + 1, before};
}

/* "And five, an omelette" names what comes. */
static void open_dish(struct feature *f)
{
    f->order = true;
    if (f->opens < ORDER_OPENS)
        f->opens = ORDER_OPENS;
    if (span_is_empty(f->closing_title))
        return;
    f->opening_title = f->closing_title;
    f->closing_title = NO_WORDS;
    f->closes = 0;
}

static void mark_row(struct feature *f, const struct row *rows, size_t i)
{
    for (size_t left = rows[i].length; left > 0; left--, i = rows[i].before)
        open_dish(&f[i]);
}

void find_order(const struct recording *r, struct feature *f)
{
    size_t count = r->sentences.count, best = 0;
    size_t *last = arena_alloc(r->arena, (NUMBER_MOST + 1) * sizeof *last);
    struct row *rows = arena_alloc(r->arena, (count + 1) * sizeof *rows);
    for (size_t n = 0; n <= NUMBER_MOST; n++)
        last[n] = count;
    for (size_t i = 0; i < count; i++) {
        size_t number = first_number(r, &r->sentences.at[i]);
        rows[i] = (struct row){number > 0, i};
        for (size_t back = 1; back <= 1 + NUMBERS_MISSING && back < number; back++)
            if (last[number - back] < i)
                extend(rows, i, last[number - back]);
        if (number && (last[number] == count || rows[i].length >= rows[last[number]].length))
            last[number] = i;
        if (rows[i].length > rows[best].length)
            best = i;
    }
    if (count && rows[best].length >= ORDER_LEAST)
        mark_row(f, rows, best);
}
