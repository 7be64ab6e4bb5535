/* check/unlike_list.c: the voice against the list that the cook shows on screen or in the
 * description: what only one of them has, and amounts that differ.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

/* Amounts that differ by less are the same said roundly: 1 cup and 240 ml. */
#define SAME_SHARE 0.05
/* The same between a measure and a published weight, which depends on how the cup is filled. */
#define SAME_WEIGHT_SHARE 0.25

static bool of_dish(const struct checker *c, const struct listed *f)
{
    return c->list->sections.at[f->section].dish == c->number;
}

static int alike(const struct listed *f, const struct ingredient *line)
{
    return foods_alike(f->kind, f->food, line->kind, line->food);
}

/* The food of the dish's list that is likest to the line's; NULL when there is none. */
static const struct listed *listed_as(const struct checker *c, const struct ingredient *line)
{
    const struct listed *found = NULL;
    int most = 0;
    for (size_t i = 0; c->list && i < c->list->foods.count; i++) {
        const struct listed *f = &c->list->foods.at[i];
        int like = of_dish(c, f) ? alike(f, line) : 0;
        if (like > most) {
            most = like;
            found = f;
        }
    }
    return found;
}

const struct listed *listed_amount(const struct checker *c, const struct ingredient *line)
{
    const struct listed *f = listed_as(c, line);
    return f && f->amount.amount.known && !f->amount.vague ? f : NULL;
}

static struct text line_number(const struct checker *c, const struct listed *f)
{
    return arena_format(c->r->arena, "%u", f->line);
}

/* ---- on the list, not heard */

/* Whether the dish's talk has a word that the food's name ends in. */
static bool spoken(const struct checker *c, const struct listed *f)
{
    const struct text last = text_last_word(f->food), kind = f->kind;
    for (size_t i = c->dish->words.first; i <= c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        const struct entry *e = w->tag == TAG_FOOD ? w->entry : NULL;
        if (in_dish(c, i) && (text_equal(w->key, last) || (e && text_equal(entry_value(e), kind))))
            return true;
    }
    return false;
}

static bool heard(const struct checker *c, const struct listed *f)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++)
        if (alike(f, &c->dish->ingredients.at[i]))
            return true;
    return spoken(c, f);
}

/* "Butter or oil": one of the two is enough. `n` is the first of them. */
static bool one_heard(const struct checker *c, size_t n)
{
    const struct listed *f = &c->list->foods.at[n];
    bool any = heard(c, f);
    for (size_t i = n + 1; i < c->list->foods.count && c->list->foods.at[i].either; i++)
        any |= heard(c, &c->list->foods.at[i]);
    return any;
}

static void find_not_heard(struct checker *c)
{
    for (size_t i = 0; i < c->list->foods.count; i++) {
        const struct listed *f = &c->list->foods.at[i];
        if (!of_dish(c, f) || f->either || f->optional || one_heard(c, i))
            continue;
        REPORT(c, list_not_heard, ((struct subject_of){c->dish->start, NO_WORDS, f->food}), f->said,
               line_number(c, f));
    }
}

/* ---- heard, not on the list */

/* What is only mentioned, served beside or no food to shop for needs no line. */
static bool needs_line(const struct ingredient *line)
{
    const uint64_t no = MARK_OF(water) | MARK_OF(generic);
    return line->role == ROLE_INGREDIENT && !line->optional && !line->questioned
           && (line->amount.known || line->used) && !(line->entry && line->entry->marks & no);
}

static bool said_before(const struct checker *c, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (text_equal(c->dish->ingredients.at[i].kind, c->dish->ingredients.at[n].kind))
            return true;
    return false;
}

static bool has_section(const struct checker *c)
{
    for (size_t i = 0; i < c->list->foods.count; i++)
        if (of_dish(c, &c->list->foods.at[i]))
            return true;
    return false;
}

static void find_not_listed(struct checker *c)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (needs_line(line) && !said_before(c, i) && !listed_as(c, line))
            REPORT(c, list_lacks, subject_line(line), said_words(c->r, line->words));
    }
}

/* ---- amounts */

/* How an amount that was heard stands to what the list says. */
enum agreement { AGREE_UNKNOWN, AGREE_SAME, AGREE_OTHER };

static bool near(double low, double high, double listed, double listed_high, double share)
{
    return low <= listed_high * (1 + share) && listed <= high * (1 + share);
}

