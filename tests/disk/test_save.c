/* tests/disk/test_save.c: each system call of a save failing in turn, and the program killed at
 * each of them; after that the file is the old one or the new one, whole. The calls are this
 * program's own functions of those names, which come before the C library's. Protocol: Pillai et
 * al., OSDI 2014; Rebello et al., USENIX ATC 2020.
 * SPDX-License-Identifier: MIT */
#define _GNU_SOURCE
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

#include "disk/save.h"

enum call {
    CALL_open,
    CALL_read,
    CALL_write,
    CALL_fsync,
    CALL_close,
    CALL_rename,
    CALL_fchmod,
    CALLS
};
static const char *const CALL_NAMES[CALLS] = {"open",  "read",   "write", "fsync",
                                              "close", "rename", "fchmod"};

/* What goes wrong: the `at`th call of a kind (kind CALLS: of any), once or from then on. */
static struct {
    bool on, always, kill_before, kill_after, half;
    enum call call;
    unsigned at, seen;
    int error;
} fault;

/* What a save asked of the disk, in order. */
enum op { OP_WRITE, OP_SYNC_FILE, OP_RENAME, OP_SYNC_FOLDER };
static struct {
    enum op at[64];
    size_t count;
    bool on;
} asked;

static void ask(enum op op)
{
    if (asked.on && asked.count < sizeof asked.at / sizeof *asked.at)
        asked.at[asked.count++] = op;
}

static bool hits(enum call call)
{
    if (!fault.on || (fault.call != CALLS && fault.call != call))
        return false;
    fault.seen++;
    return fault.always ? fault.seen >= fault.at : fault.seen == fault.at;
}

static void die_if(bool now)
{
    if (now)
        kill(getpid(), SIGKILL);
}

/* The call itself, or what is to go wrong instead. */
static long call_or_fail(enum call call, long number, long a, long b, long c, long d)
{
    bool hit = hits(call);
    die_if(hit && fault.kill_before);
    if (hit && fault.error) {
        errno = fault.error;
        if (call == CALL_close) /* Linux closes it all the same */
            syscall(number, a, b, c, d);
        errno = fault.error;
        return -1;
    }
    if (hit && fault.half && call == CALL_write && c > 1)
        c /= 2;
    long result = syscall(number, a, b, c, d);
    die_if(hit && fault.kill_after);
    return result;
}

int open(const char *name, int flags, ...)
{
    va_list args;
    va_start(args, flags);
    unsigned mode = flags & O_CREAT ? va_arg(args, unsigned) : 0;
    va_end(args);
    return (int) call_or_fail(CALL_open, SYS_openat, AT_FDCWD, (long) name, flags, (long) mode);
}

ssize_t read(int file, void *at, size_t length)
{
    return call_or_fail(CALL_read, SYS_read, file, (long) at, (long) length, 0);
}

ssize_t write(int file, const void *at, size_t length)
{
    ask(OP_WRITE);
    return call_or_fail(CALL_write, SYS_write, file, (long) at, (long) length, 0);
}

int fsync(int file)
{
    struct stat s;
    ask(fstat(file, &s) == 0 && S_ISDIR(s.st_mode) ? OP_SYNC_FOLDER : OP_SYNC_FILE);
    return (int) call_or_fail(CALL_fsync, SYS_fsync, file, 0, 0, 0);
}

int close(int file)
{
    return (int) call_or_fail(CALL_close, SYS_close, file, 0, 0, 0);
}

int rename(const char *from, const char *to)
{
    ask(OP_RENAME);
    return (int) call_or_fail(CALL_rename, SYS_renameat, AT_FDCWD, (long) from, AT_FDCWD,
                              (long) to);
}

int fchmod(int file, mode_t mode)
{
    return (int) call_or_fail(CALL_fchmod, SYS_fchmod, file, (long) mode, 0, 0);
}

/* ---- a folder with a transcript, whose edits are saved */

#define MOST ((size_t) 1 << 20)
static char folder[40], guard[80], path[80];
static char old_bytes[9000], new_bytes[20000];

