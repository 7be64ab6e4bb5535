/* cli/check.c
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "cli/files.h"
#include "cli/form.h"

/* In the order of enum dishtake_level. */
static const char *const LEVELS[] = {"note", "ask", "fix", "stop"};

static bool read_level(const struct cli *c, enum dishtake_level *level)
{
    const char *typed = c->values[OPTION_FAIL_ON];
    if (!typed)
        return true;
    for (int i = DISHTAKE_NOTE; i <= DISHTAKE_STOP; i++)
        if (strcmp(typed, LEVELS[i]) == 0) {
            *level = (enum dishtake_level) i;
            return true;
        }
    cli_usage("--fail-on %s: note, ask, fix or stop is needed", typed);
    return false;
}

enum status command_check(const struct cli *c)
{
    struct job job = {.output = "findings",
                      .as = cli_form(c, "findings"),
                      .fails = true,
                      .fail_on = DISHTAKE_STOP};
    if (!job.as || !read_level(c, &job.fail_on))
        return STATUS_USAGE;
    return files_run(c, &job);
}