static enum agreement agree_on_weight(const struct checker *c, const struct ingredient *line,
                                      const struct amount *listed)
{
    struct amount top = *listed;
    top.min = listed->max;
    double grams = amount_in(c, listed, listed->unit, TEXT_OF("gram"));
    if (!line->weight.known || !(grams > 0) || !ratio_finite(listed->max))
        return AGREE_UNKNOWN;
    return near(line->weight.min, line->weight.max, grams,
                amount_in(c, &top, listed->unit, TEXT_OF("gram")), SAME_WEIGHT_SHARE)
               ? AGREE_SAME
               : AGREE_OTHER;
}

/* The amount's ends in the listed amount's unit. */
static enum agreement agree_on_measure(const struct checker *c, const struct amount *said,
                                       const struct amount *listed)
{
    struct amount top = *said;
    top.min = said->max;
    double low = amount_in(c, said, said->unit, listed->unit);
    if (low < 0 || !ratio_finite(said->max) || !ratio_finite(listed->max))
        return AGREE_UNKNOWN;
    return near(low, amount_in(c, &top, said->unit, listed->unit), ratio_double(listed->min),
                ratio_double(listed->max), SAME_SHARE)
               ? AGREE_SAME
               : AGREE_OTHER;
}

static enum agreement agree(const struct checker *c, const struct ingredient *line,
                            const struct said_amount *listed)
{
    const struct amount *a = &listed->amount;
    if (!line->amount.known || line->vague || line->no_unit)
        return AGREE_UNKNOWN;
    enum agreement all = agree_on_measure(c, &line->amount, a);
    if (all == AGREE_SAME && listed->package.known && line->package.known)
        return agree_on_measure(c, &line->package, &listed->package);
    return all == AGREE_UNKNOWN ? agree_on_weight(c, line, a) : all;
}

/* The heard lines of the food added up, where they can be, as a line of its own. */
static bool add_heard(const struct checker *c, const struct listed *f, int like,
                      struct ingredient *sum)
{
    bool any = false;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (alike(f, line) != like)
            continue;
        if (!line->amount.known || line->vague
            || (any && !text_equal(line->amount.unit, sum->amount.unit)))
            return false;
        if (any) {
            sum->amount.min = ratio_add(sum->amount.min, line->amount.min);
            sum->amount.max = ratio_add(sum->amount.max, line->amount.max);
            sum->weight.known = false;
        } else
            *sum = *line;
        any = true;
    }
    return any;
}

static int likest(const struct checker *c, const struct listed *f)
{
    int most = 0;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        int like = alike(f, &c->dish->ingredients.at[i]);
        most = like > most ? like : most;
    }
    return most;
}

/* The last heard amount of the food where none agrees with the list, alone or all together; NULL
 * where one does, or nothing can be told. */
static const struct ingredient *otherwise(const struct checker *c, const struct listed *f)
{
    const struct ingredient *last = NULL;
    struct ingredient sum;
    int like = likest(c, f);
    for (size_t i = 0; like && i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        enum agreement a = alike(f, line) == like ? agree(c, line, &f->amount) : AGREE_UNKNOWN;
        if (a == AGREE_SAME)
            return NULL;
        if (a == AGREE_OTHER)
            last = line;
    }
    return last && add_heard(c, f, like, &sum) && agree(c, &sum, &f->amount) == AGREE_SAME ? NULL
                                                                                           : last;
}

/* A list may give the same food twice: with one of its lines the voice must agree, or with both. */
static bool listed_again(const struct checker *c, const struct listed *f)
{
    for (size_t i = 0; i < c->list->foods.count; i++) {
        const struct listed *other = &c->list->foods.at[i];
        if (other != f && of_dish(c, other) && text_equal(other->kind, f->kind))
            return true;
    }
    return false;
}

static void find_amounts_unlike(struct checker *c)
{
    for (size_t i = 0; i < c->list->foods.count; i++) {
        const struct listed *f = &c->list->foods.at[i];
        if (!of_dish(c, f) || !f->amount.amount.known || f->amount.vague || listed_again(c, f))
            continue;
        const struct ingredient *line = otherwise(c, f);
        if (line && listed_as(c, line) == f)
            REPORT(c, list_otherwise, subject_line(line), said_words(c->r, line->words), f->said,
                   line_number(c, f));
    }
}

void find_unlike_list(struct checker *c)
{
    if (!c->list || !has_section(c))
        return;
    find_not_heard(c);
    find_not_listed(c);
    find_amounts_unlike(c);
}
