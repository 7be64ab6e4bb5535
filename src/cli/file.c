/* cli/file.c: one transcript, with the cook's edits beside it -> one output.
 * SPDX-License-Identifier: MIT */
#include "cli/file.h"

#include <stdlib.h>
#include <unistd.h>

#include "cli/list.h"
#include "cli/talk.h"
#include "disk/disk.h"
#include "disk/save.h"
#include "edits/edits.h"
#include "read/read.h"
#include "write/json_print.h"

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
    if (!edits || h->task->c->values[OPTION_NO_EDITS] || access(edits, F_OK) != 0)
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
    const struct task *task = h->task;
    size_t length;
    const char *out =
        dishtake_write(h->d, task->job->output, task->job->as, &task->job->write, &length);
    if (out && task->alone)
        r->made = (struct text){out, length};
    else if (out)
        buffer_put(&r->out, (struct text){out, length});
    r->keep = out && task->resume;
    if (out && task->job->fails && dishtake_findings(h->d, task->job->fail_on))
        r->status = STATUS_FOUND;
    /* What was read and cannot be written was asked for wrongly: a dish that is not there. */
    if (!out)
        r->status = STATUS_USAGE;
}

/* Whether an earlier run did the same file, with the same edits; else its output is to be kept. */
static bool was_done(struct hand *h, const char *name, struct result *r)
{
    if (!h->task->resume)
        return false;
    r->key = resume_key(name, buffer_text(&h->bytes), buffer_text(&h->edits),
                        buffer_text(&h->task->list));
    r->before = resume_find(h->task->resume, r->key, &r->out);
    return r->before;
}

static bool read_and_write(struct hand *h, size_t number, const char *edits, struct result *r)
{
    const struct task *task = h->task;
    const char *name = task->c->operands[number];
    struct dishtake_read_options o = {.size = sizeof o,
                                      .kitchen = task->c->values[OPTION_KITCHEN],
                                      .one_dish = task->c->values[OPTION_ONE_DISH] != NULL,
                                      .dishes = task->c->dishes};
    list_hand(task->c, &task->list, &o);
    if (!read_edits(h, edits, r, &o))
        return false;
    if (was_done(h, name, r))
        return true;
    enum dishtake_result result =
        dishtake_read(h->d, h->bytes.at ? h->bytes.at : "", h->bytes.length, name, &o);
    if (result == DISHTAKE_DONE && task->job->each)
        r->status = task->job->each(task->c, h->d, number, task->job->with, &r->talk);
    else if (result == DISHTAKE_DONE)
        write_one(h, r);
    if (result == DISHTAKE_NO_SUCH_KITCHEN)
        r->status = STATUS_USAGE;
    talk_messages(&r->talk, h->d, !task->c->values[OPTION_QUIET]);
    return result == DISHTAKE_DONE || r->status == STATUS_USAGE;
}

void file_do(struct hand *h, size_t number, struct result *r)
{
    const char *name = h->task->c->operands[number];
    struct problems p = {0};
    buffer_clear(&h->bytes);
    bool done = disk_read(name, READ_BYTES_MAX, &h->bytes, &p);
    talk_problems(&r->talk, &p, true);
    problems_release(&p);
    char *edits = edits_name(name);
    done = done && read_and_write(h, number, edits, r);
    free(edits);
    if (done)
        return;
    r->status = STATUS_UNREADABLE;
    if (h->task->job->json_lines)
        put_error_line(r, name);
}
