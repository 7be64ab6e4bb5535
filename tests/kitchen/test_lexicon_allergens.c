/* tests/kitchen/test_lexicon_allergens.c: the lexicon's foods that are marked as milk, egg, fish or
 * shellfish have a row in allergens.tsv, so that a newly listed food does not go without.
 * SPDX-License-Identifier: MIT */
#include "kitchen/open.h"

#define FLOOR 97 /* per cent; a new food may come a day before its row */

static bool has_row(const struct kitchen *k, struct text name)
{
    size_t n;
    if (food_name_in(&k->foods, &k->allergens.names, name, &n))
        return true;
    const struct food_name *known = food_find(&k->foods, name);
    return known && known->fit == FIT_SAME
           && food_name_in(&k->foods, &k->allergens.names, known->food->name, &n);
}

static void test_foods(void **state)
{
    struct open_kitchen *o = *state;
    size_t count, marked = 0, found = 0;
    const struct entry *entries = pack_entries(o->pack, &count);
    uint64_t marks = MARK_OF(dairy) | MARK_OF(egg) | MARK_OF(fish) | MARK_OF(shellfish);
    for (size_t i = 0; i < count; i++) {
        const struct entry *e = &entries[i];
        if (e->tag != TAG_FOOD || !(e->marks & marks) || (e->marks & MARK_OF(plural)))
            continue;
        marked++;
        if (has_row(o->kitchen, entry_words(e)) || has_row(o->kitchen, entry_value(e)))
            found++;
        else
            print_message("  no allergen row: %.*s (%.*s)\n", TEXT(entry_words(e)),
                          TEXT(entry_value(e)));
    }
    print_message(
        "figure: %zu of %zu foods marked as milk, egg, fish or shellfish have allergens\n", found,
        marked);
    assert_true(marked > 100);
    assert_true(found * 100 >= marked * FLOOR);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(test_foods)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
