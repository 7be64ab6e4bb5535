/* tools/read_file.h: a transcript's bytes, for the tools that print what tables are made from.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TOOLS_READ_FILE_H
#define DISHTAKE_TOOLS_READ_FILE_H

#include <stdio.h>
#include <stdlib.h>

#include "base/text.h"

#define FILE_BYTES ((size_t) 8 << 20)

/* At most FILE_BYTES, which `room` must have; a file that cannot be read ends the tool. */
static inline struct text read_file(const char *name, char *room)
{
    FILE *file = fopen(name, "rb");
    if (!file) {
        perror(name);
        exit(3);
    }
    size_t length = fread(room, 1, FILE_BYTES, file);
    fclose(file);
    return (struct text){room, length};
}

#endif
