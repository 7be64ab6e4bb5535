/* cli/list.c
 * SPDX-License-Identifier: MIT */
#include "cli/list.h"

#include <string.h>

#include "check/list.h"
#include "cli/talk.h"
#include "disk/disk.h"

enum status list_take(const struct cli *c, struct buffer *bytes)
{
    const char *name = c->values[OPTION_LIST];
    struct problems p = {0};
    if (!name)
        return STATUS_DONE;
    if (c->count != 1)
        return cli_usage("--list %s: a list belongs to one recording; name one", name);
    if (strcmp(name, "-") == 0 && strcmp(c->operands[0], "-") == 0)
        return cli_usage("--list -: standard input is the recording already");
    bool done = disk_read(name, LIST_BYTES_MAX, bytes, &p);
    talk_print(&p);
    problems_release(&p);
    return done ? STATUS_DONE : STATUS_UNREADABLE;
}

void list_hand(const struct cli *c, const struct buffer *bytes, struct dishtake_read_options *o)
{
    if (!c->values[OPTION_LIST])
        return;
    o->list = bytes->at ? bytes->at : "";
    o->list_length = bytes->length;
    o->list_name = c->values[OPTION_LIST];
}
