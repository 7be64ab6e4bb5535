/* cli/progress.h: a bar on standard error, where that is a terminal and the work takes over a
 * second.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_PROGRESS_H
#define DISHTAKE_CLI_PROGRESS_H

#include <stdbool.h>
#include <stddef.h>
#include <time.h>

struct progress {
    const char *what; /* borrowed: what is counted, "files" */
    size_t count;
    bool wanted, shown;
    struct timespec begin;
};

struct progress progress_begin(const char *what, size_t count, bool quiet);
void progress_show(struct progress *p, size_t done);
/* Takes the bar away, so that something else can be printed. */
void progress_hide(struct progress *p);

#endif
