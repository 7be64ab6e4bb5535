/* cli/publish.c: a folder for each recording, whole or not at all.
 * SPDX-License-Identifier: MIT */
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/path.h"
#include "cli/files.h"
#include "cli/shown.h"
#include "cli/stills.h"
#include "cli/talk.h"
#include "disk/publish.h"

/* The file's name without folders and ending. */
static struct text stem(const char *file)
{
    struct text whole = path_stem(file);
    return text_slice(whole, path_folder(file).length, whole.length);
}

/* Of one file, the folder that was named; of several, a folder in it for each. */
static void put_folder_name(struct buffer *b, const struct cli *c, size_t number)
{
    buffer_put_string(b, c->values[OPTION_OUTPUT]);
    if (c->count > 1)
        buffer_format(b, "/%.*s", TEXT(stem(c->operands[number])));
}

static enum status fill(const struct cli *c, struct dishtake *d, struct disk_folder *f,
                        const struct dishtake_write_options *options, struct buffer *talk,
                        struct problems *p)
{
    struct dishtake_write_options o = *options;
    struct stills stills = {NULL, 0};
    if (c->values[OPTION_VIDEO])
        stills_take(&stills, d, c->values[OPTION_VIDEO], f, c->values[OPTION_QUIET] != NULL, talk);
    o.stills = (const char *const *) stills.names;
    o.stills_count = stills.count;
    bool put = publish_files(d, f, &o, p), done = put && folder_close(f, p);
    stills_release(&stills);
    return done ? STATUS_DONE : p->errors ? STATUS_UNWRITTEN : STATUS_USAGE;
}

static enum status publish_one(const struct cli *c, struct dishtake *d, size_t number, void *with,
                               struct buffer *talk)
{
    struct buffer name = {0};
    struct disk_folder folder = {.name = NULL};
    struct problems p = {0};
    size_t stops = dishtake_findings(d, DISHTAKE_STOP);
    if (stops && !c->values[OPTION_DESPITE_FINDINGS]) {
        buffer_format(
            talk,
            "%s: not published: unsafe as heard in %zu place%s; mend them (dishtake check shows "
            "them, dishtake review mends them), or publish with --despite-findings\n",
            c->operands[number], stops, stops == 1 ? "" : "s");
        return STATUS_FOUND;
    }
    put_folder_name(&name, c, number);
    enum status status = STATUS_UNWRITTEN;
    if (name.at && folder_open(&folder, name.at, &p))
        status = fill(c, d, &folder, with, talk, &p);
    folder_abandon(&folder);
    talk_problems(talk, &p, true);
    problems_release(&p);
    buffer_release(&name);
    return status;
}

/* Two files of one name would be published over one another. */
static bool names_differ(const struct cli *c)
{
    for (size_t i = 0; i < c->count; i++)
        for (size_t n = 0; n < i; n++)
            if (text_equal(stem(c->operands[i]), stem(c->operands[n]))) {
                cli_usage("%s and %s would both be published as %s/%.*s", c->operands[n],
                          c->operands[i], c->values[OPTION_OUTPUT], TEXT(stem(c->operands[i])));
                return false;
            }
    return true;
}

static enum status check_usage(const struct cli *c)
{
    const char *folder = c->values[OPTION_OUTPUT];
    if (!folder || !*folder)
        return cli_usage("publish needs a folder: -o DIR");
    if (c->count > 1 && c->values[OPTION_VIDEO])
        return cli_usage("--video is of one recording; publish takes one FILE with it");
    if (!names_differ(c))
        return STATUS_USAGE;
    if (c->count > 1 && mkdir(folder, 0777) != 0 && errno != EEXIST) {
        cli_usage("%s cannot be made: %s", folder, strerror(errno));
        return STATUS_UNWRITTEN;
    }
    return STATUS_DONE;
}

enum status command_publish(const struct cli *c)
{
    struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    struct job job = {.each = publish_one, .with = &o};
    struct buffer style = {0};
    o.detail = c->values[OPTION_DETAIL] != NULL;
    o.reflow = c->values[OPTION_REFLOW] != NULL;
    enum status status =
        cli_whole(c, OPTION_LETTERS, 1, &o.letters) ? check_usage(c) : STATUS_USAGE;
    if (status == STATUS_DONE)
        status = cli_shown(c, &o, &style);
    if (status == STATUS_DONE)
        status = files_run(c, &job);
    buffer_release(&style);
    return status;
}
