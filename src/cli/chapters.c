/* cli/chapters.c
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"
#include "cli/form.h"

enum status command_chapters(const struct cli *c)
{
    struct job job = {.output = "chapters", .as = cli_form(c, "chapters")};
    job.write.detail = c->values[OPTION_DETAIL] != NULL;
    return job.as ? files_run(c, &job) : STATUS_USAGE;
}
