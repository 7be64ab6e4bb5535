/* cli/progress.c
 * SPDX-License-Identifier: MIT */
#include "cli/progress.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define BAR_CELLS 40

/* A terminal that says it is dumb cannot take a line back. */
static bool can_show(void)
{
    const char *terminal = getenv("TERM");
    return isatty(STDERR_FILENO) && terminal && strcmp(terminal, "dumb") != 0;
}

struct progress progress_begin(const char *what, size_t count, bool quiet)
{
    struct progress p = {.what = what, .count = count, .wanted = !quiet && count > 1 && can_show()};
    clock_gettime(CLOCK_MONOTONIC, &p.begin);
    return p;
}

void progress_show(struct progress *p, size_t done)
{
    struct timespec now;
    if (!p->wanted)
        return;
    clock_gettime(CLOCK_MONOTONIC, &now);
    if (now.tv_sec - p->begin.tv_sec < 1)
        return;
    int full = (int) (done * BAR_CELLS / p->count);
    fprintf(stderr, "\r[%.*s%*s] %zu of %zu %s", full, "########################################",
            BAR_CELLS - full, "", done, p->count, p->what);
    fflush(stderr);
    p->shown = true;
}

void progress_hide(struct progress *p)
{
    if (p->shown)
        fputs("\r\033[K", stderr);
    p->shown = false;
}
