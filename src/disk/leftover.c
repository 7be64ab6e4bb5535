/* disk/leftover.c
 * SPDX-License-Identifier: MIT */
/* NOLINTNEXTLINE(bugprone-reserved-identifier): the system's own switch */
#define _GNU_SOURCE /* mkostemp */
#include "disk/leftover.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/path.h"
#include "disk/disk.h"

#define MARK ".new."
#define LETTERS "XXXXXX"
#define LETTERS_COUNT (sizeof LETTERS - 1)
/* Another run may clear what was made and is not locked yet; then another one is made. */
#define TRIES 10

static char *template_of(const char *name)
{
    size_t room = strlen(name) + sizeof("." MARK LETTERS);
    char *out = malloc(room);
    if (out)
        snprintf(out, room, "%.*s.%s" MARK LETTERS, TEXT(path_folder(name)), path_file(name));
    return out;
}

/* Where files cannot be locked, nobody can clear them either. */
static bool is_held(int file, const char *path)
{
    struct stat ours, there;
    if (flock(file, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
        return false;
    return fstat(file, &ours) == 0 && lstat(path, &there) == 0 && ours.st_ino == there.st_ino
           && ours.st_dev == there.st_dev;
}

static int make_file(char *path)
{
    return mkostemp(path, O_CLOEXEC);
}

static int make_folder(char *path)
{
    if (!mkdtemp(path))
        return -1;
    int file = open(path, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    int error = errno;
    if (file < 0)
        rmdir(path);
    errno = error;
    return file;
}

static int make_held(const char *name, int make(char *path), char **path)
{
    for (int i = 0; i < TRIES; i++) {
        *path = template_of(name);
        int file = *path ? make(*path) : -1;
        if (file >= 0 && is_held(file, *path))
            return file;
        int error = file < 0 ? errno : EAGAIN;
        if (file >= 0)
            close(file);
        free(*path);
        *path = NULL;
        errno = error;
        if (file < 0)
            break;
    }
    return -1;
}

int temporary_file(const char *name, char **path)
{
    return make_held(name, make_file, path);
}

int temporary_folder(const char *name, char **path)
{
    return make_held(name, make_folder, path);
}

bool is_dots(const char *name)
{
    return strcmp(name, ".") == 0 || strcmp(name, "..") == 0;
}

/* Takes `folder`. */
static void remove_files(int folder)
{
    DIR *d = fdopendir(folder);
    for (const struct dirent *e; d && (e = readdir(d));)
        if (!is_dots(e->d_name))
            unlinkat(folder, e->d_name, 0);
    if (d)
        closedir(d);
    else
        close(folder);
}

void folder_remove(const char *path)
{
    int folder = open(path, O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
    if (folder >= 0)
        remove_files(folder);
    rmdir(path);
}

/* ".name.new.Ab3dEf", or with ".old" behind it, as mkostemp and mkdtemp make them. */
static bool is_temporary(const char *entry, const char *base, bool *old)
{
    size_t length = strlen(base), letters;
    if (entry[0] != '.' || strncmp(entry + 1, base, length) != 0
        || strncmp(entry + 1 + length, MARK, sizeof MARK - 1) != 0)
        return false;
    entry += length + sizeof MARK;
    letters = strspn(entry, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789");
    *old = strcmp(entry + letters, TEMPORARY_OLD) == 0;
    return letters == LETTERS_COUNT && (*old || !entry[letters]);
}

/* Under a lock of its own, so that two runs do not do it at once. */
static void clear_one(int folder, const char *entry, const char *name, bool old)
{
    struct stat s;
    int file = openat(folder, entry, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (file < 0)
        return;
    bool dead = flock(file, LOCK_EX | LOCK_NB) == 0 && fstat(file, &s) == 0;
    bool is_folder = dead && S_ISDIR(s.st_mode);
    if (is_folder && old && access(name, F_OK) != 0) {
        renameat(folder, entry, AT_FDCWD, name);
    } else if (is_folder) {
        remove_files(dup(file));
        unlinkat(folder, entry, AT_REMOVEDIR);
    } else if (dead && S_ISREG(s.st_mode)) {
        unlinkat(folder, entry, 0);
    }
    close(file);
}

void leftovers_clear(const char *name)
{
    char *folder = folder_name(name);
    DIR *d = folder ? opendir(folder) : NULL;
    bool old;
    for (const struct dirent *e; d && (e = readdir(d));)
        if (is_temporary(e->d_name, path_file(name), &old))
            clear_one(dirfd(d), e->d_name, name, old);
    if (d)
        closedir(d);
    free(folder);
}
