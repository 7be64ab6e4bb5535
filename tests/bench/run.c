/* bench/run.c: times commands beside each other: run [--rounds N] LABEL=COMMAND...
 *
 * Each runs once in every round, so that a slow moment of the machine hits all alike; two rounds
 * warm up. Prints a Markdown row for each: median and least time, time on the processor, peak
 * memory, and the median of the round-by-round ratio to the first. A command is words divided by
 * spaces; its output goes to /dev/null. The least memory that can be seen is this program's own, so
 * it is kept small.
 * SPDX-License-Identifier: MIT */
#define _DEFAULT_SOURCE
#include <fcntl.h>
#include <spawn.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>

#define ROUNDS_MOST 500
#define COMMANDS_MOST 16
#define WORDS_MOST 512
#define WARM_UP 2

extern char **environ;

struct timed {
    const char *label;
    char *words[WORDS_MOST + 1];
    double wall[ROUNDS_MOST], cpu[ROUNDS_MOST]; /* milliseconds */
    long peak;                                  /* KB */
};

static double now(void)
{
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double) t.tv_sec * 1e3 + (double) t.tv_nsec / 1e6;
}

static double milliseconds(struct timeval t)
{
    return (double) t.tv_sec * 1e3 + (double) t.tv_usec / 1e3;
}

static bool split(struct timed *c, char *given)
{
    char *equals = strchr(given, '=');
    size_t n = 0;
    if (!equals)
        return false;
    *equals = '\0';
    c->label = given;
    for (char *at = equals + 1; *at && n < WORDS_MOST;) {
        size_t length = strcspn(at, " ");
        if (length)
            c->words[n++] = at;
        at += length;
        if (*at)
            *at++ = '\0';
    }
    return n > 0;
}

/* False when it could not be run or failed. */
static bool run_once(struct timed *c, posix_spawn_file_actions_t *quiet, int round)
{
    pid_t child;
    int status;
    struct rusage used;
    double begin = now();
    if (posix_spawnp(&child, c->words[0], quiet, NULL, c->words, environ) != 0
        || wait4(child, &status, 0, &used) != child || !WIFEXITED(status)
        || WEXITSTATUS(status) > 1)
        return false;
    if (round >= 0) {
        c->wall[round] = now() - begin;
        c->cpu[round] = milliseconds(used.ru_utime) + milliseconds(used.ru_stime);
    }
    if (used.ru_maxrss > c->peak)
        c->peak = used.ru_maxrss;
    return true;
}

static int by_size(const void *a, const void *b)
{
    double x = *(const double *) a, y = *(const double *) b;
    return (x > y) - (x < y);
}

static double median(const double *values, int count)
{
    double sorted[ROUNDS_MOST];
    memcpy(sorted, values, (size_t) count * sizeof *sorted);
    qsort(sorted, (size_t) count, sizeof *sorted, by_size);
    return sorted[count / 2];
}

static void print_row(const struct timed *c, const struct timed *first, int rounds)
{
    double ratios[ROUNDS_MOST], least = c->wall[0];
    for (int i = 0; i < rounds; i++) {
        ratios[i] = c->wall[i] / first->wall[i];
        least = c->wall[i] < least ? c->wall[i] : least;
    }
    printf("| %s | %.2f | %.2f | %.2f | %.1f | %.2f |\n", c->label, median(c->wall, rounds), least,
           median(c->cpu, rounds), (double) c->peak / 1024, median(ratios, rounds));
}

static bool run_rounds(struct timed *commands, int count, int rounds)
{
    posix_spawn_file_actions_t quiet;
    posix_spawn_file_actions_init(&quiet);
    posix_spawn_file_actions_addopen(&quiet, 1, "/dev/null", O_WRONLY, 0);
    for (int round = -WARM_UP; round < rounds; round++)
        for (int i = 0; i < count; i++)
            if (!run_once(&commands[i], &quiet, round)) {
                fprintf(stderr, "run: %s failed\n", commands[i].label);
                return false;
            }
    posix_spawn_file_actions_destroy(&quiet);
    return true;
}

int main(int argc, char **argv)
{
    static struct timed commands[COMMANDS_MOST];
    int rounds = 15, count = 0, i = 1;
    if (argc > 2 && strcmp(argv[1], "--rounds") == 0) {
        rounds = (int) strtol(argv[2], NULL, 10);
        i = 3;
    }
    for (; i < argc && count < COMMANDS_MOST; i++)
        if (!split(&commands[count++], argv[i]))
            count = COMMANDS_MOST + 1;
    if (!count || count > COMMANDS_MOST || rounds < 1 || rounds > ROUNDS_MOST) {
        fputs("usage: run [--rounds N] LABEL=COMMAND...\n", stderr);
        return 2;
    }
    if (!run_rounds(commands, count, rounds))
        return 1;
    puts("| command | median ms | least ms | CPU ms | peak MB | x the first "
         "|\n|---|---:|---:|---:|---:|---:|");
    for (int n = 0; n < count; n++)
        print_row(&commands[n], &commands[0], rounds);
    return 0;
}
