/* cli/parse.c: argv -> struct cli. Options may stand anywhere; "--" ends them.
 * SPDX-License-Identifier: MIT */
#include "cli/cli.h"

#include <errno.h>
#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

const struct option OPTION_TABLE[OPTIONS] = {
#define OPTION(id, letter, name, argument, commands, about) \
    {letter, name, argument, commands, about},
#include "cli/options.def"
#undef OPTION
};

const struct command COMMAND_TABLE[] = {
#define COMMAND(name, operands, about, example) {#name, operands, about, example, command_##name},
#include "cli/commands.def"
#undef COMMAND
};
const size_t COMMANDS = sizeof COMMAND_TABLE / sizeof *COMMAND_TABLE;

enum status cli_usage(const char *format, ...)
{
    va_list args;
    fputs("dishtake: ", stderr);
    va_start(args, format);
    vfprintf(stderr, format, args);
    va_end(args);
    fputc('\n', stderr);
    return STATUS_USAGE;
}

bool option_belongs(const struct option *o, const struct command *command)
{
    if (!*o->commands)
        return true;
    size_t length = strlen(command->name);
    for (const char *at = o->commands; (at = strstr(at, command->name)); at += length)
        if ((at == o->commands || at[-1] == ' ') && (at[length] == ' ' || !at[length]))
            return true;
    return false;
}

static bool unknown_option(const char *typed, size_t length)
{
    const char *names[OPTIONS];
    char word[64];
    for (size_t i = 0; i < OPTIONS; i++)
        names[i] = OPTION_TABLE[i].name;
    snprintf(word, sizeof word, "%.*s", (int) (length < sizeof word ? length : sizeof word), typed);
    const char *like = likest(word, names, OPTIONS);
    if (like)
        cli_usage("there is no option --%s; did you mean --%s?", word, like);
    else
        cli_usage("there is no option --%s; see dishtake --help", word);
    return false;
}

static const struct option *long_option(const char *name, size_t length)
{
    for (size_t i = 0; i < OPTIONS; i++)
        if (strlen(OPTION_TABLE[i].name) == length && !strncmp(OPTION_TABLE[i].name, name, length))
            return &OPTION_TABLE[i];
    return NULL;
}

static const struct option *short_option(char letter)
{
    for (size_t i = 0; i < OPTIONS; i++)
        if (letter && OPTION_TABLE[i].letter == letter)
            return &OPTION_TABLE[i];
    return NULL;
}

/* Notes the option; `attached` is what followed it in the same word, `next` the word after. Sets
 * `*took_next`. */
static bool take(struct cli *c, const struct option *o, const char *attached, const char *next,
                 bool *took_next)
{
    if (!o->argument && attached) {
        cli_usage("--%s takes no value", o->name);
        return false;
    }
    if (o->argument && !attached && !next) {
        cli_usage("--%s needs a value: --%s %s", o->name, o->name, o->argument);
        return false;
    }
    *took_next = o->argument && !attached;
    c->values[o - OPTION_TABLE] = !o->argument ? "" : attached ? attached : next;
    return true;
}

static bool take_long(struct cli *c, const char *word, const char *next, bool *took_next)
{
    size_t length = strcspn(word, "=");
    const struct option *o = long_option(word, length);
    if (!o)
        return unknown_option(word, length);
    return take(c, o, word[length] ? word + length + 1 : NULL, next, took_next);
}

/* "-qj4" is -q and -j 4. */
static bool take_short(struct cli *c, const char *letters, const char *next, bool *took_next)
{
    for (; *letters; letters++) {
        const struct option *o = short_option(*letters);
        if (!o) {
            cli_usage("there is no option -%c; see dishtake --help", *letters);
            return false;
        }
        if (o->argument)
            return take(c, o, letters[1] ? letters + 1 : NULL, next, took_next);
        take(c, o, NULL, NULL, took_next);
    }
    return true;
}

