/* cli/check.c
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"
#include "cli/form.h"
#include "model/finding.h"

_Static_assert((int) LEVEL_NOTE == (int) DISHTAKE_NOTE && (int) LEVEL_STOP == (int) DISHTAKE_STOP,
               "levels are the same inside and outside");

static bool read_level(const struct cli *c, enum dishtake_level *level)
{
    const char *typed = c->values[OPTION_FAIL_ON];
    enum finding_level read;
    if (!typed)
        return true;
    if (!level_read(text_from(typed), &read)) {
        cli_usage("--fail-on %s: note, ask, fix or stop is needed", typed);
        return false;
    }
    *level = (enum dishtake_level) read;
    return true;
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
