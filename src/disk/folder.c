/* disk/folder.c: filled under a temporary name beside its place, then renamed. Not synced file by
 * file: after a power cut it can be published again from what it was made of.
 * SPDX-License-Identifier: MIT */
/* NOLINTNEXTLINE(bugprone-reserved-identifier): the system's own switch */
#define _GNU_SOURCE /* renameat2, which Linux alone has */
#include "disk/folder.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "disk/disk.h"
#include "disk/leftover.h"
#include "disk/mode.h"

#define LIST_BYTES_MAX ((size_t) 4 << 20)

static bool failed(const char *name, struct problems *p)
{
    return problem(p, (struct place){0}, "%s cannot be written: %s", name, strerror(errno));
}

static char *joined(const char *a, const char *between, const char *b)
{
    size_t room = strlen(a) + strlen(between) + strlen(b) + 1;
    char *out = malloc(room);
    if (out)
        snprintf(out, room, "%s%s%s", a, between, b);
    return out;
}

/* "a/b/" -> "a/b"; "/" stays. */
static char *plain_name(const char *name)
{
    size_t length = strlen(name);
    while (length > 1 && name[length - 1] == '/')
        length--;
    return strndup(name, length);
}

static bool in_list(struct text list, const char *file)
{
    struct text line;
    while (text_part(&list, '\n', &line))
        if (text_is(line, file))
            return true;
    return strcmp(file, FOLDER_LIST) == 0;
}

/* Whether everything in the folder stands in its list. */
static bool is_ours(DIR *d, const char *name, struct text list, struct problems *p)
{
    for (const struct dirent *e; (e = readdir(d));)
        if (!is_dots(e->d_name) && !in_list(list, e->d_name))
            return problem(p, (struct place){0},
                           "%s is not replaced, since it holds \"%s\", which was not published "
                           "there; name another "
                           "folder",
                           name, e->d_name);
    return true;
}

/* A folder that is not there, is empty, or was published. */
static bool may_replace(const char *name, struct problems *p)
{
    struct buffer list = {0};
    DIR *d = opendir(name);
    if (!d)
        return errno == ENOENT || failed(name, p);
    char *path = joined(name, "/", FOLDER_LIST);
    if (path && access(path, R_OK) == 0)
        disk_read(path, LIST_BYTES_MAX, &list, p);
    bool ours = is_ours(d, name, buffer_text(&list), p);
    closedir(d);
    free(path);
    buffer_release(&list);
    return ours;
}

bool folder_open(struct disk_folder *f, const char *name, struct problems *p)
{
    *f = (struct disk_folder){.name = plain_name(name), .held = -1};
    if (!f->name || !*f->name)
        return problem(p, (struct place){0}, "a folder must have a name");
    leftovers_clear(f->name);
    if (!may_replace(f->name, p))
        return false;
    f->held = temporary_folder(f->name, &f->temporary);
    if (f->held < 0)
        return failed(name, p);
    return fchmod(f->held, mode_of_new(0777)) == 0 || failed(name, p);
}

char *folder_path(const struct disk_folder *f, const char *file)
{
    return joined(f->temporary, "/", file);
}

void folder_add(struct disk_folder *f, const char *file)
{
    buffer_format(&f->list, "%s\n", file);
}

static bool put_bytes(int file, struct text bytes)
{
    while (bytes.length) {
        ssize_t n = write(file, bytes.at, bytes.length);
        if (n < 0 && errno != EINTR)
            return false;
        bytes = text_slice(bytes, n > 0 ? (size_t) n : 0, bytes.length);
    }
    return true;
}

static bool write_file(const char *path, struct text bytes)
{
    int file = open(path, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file < 0)
        return false;
    bool put = put_bytes(file, bytes);
    int error = errno;
    bool closed = close(file) == 0;
    if (!put)
        errno = error;
    return put && closed;
}

bool folder_put(struct disk_folder *f, const char *file, struct text bytes, struct problems *p)
{
    char *path = folder_path(f, file);
    bool done = path && write_file(path, bytes);
    if (!done)
        failed(f->name, p);
    free(path);
    folder_add(f, file);
    return done;
}

/* Both change places in one step, which not every system nor every file system can. */
static bool exchange(const struct disk_folder *f)
{
#ifdef RENAME_EXCHANGE
    return renameat2(AT_FDCWD, f->temporary, AT_FDCWD, f->name, RENAME_EXCHANGE) == 0;
#else
    (void) f;
    return false;
#endif
}

/* The old folder steps aside, and comes back if the new one cannot take its place. It is held, so
 * that no other run takes it for one that is left over. */
static bool step_aside(const struct disk_folder *f, const char *old)
{
    int held = open(f->name, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (held >= 0)
        flock(held, LOCK_EX | LOCK_NB);
    bool was = rename(f->name, old) == 0;
    bool done = (was || errno == ENOENT) && rename(f->temporary, f->name) == 0;
    int error = errno;
    if (was && done)
        folder_remove(old);
    else if (was)
        rename(old, f->name);
    if (held >= 0)
        close(held);
    errno = error;
    return done;
}

static bool replace(const struct disk_folder *f, struct problems *p)
{
    if (exchange(f)) {
        folder_remove(f->temporary);
        return true;
    }
    char *old = joined(f->temporary, "", TEMPORARY_OLD);
    bool done = (old && step_aside(f, old)) || failed(f->name, p);
    free(old);
    return done;
}

bool folder_close(struct disk_folder *f, struct problems *p)
{
    char *path = folder_path(f, FOLDER_LIST);
    bool done = path && !f->list.failed && write_file(path, buffer_text(&f->list));
    free(path);
    if (!done)
        return failed(f->name, p);
    /* somebody may have put a file there while this was written */
    if (!may_replace(f->name, p) || !replace(f, p))
        return false;
    close(f->held);
    free(f->temporary);
    f->temporary = NULL;
    return true;
}

void folder_abandon(struct disk_folder *f)
{
    if (f->temporary)
        folder_remove(f->temporary);
    if (f->temporary && f->held >= 0)
        close(f->held);
    free(f->temporary);
    free(f->name);
    buffer_release(&f->list);
    *f = (struct disk_folder){.name = NULL};
}
