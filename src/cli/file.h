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
    bool before;  /* with --resume: was done by an earlier run */
    bool keep;    /* the same: is to be kept for a later one */
    uint64_t key; /* that it is kept under */
};

/* Fills in the zeroed result of the operand with that number from 0. */
void file_do(struct hand *h, size_t number, struct result *r);

/* results.c, of all the files of a run once they are done. Names, on stderr, the files that are not
 * in what was written, when some are and there are several. */
void tell_missing(const struct task *t, const struct result *results);
/* Says how many were done by an earlier run. */
void tell_before(const struct task *t, const struct result *results);
/* Whether any file gave something to write; where none did, an old output of that name is left
 * alone. */
bool any_done(const struct task *t, const struct result *results);

#endif
