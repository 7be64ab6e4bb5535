/* kitchen/scale.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/scale.h"

#include <math.h>

#include "kitchen/print.h"
#include "kitchen/weight.h"

static const struct place nowhere = {NULL, 0, 0};

bool scale_to_yield(const struct yield *yield, struct ratio wanted, struct text of,
                    struct ratio *factor, struct problems *p)
{
    if (!yield->known || !ratio_finite(yield->min))
        return problem(p, nowhere,
                       "no yield was heard for this dish, so it can only be scaled by a factor");
    if (of.length && !text_equal(of, yield->of))
        return problem(p, nowhere, "the dish's yield is counted in \"%.*s\", not in \"%.*s\"",
                       TEXT(yield->of), TEXT(of));
    if (!ratio_finite(wanted) || wanted.over <= 0)
        return problem(p, nowhere, "the wanted yield must be a number above 0");
    struct ratio top = ratio_finite(yield->max) ? yield->max : yield->min;
    struct ratio middle = ratio_multiply(ratio_add(yield->min, top), ratio_make(1, 2));
    struct ratio times = ratio_divide(wanted, middle);
    if (!ratio_finite(times) || times.over <= 0)
        return problem(p, nowhere, "the yield that was heard is 0 or too large to scale by");
    *factor = times;
    return true;
}

static struct amount scaled(struct amount amount, struct ratio factor)
{
    amount.min = ratio_multiply(amount.min, factor);
    amount.max = ratio_multiply(amount.max, factor);
    return amount;
}

static bool can_scale(const struct amount *amount, struct ratio factor)
{
    struct amount more = scaled(*amount, factor);
    return !amount->known || (ratio_finite(more.min) && ratio_known(more.max));
}

static bool check_factor(const struct dish *dish, struct ratio factor, struct problems *p)
{
    if (!ratio_finite(factor) || factor.over <= 0)
        return problem(p, nowhere, "the factor must be a number above 0");
    if (ratio_compare(factor, RATIO(SCALE_MOST)) > 0
        || ratio_compare(factor, ratio_make(1, SCALE_MOST)) < 0)
        return problem(p, nowhere, "the factor must be between 1/%d and %d", SCALE_MOST,
                       SCALE_MOST);
    for (size_t i = 0; i < dish->ingredients.count; i++)
        if (!can_scale(&dish->ingredients.at[i].amount, factor))
            return problem(p, nowhere, "the amount of %.*s becomes too large",
                           TEXT(dish->ingredients.at[i].food));
    return true;
}

static void scale_line(struct ingredient *line, struct ratio factor)
{
    if (line->amount.known)
        line->amount = scaled(line->amount, factor);
    if (line->weight.known) {
        line->weight.min *= ratio_double(factor);
        line->weight.max *= ratio_double(factor);
    }
}

static void scale_shopping(struct shopping_line *line, struct ratio factor)
{
    if (line->amount.known)
        line->amount = scaled(line->amount, factor);
    for (size_t i = 0; i < line->parts.count; i++)
        line->parts.at[i].amount = scaled(line->parts.at[i].amount, factor);
}

static bool rule_applies(const struct scale_rule *rule, struct ratio factor)
{
    if (ratio_equal(factor, RATIO(1)) || rule->whole)
        return false;
    return ratio_compare(factor, rule->from) >= 0 || ratio_compare(factor, rule->to) <= 0;
}

static bool rule_is_of_line(const struct kitchen *k, const struct scale_rule *rule,
                            const struct ingredient *line)
{
    if (text_is(rule->by, "mark"))
        return entry_has_mark(line->entry, rule->what);
    if (!text_is(rule->by, "food"))
        return false;
    const struct food *food = weighed_as(k, line);
    return text_equal(rule->what, line->food) || (food && text_equal(rule->what, food->name));
}

static bool rule_is_of_step(const struct scale_rule *rule, const struct step *step)
{
    for (size_t i = 0; text_is(rule->by, "action") && i < step->actions.count; i++)
        if (text_equal(rule->what, step->actions.at[i]))
            return true;
    return false;
}

/* The note of these words: rules may share them, and it is said once. */
static struct scale_note *note_for(struct arena *a, scale_note_list *notes, struct text words)
{
    for (size_t i = 0; i < notes->count; i++)
        if (text_equal(notes->at[i].note, words))
            return &notes->at[i];
    struct scale_note *made = LIST_ADD(a, notes);
    made->note = words;
    return made;
}

static void add_id(struct arena *a, id_list *ids, size_t id)
{
    for (size_t i = 0; i < ids->count; i++)
        if (ids->at[i] == id)
            return;
    *LIST_ADD(a, ids) = id;
}

static void apply_rule(const struct kitchen *k, struct arena *a, const struct dish *dish,
                       const struct scale_rule *rule, struct text words, scale_note_list *notes)
{
    if (text_is(rule->by, "always"))
        note_for(a, notes, words);
    for (size_t i = 0; i < dish->ingredients.count; i++)
        if (rule_is_of_line(k, rule, &dish->ingredients.at[i]))
            add_id(a, &note_for(a, notes, words)->because, dish->ingredients.at[i].id);
    for (size_t i = 0; i < dish->steps.count; i++)
        if (rule_is_of_step(rule, &dish->steps.at[i]))
            add_id(a, &note_for(a, notes, words)->because, dish->steps.at[i].id);
}

/* "1½ eggs" cannot be cracked: how many to beat. */
static void note_whole(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                       scale_note_list *notes)
{
    if (!line->amount.known || line->amount.unit.length || !ratio_finite(line->amount.max)
        || line->amount.max.under == 1)
        return;
    for (size_t i = 0; i < k->scale_rules.count; i++) {
        const struct scale_rule *rule = &k->scale_rules.at[i];
        if (!rule->whole || !rule_is_of_line(k, rule, line))
            continue;
        struct ratio next = ratio_add(ratio_floor(line->amount.max, RATIO(1)), RATIO(1));
        struct text count = print_number(a, next, false);
        add_id(a, &note_for(a, notes, fill_blanks(a, rule->note, &count, 1))->because, line->id);
        return;
    }
}

static void make_notes(const struct kitchen *k, struct arena *a, const struct dish *dish,
                       struct ratio factor, scale_note_list *notes)
{
    struct text blanks[] = {print_number(a, factor, false),
                            arena_format(a, "%.2g", sqrt(ratio_double(factor)))};
    for (size_t i = 0; i < k->scale_rules.count; i++)
        if (rule_applies(&k->scale_rules.at[i], factor))
            apply_rule(k, a, dish, &k->scale_rules.at[i],
                       fill_blanks(a, k->scale_rules.at[i].note, blanks, 2), notes);
    for (size_t i = 0; i < dish->ingredients.count; i++)
        note_whole(k, a, &dish->ingredients.at[i], notes);
}

bool scale_dish(const struct kitchen *k, struct arena *a, struct dish *dish, struct ratio factor,
                scale_note_list *notes, struct problems *p)
{
    if (!check_factor(dish, factor, p))
        return false;
    for (size_t i = 0; i < dish->ingredients.count; i++)
        scale_line(&dish->ingredients.at[i], factor);
    for (size_t i = 0; i < dish->shopping.count; i++)
        scale_shopping(&dish->shopping.at[i], factor);
    if (dish->yield.known) {
        dish->yield.min = ratio_multiply(dish->yield.min, factor);
        dish->yield.max = ratio_multiply(dish->yield.max, factor);
    }
    if (notes)
        make_notes(k, a, dish, factor, notes);
    return true;
}
