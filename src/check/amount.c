/* check/amount.c: how many of one unit an amount in another is.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

/* The size of a unit in milliliters, grams or its own; `*dimension` says which. 0 for an unknown
 * one. */
static double unit_size(const struct checker *c, struct text unit, struct text *dimension)
{
    const struct table *t = pack_table(c->k, "units");
    size_t row = t ? table_find(t, unit) : 0;
    if (t && row < t->rows) {
        struct text factor = table_cell(t, row, 3);
        *dimension = table_cell(t, row, 1);
        return ratio_double(ratio_read(factor.at, factor.length));
    }
    *dimension = unit;
    return 1;
}

double amount_in(const struct checker *c, const struct amount *amount, struct text said_unit,
                 struct text unit)
{
    struct text dimension, wanted;
    double from = unit_size(c, said_unit, &dimension), to = unit_size(c, unit, &wanted);
    if (!amount->known || !text_equal(dimension, wanted) || !(from > 0) || !(to > 0))
        return -1;
    return ratio_double(amount->min) * from / to;
}
