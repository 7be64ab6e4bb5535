/* disk/publish.h: what a recording is published as, put into a folder.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_PUBLISH_H
#define DISHTAKE_DISK_PUBLISH_H

#include "disk/folder.h"
#include "dishtake.h"

/* Writes every file of dishtake_published into the open folder. False: what cannot be written is a
 * problem, or a message of `d`; the caller abandons the folder. */
bool publish_files(struct dishtake *d, struct disk_folder *f,
                   const struct dishtake_write_options *options, struct problems *p);

#endif
