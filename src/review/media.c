/* review/media.c
 * SPDX-License-Identifier: MIT */
#include "review/media.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

struct media_type {
    const char *ending, *type;
    bool pictures;
};

static const struct media_type TYPES[] = {
#define MEDIA(ending, type, pictures) {ending, type, pictures},
#include "review/media.def"
#undef MEDIA
};

static bool ends_with(const char *name, const char *ending)
{
    size_t length = strlen(name), tail = strlen(ending);
    if (length < tail)
        return false;
    for (size_t i = 0; i < tail; i++) {
        char c = name[length - tail + i];
        if ((c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c) != ending[i])
            return false;
    }
    return true;
}

static const struct media_type *type_of(const char *name)
{
    for (size_t i = 0; i < sizeof TYPES / sizeof *TYPES; i++)
        if (ends_with(name, TYPES[i].ending))
            return &TYPES[i];
    return NULL;
}

bool media_open(struct media *m, const char *name, struct problems *p)
{
    struct stat s;
    struct place here = {.file = name};
    const struct media_type *type = type_of(name);
    *m = (struct media){.file = -1};
    if (!type)
        return problem(
            p, here,
            "is of no kind that browsers play: .mp4, .webm, .ogv, .ogg, .mp3, .m4a, .flac, .wav");
    m->file = open(name, O_RDONLY | O_CLOEXEC);
    if (m->file < 0)
        return problem(p, here, "cannot be read: %s", strerror(errno));
    if (fstat(m->file, &s) != 0 || !S_ISREG(s.st_mode)) {
        media_close(m);
        return problem(p, here, "is no file that can be played from any place in it");
    }
    m->type = type->type;
    m->pictures = type->pictures;
    return true;
}

void media_close(struct media *m)
{
    if (m->file >= 0)
        close(m->file);
    m->file = -1;
}

uint64_t media_size(const struct media *m)
{
    struct stat s;
    return m->file >= 0 && fstat(m->file, &s) == 0 && s.st_size > 0 ? (uint64_t) s.st_size : 0;
}
