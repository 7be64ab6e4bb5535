/* cli/captions.c
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"
#include "cli/form.h"

enum status command_captions(const struct cli *c)
{
    struct job job = {.output = "captions", .as = cli_form(c, "captions")};
    job.write.reflow = c->values[OPTION_REFLOW] != NULL;
    return job.as ? files_run(c, &job) : STATUS_USAGE;
}
