/* disk/test_disk.c: whole files in, whole files out, and packs from folders.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

#include "disk/disk.h"
#include "disk/pack.h"

/* A folder of the test's own; the paths in it. */
static char folder[] = "/tmp/dishtake-test-XXXXXX";
static char path[200];

static const char *in_folder(const char *name)
{
    snprintf(path, sizeof path, "%s/%s", folder, name);
    return path;
}

static int make_folder(void **state)
{
    (void) state;
    snprintf(folder, sizeof folder, "/tmp/dishtake-test-XXXXXX");
    return mkdtemp(folder) ? 0 : -1;
}

static int remove_folder(void **state)
{
    static const char *const NAMES[] = {"file",         "g/pack.list", "g/a.lex", "g/s.lex",
                                        "common/t.tsv", "g",           "common",  "pipe"};
    (void) state;
    for (size_t i = 0; i < sizeof NAMES / sizeof *NAMES; i++)
        remove(in_folder(NAMES[i]));
    return remove(folder); /* fails when something was left behind */
}

static void put_file(const char *name, const char *content)
{
    FILE *file = fopen(in_folder(name), "wb");
    assert_non_null(file);
    assert_int_equal(fwrite(content, 1, strlen(content), file), strlen(content));
    assert_int_equal(fclose(file), 0);
}

static void what_was_written_is_read(void **state)
{
    struct problems p = {0};
    struct disk_output o;
    struct buffer bytes = {0};
    (void) state;
    assert_true(disk_open(&o, in_folder("file"), &p));
    assert_true(disk_put(&o, TEXT_OF("two "), &p));
    assert_true(disk_put(&o, TEXT_OF("halves\0x"), &p));
    assert_int_not_equal(access(in_folder("file"), F_OK), 0); /* not there before it is whole */
    assert_true(disk_close(&o, &p));
    assert_true(disk_read(in_folder("file"), 100, &bytes, &p));
    assert_true(text_equal(buffer_text(&bytes), TEXT_OF("two halves\0x")));
    buffer_release(&bytes);
    assert_int_equal(p.count, 0);
}

static void limits_on_both_sides(void **state)
{
    struct problems p = {0};
    struct buffer bytes = {0};
    (void) state;
    put_file("file", "12345");
    assert_true(disk_read(in_folder("file"), 5, &bytes, &p));
    buffer_clear(&bytes);
    assert_false(disk_read(in_folder("file"), 4, &bytes, &p));
    assert_non_null(strstr(p.at[0].message, "too large"));
    buffer_release(&bytes);
    problems_release(&p);
}

static void an_output_given_up_leaves_the_old_one(void **state)
{
    struct problems p = {0};
    struct disk_output o;
    struct buffer bytes = {0};
    (void) state;
    put_file("file", "old");
    assert_true(disk_open(&o, in_folder("file"), &p));
    assert_true(disk_put(&o, TEXT_OF("new"), &p));
    disk_abandon(&o);
    assert_true(disk_read(in_folder("file"), 100, &bytes, &p));
    assert_string_equal(bytes.at, "old");
    buffer_release(&bytes);
}

static void an_output_is_as_readable_as_the_one_it_replaces(void **state)
{
    struct problems p = {0};
    struct disk_output o;
    struct stat is;
    (void) state;
    put_file("file", "old");
    assert_int_equal(chmod(in_folder("file"), 0640), 0);
    assert_true(disk_open(&o, in_folder("file"), &p));
    assert_true(disk_close(&o, &p));
    assert_int_equal(stat(in_folder("file"), &is), 0);
    assert_int_equal(is.st_mode & 0777, 0640);
}

/* A rename would put a plain file in its place. */
static void what_is_no_plain_file_stays_what_it_is(void **state)
{
    struct problems p = {0};
    struct disk_output o;
    struct stat is;
    (void) state;
    assert_true(disk_open(&o, "/dev/null", &p));
    assert_true(disk_put(&o, TEXT_OF("gone"), &p));
    assert_true(disk_close(&o, &p));
    assert_int_equal(stat("/dev/null", &is), 0);
    assert_true(S_ISCHR(is.st_mode));
    assert_true(disk_open(&o, "/dev/full", &p));
    assert_false(disk_put(&o, TEXT_OF("no room"), &p));
    disk_abandon(&o);
    problems_release(&p);
}

static void make_pack(const char *list)
{
    assert_int_equal(mkdir(in_folder("g"), 0755), 0);
    assert_int_equal(mkdir(in_folder("common"), 0755), 0);
    put_file("g/pack.list", list);
    put_file("g/a.lex", "words\n");
    put_file("g/s.lex", "");
    put_file("common/t.tsv", "a\tb\n");
}

static void a_pack_is_the_files_of_its_list(void **state)
{
    struct problems p = {0};
    struct disk_pack k;
    (void) state;
    make_pack("# comment\na.lex\n\n../common/t.tsv\ns.lex\nnot-there.lex\n");
    char name[200];
    snprintf(name, sizeof name, "%s/", in_folder("g"));
    assert_true(disk_pack_read(name, &k, &p));
    assert_int_equal(k.count, 4);
    assert_true(text_is(k.files[1].bytes, "words\n"));
    assert_string_equal(k.files[2].name, in_folder("g/../common/t.tsv"));
    assert_int_equal(k.files[3].bytes.length, 0);
    disk_pack_release(&k);
    assert_int_equal(p.count, 0);
}

static void a_pack_reaches_nothing_outside(void **state)
{
    struct problems p = {0};
    struct disk_pack k;
    (void) state;
    make_pack("/etc/passwd\n../g/a.lex\n../../etc/passwd\n../common/../g/a.lex\n./"
              "a.lex\n.hidden\n../common/\n");
    assert_true(disk_pack_read(in_folder("g"), &k, &p));
    assert_int_equal(k.count, 1); /* the list itself */
    disk_pack_release(&k);
}

static void a_pack_needs_its_list(void **state)
{
    struct problems p = {0};
    struct disk_pack k;
    (void) state;
    assert_false(disk_pack_read(folder, &k, &p));
    assert_int_equal(p.errors, 1);
    disk_pack_release(&k);
    problems_release(&p);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(what_was_written_is_read, make_folder, remove_folder),
        cmocka_unit_test_setup_teardown(limits_on_both_sides, make_folder, remove_folder),
        cmocka_unit_test_setup_teardown(an_output_given_up_leaves_the_old_one, make_folder,
                                        remove_folder),
        cmocka_unit_test_setup_teardown(an_output_is_as_readable_as_the_one_it_replaces,
                                        make_folder, remove_folder),
        cmocka_unit_test(what_is_no_plain_file_stays_what_it_is),
        cmocka_unit_test_setup_teardown(a_pack_is_the_files_of_its_list, make_folder,
                                        remove_folder),
        cmocka_unit_test_setup_teardown(a_pack_reaches_nothing_outside, make_folder, remove_folder),
        cmocka_unit_test_setup_teardown(a_pack_needs_its_list, make_folder, remove_folder),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
