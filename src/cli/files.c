/* cli/files.c: --jobs threads take the next file each; the main thread writes what is ready, in
 * order.
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"

#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "cli/file.h"
#include "cli/grammar.h"
#include "cli/list.h"
#include "cli/progress.h"
#include "cli/talk.h"
#include "disk/disk.h"

/* A worker may be this many files ahead of the writer for each thread, so that results do not fill
 * memory. */
#define AHEAD_PER_JOB 4

struct run {
    struct task task;
    struct dishtake *first; /* owns the grammar */
    struct result *results; /* one an operand */
    size_t jobs, next, written;
    bool stop;
    pthread_mutex_t lock; /* guards next, written, stop and every result's ready */
    pthread_cond_t changed;
};

struct worker {
    struct run *run;
    struct hand hand;
    pthread_t thread;
};

static void hand_release(struct hand *h)
{
    buffer_release(&h->bytes);
    buffer_release(&h->edits);
}

static enum status worse(enum status a, enum status b)
{
    return a > b ? a : b;
}

/* The next file's number; false when there is none left. */
static bool take_next(struct run *run, size_t *i)
{
    pthread_mutex_lock(&run->lock);
    while (!run->stop && run->next < run->task.c->count
           && run->next >= run->written + run->jobs * AHEAD_PER_JOB)
        pthread_cond_wait(&run->changed, &run->lock);
    bool any = !run->stop && run->next < run->task.c->count;
    if (any)
        *i = run->next++;
    pthread_mutex_unlock(&run->lock);
    return any;
}

static void *work(void *argument)
{
    struct worker *w = argument;
    struct run *run = w->run;
    size_t i;
    while (take_next(run, &i)) {
        file_do(&w->hand, i, &run->results[i]);
        pthread_mutex_lock(&run->lock);
        run->results[i].ready = true;
        pthread_cond_broadcast(&run->changed);
        pthread_mutex_unlock(&run->lock);
    }
    return NULL;
}

static void wait_for(struct run *run, size_t i)
{
    pthread_mutex_lock(&run->lock);
    while (!run->results[i].ready)
        pthread_cond_wait(&run->changed, &run->lock);
    pthread_mutex_unlock(&run->lock);
}

static void tell_written(struct run *run, bool stop)
{
    pthread_mutex_lock(&run->lock);
    run->written++;
    run->stop |= stop;
    pthread_cond_broadcast(&run->changed);
    pthread_mutex_unlock(&run->lock);
}

static struct text output_of(const struct result *r)
{
    return r->made.length ? r->made : buffer_text(&r->out);
}

static bool write_result(struct run *run, size_t i, struct disk_output *o, struct problems *p)
{
    struct result *r = &run->results[i];
    bool done = true;
    fwrite(r->talk.at ? r->talk.at : "", 1, r->talk.length, stderr);
    if (r->out.failed || r->talk.failed)
        done = problem(p, (struct place){.file = run->task.c->operands[i]},
                       "too large: no memory is left");
    if (done && i && output_of(r).length && run->task.job->between)
        done = disk_put(o, text_from(run->task.job->between), p);
    if (done && r->keep)
        done = resume_add(run->task.resume, r->key, output_of(r), p);
    done = done && disk_put(o, output_of(r), p);
    buffer_release(&r->out);
    buffer_release(&r->talk);
    return done;
}

/* What the workers made, in order; without any, `alone` does a file at a time, so that nothing
 * waits in memory. */
static enum status write_all(struct run *run, struct hand *alone, struct disk_output *o,
                             struct problems *p)
{
    const struct cli *c = run->task.c;
    struct progress bar = progress_begin("files", c->count, c->values[OPTION_QUIET] != NULL);
    enum status status = STATUS_DONE;
    bool stop = false;
    for (size_t i = 0; i < c->count && !stop; i++) {
        if (alone)
            file_do(alone, i, &run->results[i]);
        else
            wait_for(run, i);
        progress_hide(&bar);
        status = worse(status, run->results[i].status);
        stop = !write_result(run, i, o, p);
        if (stop)
            status = STATUS_UNWRITTEN;
        tell_written(run, stop);
        progress_show(&bar, i + 1);
    }
    progress_hide(&bar);
    return status;
}

