/* cli/card.c
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"
#include "cli/form.h"
#include "cli/shown.h"

enum status command_card(const struct cli *c)
{
    struct job job = {.output = "card", .as = cli_form(c, "card")};
    struct buffer style = {0};
    if (!job.as || !cli_whole(c, OPTION_DISH, 1, &job.write.dish))
        return STATUS_USAGE;
    enum status status = cli_shown(c, &job.write, &style);
    job.between = "\n";
    if (status == STATUS_DONE)
        status = files_run(c, &job);
    buffer_release(&style);
    return status;
}
