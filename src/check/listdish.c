/* check/listdish.c
 * SPDX-License-Identifier: MIT */
#include "check/listdish.h"

/* How many words of a dish's title the heading has, in hundredths of all words of both. */
static size_t likeness(const struct recording *lines, struct span heading, struct text title)
{
    size_t shared = 0, of_title = 0, words = heading.last - heading.first + 1;
    struct text part;
    while (title.length && text_part(&title, ' ', &part)) {
        char folded[64];
        bool there = false;
        if (part.length * 3 > sizeof folded)
            continue;
        struct text key = {folded, fold_word(part, folded, sizeof folded)};
        of_title++;
        for (size_t i = heading.first; i <= heading.last; i++)
            there |= text_equal(lines->words.at[i].key, key);
        shared += there;
    }
    size_t all = words + of_title - shared;
    return all ? 100 * shared / all : 0;
}

#define LIKE_TITLE 50 /* a heading that is less like a title is none of it */

size_t dish_titled(const struct recording *lines, struct span heading, const struct recording *talk)
{
    size_t best = FINDING_NO_DISH, most = LIKE_TITLE - 1;
    for (size_t i = 0; i < talk->dishes.count; i++) {
        size_t like = likeness(lines, heading, talk->dishes.at[i].title);
        if (like > most) {
            most = like;
            best = i;
        }
    }
    return best;
}

/* "flour" of "plain flour": the words that the longer name ends in. */
static bool ends_in(struct text name, struct text end)
{
    return name.length > end.length && end.length
           && text_equal(text_slice(name, name.length - end.length, name.length), end)
           && name.at[name.length - end.length - 1] == ' ';
}

int foods_alike(struct text kind, struct text food, struct text other_kind, struct text other_food)
{
    if (text_equal(kind, other_kind) || text_equal(food, other_food))
        return 2;
    return ends_in(food, other_food) || ends_in(other_food, food) || ends_in(kind, other_kind)
           || ends_in(other_kind, kind);
}

static size_t foods_heard(const struct ingredient_list *list, size_t section, const struct dish *d)
{
    size_t heard = 0;
    for (size_t i = 0; i < list->foods.count; i++) {
        const struct listed *f = &list->foods.at[i];
        bool there = false;
        for (size_t n = 0; n < d->ingredients.count && !there && f->section == section; n++)
            there =
                foods_alike(f->kind, f->food, d->ingredients.at[n].kind, d->ingredients.at[n].food);
        heard += there;
    }
    return heard;
}

/* The dish that has most of the section's foods; FINDING_NO_DISH where none has any. */
static size_t dish_of_foods(const struct ingredient_list *list, const struct recording *talk,
                            size_t section)
{
    size_t best = FINDING_NO_DISH, most = 0;
    for (size_t i = 0; i < talk->dishes.count; i++) {
        size_t heard = foods_heard(list, section, &talk->dishes.at[i]);
        if (heard > most) {
            most = heard;
            best = i;
        }
    }
    return best;
}

/* A heading that is no dish's title ("For the sauce") goes on with the dish before it, unless
 * another has more than twice as many of its foods. */
static size_t dish_of_section(const struct ingredient_list *list, const struct recording *talk,
                              size_t section, size_t before)
{
    size_t likest = dish_of_foods(list, talk, section);
    if (before == FINDING_NO_DISH || likest == FINDING_NO_DISH)
        return before == FINDING_NO_DISH ? likest : before;
    return foods_heard(list, section, &talk->dishes.at[likest])
                   > 2 * foods_heard(list, section, &talk->dishes.at[before])
               ? likest
               : before;
}

void place_sections(struct ingredient_list *list, const struct recording *talk)
{
    size_t before = FINDING_NO_DISH;
    for (size_t i = 0; i < list->sections.count; i++) {
        struct list_section *s = &list->sections.at[i];
        if (s->dish == FINDING_NO_DISH)
            s->dish = dish_of_section(list, talk, i, before);
        before = s->dish;
    }
}
