/* cli/manual.c: a tool of the build: writes the man page and the shells' completions from the
 * tables that the program itself reads: `manual man`, `manual bash`, `manual zsh`, `manual fish`.
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

static const struct {
    const char *name, *operands, *about, *example;
} COMMAND_ROWS[] = {
#define COMMAND(name, operands, about, example) {#name, operands, about, example},
#include "cli/commands.def"
#undef COMMAND
};

static const struct {
    char letter;
    const char *name, *argument, *commands, *about;
} OPTION_ROWS[] = {
#define OPTION(id, letter, name, argument, commands, about) \
    {letter, name, argument, commands, about},
#include "cli/options.def"
#undef OPTION
};

#define COMMAND_COUNT (sizeof COMMAND_ROWS / sizeof *COMMAND_ROWS)
#define OPTION_COUNT (sizeof OPTION_ROWS / sizeof *OPTION_ROWS)

/* Whether `word` is one of `list`, divided by spaces; an empty list has every word. */
static bool listed(const char *list, const char *word)
{
    size_t n = strlen(word);
    for (const char *at = list; *at; at += strcspn(at, " "), at += *at == ' ')
        if (strncmp(at, word, n) == 0 && (at[n] == ' ' || !at[n]))
            return true;
    return !*list;
}

/* Text of a man page: "-" is a hyphen there unless it is escaped, and a line must not begin with a
 * sign. */
static void put_roff(const char *s)
{
    for (const char *at = s; *at; at++) {
        if (*at == '-' || *at == '\\')
            putchar('\\');
        else if (at == s && (*at == '.' || *at == '\''))
            fputs("\\&", stdout);
        putchar(*at);
        if (*at == '\\')
            putchar('e');
    }
}

static void put_option(size_t i)
{
    fputs(".TP\n\\fB", stdout);
    if (OPTION_ROWS[i].letter)
        printf("\\-%c\\fR, \\fB", OPTION_ROWS[i].letter);
    fputs("\\-\\-", stdout);
    put_roff(OPTION_ROWS[i].name);
    fputs("\\fR", stdout);
    if (OPTION_ROWS[i].argument)
        printf(" \\fI%s\\fR", OPTION_ROWS[i].argument);
    putchar('\n');
    put_roff(OPTION_ROWS[i].about);
    fputs(".\n", stdout);
    if (*OPTION_ROWS[i].commands)
        printf("(%s)\n", OPTION_ROWS[i].commands);
}

static void put_man(void)
{
    puts(".TH DISHTAKE 1 \"\" \"dishtake\" \"User Commands\"\n.SH NAME\n"
         "dishtake \\- timed transcripts of cooking to written recipes\n.SH SYNOPSIS\n"
         ".B dishtake\n\\fICOMMAND\\fR [\\fIOPTION\\fR]... \\fIFILE\\fR...\n.SH DESCRIPTION\n"
         "Reads the timed transcript of a filmed cooking session, finds the dishes in it, and "
         "writes each as a\n"
         "recipe whose every value names the words and the second that it came from.\n"
         "A file is SubRip, WebVTT, TTML, timed lines, JSON segments or TSV; \\- is standard "
         "input.\n"
         "It knows only what was said and captioned: silence about a risk is no proof of "
         "safety.\n.SH COMMANDS");
    for (size_t i = 0; i < COMMAND_COUNT; i++) {
        printf(".TP\n\\fB%s\\fR %s\n", COMMAND_ROWS[i].name, COMMAND_ROWS[i].operands);
        put_roff(COMMAND_ROWS[i].about);
        fputs(".\nFor example:\n.B ", stdout);
        put_roff(COMMAND_ROWS[i].example);
        putchar('\n');
    }
    puts(".SH OPTIONS\nAfter each stand the commands that have it; the last ones are of all.");
    for (size_t i = 0; i < OPTION_COUNT; i++)
        put_option(i);
    puts(".SH EXIT STATUS\n"
         ".TP\n0\ndone\n.TP\n1\nfindings at or over the level\n.TP\n2\nwrong usage\n"
         ".TP\n3\ninput that could not be read\n.TP\n4\noutput that could not be written\n"
         ".SH FILES\n.TP\n\\fINAME\\fR.edits.json\nthe cook's corrections, beside the transcript; "
         "see \\-\\-no\\-edits.");
}

static void put_names(void)
{
    for (size_t i = 0; i < COMMAND_COUNT; i++)
        printf("%s%s", i ? " " : "", COMMAND_ROWS[i].name);
}

