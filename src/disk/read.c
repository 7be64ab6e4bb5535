/* disk/read.c
 * SPDX-License-Identifier: MIT */
#include "disk/disk.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <unistd.h>

static const char *reason(int error)
{
    switch (error) {
    case ENOENT:
        return "there is no such file";
    case EISDIR:
        return "this is a folder; a file is needed";
    default:
        return strerror(error);
    }
}

static bool read_all(int file, const char *name, size_t most, struct buffer *out,
                     struct problems *p)
{
    char piece[64 * 1024];
    struct place here = {.file = name};
    for (;;) {
        ssize_t n = read(file, piece, sizeof piece);
        if (n < 0 && errno == EINTR)
            continue;
        if (n < 0)
            return problem(p, here, "cannot be read: %s", reason(errno));
        if (n == 0)
            break;
        if ((size_t) n > most - out->length)
            return problem(p, here, "too large: more than %zu MB", most >> 20);
        buffer_put(out, (struct text){piece, (size_t) n});
    }
    return !out->failed || problem(p, here, "too large: no memory is left");
}

bool disk_read(const char *name, size_t most, struct buffer *out, struct problems *p)
{
    if (strcmp(name, "-") == 0)
        return read_all(STDIN_FILENO, name, most, out, p);
    int file = open(name, O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return problem(p, (struct place){.file = name}, "cannot be read: %s", reason(errno));
    bool done = read_all(file, name, most, out, p);
    close(file);
    return done;
}
