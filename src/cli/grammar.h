/* cli/grammar.h: the grammar that a run uses, built in or from --grammar.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_GRAMMAR_H
#define DISHTAKE_CLI_GRAMMAR_H

#include "cli/cli.h"
#include "disk/pack.h"
#include "dishtake.h"

/* The files of a pack on disk; they must outlive the handle. */
struct grammar_source {
    struct disk_pack disk;
    struct dishtake_file *files;
};

/* A ready handle; NULL, after saying on standard error what is wrong, when there is none. `folder`
 * NULL is the built-in grammar. grammar_close frees, also after a failure. */
struct dishtake *grammar_open(struct grammar_source *s, const char *folder);
void grammar_close(struct grammar_source *s, struct dishtake *d);

#endif