static void put_options_of(const char *command)
{
    bool any = false;
    for (size_t i = 0; i < OPTION_COUNT; i++)
        if (listed(OPTION_ROWS[i].commands, command)) {
            printf("%s--%s", any ? " " : "", OPTION_ROWS[i].name);
            any = true;
        }
}

static void put_bash(void)
{
    fputs("# Completion of dishtake for bash.\n_dishtake() {\n    local "
          "word=${COMP_WORDS[COMP_CWORD]} options=\n"
          "    case ${COMP_WORDS[1]} in\n",
          stdout);
    for (size_t i = 0; i < COMMAND_COUNT; i++) {
        printf("    %s) options=\"", COMMAND_ROWS[i].name);
        put_options_of(COMMAND_ROWS[i].name);
        puts("\" ;;");
    }
    fputs(
        "    *) options=\"--help --version\" ;;\n    esac\n    if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
        "        COMPREPLY=($(compgen -W \"",
        stdout);
    put_names();
    puts(" $options\" -- \"$word\"))\n    elif [[ $word == -* ]]; then\n"
         "        COMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n    else\n"
         "        COMPREPLY=($(compgen -f -- \"$word\"))\n    fi\n}\ncomplete -o filenames -F "
         "_dishtake dishtake");
}

/* Quoted for zsh and fish: their single quotes end only at another. */
static void put_quoted(const char *s, const char *special)
{
    for (; *s; s++) {
        if (*s == '\'')
            fputs("'\\'", stdout);
        else if (strchr(special, *s))
            putchar('\\');
        putchar(*s);
    }
}

static void put_zsh(void)
{
    puts("#compdef dishtake\n_dishtake() {\n    local -a commands\n    commands=(");
    for (size_t i = 0; i < COMMAND_COUNT; i++) {
        printf("        '%s:", COMMAND_ROWS[i].name);
        put_quoted(COMMAND_ROWS[i].about, ":\\");
        puts("'");
    }
    puts("    )\n    if (( CURRENT == 2 )); then\n        _describe command commands\n        "
         "return\n    fi\n"
         "    case $words[2] in");
    for (size_t c = 0; c < COMMAND_COUNT; c++) {
        printf("    %s) _arguments -s", COMMAND_ROWS[c].name);
        for (size_t i = 0; i < OPTION_COUNT; i++) {
            if (!listed(OPTION_ROWS[i].commands, COMMAND_ROWS[c].name))
                continue;
            printf(" \\\n        '--%s[", OPTION_ROWS[i].name);
            put_quoted(OPTION_ROWS[i].about, "[]:\\");
            printf("]%s%s%s'", OPTION_ROWS[i].argument ? ":" : "",
                   OPTION_ROWS[i].argument ? OPTION_ROWS[i].argument : "",
                   !OPTION_ROWS[i].argument                                    ? ""
                   : strstr("FILE NAME DIR FILE.css", OPTION_ROWS[i].argument) ? ":_files"
                                                                               : ": ");
        }
        puts(" \\\n        '*:file:_files' ;;");
    }
    puts("    esac\n}\n_dishtake \"$@\"");
}

static void put_fish(void)
{
    puts("# Completion of dishtake for fish.");
    for (size_t i = 0; i < COMMAND_COUNT; i++) {
        printf("complete -c dishtake -n __fish_use_subcommand -f -a %s -d '", COMMAND_ROWS[i].name);
        put_quoted(COMMAND_ROWS[i].about, "\\");
        puts("'");
    }
    for (size_t i = 0; i < OPTION_COUNT; i++) {
        printf("complete -c dishtake %s%s%s -l %s",
               *OPTION_ROWS[i].commands ? "-n '__fish_seen_subcommand_from " : "",
               OPTION_ROWS[i].commands, *OPTION_ROWS[i].commands ? "'" : "", OPTION_ROWS[i].name);
        if (OPTION_ROWS[i].letter)
            printf(" -s %c", OPTION_ROWS[i].letter);
        printf("%s -d '", OPTION_ROWS[i].argument ? " -r" : "");
        put_quoted(OPTION_ROWS[i].about, "\\");
        puts("'");
    }
}

int main(int argc, char **argv)
{
    static const struct {
        const char *name;
        void (*put)(void);
    } FORMS[] = {{"man", put_man}, {"bash", put_bash}, {"zsh", put_zsh}, {"fish", put_fish}};
    for (size_t i = 0; argc == 2 && i < sizeof FORMS / sizeof *FORMS; i++)
        if (strcmp(argv[1], FORMS[i].name) == 0) {
            FORMS[i].put();
            return fflush(stdout) == EOF || ferror(stdout) ? 4 : 0;
        }
    fputs("usage: manual man|bash|zsh|fish\n", stderr);
    return 2;
}
