/* disk/test_folder.c: a folder appears whole or not at all, though the program be killed at any
 * moment, and nobody's files go. The calls below stand before the C library's.
 * SPDX-License-Identifier: MIT */
#define _GNU_SOURCE
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

#include "disk/disk.h"
#include "disk/folder.h"

/* The program is killed before its `kill_at`th call, 0: never; where `no_exchange` the file system
 * cannot let two names change places. */
static struct {
    unsigned kill_at, seen;
    bool no_exchange;
} fault;

static void count(void)
{
    if (fault.kill_at && ++fault.seen == fault.kill_at)
        kill(getpid(), SIGKILL);
}

ssize_t write(int file, const void *at, size_t length)
{
    count();
    return syscall(SYS_write, file, at, length);
}

/* Others run before the one that asked goes on. */
mode_t umask(mode_t mask)
{
    const struct timespec moment = {.tv_nsec = 1000000};
    mode_t before = (mode_t) syscall(SYS_umask, mask);
    nanosleep(&moment, NULL);
    return before;
}

int renameat2(int from_folder, const char *from, int to_folder, const char *to, unsigned flags)
{
    count();
    errno = EINVAL;
    return fault.no_exchange
               ? -1
               : (int) syscall(SYS_renameat2, from_folder, from, to_folder, to, flags);
}

int rename(const char *from, const char *to)
{
    count();
    return (int) syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0);
}

int unlinkat(int folder, const char *name, int flags)
{
    count();
    return (int) syscall(SYS_unlinkat, folder, name, flags);
}

int rmdir(const char *name)
{
    count();
    return (int) syscall(SYS_unlinkat, AT_FDCWD, name, AT_REMOVEDIR);
}

/* A place of its own, made the current folder. */
static int enter(void **state)
{
    char place[] = "/tmp/dishtake-folder-XXXXXX";
    assert_non_null(mkdtemp(place));
    *state = strdup(place);
    return chdir(place);
}

static int leave(void **state)
{
    static const char *const names[] = {"out/a", "out/b", "out/mine", "out/.published", "out"};
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        if (unlink(names[i]) != 0)
            rmdir(names[i]);
    int gone = chdir("/") + rmdir(*state); /* fails where something else was left */
    free(*state);
    return gone;
}

static bool publish(const char *file, const char *bytes)
{
    struct disk_folder f;
    struct problems p = {0};
    bool done = folder_open(&f, "out/", &p) && folder_put(&f, file, text_from(bytes), &p)
                && folder_close(&f, &p);
    folder_abandon(&f);
    assert_true(done || p.errors);
    problems_release(&p);
    return done;
}

static void assert_holds(const char *name, const char *bytes)
{
    struct buffer b = {0};
    struct problems p = {0};
    assert_true(disk_read(name, 1000, &b, &p));
    assert_string_equal(b.at ? b.at : "", bytes);
    buffer_release(&b);
}

#define THREADS 8
#define FOLDERS_A_THREAD 10

/* Fills in no problem: what is asked is only what opening does to the others. */
static void *open_many(void *name)
{
    for (int i = 0; i < FOLDERS_A_THREAD; i++) {
        struct disk_folder f;
        struct problems p = {0};
        if (!folder_open(&f, name, &p))
            abort();
        folder_abandon(&f);
        problems_release(&p);
    }
    return NULL;
}

/* `publish --jobs` opens several at once; the umask is one for all threads. */
static void the_umask_stays(void **state)
{
    char names[THREADS][2] = {"a", "b", "c", "d", "e", "f", "g", "h"};
    pthread_t threads[THREADS];
    mode_t before = umask(027);
    (void) state;
    for (size_t i = 0; i < THREADS; i++)
        assert_int_equal(pthread_create(&threads[i], NULL, open_many, names[i]), 0);
    for (size_t i = 0; i < THREADS; i++)
        pthread_join(threads[i], NULL);
    assert_int_equal(umask(before), 027);
}

static void it_appears_whole(void **state)
{
    (void) state;
    assert_true(publish("a", "one"));
    assert_holds("out/a", "one");
    assert_holds("out/.published", "a\n");
}

static void a_later_one_takes_its_place(void **state)
{
    (void) state;
    assert_true(publish("a", "one"));
    assert_true(publish("b", "two"));
    assert_holds("out/b", "two");
    assert_int_not_equal(access("out/a", F_OK), 0);
}

static void an_empty_folder_is_taken(void **state)
{
    (void) state;
    assert_int_equal(mkdir("out", 0777), 0);
    assert_true(publish("a", "one"));
}

static void a_strange_file_stays(void **state)
{
    (void) state;
    assert_true(publish("a", "one"));
    fclose(fopen("out/mine", "w"));
    assert_false(publish("b", "two"));
    assert_holds("out/a", "one");
    assert_int_equal(access("out/mine", F_OK), 0);
}

static void a_file_is_no_folder(void **state)
{
    (void) state;
    fclose(fopen("out", "w"));
    assert_false(publish("a", "one"));
    assert_int_equal(access("out", F_OK), 0);
}

