/* pack/build_files.h: what the tools of the build (embed.c, precompile.c) do with the files that
 * they are given.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_BUILD_FILES_H
#define DISHTAKE_PACK_BUILD_FILES_H

#include <stdlib.h>
#include <string.h>

/* A file's name in a list of files begins after its first folder. Borrowed from `path`. */
static inline const char *listed_name(const char *path)
{
    const char *slash = strchr(path, '/');
    return slash ? slash + 1 : path;
}

static inline int compare_names(const void *a, const void *b)
{
    return strcmp(*(char *const *) a, *(char *const *) b);
}

/* So that the same files make the same C file whatever their order. */
static inline void sort_names(char **paths, size_t count)
{
    qsort(paths, count, sizeof *paths, compare_names);
}

#endif
