/* words/listing.c
 * SPDX-License-Identifier: MIT */
#include "words/listing.h"

static unsigned char tag_at(const struct endings *e, size_t unit)
{
    return unit < e->units.count ? e->units.at[unit].tag : (unsigned char) TAG_OTHER;
}

/* A number has such words, "and" too: "one and a half". */
static const bool COUNTS[TAG_CODES] = {
    [TAG_NUMBER] = true,  [TAG_ONES] = true,     [TAG_TEENS] = true,    [TAG_TENS] = true,
    [TAG_HUNDRED] = true, [TAG_THOUSAND] = true, [TAG_FRACTION] = true, [TAG_DOZEN] = true,
    [TAG_ARTICLE] = true, [TAG_AND] = true,      [TAG_HEDGE] = true};

static bool measures(unsigned char tag)
{
    return tag == TAG_UNIT || tag == TAG_COUNTER || tag == TAG_CONTAINER || tag == TAG_LENGTH;
}

static bool describes(unsigned char tag)
{
    return tag == TAG_STATE || tag == TAG_SIZE || tag == TAG_DONE;
}

/* The first unit of the amount that ends with unit `last`; `last` + 1 where that is none. */
static size_t amount_begin(const struct endings *e, size_t first, size_t last)
{
    size_t begin = last;
    if (!measures(tag_at(e, last)))
        return last + 1;
    while (begin > first && COUNTS[tag_at(e, begin - 1)])
        begin--;
    if (begin < last && tag_at(e, begin) == TAG_AND)
        begin++;
    return begin < last ? begin : last + 1;
}

/* The first unit of the food that ends with unit `last`; `last` + 1 where that is none. */
static size_t food_begin(const struct endings *e, size_t first, size_t last)
{
    size_t begin = last;
    if (tag_at(e, last) != TAG_FOOD)
        return last + 1;
    while (begin > first && describes(tag_at(e, begin - 1)))
        begin--;
    return begin;
}

/* Whether the list that goes on before unit `begin`, where an amount begins, begins with an amount.
 */
static bool begins_with_amount(const struct endings *e, size_t first, size_t begin)
{
    while (begin > first) {
        size_t food, amount = amount_begin(e, first, begin - 1);
        if (amount < begin) { /* "milk one tin, twelve ounces": the size of it */
            begin = amount;
            continue;
        }
        food = food_begin(e, first, begin - 1);
        if (food == begin)
            return true;
        if (food > first && tag_at(e, food - 1) == TAG_OF)
            return true; /* "225 grams of butter": no food has its amount behind it there */
        if (e->units.at[begin - 1].kinds)
            return true; /* "then the spices half a teaspoon | turmeric" */
        if (food == first || (amount = amount_begin(e, first, food - 1)) == food)
            return false;
        begin = amount;
    }
    return true;
}

/* The last unit of the food that begins with unit `i`, or of the amount; `i` - 1 for none. */
static size_t food_end(const struct endings *e, size_t i)
{
    size_t end = i;
    while (describes(tag_at(e, end)))
        end++;
    return tag_at(e, end) == TAG_FOOD ? end : i - 1;
}

static size_t amount_end(const struct endings *e, size_t i)
{
    size_t end = i;
    while (COUNTS[tag_at(e, end)])
        end++;
    return end > i && measures(tag_at(e, end)) ? end : i - 1;
}

/* Whether the list that goes on with the food at unit `i` ends with an amount. */
static bool ends_with_amount(const struct endings *e, size_t i)
{
    for (;;) {
        size_t food = food_end(e, i), amount = amount_end(e, food + 1);
        if (food < i || amount == food || tag_at(e, amount + 1) == TAG_OF)
            return false;
        if (food_end(e, amount + 1) == amount)
            return true;
        i = amount + 1;
    }
}

/* Behind an amount. */
static enum listing behind_amount(const struct endings *e, size_t first, size_t begin, size_t last)
{
    const size_t second = amount_end(e, last + 1);
    bool amount = begins_with_amount(e, first, begin);
    if (second > last
        && food_end(e, second + 1) > second) /* "water two cups | half a cup of oil" */
        return amount ? LISTING_UNSURE : LISTING_ENDS;
    if (food_end(e, last + 1) == last || amount == ends_with_amount(e, last + 1))
        return LISTING_UNSURE; /* an amount too many, or a food */
    return amount ? LISTING_GOES_ON : LISTING_ENDS;
}

/* Behind a food with an amount behind it. */
static enum listing behind_food(const struct endings *e, size_t first, size_t begin, size_t last)
{
    const size_t amount = amount_end(e, last + 1);
    if (amount == last || tag_at(e, amount + 1) == TAG_OF)
        return LISTING_UNSURE;
    const size_t before = begin > first ? amount_begin(e, first, begin - 1) : begin;
    if (before < begin && begins_with_amount(e, first, before))
        return LISTING_UNSURE;
    const size_t food = food_end(e, amount + 1), next = amount_end(e, amount + 1);
    bool own = food == amount || next > amount || ends_with_amount(e, amount + 1);
    return own ? LISTING_GOES_ON : LISTING_UNSURE;
}

enum listing listing_at(const struct endings *e, size_t first, size_t unit)
{
    size_t amount = amount_begin(e, first, unit), food = food_begin(e, first, unit);
    if (amount <= unit)
        return behind_amount(e, first, amount, unit);
    return food <= unit ? behind_food(e, first, food, unit) : LISTING_UNSURE;
}