static void what_is_given_up_leaves_nothing(void **state)
{
    struct disk_folder f;
    struct problems p = {0};
    (void) state;
    assert_true(folder_open(&f, "out", &p));
    assert_true(folder_put(&f, "a", TEXT_OF("one"), &p));
    assert_false(folder_put(&f, "no/such", TEXT_OF("one"), &p));
    folder_abandon(&f);
    assert_int_not_equal(access("out", F_OK), 0); /* leave() fails where the temporary one stayed */
    problems_release(&p);
}

static void a_folder_in_no_folder_is_told(void **state)
{
    struct disk_folder f;
    struct problems p = {0};
    (void) state;
    assert_false(folder_open(&f, "no/such/out", &p));
    assert_int_equal(p.errors, 1);
    folder_abandon(&f);
    assert_false(folder_open(&f, "", &p));
    folder_abandon(&f);
    problems_release(&p);
}

static size_t hidden_names(void)
{
    size_t n = 0;
    DIR *d = opendir(".");
    for (const struct dirent *e; (e = readdir(d));)
        n += e->d_name[0] == '.' && strlen(e->d_name) > 2;
    closedir(d);
    return n;
}

static bool child_was_killed(pid_t child)
{
    int status;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status);
}

/* "out" has file `a` before, `b` after, and is never away or half; what the killed one left goes
 * with the next one. */
static bool killed_at(unsigned call, bool no_exchange)
{
    assert_true(publish("a", "one"));
    pid_t child = fork();
    if (!child) {
        fault.no_exchange = no_exchange;
        fault.kill_at = call;
        publish("b", "two");
        _exit(0);
    }
    bool killed = child_was_killed(child);
    if (no_exchange && access("out", F_OK) != 0) /* it was put aside, and comes back */
        assert_int_equal(hidden_names(), 2);
    else if (access("out/b", F_OK) == 0)
        assert_holds("out/.published", "b\n");
    else
        assert_holds("out/a", "one");
    assert_false(publish("no/such", "file")); /* clears, and changes nothing */
    assert_int_equal(access("out/.published", F_OK), 0);
    assert_int_equal(hidden_names(), 0);
    return killed;
}

static void killed_at_every_call(void **state)
{
    unsigned points = 0;
    (void) state;
    for (int no_exchange = 0; no_exchange < 2; no_exchange++)
        for (unsigned call = 1; killed_at(call, no_exchange); call++)
            points++;
    printf("figure: killed at %u points of publishing, the folder is old or new\n", points);
    assert_in_range(points, 10, 1000);
}

static void it_appears_where_names_cannot_change_places(void **state)
{
    (void) state;
    fault.no_exchange = true;
    assert_true(publish("a", "one"));
    assert_true(publish("b", "two"));
    fault.no_exchange = false;
    assert_holds("out/.published", "b\n");
    assert_int_equal(hidden_names(), 0);
}

static void a_living_run_is_left_alone(void **state)
{
    struct disk_folder f;
    struct problems p = {0};
    (void) state;
    assert_true(folder_open(&f, "out", &p) && folder_put(&f, "a", TEXT_OF("one"), &p));
    assert_true(publish("b", "two"));
    assert_int_equal(hidden_names(), 1);
    assert_true(folder_close(&f, &p));
    assert_holds("out/.published", "a\n");
    folder_abandon(&f);
    problems_release(&p);
}

/* Names that are not quite those of a temporary folder, and one of another output. */
static void what_is_not_ours_is_left_alone(void **state)
{
    static const char *const OTHERS[] = {
        ".out.new.Ab3dE",     ".out.new.Ab3dEfg",   ".out.new.Ab-dEf",
        ".out.Ab3dEf",        "out.new.Ab3dEf",     ".out.new.",
        ".output.new.Ab3dEf", ".out.new.Ab3dEf.ol", ".out.new.Ab3dEf.old2"};
    (void) state;
    for (size_t i = 0; i < sizeof OTHERS / sizeof *OTHERS; i++)
        assert_int_equal(mkdir(OTHERS[i], 0777), 0);
    mkdir(".out.new.Ab3dEf", 0777);
    mkdir(".out.new.Zz3dEf.old", 0777);
    mkdir(".out.new.Sub111", 0777);
    mkdir(".out.new.Sub111/folder", 0777); /* not a folder of files */
    fclose(fopen(".out.new.file11", "w"));
    assert_int_equal(symlink("/", ".out.new.link11"), 0);
    assert_true(publish("a", "one"));
    for (size_t i = 0; i < sizeof OTHERS / sizeof *OTHERS; i++)
        assert_int_equal(rmdir(OTHERS[i]), 0);
    assert_int_equal(rmdir(".out.new.Sub111/folder"), 0);
    assert_int_equal(rmdir(".out.new.Sub111"), 0);
    assert_int_equal(unlink(".out.new.link11"), 0);
    assert_int_equal(hidden_names(), 0);
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, enter, leave)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_umask_stays),
        TEST(it_appears_whole),
        TEST(a_later_one_takes_its_place),
        TEST(an_empty_folder_is_taken),
        TEST(a_strange_file_stays),
        TEST(a_file_is_no_folder),
        TEST(what_is_given_up_leaves_nothing),
        TEST(a_folder_in_no_folder_is_told),
        TEST(killed_at_every_call),
        TEST(it_appears_where_names_cannot_change_places),
        TEST(a_living_run_is_left_alone),
        TEST(what_is_not_ours_is_left_alone),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
