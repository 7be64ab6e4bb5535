/* base/pages.c
 * SPDX-License-Identifier: MIT */
/* NOLINTNEXTLINE(bugprone-reserved-identifier): the system's own switch */
#define _DEFAULT_SOURCE /* madvise */
#include "base/pages.h"

#include <stdint.h>

#ifdef __linux__
#include <sys/mman.h>

/* Where pages are larger the system refuses what does not begin with one: they stay. */
#define PAGE_BYTES ((uintptr_t) 4096)

/* POSIX has a call of that name, of which the C library makes nothing. */
static void give_back(uintptr_t begin, uintptr_t end)
{
    if (begin < end) /* NOLINTNEXTLINE(performance-no-int-to-ptr): pages are told by number */
        (void) madvise((void *) begin, end - begin, MADV_DONTNEED);
}

void pages_forget(const void *at, size_t bytes)
{
    give_back(((uintptr_t) at + PAGE_BYTES - 1) & ~(PAGE_BYTES - 1),
              ((uintptr_t) at + bytes) & ~(PAGE_BYTES - 1));
}
#else
void pages_forget(const void *at, size_t bytes)
{
    (void) at, (void) bytes;
}
#endif
