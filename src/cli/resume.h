/* cli/resume.h: what an output of --resume depends on.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_RESUME_H
#define DISHTAKE_CLI_RESUME_H

#include "cli/cli.h"
#include "cli/grammar.h"
#include "disk/resume.h"

/* Opens what an earlier run of this very program, with this grammar and these options, left; says
 * so on standard error when it was made by something else, and all is done anew. False, after
 * saying why, when it cannot be used. resume_close in any case. */
bool resume_begin(struct resume *r, const struct cli *c, const struct grammar_source *grammar);
/* Stands for a file: its name is in the output too. */
uint64_t resume_key(const char *name, struct text transcript, struct text edits, struct text list);

#endif