static int make_folder(void **state)
{
    (void) state;
    snprintf(folder, sizeof folder, "/tmp/dishtake-save-XXXXXX");
    if (!mkdtemp(folder))
        return -1;
    snprintf(guard, sizeof guard, "%s/talk.srt", folder);
    snprintf(path, sizeof path, "%s/talk.edits.json", folder);
    fclose(fopen(guard, "w"));
    memset(old_bytes, 'o', sizeof old_bytes - 1);
    memset(new_bytes, 'n', sizeof new_bytes - 1);
    return 0;
}

static int remove_folder(void **state)
{
    (void) state;
    remove(path);
    remove(guard);
    return remove(folder);
}

static void put_old(void)
{
    FILE *f = fopen(path, "w");
    assert_non_null(f);
    fputs(old_bytes, f);
    fclose(f);
}

/* 'o' or 'n': which bytes the file has, all of them; 0: it is neither. */
static char whole(void)
{
    static char bytes[30000];
    FILE *f = fopen(path, "r");
    size_t n = f ? fread(bytes, 1, sizeof bytes - 1, f) : 0;
    if (f)
        fclose(f);
    bytes[n] = 0;
    return strcmp(bytes, old_bytes) == 0 ? 'o' : strcmp(bytes, new_bytes) == 0 ? 'n' : 0;
}

/* Files beside the two that belong there. */
static unsigned left_over(void)
{
    unsigned n = 0;
    DIR *d = opendir(folder);
    for (struct dirent *e; (e = readdir(d));)
        n += e->d_name[0] != '.'
                 ? strcmp(e->d_name, "talk.srt") && strcmp(e->d_name, "talk.edits.json")
                 : strlen(e->d_name) > 2;
    closedir(d);
    return n;
}

static void open_kept(struct kept *f)
{
    struct problems p = {0};
    if (!kept_open(f, edits_name(guard), guard, MOST, &p))
        fail_msg("%s", p.at[0].message);
    problems_release(&p);
}

static bool names_file(const struct problems *p)
{
    return p->count && p->at[0].at.file && strcmp(p->at[0].at.file, path) == 0;
}

/* One save with one fault; true when the fault was met. */
static bool save_with_fault(void)
{
    struct kept f;
    struct problems p = {0};
    put_old();
    open_kept(&f);
    fault.seen = 0;
    fault.on = true;
    enum kept_saved saved = kept_save(&f, text_from(new_bytes), &p);
    fault.on = false;
    bool met = fault.seen >= fault.at;
    char now = whole();
    if (now != (saved == SAVED ? 'n' : 'o') || (saved == SAVED_NOT && !names_file(&p))
        || saved == SAVED_BY_ANOTHER || left_over())
        fail_msg("%s number %u: %d saved as %d, file %c, %u left over", CALL_NAMES[fault.call],
                 fault.at, fault.error, saved, now ? now : '?', left_over());
    problems_release(&p);
    /* The next try works. */
    if (saved != SAVED)
        assert_int_equal(kept_save(&f, text_from(new_bytes), &p), SAVED);
    assert_int_equal(whole(), 'n');
    problems_release(&p);
    kept_close(&f);
    return met;
}

static void every_call_fails(void **state)
{
    static const int ERRORS[] = {ENOSPC, EIO, EACCES, EROFS, EDQUOT, EINTR, EPERM, ENOMEM, 0};
    unsigned points = 0;
    (void) state;
    for (int call = 0; call < CALLS; call++)
        for (size_t e = 0; e < sizeof ERRORS / sizeof *ERRORS; e++)
            for (int always = 0; always < 2; always++) {
                bool endless = ERRORS[e] == EINTR && always; /* waits for ever, as it should */
                memset(&fault, 0, sizeof fault);
                fault.call = (enum call) call;
                fault.error = ERRORS[e];
                fault.always = always;
                fault.half = !ERRORS[e];
                for (fault.at = 1; !endless && save_with_fault(); fault.at++)
                    points++;
            }
    printf("figure: %u faults in saving, no torn file\n", points);
    assert_in_range(points, 100, 100000);
}

