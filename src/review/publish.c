/* review/publish.c: everything in a folder beside the transcript, as `dishtake publish` writes it.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "base/path.h"
#include "disk/publish.h"
#include "review/session.h"
#include "write/json_print.h"

#define ERROR_BYTES 512

/* "talks/evening.srt" -> "talks/evening-published". */
static void put_folder_name(struct buffer *b, const char *transcript)
{
    buffer_put(b, path_stem(transcript));
    buffer_put_string(b, "-published");
}

static bool fill(struct session *s, const char *name, struct problems *p)
{
    struct disk_folder folder = {.name = NULL};
    const struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    bool done = folder_open(&folder, name, p) && publish_files(s->d, &folder, &o, p)
                && folder_close(&folder, p);
    folder_abandon(&folder);
    return done;
}

static void tell_done(struct reply *r, const char *name)
{
    struct json j = {.out = &r->body};
    struct buffer said = {0};
    buffer_format(&said, "Published in %s", name);
    r->status = 200;
    json_open(&j, '{');
    json_key_text(&j, "said", buffer_text(&said));
    json_close(&j, '}');
    buffer_release(&said);
}

static void tell_unsafe(struct reply *r, size_t count)
{
    char why[ERROR_BYTES];
    snprintf(why, sizeof why,
             "unsafe as heard in %zu place%s, which the loose ends show: mend or answer them first",
             count, count == 1 ? "" : "s");
    reply_error(r, 409, why);
}

static void publish(struct session *s, struct reply *r, const char *folder)
{
    struct problems p = {0};
    size_t stops = dishtake_findings(s->d, DISHTAKE_STOP);
    if (stops)
        tell_unsafe(r, stops);
    else if (folder && fill(s, folder, &p))
        tell_done(r, folder);
    else
        reply_error(r, 500,
                    p.count ? p.at[0].message : session_message(s->d, "there is no memory for it"));
    problems_release(&p);
}

void session_publish(struct session *s, struct reply *r)
{
    struct buffer name = {0};
    if (!session_look(s, r))
        return;
    put_folder_name(&name, s->name);
    publish(s, r, name.at);
    buffer_release(&name);
}
