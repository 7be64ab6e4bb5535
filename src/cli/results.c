/* cli/results.c: what became of the files of a run.
 * SPDX-License-Identifier: MIT */
#include "cli/file.h"

#include <stdio.h>

/* A file that is not in what was written: it could not be read, or its own output not be made. */
static bool is_missing(const struct task *t, const struct result *r)
{
    enum status status = r->status;
    return t->job->each ? status != STATUS_DONE : status == STATUS_UNREADABLE;
}

void tell_missing(const struct task *t, const struct result *results)
{
    size_t bad = 0;
    for (size_t i = 0; i < t->c->count; i++)
        bad += is_missing(t, &results[i]);
    if (!bad || t->c->count == 1)
        return;
    fprintf(stderr, "dishtake: %zu of %zu files could not be %s:", bad, t->c->count,
            t->job->each ? "done" : "read");
    for (size_t i = 0; i < t->c->count; i++)
        if (is_missing(t, &results[i]))
            fprintf(stderr, " %s", t->c->operands[i]);
    fputc('\n', stderr);
}

void tell_before(const struct task *t, const struct result *results)
{
    size_t before = 0;
    for (size_t i = 0; i < t->c->count; i++)
        before += results[i].before;
    if (before && !t->c->values[OPTION_QUIET])
        fprintf(stderr, "dishtake: note: %zu of %zu files were done by an earlier run\n", before,
                t->c->count);
}

bool any_done(const struct task *t, const struct result *results)
{
    for (size_t i = 0; i < t->c->count; i++)
        if (results[i].status <= STATUS_FOUND)
            return true;
    return false;
}
