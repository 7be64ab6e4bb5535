/* kitchen/title_fill.c: the foods that a title names, and its words.
 * SPDX-License-Identifier: MIT */
#include "kitchen/naming.h"

#include "kitchen/plural.h"

/* A second food is in the title when the dish is about it so much, beside the first. */
#define SECOND_SHARE 0.4
/* What goes into a sauce, or on top at the end, says less about the dish. */
#define GROUP_SHARE 0.3
#define GARNISH_SHARE 0.2
/* "The fish", where trout stands beside it, is the trout. */
#define GENERIC_SHARE 0.3
/* Grams of a food that says much: with less of everything a dish is about nothing. */
#define ABOUT_LEAST 5.0
/* The cook's own word is filled up by no less: 150 g of a vegetable, 50 g of meat. */
#define ABOUT_CLEARLY 150.0

/* A food of the dish and how much the dish is about it. */
struct topic {
    const struct ingredient *line; /* the first of it; NULL: none */
    struct text shown;
    double about;
};

/* "Pepper" and "red pepper": never both in a title. */
static bool is_same_food(struct text a, struct text b)
{
    return text_equal(a, b) || text_has_part(a, ' ', b) || text_has_part(b, ' ', a);
}

static double about_food(const struct naming *n, const struct told *t)
{
    double share = t->line->role == ROLE_GARNISH ? GARNISH_SHARE
                   : t->line->group.length       ? GROUP_SHARE
                                                 : 1;
    if (t->line->role == ROLE_SERVE_WITH || is_one_of(t, &n->rule->unnamed))
        return 0;
    if (t->line->entry && t->line->entry->marks & MARK_OF(generic))
        share *= GENERIC_SHARE;
    return (n->rule->sweet ? t->as->sweet : t->as->savory) * share * t->grams;
}

/* "Potato" for "yukon gold potato". */
static struct text plain_food(const struct ingredient *line)
{
    return line->kind.length && ends_with_words(line->food, line->kind) ? line->kind : line->food;
}

static struct text shown_food(const struct told *t)
{
    return t->as->shown.length ? t->as->shown : plain_food(t->line);
}

/* The food of line `i` with all its later lines. */
static struct topic topic_at(const struct naming *n, size_t i)
{
    const struct told *all = n->foods.at;
    struct topic t = {all[i].line, shown_food(&all[i]), all[i].about};
    for (size_t j = i + 1; t.about > 0 && j < n->foods.count; j++)
        if (all[j].about > 0 && is_same_food(t.shown, shown_food(&all[j])))
            t.about += all[j].about;
    return t;
}

/* The food that the dish is most about, but for `but`. */
static struct topic main_topic(const struct naming *n, const struct topic *but)
{
    struct topic best = {NULL, TEXT_EMPTY, n->said.kind.length ? ABOUT_CLEARLY : ABOUT_LEAST};
    for (size_t i = 0; i < n->foods.count; i++) {
        struct topic t = topic_at(n, i);
        if (t.about > best.about && !(but && is_same_food(t.shown, but->shown)))
            best = t;
    }
    return best;
}

static struct text topic_counted(const struct naming *n, const struct topic *t)
{
    struct text counted =
        t->line ? food_counted(n->k, n->a, t->line, &t->line->amount) : TEXT_EMPTY;
    return t->line && !text_equal(counted, t->line->food)
                   && ends_with_words(t->line->food, t->shown)
               ? plural_of(n->k->pack, n->a, t->shown)
               : t->shown;
}

/* "Toor dal dal": a food whose name ends as the title goes on. */
static struct text without_doubles(struct arena *a, struct text title)
{
    struct text done = TEXT_EMPTY, last = TEXT_EMPTY, word;
    while (title.length && text_part(&title, ' ', &word)) {
        if (!text_equal(word, last))
            done = arena_format(a, "%.*s%s%.*s", TEXT(done), done.length ? " " : "", TEXT(word));
        last = word;
    }
    return done;
}

struct text fill_title(const struct naming *n)
{
    for (size_t i = 0; i < n->foods.count; i++)
        n->foods.at[i].about = about_food(n, &n->foods.at[i]);
    struct topic one = main_topic(n, NULL), two = main_topic(n, &one);
    size_t foods = !one.line ? 0 : two.line && two.about >= SECOND_SHARE * one.about ? 2 : 1;
    if (n->named && foods)
        foods = 1;
    while (foods && !n->rule->titles[foods].length)
        foods--;
    const struct text blanks[] = {one.shown, two.shown, n->said.words, topic_counted(n, &one),
                                  topic_counted(n, &two)};
    return without_doubles(
        n->a, fill_blanks(n->a, n->rule->titles[foods], blanks, sizeof blanks / sizeof *blanks));
}
