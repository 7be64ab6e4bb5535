/* cli/shopping.c: one list over all the files.
 * SPDX-License-Identifier: MIT */
#include <pthread.h>
#include <stdio.h>

#include "cli/files.h"
#include "cli/form.h"
#include "cli/grammar.h"
#include "cli/shown.h"
#include "cli/talk.h"
#include "disk/disk.h"

struct basket {
    struct dishtake_shopping *list; /* made at the first recording */
    struct dishtake_write_options options;
    pthread_mutex_t lock; /* guards list */
    const char *as;
};

static enum status add_one(const struct cli *c, struct dishtake *d, size_t number, void *with,
                           struct buffer *talk)
{
    struct basket *b = with;
    (void) c;
    (void) talk;
    pthread_mutex_lock(&b->lock);
    bool added = b->list && dishtake_shopping_add(b->list, d, number, &b->options);
    pthread_mutex_unlock(&b->lock);
    return added ? STATUS_DONE : STATUS_USAGE;
}

static enum status write_list(const struct cli *c, struct basket *b)
{
    const char *name = c->values[OPTION_OUTPUT];
    struct problems p = {0};
    struct disk_output o;
    size_t length;
    const char *out = dishtake_shopping_write(b->list, b->as, &b->options, &length);
    bool done = out && disk_open(&o, name ? name : "-", &p);
    if (done && !(disk_put(&o, (struct text){out, length}, &p) && disk_close(&o, &p))) {
        disk_abandon(&o);
        done = false;
    }
    if (!out)
        fputs("dishtake: no memory is left\n", stderr);
    talk_print(&p);
    problems_release(&p);
    return done ? STATUS_DONE : STATUS_UNWRITTEN;
}

/* The list's grammar must outlive the run's, which files_run opens and closes itself. */
static enum status shop(const struct cli *c, struct basket *b)
{
    struct grammar_source source;
    struct dishtake *d = grammar_open(&source, c->values[OPTION_GRAMMAR]);
    enum status status = STATUS_UNREADABLE;
    if (d && (b->list = dishtake_shopping_new(d))) {
        struct job job = {.each = add_one, .with = b};
        status = files_run_with(c, &job, d);
        enum status written =
            status == STATUS_UNREADABLE && c->count == 1 ? status : write_list(c, b);
        status = written > status ? written : status;
    }
    dishtake_shopping_free(b->list);
    grammar_close(&source, d);
    return status;
}

enum status command_shopping(const struct cli *c)
{
    struct basket b = {.options = {.size = sizeof b.options, .at = -1},
                       .as = cli_form(c, "shopping")};
    struct buffer style = {0};
    if (!b.as || !cli_whole(c, OPTION_DISH, 1, &b.options.dish))
        return STATUS_USAGE;
    enum status status = cli_shown(c, &b.options, &style);
    pthread_mutex_init(&b.lock, NULL);
    if (status == STATUS_DONE)
        status = shop(c, &b);
    pthread_mutex_destroy(&b.lock);
    buffer_release(&style);
    return status;
}
