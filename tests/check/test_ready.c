/* check/test_ready.c: what is listened for in checks and for misheard words: ready-made, it is what
 * is made of the pack's tables.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <string.h>

#include <cmocka.h>

#include "check/saying.h"
#include "tag/ear.h"

#define SAME(a, b, member) assert_memory_equal(&(a)->member, &(b)->member, sizeof(a)->member)

static void same_text(struct text a, struct text b)
{
    if (!text_equal(a, b))
        fail_msg("\"%.*s\" is not \"%.*s\"", TEXT(a), TEXT(b));
}

static void same_texts(const token_texts *a, const token_texts *b)
{
    assert_int_equal(a->count, b->count);
    for (size_t i = 0; i < a->count; i++)
        same_text(a->at[i], b->at[i]);
}

static void same_token(const struct token *a, const struct token *b)
{
    SAME(a, b, tags);
    same_texts(&a->words, &b->words);
    same_texts(&a->values, &b->values);
    assert_int_equal(a->word_shapes, b->word_shapes);
    assert_int_equal(a->value_shapes, b->value_shapes);
    assert_int_equal(a->start, b->start);
    assert_int_equal(a->end, b->end);
}

static void same_fits_texts(const struct fits_texts *a, const struct fits_texts *b)
{
    assert_true(a->list.count > 0);
    assert_int_equal(a->list.count, b->list.count);
    assert_int_equal(a->room, b->room);
    assert_int_equal(a->shapes, b->shapes);
    assert_memory_equal(a->slots, b->slots, a->room * sizeof *a->slots);
    for (size_t i = 0; i < a->list.count; i++) {
        same_text(a->list.at[i].text, b->list.at[i].text);
        SAME(&a->list.at[i], &b->list.at[i], places);
    }
}

static void same_fits(const struct fits *a, const struct fits *b)
{
    SAME(a, b, tags);
    same_fits_texts(&a->words, &b->words);
    same_fits_texts(&a->values, &b->values);
}

static void same_saying(const struct saying *a, const struct saying *b)
{
    same_text(a->set, b->set);
    assert_int_equal(a->number, b->number);
    assert_int_equal(a->count, b->count);
    for (size_t i = 0; i < a->count; i++) {
        assert_int_equal(!a->places[i], !b->places[i]);
        if (a->places[i])
            same_token(a->places[i], b->places[i]);
    }
}

static void same_sayings(const struct saying_list *a, const struct saying_list *b)
{
    assert_ptr_equal(a->table, b->table);
    assert_true(a->all.count > 0);
    assert_int_equal(a->all.count, b->all.count);
    for (size_t i = 0; i < a->all.count; i++)
        same_saying(&a->all.at[i], &b->all.at[i]);
    assert_int_equal(a->sets.count, b->sets.count);
    for (size_t i = 0; i < a->sets.count; i++) {
        same_text(a->sets.at[i].name, b->sets.at[i].name);
        assert_int_equal(a->sets.at[i].first, b->sets.at[i].first);
        assert_int_equal(a->sets.at[i].end, b->sets.at[i].end);
        assert_int_equal(a->sets.at[i].anything, b->sets.at[i].anything);
    }
    same_fits(&a->begins, &b->begins);
}

static void sayings_are_what_is_made(void **state)
{
    struct problems p = {0};
    struct saying_list *made = saying_list_new(*state, &p), *built = saying_list_builtin(*state);
    assert_non_null(made);
    assert_non_null(built);
    same_sayings(made, built);
    saying_list_free(made);
    saying_list_free(built);
    problems_release(&p);
}

static void same_slot(const struct hearing_slot *a, const struct hearing_slot *b)
{
    assert_int_equal(a->before_count, b->before_count);
    assert_int_equal(a->after_count, b->after_count);
    for (size_t i = 0; i < a->before_count; i++)
        same_token(&a->before[i], &b->before[i]);
    for (size_t i = 0; i < a->after_count; i++)
        same_token(&a->after[i], &b->after[i]);
    SAME(a, b, expects);
    assert_int_equal(a->marks, b->marks);
    assert_int_equal(a->trust, b->trust);
    assert_int_equal(a->sure, b->sure);
    assert_int_equal(a->nouns, b->nouns);
    assert_int_equal(a->always, b->always);
    assert_int_equal(a->again, b->again);
    assert_int_equal(a->strong, b->strong);
}

static void same_ear(const struct ear *a, const struct ear *b)
{
    size_t foods;
    pack_pronounced(a->k, TAG_FOOD, &foods);
    assert_ptr_equal(a->pairs, b->pairs);
    assert_true(a->ready && b->ready);
    SAME(a, b, heads);
    SAME(a, b, sounds);
    assert_true(a->slots.count > 0);
    assert_int_equal(a->slots.count, b->slots.count);
    for (size_t i = 0; i < a->slots.count; i++)
        same_slot(&a->slots.at[i], &b->slots.at[i]);
    same_fits(&a->beside, &b->beside);
    SAME(a, b, again);
    SAME(a, b, open);
    SAME(a, b, closed);
    SAME(a, b, at_begin);
    SAME(a, b, at_end);
    SAME(a, b, wanted);
    SAME(a, b, long_names);
    assert_memory_equal(a->long_next, b->long_next, foods * sizeof *a->long_next);
}

static void ear_is_what_is_made(void **state)
{
    struct problems p = {0};
    struct ear *made = ear_made(*state, &p), *built = ear_builtin(*state);
    assert_non_null(made);
    assert_non_null(built);
    same_ear(made, built);
    ear_free(made);
    ear_free(built);
    problems_release(&p);
}

static int open_pack(void **state)
{
    *state = pack_builtin();
    return *state ? 0 : -1;
}

static int close_pack(void **state)
{
    pack_free(*state);
    return 0;
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(sayings_are_what_is_made),
                                       cmocka_unit_test(ear_is_what_is_made)};
    return cmocka_run_group_tests(tests, open_pack, close_pack);
}
