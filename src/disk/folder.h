/* disk/folder.h: a folder of files that appears whole or not at all.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_FOLDER_H
#define DISHTAKE_DISK_FOLDER_H

#include "base/buffer.h"
#include "base/problem.h"

/* The list of a folder's files, in it; what it names may be replaced, and nothing else. */
#define FOLDER_LIST ".published"

struct disk_folder {
    char *name;         /* owned; without a slash at its end */
    char *temporary;    /* owned; the folder being filled, beside it; NULL: none */
    int held;           /* its lock, with which others see that it is being filled */
    struct buffer list; /* of what was put, a name a line */
};

/* Clears away what dead runs left beside it. False, with a problem, where there is no place for it,
 * or where it exists and has a file that an earlier folder_close did not leave there.
 * folder_abandon in any case. */
bool folder_open(struct disk_folder *f, const char *name, struct problems *p);
bool folder_put(struct disk_folder *f, const char *file, struct text bytes, struct problems *p);
/* The path of a file that another program writes into the folder; malloc, the caller frees; NULL:
 * no memory. folder_add tells that it did. */
char *folder_path(const struct disk_folder *f, const char *file);
void folder_add(struct disk_folder *f, const char *file);
/* Gives the folder its name; what stood there before goes. */
bool folder_close(struct disk_folder *f, struct problems *p);
/* Nothing is left of what was not closed. */
void folder_abandon(struct disk_folder *f);

#endif
