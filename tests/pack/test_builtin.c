/* pack/test_builtin.c: the pack that is built in is, byte for byte, the one that the loader makes
 * of grammars/ now; and an image can stand anywhere.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>

#include "disk/pack.h"
#include "pack/image.h"

#define FOLDER "grammars/en"
#define NAMES_MOST 200

/* "grammars/en/../common/units.tsv" -> "common/units.tsv", as names in the built-in pack are. */
static void built_name(const char *path, char out[NAMES_MOST])
{
    static const char common[] = FOLDER "/../";
    size_t cut = strncmp(path, common, strlen(common)) == 0 ? strlen(common) : strlen("grammars/");
    snprintf(out, NAMES_MOST, "%s", path + cut);
}

static struct pack *load_folder(void)
{
    static char names[NAMES_MOST][NAMES_MOST];
    struct problems p = {0};
    struct disk_pack disk;
    assert_true(disk_pack_read(FOLDER, &disk, &p));
    assert_true(disk.count > 10 && disk.count < NAMES_MOST);
    for (size_t i = 0; i < disk.count; i++) {
        built_name(disk.files[i].name, names[i]);
        disk.files[i].name = names[i];
    }
    struct pack *k = pack_load(disk.files, disk.count, &p);
    assert_int_equal(p.errors, 0);
    problems_release(&p);
    disk_pack_release(&disk);
    return k;
}

static void built_in_is_what_is_loaded(void **state)
{
    (void) state;
    struct pack *loaded = load_folder(), *built = pack_builtin();
    assert_non_null(loaded);
    assert_non_null(built);
    struct text a = pack_bytes(loaded), b = pack_bytes(built);
    assert_int_equal(a.length, b.length);
    assert_memory_equal(a.at, b.at, a.length);
    pack_free(loaded);
    pack_free(built);
}

/* A copy elsewhere gives the same answers, and none from where it was. */
static void an_image_can_stand_anywhere(void **state)
{
    (void) state;
    struct pack *built = pack_builtin();
    struct text bytes = pack_bytes(built);
    char *copy = malloc(bytes.length);
    assert_non_null(copy);
    memcpy(copy, bytes.at, bytes.length);
    struct pack *moved = pack_open(copy, copy);
    assert_non_null(moved);
    size_t count, same;
    const struct entry *from = pack_entries(built, &count), *to = pack_entries(moved, &same);
    assert_int_equal(count, same);
    for (size_t i = 0; i < count; i++) {
        struct text words = entry_words(&to[i]);
        assert_true(words.at > copy && words.at < copy + bytes.length);
        assert_true(text_equal(words, entry_words(&from[i])));
        assert_true(entry_as(pack_find(moved, words, NULL), (enum tag) to[i].tag) == &to[i]);
    }
    pack_free(moved);
    pack_free(built);
}

/* KB of files that are in this program's memory, as the system counts them. */
static long file_memory(void)
{
    char line[128];
    long kilobytes = -1;
    FILE *f = fopen("/proc/self/status", "r");
    assert_non_null(f);
    while (fgets(line, sizeof line, f))
        if (strncmp(line, "RssFile:", 8) == 0)
            kilobytes = strtol(line + 8, NULL, 10);
    fclose(f);
    assert_true(kilobytes > 0);
    return kilobytes;
}

/* All of it was read for that; half of it, since the system counts in lumps. */
static void what_is_forgotten_takes_no_memory_and_is_the_same(void **state)
{
    (void) state;
    struct pack *built = pack_builtin();
    struct text bytes = pack_bytes(built);
    uint64_t before = text_hash(bytes);
    long with = file_memory();
    pack_forget(built);
    assert_true(with - file_memory() > (long) (bytes.length / 1024 / 2));
    assert_int_equal(text_hash(bytes), before);
    pack_free(built);
}

/* What it forgot would be gone. */
static void a_loaded_pack_forgets_nothing(void **state)
{
    (void) state;
    struct pack *loaded = load_folder();
    uint64_t before = text_hash(pack_bytes(loaded));
    pack_forget(loaded);
    assert_int_equal(text_hash(pack_bytes(loaded)), before);
    pack_free(loaded);
}

/* The foods of several words that have that one, found by looking at every entry. */
static size_t count_foods_with(const struct pack *k, struct text word)
{
    size_t count, found = 0;
    const struct entry *entries = pack_entries(k, &count);
    for (size_t i = 0; i < count; i++) {
        struct text rest = entry_words(&entries[i]), part;
        bool asked = entries[i].tag == TAG_FOOD && entries[i].words_count > 1;
        while (asked && text_part(&rest, ' ', &part))
            found += text_equal(part, word);
    }
    return found;
}

static void words_within_names_of_foods_are_found(void **state)
{
    static const char *const words[] = {"sauce", "of", "chicken", "butter", "zzz", "up"};
    (void) state;
    struct pack *k = pack_builtin();
    for (size_t i = 0; i < sizeof words / sizeof *words; i++) {
        size_t count;
        struct text word = text_from(words[i]);
        const uint32_t *found = pack_foods_with(k, word, &count);
        assert_int_equal(count, count_foods_with(k, word));
        for (size_t n = 1; n < count; n++)
            assert_true(found[n - 1] <= found[n]);
    }
    pack_free(k);
}

static void rows_are_found_by_their_first_cell(void **state)
{
    (void) state;
    struct pack *k = pack_builtin();
    const struct table *t = pack_table(k, "pronunciations");
    assert_true(t && t->rows > 10000);
    for (size_t row = 0; row < t->rows; row++) {
        size_t first = table_find(t, table_cell(t, row, 0));
        assert_true(first <= row && text_equal(table_cell(t, first, 0), table_cell(t, row, 0)));
    }
    assert_int_equal(table_find(t, text_from("no such word")), t->rows);
    assert_int_equal(table_find(t, TEXT_EMPTY), t->rows);
    pack_free(k);
}

/* "Flour" sounds as "flower" does; a word that no dictionary has is spelled out. */
static void words_sound(void **state)
{
    (void) state;
    struct pack *k = pack_builtin();
    char one[SOUNDS_MOST], other[SOUNDS_MOST];
    size_t n = pack_sounds(k, text_from("flour"), one),
           m = pack_sounds(k, text_from("flower"), other);
    assert_true(n && n == m);
    assert_memory_equal(one, other, n);
    assert_true(pack_sounds(k, text_from("blorfle"), one) >= 4);
    assert_int_equal(pack_sounds(k, TEXT_EMPTY, one), 0);
    pack_free(k);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(built_in_is_what_is_loaded),
        cmocka_unit_test(an_image_can_stand_anywhere),
        cmocka_unit_test(what_is_forgotten_takes_no_memory_and_is_the_same),
        cmocka_unit_test(a_loaded_pack_forgets_nothing),
        cmocka_unit_test(words_within_names_of_foods_are_found),
        cmocka_unit_test(rows_are_found_by_their_first_cell),
        cmocka_unit_test(words_sound),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
