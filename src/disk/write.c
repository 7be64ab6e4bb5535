/* disk/write.c: temporary name, write, sync, rename, so that a reader sees the old file or the new
 * one, whole. After a failed sync nothing is tried again on the same file: its pages may be marked
 * clean all the same (Rebello et al., USENIX ATC 2020).
 * SPDX-License-Identifier: MIT */
#include "disk/disk.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/path.h"
#include "disk/leftover.h"
#include "disk/mode.h"

static bool failed(const struct disk_output *o, struct problems *p)
{
    const char *reason = errno == EISDIR ? "this is a folder; a file is needed" : strerror(errno);
    return problem(p, (struct place){.file = strcmp(o->name, "-") ? o->name : "standard output"},
                   "cannot be written: %s", reason);
}

char *folder_name(const char *name)
{
    struct text folder = path_folder(name);
    return folder.length ? strndup(folder.at, folder.length) : strdup("./");
}

/* mkstemp makes files that only the owner reads; an output is as readable as any new file, or as
 * the one it replaces. */
static mode_t mode_wanted(const char *name)
{
    struct stat old;
    if (stat(name, &old) == 0)
        return old.st_mode & 0777;
    return mode_of_new(0666);
}

/* What is no plain file (a terminal, a pipe, /dev/null) is written as it is: a rename would replace
 * it. */
static bool open_directly(struct disk_output *o, struct problems *p)
{
    o->file = open(o->name, O_WRONLY | O_CLOEXEC);
    return o->file >= 0 || failed(o, p);
}

bool disk_open(struct disk_output *o, const char *name, struct problems *p)
{
    struct stat old;
    *o = (struct disk_output){name, NULL, STDOUT_FILENO};
    if (strcmp(name, "-") == 0)
        return true;
    if (stat(name, &old) == 0 && !S_ISREG(old.st_mode))
        return open_directly(o, p);
    leftovers_clear(name);
    o->file = temporary_file(name, &o->temporary);
    if (o->file >= 0 && fchmod(o->file, mode_wanted(name)) == 0)
        return true;
    failed(o, p);
    disk_abandon(o);
    return false;
}

bool disk_put(struct disk_output *o, struct text bytes, struct problems *p)
{
    while (bytes.length) {
        ssize_t n = write(o->file, bytes.at, bytes.length);
        if (n < 0 && errno == EINTR)
            continue;
        if (n < 0)
            return failed(o, p);
        bytes = text_slice(bytes, (size_t) n, bytes.length);
    }
    return true;
}

/* So that the new name survives a power cut too; some file systems cannot, and lose nothing by it.
 */
static void sync_folder(const char *name)
{
    char *folder = folder_name(name);
    int file = folder ? open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC) : -1;
    if (file >= 0) {
        fsync(file);
        close(file);
    }
    free(folder);
}

/* All of it on the disk, or errno. What closing says counts too: some file systems write then. */
static bool finish(struct disk_output *o)
{
    bool synced = fsync(o->file) == 0;
    int error = errno;
    bool closed = close(o->file) == 0;
    o->file = -1;
    if (!synced)
        errno = error;
    return synced && closed;
}

bool disk_close(struct disk_output *o, struct problems *p)
{
    if (!o->temporary)
        return o->file == STDOUT_FILENO || close(o->file) == 0 || failed(o, p);
    /* Keeps the lock up to the renaming, so that nobody clears the file away before. */
    int held = fcntl(o->file, F_DUPFD_CLOEXEC, 0);
    bool done = finish(o) && rename(o->temporary, o->name) == 0;
    if (!done)
        failed(o, p);
    if (held >= 0)
        close(held);
    if (!done) {
        disk_abandon(o);
        return false;
    }
    sync_folder(o->name);
    free(o->temporary);
    o->temporary = NULL;
    return true;
}

void disk_abandon(struct disk_output *o)
{
    if (o->file >= 0 && o->file != STDOUT_FILENO)
        close(o->file);
    if (o->temporary)
        unlink(o->temporary);
    free(o->temporary);
    *o = (struct disk_output){.name = o->name, .file = -1};
}
