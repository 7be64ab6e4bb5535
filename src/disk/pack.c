/* disk/pack.c
 * SPDX-License-Identifier: MIT */
#include "disk/pack.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "disk/disk.h"

#define PACK_FILE_BYTES_MAX ((size_t) 16 << 20)
#define PACK_FILES_MAX 1000

struct disk_file {
    struct disk_file *next;
    struct buffer bytes;
    char path[];
};

/* FOLDER/file, without bytes yet; NULL: no memory. */
static struct disk_file *new_file(struct disk_pack *k, const char *folder, struct text file)
{
    size_t room = strlen(folder) + file.length + 2;
    struct disk_file *f = calloc(1, sizeof *f + room);
    if (!f)
        return NULL;
    snprintf(f->path, room, "%s/%.*s", folder, TEXT(file));
    f->next = k->owned;
    k->owned = f;
    return f;
}

static bool list_file(struct disk_pack *k, const struct disk_file *f)
{
    if (k->count == k->room) {
        size_t room = k->room ? k->room * 2 : 32;
        struct pack_file *files = realloc(k->files, room * sizeof *files);
        if (!files)
            return false;
        k->files = files;
        k->room = room;
    }
    k->files[k->count++] = (struct pack_file){f->path, buffer_text(&f->bytes)};
    return true;
}

static bool read_one(const char *folder, struct text file, struct disk_pack *k, struct problems *p)
{
    struct disk_file *f = new_file(k, folder, file);
    if (f && k->count && access(f->path, F_OK) != 0)
        return true;
    if (f && !disk_read(f->path, PACK_FILE_BYTES_MAX, &f->bytes, p))
        return false;
    return (f && list_file(k, f))
           || problem(p, (struct place){.file = folder}, "cannot be read: no memory is left");
}

/* A name that stays inside the folder, or in the tables beside it. The loader reports the others.
 */
static bool safe_name(struct text name)
{
    struct text part,
        rest = text_starts(name, "../common/") ? text_slice(name, 3, name.length) : name;
    if (name.length > 200 || memchr(name.at, 0, name.length))
        return false;
    while (text_part(&rest, '/', &part))
        if (!part.length || part.at[0] == '.')
            return false;
    return true;
}

static bool read_listed(const char *folder, struct disk_pack *k, struct problems *p)
{
    struct text rest = k->files[0].bytes, line;
    bool done = true;
    while (text_part(&rest, '\n', &line) && k->count < PACK_FILES_MAX) {
        line = text_trim(line);
        if (line.length && line.at[0] != '#' && safe_name(line))
            done &= read_one(folder, line, k, p);
    }
    return done;
}

bool disk_pack_read(const char *folder, struct disk_pack *out, struct problems *p)
{
    struct text path = text_from(folder);
    *out = (struct disk_pack){0};
    while (path.length > 1 && path.at[path.length - 1] == '/')
        path.length--;
    char *clean = strndup(path.at, path.length);
    if (!clean)
        return problem(p, (struct place){.file = folder}, "cannot be read: no memory is left");
    bool done = read_one(clean, TEXT_OF("pack.list"), out, p) && read_listed(clean, out, p);
    free(clean);
    return done;
}

void disk_pack_release(struct disk_pack *k)
{
    while (k->owned) {
        struct disk_file *f = k->owned;
        k->owned = f->next;
        buffer_release(&f->bytes);
        free(f);
    }
    free(k->files);
    *k = (struct disk_pack){0};
}
