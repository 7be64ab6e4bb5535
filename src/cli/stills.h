/* cli/stills.h: pictures of the recording, taken by ffmpeg where it is installed.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_STILLS_H
#define DISHTAKE_CLI_STILLS_H

#include "base/buffer.h"
#include "disk/folder.h"
#include "dishtake.h"

/* Names of the pictures that were taken. Owned. */
struct stills {
    char **names;
    size_t count;
};

/* Takes those that `d` asks for into the folder; what could not be taken is told in `talk`, and
 * left out. A bar shows how many there are, unless `quiet`. stills_release in any case. */
void stills_take(struct stills *s, const struct dishtake *d, const char *video,
                 struct disk_folder *folder, bool quiet, struct buffer *talk);
void stills_release(struct stills *s);

#endif
