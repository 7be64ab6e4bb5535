/* disk/leftover.h: temporary files and folders beside what is being written, and those that a
 * killed run left there. Who writes one holds it locked, so what nobody holds is left over.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_LEFTOVER_H
#define DISHTAKE_DISK_LEFTOVER_H

#include <stdbool.h>

/* Behind the temporary name of a folder: what stood in its place, put aside. */
#define TEMPORARY_OLD ".old"

/* Makes and locks a file or folder beside `name`, in one file system with it,
 * "DIR/.name.new.XXXXXX", which goes to `*path` (malloc, the caller frees). A descriptor, closed by
 * the caller when the thing has its name or is gone; -1, with errno and `*path` NULL, when it
 * cannot be made. */
int temporary_file(const char *name, char **path);
int temporary_folder(const char *name, char **path);

/* Removes what dead runs left beside `name`; only what has a temporary name of `name`, plain files
 * and folders of plain files. A folder that a run had put aside comes back where `name` is gone. */
void leftovers_clear(const char *name);

/* Whether an entry is the folder itself or the one above it. */
bool is_dots(const char *name);

/* The plain files in the folder, then the folder itself. */
void folder_remove(const char *path);

#endif
