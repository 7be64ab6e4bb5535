/* disk/resume.h: what a run over many files has done so far, kept in NAME.resume beside its output
 * NAME, so that a run that was stopped or killed is taken up again.
 *
 * A line that says what made it, then a head and the output's bytes for each file that was done.
 * Only ever added to at its end, so whatever moment a run is killed at, all but the last of it is
 * whole, and a half one is seen by its digest and done again.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_RESUME_H
#define DISHTAKE_DISK_RESUME_H

#include <stdint.h>

#include "base/buffer.h"
#include "base/problem.h"

struct resume_row;

struct resume {
    char *name;              /* owned; "NAME.resume" */
    int file;                /* locked, so that two runs do not write it at once; -1: not open */
    size_t end;              /* bytes that are whole */
    struct resume_row *rows; /* owned; what it had when it was opened */
    size_t count, room;
    bool anew; /* there was one, made by something else: nothing of it is used */
};

/* `made_by` stands for all that the outputs depend on beside the files: program, grammar, options.
 * False, with a problem, when it cannot be read or written or another run is at it. resume_close in
 * any case. */
bool resume_open(struct resume *r, const char *output, uint64_t made_by, struct problems *p);
void resume_close(struct resume *r);
/* Puts the output that was kept under `key` behind `out`; false where there is none that is whole.
 * Any thread, also while another one adds. */
bool resume_find(const struct resume *r, uint64_t key, struct buffer *out);
/* Keeps an output for the next run. */
bool resume_add(struct resume *r, uint64_t key, struct text output, struct problems *p);

#endif
