/* cli/review.c: serves the review page until Ctrl-C.
 * SPDX-License-Identifier: MIT */
#include <signal.h>
#include <spawn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include "cli/grammar.h"
#include "cli/list.h"
#include "cli/talk.h"
#include "review/server.h"

extern char **environ;

/* ---- a browser is led to the page by a file that only its owner may read: what stands on a
 * command line, any user sees */

struct doorway {
    char folder[200], file[220];
};

static bool write_doorway(struct doorway *w, const char *address)
{
    const char *base = getenv("XDG_RUNTIME_DIR");
    snprintf(w->folder, sizeof w->folder, "%s/dishtake-XXXXXX", base && *base ? base : "/tmp");
    if (!mkdtemp(w->folder))
        return false;
    snprintf(w->file, sizeof w->file, "%s/open.html", w->folder);
    FILE *f = fopen(w->file, "w");
    if (!f)
        return false;
    fprintf(f,
            "<!doctype html><title>dishtake</title><meta http-equiv=\"refresh\" "
            "content=\"0;url=%s\">\n",
            address);
    return fclose(f) == 0;
}

static void remove_doorway(struct doorway *w)
{
    if (*w->file)
        unlink(w->file);
    if (*w->folder)
        rmdir(w->folder);
    *w = (struct doorway){.folder = ""};
}

static bool has_screen(void)
{
    return getenv("DISPLAY") || getenv("WAYLAND_DISPLAY");
}

static void open_browser(struct doorway *w, const char *address)
{
    char program[] = "xdg-open";
    char *const arguments[] = {program, w->file, NULL};
    pid_t child;
    if (!has_screen() || !write_doorway(w, address)
        || posix_spawnp(&child, program, NULL, NULL, arguments, environ) != 0)
        remove_doorway(w);
}

/* ---- the command */

/* Ctrl-C, or the end of the terminal: every edit is on the disk already. The way in is closed once
 * it was used. */
static void wait_for_end(const sigset_t *ends, const struct server *server, struct doorway *w)
{
    const struct timespec second = {.tv_sec = 1};
    while (sigtimedwait(ends, NULL, &second) < 0)
        if (*w->file && server_was_opened(server))
            remove_doorway(w);
}

static enum status serve(const struct cli *c, struct session *session, const struct media *media,
                         unsigned port, struct problems *p)
{
    sigset_t ends;
    struct doorway way = {.folder = ""};
    sigemptyset(&ends);
    sigaddset(&ends, SIGINT);
    sigaddset(&ends, SIGTERM);
    sigaddset(&ends, SIGHUP);
    sigprocmask(SIG_BLOCK, &ends, NULL); /* before the server's thread, which inherits it */
    signal(SIGPIPE, SIG_IGN);
    struct server *server = server_start(session, media, port, p);
    if (!server)
        return STATUS_UNWRITTEN;
    printf("The review page of %s is at\n  %s\nCtrl-C ends it; every change is saved in %s\n",
           session->name, server_address(server), session->edits.name);
    fflush(stdout);
    if (!c->values[OPTION_NO_OPEN])
        open_browser(&way, server_address(server));
    wait_for_end(&ends, server, &way);
    remove_doorway(&way);
    server_stop(server);
    return STATUS_DONE;
}

static enum status review(const struct cli *c, struct dishtake *d, unsigned port,
                          struct problems *p)
{
    struct dishtake_read_options o = {.size = sizeof o,
                                      .kitchen = c->values[OPTION_KITCHEN],
                                      .one_dish = c->values[OPTION_ONE_DISH] != NULL,
                                      .dishes = c->dishes};
    struct media media = {.file = -1};
    struct session session;
    struct buffer list = {0};
    enum status status = list_take(c, &list);
    const char *video = c->values[OPTION_VIDEO];
    if (status != STATUS_DONE)
        return status;
    status = STATUS_UNREADABLE;
    if (video && !media_open(&media, video, p)) {
        buffer_release(&list);
        return status;
    }
    list_hand(c, &list, &o);
    if (session_open(&session, d, c->operands[0], &o, p))
        status = serve(c, &session, &media, port, p);
    talk_print(p); /* some of it names files that the session knows */
    problems_release(p);
    session_close(&session);
    media_close(&media);
    buffer_release(&list);
    return status;
}

enum status command_review(const struct cli *c)
{
    size_t port = 0;
    struct grammar_source source;
    struct problems p = {0};
    if (!cli_whole(c, OPTION_PORT, 1, &port))
        return STATUS_USAGE;
    if (port > 65535)
        return cli_usage("--port %zu: a port is at most 65535", port);
    if (strcmp(c->operands[0], "-") == 0)
        return cli_usage("review needs a file, since the changes are saved beside it");
    enum status status = STATUS_UNREADABLE;
    struct dishtake *d = grammar_open(&source, c->values[OPTION_GRAMMAR]);
    if (d)
        status = review(c, d, (unsigned) port, &p);
    talk_print(&p);
    problems_release(&p);
    grammar_close(&source, d);
    return status;
}
