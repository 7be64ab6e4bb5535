/* cli/files.c: --jobs threads take the next file each; the main thread writes what is ready, in
 * order.
 * SPDX-License-Identifier: MIT */
#include "cli/files.h"

#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/buffer.h"
#include "cli/grammar.h"
#include "cli/list.h"
#include "cli/progress.h"
#include "cli/resume.h"
#include "cli/talk.h"
#include "disk/disk.h"
#include "disk/save.h"
#include "edits/edits.h"
#include "read/read.h"
#include "write/json_print.h"

/* A worker may be this many files ahead of the writer for each thread, so that results do not fill
 * memory. */
#define AHEAD_PER_JOB 4

struct result {
    struct buffer out, talk;
    struct text made; /* the output, borrowed from the one hand; empty: it is in `out` */
    enum status status;
    bool ready;
    bool before,
        keep;     /* with --resume: was done by an earlier run; is to be kept for a later one */
    uint64_t key; /* that it is kept under */
};

struct run {
    const struct cli *c;
    const struct job *job;
    struct dishtake *first; /* owns the grammar */
    struct resume *resume;  /* borrowed; NULL without --resume */
    struct result *results; /* one an operand */
    struct buffer list;     /* the bytes of the ingredient list */
    size_t jobs, next, written;
    bool stop;
    pthread_mutex_t lock; /* guards next, written, stop and every result's ready */
    pthread_cond_t changed;
};

/* What one thread needs. */
struct hand {
    struct run *run;
    struct dishtake *d;
    struct buffer bytes, edits;
    pthread_t thread;
};

static enum status worse(enum status a, enum status b)
{
    return a > b ? a : b;
}

/* JSON Lines stay in step with the files: a file that failed has its line too. */
static void put_error_line(struct result *r, const char *name)
{
    struct json j = {.out = &r->out};
    struct text why = buffer_text(&r->talk);
    json_open(&j, '{');
    json_key_string(&j, "format", "dishtake recipes 1");
    json_key(&j, "recording");
    json_open(&j, '{');
    json_key_string(&j, "file", name);
    json_close(&j, '}');
    json_key_text(&j, "error", text_slice(why, 0, text_find(why, '\n', 0)));
    json_close(&j, '}');
    buffer_put_char(&r->out, '\n');
}

/* The cook's edits, where there is a file of them beside the transcript. False, with a message,
 * when it cannot be read. */
static bool read_edits(struct hand *h, const char *edits, struct result *r,
                       struct dishtake_read_options *o)
{
    struct problems p = {0};
    buffer_clear(&h->edits);
    if (!edits || h->run->c->values[OPTION_NO_EDITS] || access(edits, F_OK) != 0)
        return true;
    bool done = disk_read(edits, EDITS_BYTES_MAX, &h->edits, &p);
    talk_problems(&r->talk, &p, true);
    problems_release(&p);
    o->edits = h->edits.at ? h->edits.at : "";
    o->edits_length = h->edits.length;
    o->edits_name = edits;
    return done;
}

static void write_one(struct hand *h, struct result *r)
{
    const struct run *run = h->run;
    size_t length;
    const char *out =
        dishtake_write(h->d, run->job->output, run->job->as, &run->job->write, &length);
    if (out && run->jobs < 2)
        r->made = (struct text){out, length};
    else if (out)
        buffer_put(&r->out, (struct text){out, length});
    r->keep = out && run->resume;
    if (out && run->job->fails && dishtake_findings(h->d, run->job->fail_on))
        r->status = STATUS_FOUND;
    /* What was read and cannot be written was asked for wrongly: a dish that is not there. */
    if (!out)
        r->status = STATUS_USAGE;
}

/* Whether an earlier run did the same file, with the same edits; else its output is to be kept. */
static bool was_done(struct hand *h, const char *name, struct result *r)
{
    if (!h->run->resume)
        return false;
    r->key = resume_key(name, buffer_text(&h->bytes), buffer_text(&h->edits),
                        buffer_text(&h->run->list));
    r->before = resume_find(h->run->resume, r->key, &r->out);
    return r->before;
}

