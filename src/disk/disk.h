/* disk/disk.h: whole files in, whole files out. The only place that opens one.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_DISK_H
#define DISHTAKE_DISK_DISK_H

#include "base/buffer.h"
#include "base/problem.h"

/* Puts the file's bytes into `out`; "-" is standard input. False, with a problem that says why,
 * when it cannot be read or has more than `most` bytes. */
bool disk_read(const char *name, size_t most, struct buffer *out, struct problems *p);

/* An output on its way: a file appears under its name only when it is whole; "-" is standard
 * output. */
struct disk_output {
    const char *name; /* borrowed */
    char *temporary;  /* owned; NULL for standard output */
    int file;
};

/* Clears away what dead runs left beside it. */
bool disk_open(struct disk_output *o, const char *name, struct problems *p);
bool disk_put(struct disk_output *o, struct text bytes, struct problems *p);
/* Brings it to the disk and gives it its name. */
bool disk_close(struct disk_output *o, struct problems *p);
/* Gives it up: nothing is left of it. */
void disk_abandon(struct disk_output *o);

/* malloc, the caller frees; NULL: no memory. */
char *folder_name(const char *name); /* the folder a file stands in, with its '/'; "./" */
#endif
