/* disk/mode.h: what a new file or folder may be used for, and by whom.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_MODE_H
#define DISHTAKE_DISK_MODE_H

#include <sys/types.h>

/* `asked` without what the process's umask takes away, as open() and mkdir() give it; for what
 * mkostemp() and mkdtemp() made for the owner alone. Any thread. */
mode_t mode_of_new(mode_t asked);

#endif