static bool take_words(struct cli *c, int argc, char **argv)
{
    bool options = true;
    for (int i = 1; i < argc; i++) {
        const char *word = argv[i], *next = i + 1 < argc ? argv[i + 1] : NULL;
        bool took_next = false;
        if (options && strcmp(word, "--") == 0)
            options = false;
        else if (!options || word[0] != '-' || !word[1])
            c->operands[c->count++] = word;
        else if (!(word[1] == '-' ? take_long(c, word + 2, next, &took_next)
                                  : take_short(c, word + 1, next, &took_next)))
            return false;
        i += took_next;
    }
    return true;
}

static const struct command *find_command(const char *name)
{
    for (size_t i = 0; i < COMMANDS; i++)
        if (strcmp(COMMAND_TABLE[i].name, name) == 0)
            return &COMMAND_TABLE[i];
    return NULL;
}

/* "help" and "help COMMAND" are "--help" and "COMMAND --help". */
static void take_help(struct cli *c)
{
    if (c->count && strcmp(c->operands[0], "help") == 0) {
        c->values[OPTION_HELP] = "";
        c->operands++;
        c->count--;
    }
}

static bool take_command(struct cli *c)
{
    const char *names[sizeof COMMAND_TABLE / sizeof *COMMAND_TABLE], *like;
    for (size_t i = 0; i < COMMANDS; i++)
        names[i] = COMMAND_TABLE[i].name;
    c->command = find_command(c->operands[0]);
    if (!c->command) {
        like = likest(c->operands[0], names, COMMANDS);
        if (like)
            cli_usage("there is no command \"%s\"; did you mean %s?", c->operands[0], like);
        else
            cli_usage("there is no command \"%s\"; see dishtake --help", c->operands[0]);
        return false;
    }
    c->operands++;
    c->count--;
    return true;
}

static bool options_belong(const struct cli *c)
{
    for (size_t i = 0; i < OPTIONS; i++)
        if (c->values[i] && !option_belongs(&OPTION_TABLE[i], c->command)) {
            cli_usage("%s has no option --%s; see dishtake %s --help", c->command->name,
                      OPTION_TABLE[i].name, c->command->name);
            return false;
        }
    return true;
}

static bool operands_fit(const struct cli *c)
{
    bool many = strstr(c->command->operands, "...") != NULL;
    if (c->count && (many || c->count == 1))
        return true;
    if (c->count)
        cli_usage("%s takes one %s", c->command->name, c->command->operands);
    else
        cli_usage("%s needs %s, as in: %s", c->command->name, c->command->operands,
                  c->command->example);
    return false;
}

bool cli_parse(struct cli *c, int argc, char **argv)
{
    if (!take_words(c, argc, argv))
        return false;
    take_help(c);
    if (!c->count)
        return true;
    if (!take_command(c) || !options_belong(c))
        return false;
    return c->values[OPTION_HELP] || c->values[OPTION_VERSION] || operands_fit(c);
}

/* No option needs a larger number. */
#define WHOLE_MOST 1000000

bool cli_whole(const struct cli *c, enum option_id id, size_t least, size_t *value)
{
    const char *typed = c->values[id];
    if (!typed)
        return true;
    char *end;
    errno = 0;
    unsigned long n = strtoul(typed, &end, 10);
    if (*typed < '0' || *typed > '9' || *end || errno || n < least || n > WHOLE_MOST) {
        cli_usage("--%s %s: a whole number from %zu to %d is needed", OPTION_TABLE[id].name, typed,
                  least, WHOLE_MOST);
        return false;
    }
    *value = n;
    return true;
}

bool cli_time(const struct cli *c, enum option_id id, double *seconds)
{
    const char *at = c->values[id];
    if (!at)
        return true;
    double total = 0;
    for (int part = 0; part < 3; part++) {
        char *end;
        bool digit = (*at >= '0' && *at <= '9') || *at == '.';
        double value = digit ? strtod(at, &end) : 0;
        if (!digit || !isfinite(value))
            break;
        total = total * 60 + value;
        if (!*end) {
            *seconds = total;
            return true;
        }
        if (*end != ':')
            break;
        at = end + 1;
    }
    cli_usage("--%s %s: a time is needed, as 3:15, 1:02:33 or 195", OPTION_TABLE[id].name,
              c->values[id]);
    return false;
}
