/* cli/main.c: the program.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>

#include "cli/cli.h"
#include "dishtake.h"

static enum status run(struct cli *c)
{
    if (c->values[OPTION_VERSION]) {
        printf("dishtake %s\n", dishtake_version());
        return STATUS_DONE;
    }
    if (c->values[OPTION_HELP]) {
        help_print(c->command);
        return STATUS_DONE;
    }
    if (!c->command) {
        help_print(NULL);
        return STATUS_USAGE;
    }
    return cli_dishes(c) ? c->command->run(c) : STATUS_USAGE;
}

int main(int argc, char **argv)
{
    const char **operands = calloc((size_t) argc + 1, sizeof *operands);
    struct cli c = {.operands = operands};
    enum status status = STATUS_UNREADABLE;
    if (!operands)
        fputs("dishtake: no memory is left\n", stderr);
    else
        status = cli_parse(&c, argc, argv) ? run(&c) : STATUS_USAGE;
    free(operands);
    if (fflush(stdout) != 0 && status == STATUS_DONE) {
        perror("dishtake: standard output cannot be written");
        status = STATUS_UNWRITTEN;
    }
    return (int) status;
}
