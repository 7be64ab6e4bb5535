/* cli/help.c: help texts, all from the tables of commands, options and formats.
 * SPDX-License-Identifier: MIT */
#include "cli/cli.h"

#include <stdio.h>
#include <string.h>

#include "dishtake.h"

static void print_options(const struct command *command)
{
    for (size_t i = 0; i < OPTIONS; i++) {
        const struct option *o = &OPTION_TABLE[i];
        char left[48];
        if (command ? !option_belongs(o, command) : *o->commands)
            continue;
        snprintf(left, sizeof left, "%c%c%s--%s%s%s", o->letter ? '-' : ' ',
                 o->letter ? o->letter : ' ', o->letter ? ", " : "  ", o->name,
                 o->argument ? " " : "", o->argument ? o->argument : "");
        printf("  %-22s %s\n", left, o->about);
    }
}

/* The forms that --as may name. */
static void print_forms(const struct command *command)
{
    struct dishtake_format f;
    bool any = false;
    for (size_t i = 0; dishtake_format(i, &f); i++) {
        if (strcmp(f.output, command->name) != 0)
            continue;
        printf("%s  %-22s %s\n", any ? "" : "\nForms:\n", f.as, f.about);
        any = true;
    }
}

static void print_command(const struct command *command)
{
    printf("For example: %s\n\nUse: dishtake %s [OPTION]... %s\n\n%s %s.\n%s\nOptions:\n",
           command->example, command->name, command->operands, command->name, command->about,
           strstr(command->operands, "FILE")
               ? "FILE is a timed transcript: SubRip, WebVTT, TTML, timed lines, JSON "
                 "segments or TSV;\n- is standard input.\n"
               : "");
    print_options(command);
    print_forms(command);
}

static void print_all(void)
{
    puts("dishtake turns the timed transcript of a filmed cooking session into written recipes.\n\n"
         "For example:\n"
         "  dishtake card evening.srt          the recipes, to read\n"
         "  dishtake check evening.srt         what to mend before publishing\n\n"
         "Use: dishtake COMMAND [OPTION]... FILE...\n\n"
         "Commands:");
    for (size_t i = 0; i < COMMANDS; i++)
        printf("  %-22s %s\n", COMMAND_TABLE[i].name, COMMAND_TABLE[i].about);
    puts("\nOptions:");
    print_options(NULL);
    puts("\ndishtake COMMAND --help tells of one command. Exit status: 0 done; 1 findings at or "
         "over the level;\n"
         "2 wrong usage; 3 input that could not be read; 4 output that could not be written.\n"
         "It knows only what was said and captioned, and silence about a risk is no proof of "
         "safety.");
}

void help_print(const struct command *command)
{
    if (command)
        print_command(command);
    else
        print_all();
}
