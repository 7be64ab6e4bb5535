/* disk/pack.h: a grammar pack's files, from a folder.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_PACK_H
#define DISHTAKE_DISK_PACK_H

#include "base/problem.h"
#include "pack/pack.h"

struct disk_file;

/* The files that FOLDER/pack.list names, and the list itself first, under their paths. Owns them
 * all. */
struct disk_pack {
    struct pack_file *files;
    size_t count, room;
    struct disk_file *owned; /* every path and all bytes */
};

/* False, with problems, when there is no pack to read or a file of it cannot be read. A listed file
 * that is not there is left out: the pack's loader says so, with the list's line. disk_pack_release
 * frees, also after a failure; problems borrow the paths until then. */
bool disk_pack_read(const char *folder, struct disk_pack *out, struct problems *p);
void disk_pack_release(struct disk_pack *k);

#endif
