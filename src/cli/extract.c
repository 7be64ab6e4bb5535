/* cli/extract.c
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "cli/files.h"

enum status command_extract(const struct cli *c)
{
    const char *output = c->values[OPTION_OUTPUT];
    bool lines = c->count > 1;
    if (c->values[OPTION_RESUME] && (!output || strcmp(output, "-") == 0))
        return cli_usage("--resume needs a file to take up again: -o FILE");
    struct job job = {
        .output = "recipes", .as = "json", .json_lines = lines, .write.one_line = lines};
    return files_run(c, &job);
}