static enum status run_alone(struct run *run, struct disk_output *o, struct problems *p)
{
    struct hand h = {.task = &run->task, .d = run->first};
    run->task.alone = true;
    enum status status = write_all(run, &h, o, p);
    hand_release(&h);
    return status;
}

/* As many threads as can be had, up to run->jobs; their number. */
static size_t start_workers(struct run *run, struct worker *workers)
{
    size_t n = 0;
    for (; n < run->jobs; n++) {
        struct worker *w = &workers[n];
        *w = (struct worker){run, {.task = &run->task, .d = dishtake_again(run->first)}, 0};
        if (!w->hand.d)
            break;
        if (pthread_create(&w->thread, NULL, work, w) != 0) {
            dishtake_free(w->hand.d);
            break;
        }
    }
    return n;
}

static enum status run_together(struct run *run, struct disk_output *o, struct problems *p)
{
    struct worker *workers = calloc(run->jobs, sizeof *workers);
    size_t n = workers ? start_workers(run, workers) : 0;
    enum status status = n ? write_all(run, NULL, o, p) : run_alone(run, o, p);
    for (size_t i = 0; i < n; i++) {
        pthread_join(workers[i].thread, NULL);
        dishtake_free(workers[i].hand.d);
        hand_release(&workers[i].hand);
    }
    free(workers);
    return status;
}

static enum status run_to_output(struct run *run)
{
    const char *name = run->task.job->each ? NULL : run->task.c->values[OPTION_OUTPUT];
    struct problems p = {0};
    struct disk_output o;
    enum status status = STATUS_UNWRITTEN;
    if (disk_open(&o, name ? name : "-", &p)) {
        status = run->jobs > 1 ? run_together(run, &o, &p) : run_alone(run, &o, &p);
        if (status == STATUS_UNWRITTEN || !any_done(&run->task, run->results))
            disk_abandon(&o);
        else if (!disk_close(&o, &p))
            status = STATUS_UNWRITTEN;
    }
    tell_missing(&run->task, run->results);
    tell_before(&run->task, run->results);
    talk_print(&p);
    problems_release(&p);
    return status;
}

static size_t core_count(void)
{
    long n = sysconf(_SC_NPROCESSORS_ONLN);
    return n > 1 ? (size_t) n : 1;
}

static enum status run_with_grammar(struct run *run)
{
    run->results = calloc(run->task.c->count, sizeof *run->results);
    if (!run->results) {
        fputs("dishtake: no memory is left\n", stderr);
        return STATUS_UNREADABLE;
    }
    pthread_mutex_init(&run->lock, NULL);
    pthread_cond_init(&run->changed, NULL);
    enum status status = run_to_output(run);
    for (size_t i = 0; i < run->task.c->count; i++) {
        buffer_release(&run->results[i].out);
        buffer_release(&run->results[i].talk);
    }
    pthread_cond_destroy(&run->changed);
    pthread_mutex_destroy(&run->lock);
    free(run->results);
    return status;
}

static enum status run_jobs(struct run *run)
{
    run->jobs = core_count();
    if (!cli_whole(run->task.c, OPTION_JOBS, 1, &run->jobs))
        return STATUS_USAGE;
    if (run->jobs > run->task.c->count)
        run->jobs = run->task.c->count;
    enum status status = list_take(run->task.c, &run->task.list);
    if (status == STATUS_DONE)
        status = run_with_grammar(run);
    buffer_release(&run->task.list);
    return status;
}

enum status files_run_with(const struct cli *c, const struct job *job, struct dishtake *d)
{
    struct run run = {.task = {.c = c, .job = job}, .first = d};
    return run_jobs(&run);
}

static enum status run_resumed(struct run run, const struct grammar_source *grammar)
{
    struct resume resume;
    enum status status = STATUS_UNWRITTEN;
    run.task.resume = &resume;
    if (resume_begin(&resume, run.task.c, grammar))
        status = run_jobs(&run);
    resume_close(&resume);
    return status;
}

enum status files_run(const struct cli *c, const struct job *job)
{
    struct grammar_source source;
    enum status status = STATUS_UNREADABLE;
    struct dishtake *d = grammar_open(&source, c->values[OPTION_GRAMMAR]);
    struct run run = {.task = {.c = c, .job = job}, .first = d};
    if (d)
        status = c->values[OPTION_RESUME] ? run_resumed(run, &source) : run_jobs(&run);
    grammar_close(&source, d);
    return status;
}
