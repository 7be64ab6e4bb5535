/* cli/form.c
 * SPDX-License-Identifier: MIT */
#include "cli/form.h"

#include <stdio.h>
#include <string.h>

#include "dishtake.h"

const char *cli_form(const struct cli *c, const char *output)
{
    const char *typed = c->values[OPTION_AS], *names[32] = {NULL};
    size_t count = 0;
    struct dishtake_format f;
    for (size_t i = 0; dishtake_format(i, &f) && count < sizeof names / sizeof *names; i++)
        if (strcmp(f.output, output) == 0)
            names[count++] = f.as;
    if (!typed)
        return names[0];
    for (size_t i = 0; i < count; i++)
        if (strcmp(names[i], typed) == 0)
            return names[i];
    fprintf(stderr, "dishtake: %s cannot be written as %s; it can as", c->command->name, typed);
    for (size_t i = 0; i < count; i++)
        fprintf(stderr, "%s %s", i ? "," : "", names[i]);
    fputc('\n', stderr);
    return NULL;
}
