/* write/publish.h: which files a recording is published as, what they are called, and where
 * pictures and links point.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_PUBLISH_H
#define DISHTAKE_WRITE_PUBLISH_H

#include "write/write.h"

#define FILE_NAME_BYTES 96

/* A row of the folder: a format, of one dish or (dish 0) of the recording. */
struct published {
    char name[FILE_NAME_BYTES];
    const char *output, *as;
    size_t dish; /* from 1 */
};

/* The `i`th file of the folder from 0; false past the last. */
bool published_at(const struct recording *r, size_t i, struct published *file);

/* A picture of the recording at a moment: of each step, and of the finished dish. */
struct still {
    char name[FILE_NAME_BYTES];
    double at; /* seconds */
};
bool still_at(const struct recording *r, size_t i, struct still *still);

/* "02-lemon-bars": lower case, ASCII; dishes count from 1. */
struct text dish_file(const struct writing *w, const struct recording *r, size_t dish);
/* The name of the picture of a step, or of the finished dish (`step` NULL); empty where there is no
 * such picture. */
struct text still_name(const struct writing *w, const struct recording *r, size_t dish,
                       const size_t *step);

/* The address of a second of the video; empty without --video-url. */
struct text moment_url(const struct writing *w, double seconds);

#endif
