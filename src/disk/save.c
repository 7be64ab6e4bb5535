/* disk/save.c: see save.h. The file is written by disk/write.c: new name, write, sync, rename, sync
 * of the folder.
 * SPDX-License-Identifier: MIT */
#include "disk/save.h"

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
#include "disk/leftover.h"

#define ENDING ".edits.json"

char *edits_name(const char *transcript)
{
    if (strcmp(transcript, "-") == 0)
        return NULL;
    struct text stem = path_stem(transcript);
    char *name = malloc(stem.length + sizeof ENDING);
    if (name)
        snprintf(name, stem.length + sizeof ENDING, "%.*s%s", TEXT(stem), ENDING);
    return name;
}

static bool lock(const struct kept *f, struct problems *p)
{
    while (flock(f->guard, LOCK_EX) != 0)
        if (errno != EINTR)
            return problem(p, (struct place){.file = f->name}, "cannot be locked: %s",
                           strerror(errno));
    return true;
}

static void unlock(const struct kept *f)
{
    flock(f->guard, LOCK_UN);
}

/* The file as it is now; `there` false when there is none. */
static bool read_now(const struct kept *f, size_t most, struct buffer *bytes, bool *there,
                     struct problems *p)
{
    struct stat now;
    *there = false;
    if (stat(f->name, &now) != 0 && errno == ENOENT)
        return true;
    *there = true;
    return disk_read(f->name, most, bytes, p);
}

bool kept_open(struct kept *f, char *name_take, const char *guard, size_t most, struct problems *p)
{
    *f = (struct kept){.name = name_take, .guard = -1};
    if (!f->name)
        return problem(p, (struct place){.file = guard}, "no memory is left");
    f->guard = open(guard, O_RDONLY | O_CLOEXEC);
    if (f->guard < 0)
        return problem(p, (struct place){.file = guard}, "cannot be read: %s", strerror(errno));
    if (!lock(f, p))
        return false;
    leftovers_clear(f->name);
    bool done = read_now(f, most, &f->bytes, &f->there, p);
    unlock(f);
    return done;
}

void kept_close(struct kept *f)
{
    if (f->guard >= 0)
        close(f->guard);
    buffer_release(&f->bytes);
    free(f->name);
    *f = (struct kept){.guard = -1};
}

static bool is_same(const struct kept *f, const struct buffer *now, bool there)
{
    return there == f->there && text_equal(buffer_text(now), buffer_text(&f->bytes));
}

/* A file that is replaced whole can be read without the lock. */
enum kept_news kept_look(struct kept *f, size_t most, struct buffer *old, struct problems *p)
{
    struct buffer now = {0};
    bool there;
    if (!read_now(f, most, &now, &there, p)) {
        buffer_release(&now);
        return KEPT_UNREADABLE;
    }
    bool same = is_same(f, &now, there);
    if (!same && old) {
        *old = f->bytes;
        f->bytes = (struct buffer){0};
    }
    buffer_release(&f->bytes);
    f->bytes = now;
    f->there = there;
    return same ? KEPT_SAME : KEPT_CHANGED;
}

static bool write_whole(const char *name, struct text bytes, struct problems *p)
{
    struct disk_output o;
    if (!disk_open(&o, name, p))
        return false;
    if (disk_put(&o, bytes, p))
        return disk_close(&o, p);
    disk_abandon(&o);
    return false;
}

static enum kept_saved save_locked(struct kept *f, struct text bytes, struct problems *p)
{
    struct buffer now = {0}, next = {0};
    bool there, same;
    bool readable = read_now(f, bytes.length + f->bytes.length + (1 << 20), &now, &there, p);
    same = readable && is_same(f, &now, there);
    buffer_release(&now);
    if (!readable)
        return SAVED_NOT;
    if (!same)
        return SAVED_BY_ANOTHER;
    buffer_put(&next, bytes);
    if (next.failed || !write_whole(f->name, bytes, p)) {
        buffer_release(&next);
        return SAVED_NOT;
    }
    buffer_release(&f->bytes);
    f->bytes = next;
    f->there = true;
    return SAVED;
}

enum kept_saved kept_save(struct kept *f, struct text bytes, struct problems *p)
{
    if (!lock(f, p))
        return SAVED_NOT;
    enum kept_saved saved = save_locked(f, bytes, p);
    unlock(f);
    return saved;
}
