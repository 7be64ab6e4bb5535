/* check/undercooked.c: rules that need no words: an inside temperature below the published one, or
 * none heard of what is cooked by dry heat, or for long.
 * SPDX-License-Identifier: MIT */
#include "check/hazard.h"
#include "check/holds.h"
#include "check/inside.h"

static void check_low(struct checker *c, const struct safety_rule *rule)
{
    struct text publication = TEXT_EMPTY;
    const struct temperature *t = inside_most(c->dish);
    struct ratio least = rule_published(c, rule_cell(rule, RULE_SOURCE), &publication);
    if (!t || !ratio_finite(least) || other_animal(c, rule_cell(rule, RULE_FOODS), t->words.first)
        || ratio_compare(ratio_add(fahrenheit(t), RATIO(1)), least) >= 0)
        return;
    if (rule_told_at(c, rule, t->at))
        return;
    struct text said = said_words(c->r, t->words);
    report_rule(c, rule, (struct subject_of){t->at, t->words, said}, said);
}

/* "Lid on low, six hours", "that's her for fifty minutes": no verb says that it cooks. */
#define COOKS_SECONDS (20 * 60)
static bool cooks_long(const struct checker *c, const struct step *s)
{
    struct span where;
    if ((!said_with(c, "cooks_on", s->words)
         && !said_find(&c->sayings, c->r, "cooks_on", s->words, &where))
        || said_with(c, "fridge", s->words) || step_marks(c, s) & (MARK_OF(waits) | MARK_OF(cold)))
        return false;
    for (size_t i = 0; i < s->durations.count; i++)
        if (s->durations.at[i].min >= COOKS_SECONDS)
            return true;
    return false;
}

/* The last step that cooks by dry heat, which browns the outside long before the middle is done, or
 * for so long that it cooks; NULL: none does, or it is simmered, which is left alone. */
static const struct step *cooked_in(const struct checker *c)
{
    const struct step *last = NULL, *longest = NULL;
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        uint64_t marks = step_marks(c, s);
        if (marks & MARK_OF(boils))
            return NULL;
        if (marks & (MARK_OF(ovens) | MARK_OF(grills) | MARK_OF(fries)))
            last = s;
        if (cooks_long(c, s))
            longest = s;
    }
    return last ? last : longest;
}

static void check_none(struct checker *c, const struct safety_rule *rule,
                       const struct ingredient *food)
{
    const struct step *s = cooked_in(c);
    if (!s || checked_beside(c, rule_cell(rule, RULE_FOODS)) || inside_said(c)
        || cooked_before(c, rule_cell(rule, RULE_FOODS)) || rule_told(c, rule))
        return;
    struct subject_of what = subject_step(c->r, s);
    what.about = food->kind;
    report_rule(c, rule, what, TEXT_EMPTY);
}

bool checked_alone(struct checker *c, const struct safety_rule *rule)
{
    const bool low = text_is(rule_cell(rule, RULE_SAID), "low");
    if (!low && !text_is(rule_cell(rule, RULE_SAID), "none"))
        return false;
    const struct ingredient *food = food_of(c, c->dish, rule_cell(rule, RULE_FOODS));
    if (food && low)
        check_low(c, rule);
    else if (food)
        check_none(c, rule, food);
    return true;
}
