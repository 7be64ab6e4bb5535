/* cli/stills.c
 * SPDX-License-Identifier: MIT */
#include "cli/stills.h"

#include <errno.h>
#include <fcntl.h>
#include <spawn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "cli/progress.h"

extern char **environ;

/* Runs it without a shell and without a word on the terminal; 0, or why it could not be run. */
static int run_quietly(char *const arguments[], bool *good)
{
    posix_spawn_file_actions_t actions;
    pid_t child;
    int status = 1, error = posix_spawn_file_actions_init(&actions);
    if (error)
        return error;
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    error = posix_spawnp(&child, arguments[0], &actions, NULL, arguments, environ);
    posix_spawn_file_actions_destroy(&actions);
    while (!error && waitpid(child, &status, 0) < 0 && errno == EINTR)
        ;
    *good = !error && WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return error;
}

/* One picture, at most 1280 wide, the same bytes in every run. "file:" keeps the program from
 * reading the name as an address, and the whitelist from following one in the file. */
static int take_one(const char *input, double at, char *path, bool *good)
{
    char second[32];
    snprintf(second, sizeof second, "%.3f", at > 0 ? at : 0);
    const char *const words[] = {"ffmpeg",
                                 "-nostdin",
                                 "-y",
                                 "-protocol_whitelist",
                                 "file,crypto,data",
                                 "-ss",
                                 second,
                                 "-i",
                                 input,
                                 "-frames:v",
                                 "1",
                                 "-map_metadata",
                                 "-1",
                                 "-vf",
                                 "scale='min(1280,iw)':-2",
                                 "-q:v",
                                 "3",
                                 "-flags:v",
                                 "+bitexact",
                                 "-fflags",
                                 "+bitexact",
                                 "-threads",
                                 "1",
                                 path};
    enum { COUNT = sizeof words / sizeof *words };
    char *arguments[COUNT + 1];
    for (size_t i = 0; i < COUNT; i++)
        arguments[i] = strdup(words[i]);
    arguments[COUNT] = NULL;
    int error = run_quietly(arguments, good);
    for (size_t i = 0; i < COUNT; i++)
        free(arguments[i]);
    return error;
}

static bool keep(struct stills *s, struct disk_folder *folder, const char *name)
{
    char **more = realloc(s->names, (s->count + 1) * sizeof *more);
    if (!more)
        return false;
    s->names = more;
    s->names[s->count] = strdup(name);
    if (!s->names[s->count])
        return false;
    s->count++;
    folder_add(folder, name);
    return true;
}

/* False when the program cannot be run at all. */
static bool take(struct stills *s, const struct dishtake_still *still, const char *input,
                 struct disk_folder *folder, size_t *missed, struct buffer *talk)
{
    char *path = folder_path(folder, still->name);
    bool good = false;
    int error = path ? take_one(input, still->at, path, &good) : ENOMEM;
    if (error)
        buffer_format(talk,
                      "dishtake: note: ffmpeg cannot be run (%s), so pictures were left out\n",
                      strerror(error));
    /* Behind the end of the recording there is no picture, and ffmpeg calls that good. */
    else if (!good || access(path, F_OK) != 0 || !keep(s, folder, still->name))
        ++*missed;
    if (path && !good)
        unlink(path);
    free(path);
    return !error;
}

static size_t count_stills(const struct dishtake *d)
{
    struct dishtake_still still;
    size_t n = 0;
    while (dishtake_still(d, n, &still))
        n++;
    return n;
}

void stills_take(struct stills *s, const struct dishtake *d, const char *video,
                 struct disk_folder *folder, bool quiet, struct buffer *talk)
{
    struct dishtake_still still;
    struct progress bar = progress_begin("pictures", count_stills(d), quiet);
    struct buffer input = {0};
    size_t missed = 0;
    *s = (struct stills){NULL, 0};
    buffer_format(&input, "file:%s", video);
    for (size_t i = 0; input.at && dishtake_still(d, i, &still); i++)
        if (take(s, &still, input.at, folder, &missed, talk))
            progress_show(&bar, i + 1);
        else
            break;
    progress_hide(&bar);
    if (missed)
        buffer_format(
            talk, "%s: note: pictures that could not be taken from it, and were left out: %zu\n",
            video, missed);
    buffer_release(&input);
}

void stills_release(struct stills *s)
{
    for (size_t i = 0; i < s->count; i++)
        free(s->names[i]);
    free(s->names);
    *s = (struct stills){NULL, 0};
}
