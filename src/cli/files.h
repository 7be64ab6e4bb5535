/* cli/files.h: one output of each of many transcripts, several at once, in the order they were
 * named.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_FILES_H
#define DISHTAKE_CLI_FILES_H

#include "base/buffer.h"
#include "cli/cli.h"
#include "dishtake.h"

/* Does what a command does with a recording that was read, instead of writing one output of it; in
 * any thread, for several at once. Tells what went wrong in `talk`. */
typedef enum status job_each(const struct cli *c, struct dishtake *d, size_t number, void *with,
                             struct buffer *talk);

/* What to do with each file. */
struct job {
    job_each *each;          /* NULL: write `output` */
    void *with;              /* its own */
    const char *output, *as; /* a row of dishtake_format */
    struct dishtake_write_options write;
    bool json_lines;             /* a file that cannot be read gets a line all the same */
    const char *between;         /* stands between two files' outputs; NULL: nothing */
    bool fails;                  /* exit with STATUS_FOUND on findings ... */
    enum dishtake_level fail_on; /* ... of this level or over */
};

/* Reads the operands with the options that all commands share, and writes. The worst status of all.
 */
enum status files_run(const struct cli *c, const struct job *job);
/* The same with a handle that is ready. */
enum status files_run_with(const struct cli *c, const struct job *job, struct dishtake *d);

#endif
