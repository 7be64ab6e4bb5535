/* kitchen/title_fits.c: whether a row of title-rules.tsv fits a dish.
 * SPDX-License-Identifier: MIT */
#include "kitchen/naming.h"

bool ends_with_words(struct text whole, struct text end)
{
    if (whole.length <= end.length)
        return text_equal(whole, end);
    if (end.length && whole.at[whole.length - 1] != end.at[end.length - 1])
        return false; /* as nearly all */
    size_t begin = whole.length - end.length;
    return whole.at[begin - 1] == ' ' && text_equal(text_slice(whole, begin, whole.length), end);
}

static bool is_called(const struct told *t, struct text word)
{
    return ends_with_words(t->words, word) || ends_with_words(t->kind, word)
           || (t->food && text_equal(t->food->group, word));
}

bool is_one_of(const struct told *t, const struct title_choices *choices)
{
    uint64_t marks = t->line->entry ? t->line->entry->marks : 0;
    for (size_t i = 0; i < choices->count; i++) {
        const struct title_choice *c = &choices->at[i];
        if (marks & c->mark || (t->ends & text_end_bit(c->word) && is_called(t, c->word)))
            return true;
    }
    return false;
}

/* Whether there are as many grams among the foods as are asked for, or any. */
static bool has_among(const struct naming *n, const struct title_choices *choices)
{
    double grams = 0;
    for (size_t i = 0; i < n->foods.count; i++) {
        const struct told *t = &n->foods.at[i];
        if (t->line->role == ROLE_INGREDIENT && t->grams > 0 && is_one_of(t, choices)) {
            grams += t->grams;
            if (grams >= choices->grams)
                return true;
        }
    }
    return false;
}

static bool foods_fit(const struct naming *n)
{
    for (size_t i = 0; i < n->rule->foods.count; i++)
        if (!has_among(n, &n->rule->foods.at[i]))
            return false;
    return true;
}

/* Whether there is none, or less than the grams given, of what the row must be without. */
static bool lacks_foods(const struct naming *n)
{
    for (size_t i = 0; i < n->rule->without.count; i++)
        if (has_among(n, &n->rule->without.at[i]))
            return false;
    return true;
}

static bool does_one_of(const struct naming *n, const struct title_choices *choices)
{
    for (size_t i = 0; i < choices->count; i++)
        for (size_t j = 0; j < n->deeds.count; j++)
            if (n->deeds.at[j].marks & choices->at[i].mark
                || text_equal(n->deeds.at[j].action, choices->at[i].word))
                return true;
    return false;
}

/* "Loaf tin" is one of "a greased loaf tin". */
static bool uses_one_of(const struct naming *n, const struct title_choices *choices)
{
    for (size_t i = 0; i < choices->count; i++)
        for (size_t j = 0; j < n->vessels.count; j++)
            if (ends_with_words(n->vessels.at[j], choices->at[i].word))
                return true;
    return false;
}

/* Whether each of the conditions has a choice of which `holds` is true. */
static bool all_hold(const struct naming *n, const condition_list *conditions,
                     bool (*holds)(const struct naming *, const struct title_choices *))
{
    for (size_t i = 0; i < conditions->count; i++)
        if (!holds(n, &conditions->at[i]))
            return false;
    return true;
}

bool rule_fits(const struct naming *n)
{
    const struct title_rule *rule = n->rule;
    struct text said = n->said.kind;
    if (rule->said.length
        && !(said.length && (text_is(rule->said, "*") || text_has_part(rule->said, '|', said))))
        return false;
    if (rule->heat.length && text_is(rule->heat, "yes") != n->cooks)
        return false;
    return all_hold(n, &rule->actions, does_one_of) && all_hold(n, &rule->vessels, uses_one_of)
           && !does_one_of(n, &rule->undone) && foods_fit(n) && lacks_foods(n);
}
