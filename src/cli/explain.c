/* cli/explain.c
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"

enum status command_explain(const struct cli *c)
{
    struct job job = {.output = "explain", .as = "text", .write.at = -1};
    if (!cli_time(c, OPTION_AT, &job.write.at))
        return STATUS_USAGE;
    return files_run(c, &job);
}
