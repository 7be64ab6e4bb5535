/* kitchen/nutrition.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/nutrition.h"

#include <math.h>

#include "kitchen/print.h"
#include "kitchen/weight.h"

struct tally {
    double nutrients[NUTRIENTS], covered, weighed;
    size_t weighed_lines, unweighed_lines;
};

static void tally_line(const struct kitchen *k, const struct ingredient *line, struct tally *t)
{
    if (line->role == ROLE_SERVE_WITH || (!line->weight.known && !line->amount.known))
        return;
    if (!line->weight.known) {
        t->unweighed_lines++;
        return;
    }
    double grams = (line->weight.min + line->weight.max) / 2;
    const struct food *food = weighed_as(k, line);
    t->weighed += grams;
    t->weighed_lines++;
    if (!food)
        return;
    t->covered += grams;
    for (size_t i = 0; i < NUTRIENTS; i++)
        t->nutrients[i] += grams / 100 * food->per_100g[i];
}

static struct nutrition no_estimate(struct text why, double share)
{
    struct nutrition n = {.known = false, .share = share, .about = why};
    for (size_t i = 0; i < NUTRIENTS; i++)
        n.of_serving[i] = NAN;
    return n;
}

static struct ratio servings_of(const struct yield *yield)
{
    if (!yield->known || !text_is(yield->of, "serving") || !ratio_finite(yield->max))
        return RATIO_NONE;
    return ratio_multiply(ratio_add(yield->min, yield->max), ratio_make(1, 2));
}

struct nutrition estimate_nutrition(const struct kitchen *k, struct arena *a,
                                    const struct dish *dish)
{
    struct tally t = {.covered = 0};
    struct ratio servings = servings_of(&dish->yield);
    if (!ratio_finite(servings) || servings.over <= 0)
        return no_estimate(PHRASE_PLAIN(k, a, no_servings), 0);
    for (size_t i = 0; i < dish->ingredients.count; i++)
        tally_line(k, &dish->ingredients.at[i], &t);
    double average = t.weighed_lines ? t.weighed / (double) t.weighed_lines : 0;
    double all = t.weighed + average * (double) t.unweighed_lines;
    double share = all > 0 && isfinite(all) ? t.covered / all : 0;
    struct text percent = arena_format(a, "%.0f", floor(share * 100));
    if (!(share > NUTRITION_SHARE))
        return no_estimate(PHRASE_TEXT(k, a, no_share, percent), share);
    struct nutrition n = {.known = true, .share = share, .servings = servings};
    for (size_t i = 0; i < NUTRIENTS; i++)
        n.of_serving[i] = t.nutrients[i] / ratio_double(servings);
    n.about = PHRASE_TEXT(k, a, estimate, percent, print_number(a, servings, false),
                          TEXT_OF("USDA SR28 (2015)"));
    return n;
}
