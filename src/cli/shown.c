/* cli/shown.c
 * SPDX-License-Identifier: MIT */
#include "cli/shown.h"

#include "cli/talk.h"
#include "disk/disk.h"

/* No style sheet that a person wrote is longer. */
#define STYLE_BYTES_MAX ((size_t) 1 << 20)

enum status cli_shown(const struct cli *c, struct dishtake_write_options *w, struct buffer *style)
{
    struct problems p = {0};
    w->units = c->values[OPTION_UNITS];
    w->serves = c->values[OPTION_SERVES];
    w->times = c->values[OPTION_TIMES];
    w->video_url = c->values[OPTION_VIDEO_URL];
    if (w->serves && w->times)
        return cli_usage("--serves and --times: only one of them");
    if (!c->values[OPTION_STYLE])
        return STATUS_DONE;
    bool done = disk_read(c->values[OPTION_STYLE], STYLE_BYTES_MAX, style, &p);
    talk_print(&p);
    problems_release(&p);
    w->style = style->at;
    w->style_length = style->length;
    return done ? STATUS_DONE : STATUS_UNREADABLE;
}