static bool read_and_write(struct hand *h, const char *name, const char *edits, struct result *r)
{
    const struct run *run = h->run;
    struct dishtake_read_options o = {.size = sizeof o,
                                      .kitchen = run->c->values[OPTION_KITCHEN],
                                      .one_dish = run->c->values[OPTION_ONE_DISH] != NULL};
    list_hand(run->c, &run->list, &o);
    if (!read_edits(h, edits, r, &o))
        return false;
    if (was_done(h, name, r))
        return true;
    enum dishtake_result result =
        dishtake_read(h->d, h->bytes.at ? h->bytes.at : "", h->bytes.length, name, &o);
    if (result == DISHTAKE_DONE && run->job->each)
        r->status =
            run->job->each(run->c, h->d, (size_t) (r - run->results), run->job->with, &r->talk);
    else if (result == DISHTAKE_DONE)
        write_one(h, r);
    if (result == DISHTAKE_NO_SUCH_KITCHEN)
        r->status = STATUS_USAGE;
    talk_messages(&r->talk, h->d, !run->c->values[OPTION_QUIET]);
    return result == DISHTAKE_DONE || r->status == STATUS_USAGE;
}

static void do_file(struct hand *h, size_t i)
{
    struct result *r = &h->run->results[i];
    const char *name = h->run->c->operands[i];
    struct problems p = {0};
    buffer_clear(&h->bytes);
    bool done = disk_read(name, READ_BYTES_MAX, &h->bytes, &p);
    talk_problems(&r->talk, &p, true);
    problems_release(&p);
    char *edits = edits_name(name);
    done = done && read_and_write(h, name, edits, r);
    free(edits);
    if (done)
        return;
    r->status = STATUS_UNREADABLE;
    if (h->run->job->json_lines)
        put_error_line(r, name);
}

/* The next file's number; false when there is none left. */
static bool take_next(struct run *run, size_t *i)
{
    pthread_mutex_lock(&run->lock);
    while (!run->stop && run->next < run->c->count
           && run->next >= run->written + run->jobs * AHEAD_PER_JOB)
        pthread_cond_wait(&run->changed, &run->lock);
    bool any = !run->stop && run->next < run->c->count;
    if (any)
        *i = run->next++;
    pthread_mutex_unlock(&run->lock);
    return any;
}

