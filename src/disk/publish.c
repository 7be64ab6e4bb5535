/* disk/publish.c
 * SPDX-License-Identifier: MIT */
#include "disk/publish.h"

bool publish_files(struct dishtake *d, struct disk_folder *f,
                   const struct dishtake_write_options *options, struct problems *p)
{
    struct dishtake_published file;
    struct dishtake_write_options o = *options;
    size_t length;
    for (size_t i = 0; dishtake_published(d, i, &file); i++) {
        o.dish = file.dish;
        const char *out = dishtake_write(d, file.output, file.as, &o, &length);
        if (!out || !folder_put(f, file.name, (struct text){out, length}, p))
            return false;
    }
    return true;
}
