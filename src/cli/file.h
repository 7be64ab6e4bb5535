/* cli/file.h: one file of a run: read, worked out, written into memory.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_FILE_H
#define DISHTAKE_CLI_FILE_H

#include "cli/files.h"
#include "cli/resume.h"

/* What is the same for all files of a run. */
struct task {
    const struct cli *c;
    const struct job *job;
    struct resume *resume; /* borrowed; NULL without --resume */
    struct buffer list;    /* the bytes of the ingredient list */
    bool alone;            /* an output is written before the next file is read */
};

/* What one thread needs. */
struct hand {
    const struct task *task;
    struct dishtake *d;
    struct buffer bytes, edits; /* of the file at hand */
};

struct result {
    struct buffer out, talk;
    struct text made; /* the output, borrowed from a hand that is alone; empty: it is in `out` */
    enum status status;
    bool ready;
    bool before,
        keep;     /* with --resume: was done by an earlier run; is to be kept for a later one */
    uint64_t key; /* that it is kept under */
};

/* Fills in the zeroed result of the operand with that number from 0. */
void file_do(struct hand *h, size_t number, struct result *r);

#endif