/* A child saves and is killed; what it leaves is old or new, and the next one clears up. */
static bool killed_save(unsigned at, bool after)
{
    put_old();
    pid_t child = fork();
    if (!child) {
        struct kept f;
        struct problems p = {0};
        if (!kept_open(&f, edits_name(guard), guard, MOST, &p))
            _exit(2);
        memset(&fault, 0, sizeof fault);
        fault.on = true;
        fault.call = CALLS;
        fault.at = at;
        fault.kill_before = !after;
        fault.kill_after = after;
        kept_save(&f, text_from(new_bytes), &p);
        _exit(0);
    }
    int status;
    waitpid(child, &status, 0);
    assert_int_not_equal(whole(), 0);
    struct kept f;
    open_kept(&f);
    assert_int_equal(left_over(), 0);
    kept_close(&f);
    return WIFSIGNALED(status);
}

static void killed_at_every_call(void **state)
{
    unsigned points = 0;
    (void) state;
    for (int after = 0; after < 2; after++)
        for (unsigned at = 1; killed_save(at, after); at++)
            points++;
    printf("figure: killed at %u points of a save, no torn file\n", points);
    assert_in_range(points, 15, 10000);
}

/* ---- power cuts. What was asked and not synced may have reached the disk in any order, in part or
 * not at all: of a file any of its sectors, of a folder any of its changes (Pillai et al., OSDI
 * 2014). Each such state of the disk is made, and must be the old file or the new one. */

#define SECTOR 512
#define SECTORS ((sizeof new_bytes + SECTOR - 1) / SECTOR)
#define RANDOM_SUBSETS 200
enum { SUBSETS = 2 * SECTORS + RANDOM_SUBSETS };

static uint64_t chance = 88172645463325252u; /* xorshift64 (Marsaglia 2003; from memory) */

static bool toss(void)
{
    chance ^= chance << 13;
    chance ^= chance >> 7;
    chance ^= chance << 17;
    return chance & 1;
}

static void put_file(const char *name, const char *bytes, size_t length)
{
    FILE *f = fopen(name, "w");
    assert_non_null(f);
    fwrite(bytes, 1, length, f);
    fclose(f);
}

/* Subset `n` of the new file's sectors: so many from the start, cut there or zero from there on; or
 * some, by chance. */
static void put_some(const char *name, unsigned n)
{
    static char bytes[sizeof new_bytes];
    size_t length = strlen(new_bytes), kept = n % SECTORS * SECTOR;
    memcpy(bytes, new_bytes, sizeof bytes);
    if (n < SECTORS)
        length = kept < length ? kept : length;
    else if (n < 2 * SECTORS)
        memset(bytes + kept, 0, length > kept ? length - kept : 0);
    else
        for (size_t at = 0; at < length; at += SECTOR)
            if (toss())
                memset(bytes + at, 0, length - at < SECTOR ? length - at : SECTOR);
    put_file(name, bytes, length);
}

/* What the first `done` requests leave. */
struct reached {
    bool written, synced, renamed, folder_synced;
};

static struct reached reached_by(size_t done)
{
    struct reached r = {false, false, false, false};
    for (size_t i = 0; i < done; i++) {
        r.written |= asked.at[i] == OP_WRITE;
        r.synced |= asked.at[i] == OP_SYNC_FILE;
        r.renamed |= asked.at[i] == OP_RENAME;
        r.folder_synced |= r.renamed && asked.at[i] == OP_SYNC_FOLDER;
    }
    return r;
}

/* Makes one state and says whether it is whole; what is left over must go with the next opening. */
static bool is_whole(bool had_old, bool renamed, bool created, bool synced, unsigned subset)
{
    char temporary[120];
    snprintf(temporary, sizeof temporary, "%s/.talk.edits.json.new.Ab3dEf", folder);
    remove(path);
    if (had_old)
        put_old();
    if ((renamed || created) && synced)
        put_file(renamed ? path : temporary, new_bytes, strlen(new_bytes));
    else if (renamed || created)
        put_some(renamed ? path : temporary, subset);
    struct kept f;
    open_kept(&f);
    struct text now = buffer_text(&f.bytes);
    bool whole_now = renamed ? f.there && text_is(now, new_bytes)
                             : f.there == had_old && text_is(now, had_old ? old_bytes : "");
    assert_int_equal(left_over(), 0);
    kept_close(&f);
    return whole_now;
}

/* States after `done` requests; those that are torn are counted in `torn`. */
static unsigned states_after(size_t done, bool had_old, unsigned *torn)
{
    struct reached r = reached_by(done);
    unsigned states = 0;
    for (int renamed = r.folder_synced; renamed <= r.renamed; renamed++)
        for (int created = 0; created < 2; created++)
            for (unsigned subset = 0; subset < (r.written && !r.synced ? SUBSETS : 1); subset++) {
                *torn += !is_whole(had_old, renamed, created, r.synced, subset);
                states++;
            }
    return states;
}

