/* review/session.c
 * SPDX-License-Identifier: MIT */
#include "review/session.h"

#include <inttypes.h>
#include <jansson.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/digest.h"
#include "disk/disk.h"
#include "edits/edits.h"
#include "read/read.h"
#include "review/delta.h"
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

/* Names the state of the edits. */
static void revision(const struct session *s, char out[REVISION_LETTERS])
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
    revision(s, now);
    r->status = 200;
    buffer_format(&r->body, "{\"revision\":\"%s\",\"page\":", now);
    return page;
}

/* `has` is the revision that the asker shows: of what stands there too, only the place is told. */
static void put_recipes(struct session *s, struct reply *r, const char *has)
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

static enum dishtake_result read_with(struct session *s, struct text edits)
{
    return dishtake_read_edits(s->d, edits.length ? edits.at : NULL, edits.length);
}

static enum dishtake_result read_again(struct session *s)
{
    return read_with(s, edits_bytes(s));
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
    put_recipes(s, r, NULL);
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
        s->usable = read_again(s) == DISHTAKE_DONE;
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
    revision(s, now);
    r->status = 200;
    buffer_format(&r->body, "{\"revision\":\"%s\"}", now);
}

/* ---- one more edit */

/* Back to what is on the disk. */
static void take_back(struct session *s, struct reply *r, unsigned status, const char *why)
{
    char kept[300];
    snprintf(kept, sizeof kept, "%s", why); /* reading clears messages */
    read_again(s);
    reply_error(r, status, kept);
}

static void save(struct session *s, struct text bytes, const char *has, struct reply *r)
{
    struct problems p = {0};
    enum kept_saved saved = kept_save(&s->edits, bytes, &p);
    if (saved == SAVED)
        put_recipes(s, r, has);
    else if (saved == SAVED_BY_ANOTHER)
        take_back(s, r, 409, "another page or program was faster");
    else
        take_back(s, r, 507, p.count ? p.at[0].message : "it cannot be saved");
    problems_release(&p);
}

static void try_edit(struct session *s, struct text bytes, const char *has, struct reply *r)
{
    if (read_with(s, bytes) != DISHTAKE_DONE) {
        take_back(s, r, 422, session_message(s->d, "it cannot be applied"));
        return;
    }
    const char *why = dishtake_edit_unplaced(s->d, dishtake_edits(s->d));
    if (why)
        take_back(s, r, 422, why);
    else
        save(s, bytes, has, r);
}

static void add_edit(struct session *s, json_t *edit, const char *has, struct reply *r)
{
    size_t length;
    char *asked = json_dumps(edit, JSON_COMPACT | JSON_REAL_PRECISION(15));
    const char *file = asked ? dishtake_edit(s->d, asked, strlen(asked), &length) : NULL;
    struct buffer bytes = {0};
    if (!file) {
        reply_error(r, 422, session_message(s->d, "it cannot be applied"));
    } else {
        buffer_put(&bytes,
                   (struct text){file, length}); /* reading makes the handle's own bytes invalid */
        if (bytes.failed)
            reply_error(r, 507, "no memory is left");
        else
            try_edit(s, buffer_text(&bytes), has, r);
    }
    buffer_release(&bytes);
    free(asked);
}

static bool is_stale(const struct session *s, const char *seen)
{
    char now[REVISION_LETTERS];
    revision(s, now);
    return !seen || strcmp(seen, now) != 0;
}

static bool is_known(const struct session *s, const json_t *edit)
{
    const json_t *key = json_object_get(edit, "key");
    return json_is_string(key)
           && dishtake_edit_known(s->d, json_string_value(key), json_string_length(key));
}

static json_t *load(struct text asked)
{
    return json_loadb(asked.at, asked.length, JSON_REJECT_DUPLICATES, NULL);
}

void session_edit(struct session *s, struct text asked, struct reply *r)
{
    json_t *request = load(asked), *edit = json_object_get(request, "edit");
    const char *has = json_string_value(json_object_get(request, "revision"));
    if (!json_is_object(edit))
        reply_error(r, 400, "an edit is needed");
    else if (!session_look(s, r))
        ;
    else if (is_known(s, edit)) /* the answer was lost on the way: it is not done twice */
        put_recipes(s, r, has);
    else if (is_stale(s, has))
        reply_error(r, 409, "another page or program was faster");
    else
        add_edit(s, edit, has, r);
    json_decref(request);
}

/* Units and scale are checked by the library, which says what would be right. */
static const char *make_card(struct session *s, const json_t *request, size_t *length)
{
    struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    o.dish = (size_t) json_integer_value(json_object_get(request, "dish"));
    o.units = json_string_value(json_object_get(request, "units"));
    o.times = json_string_value(json_object_get(request, "times"));
    return dishtake_write(s->d, "card", "text", &o, length);
}

void session_card(struct session *s, struct text asked, struct reply *r)
{
    json_t *request = load(asked);
    struct json j = {.out = &r->body};
    size_t length;
    bool fits = json_integer_value(json_object_get(request, "dish")) > 0;
    const char *card = fits ? make_card(s, request, &length) : NULL;
    json_decref(request);
    if (!card) {
        reply_error(r, fits ? 422 : 400,
                    fits ? session_message(s->d, "no such dish") : "a dish is needed");
        return;
    }
    r->status = 200;
    json_open(&j, '{');
    json_key_text(&j, "card", (struct text){card, length});
    json_close(&j, '}');
}
