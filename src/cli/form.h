/* cli/form.h: what --as names.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_FORM_H
#define DISHTAKE_CLI_FORM_H

#include "cli/cli.h"

/* The form of `output` that --as names, or its usual one. NULL, with a message, when there is no
 * such form. */
const char *cli_form(const struct cli *c, const char *output);

#endif
