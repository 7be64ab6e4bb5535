/* check/inside.c
 * SPDX-License-Identifier: MIT */
#include "check/inside.h"

#include "check/holds.h"

struct ratio fahrenheit(const struct temperature *t)
{
    return t->unit == 'C' ? ratio_add(ratio_multiply(t->value, ratio_make(9, 5)), RATIO(32))
                          : t->value;
}

/* Nothing moist is hotter inside than boiling water: such a figure is the oven's. */
#define INSIDE_F_MOST 212

const struct temperature *inside_most(const struct dish *d)
{
    const struct temperature *most = NULL;
    for (size_t i = 0; i < d->steps.count; i++)
        for (size_t n = 0; n < d->steps.at[i].temperatures.count; n++) {
            const struct temperature *t = &d->steps.at[i].temperatures.at[n];
            if (text_is(t->of, "inside") && ratio_compare(fahrenheit(t), RATIO(INSIDE_F_MOST)) <= 0
                && (!most || ratio_compare(fahrenheit(t), fahrenheit(most)) > 0))
                most = t;
        }
    return most;
}

bool checked_beside(const struct checker *c, struct text foods)
{
    for (size_t i = c->number ? c->number - 1 : 0; i <= c->number + 1 && i < c->r->dishes.count;
         i++)
        if (inside_most(&c->r->dishes.at[i])
            && (i == c->number || food_of(c, &c->r->dishes.at[i], foods)))
            return true;
    return false;
}