static unsigned all_states(bool had_old, unsigned *torn)
{
    unsigned states = 0;
    for (size_t done = 0; done <= asked.count; done++)
        states += states_after(done, had_old, torn);
    return states;
}

static void record_save(void)
{
    struct kept f;
    struct problems p = {0};
    put_old();
    open_kept(&f);
    asked.count = 0;
    asked.on = true;
    assert_int_equal(kept_save(&f, text_from(new_bytes), &p), SAVED);
    asked.on = false;
    kept_close(&f);
}

static void forget(enum op op)
{
    size_t kept = 0;
    for (size_t i = 0; i < asked.count; i++)
        if (asked.at[i] != op)
            asked.at[kept++] = asked.at[i];
    asked.count = kept;
}

static void a_power_cut_at_any_moment(void **state)
{
    unsigned torn = 0, states;
    (void) state;
    record_save();
    states = all_states(true, &torn) + all_states(false, &torn);
    printf("figure: %u states of the disk after a power cut in a save, %u torn\n", states, torn);
    assert_int_equal(torn, 0);
    assert_in_range(states, 500, 100000);
    /* A save that does not sync its file would be found out. */
    forget(OP_SYNC_FILE);
    all_states(true, &torn);
    assert_in_range(torn, 100, 100000);
}

static void two_programs_take_turns(void **state)
{
    struct kept a, b;
    struct problems p = {0};
    (void) state;
    remove(path);
    open_kept(&a);
    open_kept(&b);
    assert_false(a.there);
    assert_int_equal(kept_save(&a, TEXT_OF("one"), &p), SAVED);
    assert_int_equal(kept_save(&b, TEXT_OF("two"), &p), SAVED_BY_ANOTHER);
    struct buffer old = {0};
    assert_int_equal(kept_look(&b, MOST, &old, &p), KEPT_CHANGED);
    assert_true(text_is(buffer_text(&b.bytes), "one"));
    assert_int_equal(kept_save(&b, TEXT_OF("one two"), &p), SAVED);
    assert_int_equal(kept_look(&b, MOST, NULL, &p), KEPT_SAME);
    /* A file taken away is a change too. */
    remove(path);
    assert_int_equal(kept_save(&b, TEXT_OF("three"), &p), SAVED_BY_ANOTHER);
    assert_int_equal(kept_look(&b, MOST, NULL, &p), KEPT_CHANGED);
    assert_false(b.there);
    buffer_release(&old);
    problems_release(&p);
    kept_close(&a);
    kept_close(&b);
}

static void mode_of_the_old_file_stays(void **state)
{
    struct kept f;
    struct stat s;
    struct problems p = {0};
    (void) state;
    put_old();
    chmod(path, 0640);
    open_kept(&f);
    assert_int_equal(kept_save(&f, TEXT_OF("x"), &p), SAVED);
    stat(path, &s);
    assert_int_equal(s.st_mode & 0777, 0640);
    kept_close(&f);
    problems_release(&p);
}

static void names_beside_the_transcript(void **state)
{
    static const char *const NAMES[][2] = {{"evening.srt", "evening.edits.json"},
                                           {"a.b/evening.en.vtt", "a.b/evening.en.edits.json"},
                                           {"a.b/evening", "a.b/evening.edits.json"},
                                           {".srt", ".srt.edits.json"},
                                           {"/x/.y", "/x/.y.edits.json"}};
    (void) state;
    for (size_t i = 0; i < sizeof NAMES / sizeof *NAMES; i++) {
        char *name = edits_name(NAMES[i][0]);
        assert_string_equal(name, NAMES[i][1]);
        free(name);
    }
    assert_null(edits_name("-"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_call_fails),           cmocka_unit_test(killed_at_every_call),
        cmocka_unit_test(a_power_cut_at_any_moment),  cmocka_unit_test(two_programs_take_turns),
        cmocka_unit_test(mode_of_the_old_file_stays), cmocka_unit_test(names_beside_the_transcript),
    };
    return cmocka_run_group_tests(tests, make_folder, remove_folder);
}
