/* review/session.c
 * SPDX-License-Identifier: MIT */
#include "review/session.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/digest.h"
#include "disk/disk.h"
#include "edits/edits.h"
#include "read/read.h"
#include "review/delta.h"
#include "review/state.h"
#include "write/json_print.h"

/* ---- replies */

void reply_error(struct reply *r, unsigned status, const char *why)
{
    struct json j = {.out = &r->body};
    buffer_clear(&r->body);
    r->status = status;
    json_open(&j, '{');
    json_key_string(&j, "error", why);
    json_close(&j, '}');
}

const char *session_message(const struct dishtake *d, const char *otherwise)
{
    struct dishtake_message m;
    for (size_t i = 0; dishtake_message(d, i, &m); i++)
        if (m.error)
            otherwise = m.text;
    return otherwise;
}

void session_revision(const struct session *s, char out[REVISION_LETTERS])
{
    snprintf(out, REVISION_LETTERS, "%016" PRIx64,
             digest_add(DIGEST_BEGIN, buffer_text(&s->edits.bytes)));
}

static const char *write_page(struct session *s, struct reply *r, const char *form, size_t *length)
{
    const char *page = dishtake_write(s->d, "review", form, NULL, length);
    if (!page)
        reply_error(r, 500, session_message(s->d, "the page cannot be written"));
    return page;
}

/* Begins the answer with the revision, written to `now`, and gives what is to follow; NULL where
 * that cannot be written, which is then the answer. */
static const char *begin_page(struct session *s, struct reply *r, const char *form,
                              char now[REVISION_LETTERS], size_t *length)
{
    const char *page = write_page(s, r, form, length);
    if (!page)
        return NULL;
    session_revision(s, now);
    r->status = 200;
    buffer_format(&r->body, "{\"revision\":\"%s\",\"page\":", now);
    return page;
}

void session_put_recipes(struct session *s, struct reply *r, const char *has)
{
    char now[REVISION_LETTERS];
    size_t length;
    const char *page = begin_page(s, r, "recipes", now, &length);
    if (!page)
        return;
    if (has && s->told.length && strcmp(has, s->told_revision) == 0)
        delta_put(buffer_text(&s->told), (struct text){page, length}, &r->body);
    else
        buffer_put(&r->body, (struct text){page, length});
    buffer_put_string(&r->body, "}");
    buffer_clear(&s->told);
    buffer_put(&s->told, (struct text){page, length});
    memcpy(s->told_revision, now, sizeof now);
    if (s->told.failed)
        buffer_release(&s->told);
}

/* ---- reading */

static struct text edits_bytes(const struct session *s)
{
    return s->edits.there ? buffer_text(&s->edits.bytes) : TEXT_EMPTY;
}

/* All of it, once; from then on only what other edits change. */
static enum dishtake_result read_first(struct session *s)
{
    struct text edits = edits_bytes(s);
    struct dishtake_read_options o = s->options;
    o.edits = edits.length ? edits.at : NULL;
    o.edits_length = edits.length;
    o.edits_name = s->edits.name;
    o.keep = true;
    return dishtake_read(s->d, s->bytes.at ? s->bytes.at : "", s->bytes.length, s->name, &o);
}

enum dishtake_result session_read(struct session *s, struct text edits)
{
    return dishtake_read_edits(s->d, edits.length ? edits.at : NULL, edits.length);
}

enum dishtake_result session_read_disk(struct session *s)
{
    return session_read(s, edits_bytes(s));
}

static bool tell(const struct session *s, struct problems *p)
{
    struct dishtake_message m;
    for (size_t i = 0; dishtake_message(s->d, i, &m); i++)
        if (m.error)
            problem(p, (struct place){s->edits.name, m.line, m.column}, "%s", m.text);
    return false;
}

bool session_open(struct session *s, struct dishtake *d, const char *name,
                  const struct dishtake_read_options *options, struct problems *p)
{
    *s = (struct session){.d = d, .name = name, .edits.guard = -1, .options = *options};
    if (!disk_read(name, READ_BYTES_MAX, &s->bytes, p))
        return false;
    if (!kept_open(&s->edits, edits_name(name), name, EDITS_BYTES_MAX, p))
        return false;
    enum dishtake_result result = read_first(s);
    s->usable = result == DISHTAKE_DONE;
    if (s->usable)
        return true;
    if (result == DISHTAKE_BAD_EDITS)
        return tell(s, p);
    return problem(p, (struct place){.file = name}, "%s", session_message(d, "cannot be read"));
}

void session_close(struct session *s)
{
    kept_close(&s->edits);
    buffer_release(&s->bytes);
    buffer_release(&s->told);
}

void session_recipes(struct session *s, struct reply *r)
{
    session_put_recipes(s, r, NULL);
}

void session_words(struct session *s, struct reply *r)
{
    char now[REVISION_LETTERS];
    size_t length;
    const char *page = begin_page(s, r, "words", now, &length);
    if (!page)
        return;
    buffer_put(&r->body, (struct text){page, length});
    buffer_put_string(&r->body, "}");
}

/* ---- what others did to the edits file */

/* Ours began theirs: they went on from what we had. Both end with the brackets of the list. */
static bool goes_on(struct text theirs, struct text ours)
{
    size_t end = ours.length;
    while (end && strchr("]} \n\r", ours.at[end - 1]))
        end--;
    return theirs.length >= end && memcmp(theirs.at, ours.at, end) == 0;
}

/* Edits that were acknowledged are never lost, whoever wrote over them: they go to a file of their
 * own. */
static void keep_aside(const struct session *s, struct text ours, struct problems *p)
{
    struct disk_output o;
    size_t room = strlen(s->edits.name) + sizeof ".kept";
    char *name = malloc(room);
    if (!name)
        return;
    snprintf(name, room, "%s.kept", s->edits.name);
    if (disk_open(&o, name, p)) {
        if (disk_put(&o, ours, p))
            disk_close(&o, p);
        else
            disk_abandon(&o);
    }
    free(name);
}

bool session_look(struct session *s, struct reply *r)
{
    struct problems p = {0};
    struct buffer ours = {0};
    enum kept_news news = kept_look(&s->edits, EDITS_BYTES_MAX, &ours, &p);
    if (news == KEPT_CHANGED) {
        if (s->usable && ours.length && !goes_on(buffer_text(&s->edits.bytes), buffer_text(&ours)))
            keep_aside(s, buffer_text(&ours), &p);
        s->usable = session_read_disk(s) == DISHTAKE_DONE;
    }
    bool done = news != KEPT_UNREADABLE && s->usable;
    if (!done)
        reply_error(
            r, 500,
            session_message(s->d, p.count ? p.at[0].message : "the edits file cannot be read"));
    buffer_release(&ours);
    problems_release(&p);
    return done;
}

void session_news(struct session *s, struct reply *r)
{
    char now[REVISION_LETTERS];
    if (!session_look(s, r))
        return;
    session_revision(s, now);
    r->status = 200;
    buffer_format(&r->body, "{\"revision\":\"%s\"}", now);
}
