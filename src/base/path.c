/* base/path.c
 * SPDX-License-Identifier: MIT */
#include "base/path.h"

struct text path_folder(const char *path)
{
    const char *slash = strrchr(path, '/');
    return (struct text){path, slash ? (size_t) (slash - path) + 1 : 0};
}

const char *path_file(const char *path)
{
    return path + path_folder(path).length;
}

struct text path_stem(const char *path)
{
    const char *file = path_file(path), *dot = strrchr(file, '.');
    return (struct text){path, dot && dot > file ? (size_t) (dot - path) : strlen(path)};
}
