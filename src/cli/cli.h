/* cli/cli.h: what the program's parts share: the command line as it was read, and how a run ends.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_CLI_H
#define DISHTAKE_CLI_CLI_H

#include <stdbool.h>
#include <stddef.h>

#include "base/problem.h"

/* What the program's exit status says. */
enum status {
    STATUS_DONE = 0,
    STATUS_FOUND = 1,      /* findings at or over the level */
    STATUS_USAGE = 2,      /* wrong usage */
    STATUS_UNREADABLE = 3, /* input that could not be read */
    STATUS_UNWRITTEN = 4,  /* output that could not be written */
    STATUS_BUG = 70        /* an error of our own */
};

enum option_id {
#define OPTION(id, letter, name, argument, commands, about) OPTION_##id,
#include "cli/options.def"
#undef OPTION
    OPTIONS
};

struct option {
    char letter;
    const char *name, *argument, *commands, *about;
};
extern const struct option OPTION_TABLE[OPTIONS];

struct cli;

struct command {
    const char *name, *operands, *about, *example;
    enum status (*run)(const struct cli *c);
};
extern const struct command COMMAND_TABLE[];
extern const size_t COMMANDS;

#define COMMAND(name, operands, about, example) enum status command_##name(const struct cli *c);
#include "cli/commands.def"
#undef COMMAND

/* The command line. Strings are borrowed from argv. */
struct cli {
    const struct command *command;
    const char *values[OPTIONS]; /* NULL: not given; "" for an option without argument */
    const char **operands;       /* owned by main */
    size_t count;
    size_t dishes; /* how many the user says there are; 0: nothing was said */
};

/* Fills in `c`, whose `operands` has room for all of argv. False, with one message on standard
 * error, on wrong usage. */
bool cli_parse(struct cli *c, int argc, char **argv);
bool option_belongs(const struct option *o, const struct command *command);
/* A whole number from `least` up to a million; false, with a message, when the value is none.
 * Untouched when the option was not given. */
bool cli_whole(const struct cli *c, enum option_id id, size_t least, size_t *value);
/* Reads `dishes`; false, with a message, when what was said is no number of dishes. */
bool cli_dishes(struct cli *c);
/* "3:15", "1:02:33", "195" -> seconds. */
bool cli_time(const struct cli *c, enum option_id id, double *seconds);
/* Tells of wrong usage on standard error, and gives STATUS_USAGE. */
enum status cli_usage(const char *format, ...) __attribute__((format(printf, 1, 2)));

/* Help on standard output: of one command, or of all where it is NULL. */
void help_print(const struct command *command);

/* The likest of `count` words to a mistyped one; NULL when none is like it. */
const char *likest(const char *typed, const char *const *words, size_t count);

#endif
