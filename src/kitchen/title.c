/* kitchen/title.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/title.h"

#include "kitchen/naming.h"
#include "kitchen/time.h"
#include "kitchen/weight.h"

/* Enough of a dish to tell what it is, so that time does not grow with the square of a long one. */
#define LINES_MOST 200
#define STEPS_MOST 200

static const struct title_food *title_food(const struct kitchen *k, const struct told *t)
{
    static const struct title_food none = {.shown = {"", 0}};
    for (size_t i = 0; i < k->titles.foods.count; i++) {
        const struct title_food *f = &k->titles.foods.at[i];
        if (!f->foods.count || is_one_of(t, &f->foods))
            return f;
    }
    return &none;
}

/* Grams, as good as a title needs them: what has no published weight is as heavy as water, or as
 * much as is usual. */
static double roughly_weighs(const struct naming *n, const struct told *t,
                             const struct profile *profile)
{
    struct weight w = weigh(n->k, n->a, profile, t->line, NULL);
    const struct amount *a = &t->line->amount;
    const struct unit *unit = unit_meant(unit_find(&n->k->units, a->unit), profile);
    if (w.known)
        return (w.min + w.max) / 2;
    if (!a->known || !ratio_finite(a->min) || !unit || unit->dimension != DIMENSION_VOLUME)
        return t->as->usual;
    return ratio_double(ratio_multiply(a->min, unit->factor));
}

static struct text folded(struct arena *a, struct text words)
{
    char room[FOLD_BYTES];
    return arena_text(a, name_fold(words, room));
}

static struct told tell(const struct naming *n, const struct profile *profile,
                        const struct ingredient *line)
{
    struct told t = {.line = line,
                     .words = folded(n->a, line->food),
                     .kind = folded(n->a, line->kind),
                     .food = weighed_as(n->k, line)};
    t.ends =
        text_end_bit(t.words) | text_end_bit(t.kind) | (t.food ? text_end_bit(t.food->group) : 0);
    t.as = title_food(n->k, &t);
    t.grams = roughly_weighs(n, &t, profile);
    return t;
}

static void add_deed(struct naming *n, struct text action)
{
    for (size_t i = 0; i < n->deeds.count; i++)
        if (text_equal(n->deeds.at[i].action, action))
            return;
    const struct entry *e = entry_as(pack_find(n->k->pack, action, NULL), TAG_ACTION);
    *LIST_ADD(n->a, &n->deeds) = (struct deed){action, e ? e->marks : 0};
}

static void add_vessel(struct naming *n, struct text vessel)
{
    for (size_t i = 0; i < n->vessels.count; i++)
        if (text_equal(n->vessels.at[i], vessel))
            return;
    *LIST_ADD(n->a, &n->vessels) = vessel;
}

/* "An hour at two hundred": baked, with no verb that says so. */
static void add_heat(struct naming *n, const struct temperature *t)
{
    if (!text_is(t->of, "oven"))
        return;
    n->cooks = true;
    *LIST_ADD(n->a, &n->deeds) = (struct deed){TEXT_EMPTY, MARK_OF(ovens) | MARK_OF(heats)};
}

static void tell_steps(struct naming *n)
{
    for (size_t i = 0; i < n->dish->steps.count && i < STEPS_MOST; i++) {
        const struct step *s = &n->dish->steps.at[i];
        for (size_t j = 0; j < s->actions.count; j++)
            add_deed(n, s->actions.at[j]);
        add_vessel(n, s->vessel);
        for (size_t j = 0; j < s->temperatures.count; j++)
            add_heat(n, &s->temperatures.at[j]);
    }
}

struct text make_title(const struct kitchen *k, struct arena *a, const struct profile *profile,
                       const struct dish *d, struct dish_word said, bool named)
{
    struct naming n = {
        .k = k, .a = a, .dish = d, .cooks = dish_cooks(k, d), .said = said, .named = named};
    for (size_t i = 0; i < d->ingredients.count && i < LINES_MOST; i++)
        *LIST_ADD(a, &n.foods) = tell(&n, profile, &d->ingredients.at[i]);
    tell_steps(&n);
    for (size_t i = 0; i < k->titles.rules.count; i++) {
        n.rule = &k->titles.rules.at[i];
        struct text title = rule_fits(&n) ? fill_title(&n) : TEXT_EMPTY;
        if (title.length)
            return title;
    }
    return TEXT_EMPTY;
}
