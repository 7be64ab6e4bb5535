/* disk/mode.c: the system tells the umask only where it takes another one for it, which holds for
 * all threads of the process. So it is asked once, while every other thread that wants to know
 * waits before it makes anything: two that asked at the same time could each be told the other's,
 * and leave the process without one.
 * SPDX-License-Identifier: MIT */
#include "disk/mode.h"

#include <pthread.h>
#include <sys/stat.h>

static pthread_once_t asked_once = PTHREAD_ONCE_INIT;
static mode_t mask;

static void ask(void)
{
    mask = umask(0);
    umask(mask);
}

mode_t mode_of_new(mode_t asked)
{
    pthread_once(&asked_once, ask);
    return asked & ~mask;
}