static void *work(void *argument)
{
    struct hand *h = argument;
    size_t i;
    while (take_next(h->run, &i)) {
        do_file(h, i);
        pthread_mutex_lock(&h->run->lock);
        h->run->results[i].ready = true;
        pthread_cond_broadcast(&h->run->changed);
        pthread_mutex_unlock(&h->run->lock);
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
        done =
            problem(p, (struct place){.file = run->c->operands[i]}, "too large: no memory is left");
    if (done && i && output_of(r).length && run->job->between)
        done = disk_put(o, text_from(run->job->between), p);
    if (done && r->keep)
        done = resume_add(run->resume, r->key, output_of(r), p);
    done = done && disk_put(o, output_of(r), p);
    buffer_release(&r->out);
    buffer_release(&r->talk);
    return done;
}

static enum status write_all(struct run *run, struct disk_output *o, struct problems *p)
{
    struct progress bar =
        progress_begin("files", run->c->count, run->c->values[OPTION_QUIET] != NULL);
    enum status status = STATUS_DONE;
    bool stop = false;
    for (size_t i = 0; i < run->c->count && !stop; i++) {
        if (run->jobs > 1)
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

/* One thread: a file at a time is read and written, so that nothing waits in memory. */
static enum status run_alone(struct run *run, struct disk_output *o, struct problems *p)
{
    struct hand h = {.run = run, .d = run->first};
    struct progress bar =
        progress_begin("files", run->c->count, run->c->values[OPTION_QUIET] != NULL);
    enum status status = STATUS_DONE;
    bool stop = false;
    for (size_t i = 0; i < run->c->count && !stop; i++) {
        do_file(&h, i);
        progress_hide(&bar);
        status = worse(status, run->results[i].status);
        stop = !write_result(run, i, o, p);
        if (stop)
            status = STATUS_UNWRITTEN;
        progress_show(&bar, i + 1);
    }
    progress_hide(&bar);
    buffer_release(&h.bytes);
    buffer_release(&h.edits);
    return status;
}

/* As many threads as can be had, up to run->jobs; their number. */
static size_t start_hands(struct run *run, struct hand *hands)
{
    size_t n = 0;
    for (; n < run->jobs; n++) {
        hands[n] = (struct hand){.run = run, .d = dishtake_again(run->first)};
        if (!hands[n].d)
            break;
        if (pthread_create(&hands[n].thread, NULL, work, &hands[n]) != 0) {
            dishtake_free(hands[n].d);
            break;
        }
    }
    return n;
}

static enum status run_together(struct run *run, struct disk_output *o, struct problems *p)
{
    struct hand *hands = calloc(run->jobs, sizeof *hands);
    size_t n = hands ? start_hands(run, hands) : 0;
    enum status status = n ? write_all(run, o, p) : run_alone(run, o, p);
    for (size_t i = 0; i < n; i++) {
        pthread_join(hands[i].thread, NULL);
        dishtake_free(hands[i].d);
        buffer_release(&hands[i].bytes);
        buffer_release(&hands[i].edits);
    }
    free(hands);
    return status;
}

/* A file that is not in what was written: it could not be read, or its own output not be made. */
static bool is_missing(const struct run *run, size_t i)
{
    enum status status = run->results[i].status;
    return run->job->each ? status != STATUS_DONE : status == STATUS_UNREADABLE;
}

static void name_missing(const struct run *run)
{
    size_t bad = 0;
    for (size_t i = 0; i < run->c->count; i++)
        bad += is_missing(run, i);
    if (!bad || run->c->count == 1)
        return;
    fprintf(stderr, "dishtake: %zu of %zu files could not be %s:", bad, run->c->count,
            run->job->each ? "done" : "read");
    for (size_t i = 0; i < run->c->count; i++)
        if (is_missing(run, i))
            fprintf(stderr, " %s", run->c->operands[i]);
    fputc('\n', stderr);
}

static void tell_before(const struct run *run)
{
    size_t before = 0;
    for (size_t i = 0; i < run->c->count; i++)
        before += run->results[i].before;
    if (before && !run->c->values[OPTION_QUIET])
        fprintf(stderr, "dishtake: note: %zu of %zu files were done by an earlier run\n", before,
                run->c->count);
}

/* Whether any file gave something to write; where none did, an old output of that name is left
 * alone. */
static bool any_done(const struct run *run)
{
    for (size_t i = 0; i < run->c->count; i++)
        if (run->results[i].status <= STATUS_FOUND)
            return true;
    return false;
}

static enum status run_to_output(struct run *run)
{
    const char *name = run->job->each ? NULL : run->c->values[OPTION_OUTPUT];
    struct problems p = {0};
    struct disk_output o;
    enum status status = STATUS_UNWRITTEN;
    if (disk_open(&o, name ? name : "-", &p)) {
        status = run->jobs > 1 ? run_together(run, &o, &p) : run_alone(run, &o, &p);
        if (status == STATUS_UNWRITTEN || !any_done(run))
            disk_abandon(&o);
        else if (!disk_close(&o, &p))
            status = STATUS_UNWRITTEN;
    }
    name_missing(run);
    tell_before(run);
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
    run->results = calloc(run->c->count, sizeof *run->results);
    if (!run->results) {
        fputs("dishtake: no memory is left\n", stderr);
        return STATUS_UNREADABLE;
    }
    pthread_mutex_init(&run->lock, NULL);
    pthread_cond_init(&run->changed, NULL);
    enum status status = run_to_output(run);
    for (size_t i = 0; i < run->c->count; i++) {
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
    if (!cli_whole(run->c, OPTION_JOBS, 1, &run->jobs))
        return STATUS_USAGE;
    if (run->jobs > run->c->count)
        run->jobs = run->c->count;
    enum status status = list_take(run->c, &run->list);
    if (status == STATUS_DONE)
        status = run_with_grammar(run);
    buffer_release(&run->list);
    return status;
}

enum status files_run_with(const struct cli *c, const struct job *job, struct dishtake *d)
{
    struct run run = {.c = c, .job = job, .first = d};
    return run_jobs(&run);
}

static enum status run_resumed(struct run run, const struct grammar_source *grammar)
{
    struct resume resume;
    enum status status = STATUS_UNWRITTEN;
    run.resume = &resume;
    if (resume_begin(&resume, run.c, grammar))
        status = run_jobs(&run);
    resume_close(&resume);
    return status;
}

enum status files_run(const struct cli *c, const struct job *job)
{
    struct grammar_source source;
    enum status status = STATUS_UNREADABLE;
    struct dishtake *d = grammar_open(&source, c->values[OPTION_GRAMMAR]);
    struct run run = {.c = c, .job = job, .first = d};
    if (d)
        status = c->values[OPTION_RESUME] ? run_resumed(run, &source) : run_jobs(&run);
    grammar_close(&source, d);
    return status;
}
