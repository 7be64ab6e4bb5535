/* base/pages.h: memory that the system can fetch again from the program's file.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_PAGES_H
#define DISHTAKE_BASE_PAGES_H

#include <stddef.h>

/* The pages that lie within these bytes take no memory until they are read again. Only for const
 * data of the program: anything else would be lost. Nothing happens where the system has no such
 * call. Any thread may go on reading them meanwhile. */
void pages_forget(const void *at, size_t bytes);

#endif
