/* base/path.h: the parts of a file's name, as '/' and '.' divide it. Nothing is looked up.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_PATH_H
#define DISHTAKE_BASE_PATH_H

#include "base/text.h"

struct text path_folder(const char *path); /* "a/b.srt" -> "a/"; empty without a '/' */
const char *path_file(const char *path);   /* "a/b.srt" -> "b.srt" */
struct text path_stem(const char *path);   /* "a/b.srt" -> "a/b"; ".hidden" has no ending */

#endif
