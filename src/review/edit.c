/* review/edit.c: one more edit: it is tried, saved, and only then told to be there.
 * SPDX-License-Identifier: MIT */
#include <jansson.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "review/state.h"

/* Back to what is on the disk. */
static void take_back(struct session *s, struct reply *r, unsigned status, const char *why)
{
    char kept[300];
    snprintf(kept, sizeof kept, "%s", why); /* reading clears messages */
    session_read_disk(s);
    reply_error(r, status, kept);
}

static void save(struct session *s, struct text bytes, const char *has, struct reply *r)
{
    struct problems p = {0};
    enum kept_saved saved = kept_save(&s->edits, bytes, &p);
    if (saved == SAVED)
        session_put_recipes(s, r, has);
    else if (saved == SAVED_BY_ANOTHER)
        take_back(s, r, 409, "another page or program was faster");
    else
        take_back(s, r, 507, p.count ? p.at[0].message : "it cannot be saved");
    problems_release(&p);
}

static void try_edit(struct session *s, struct text bytes, const char *has, struct reply *r)
{
    if (session_read(s, bytes) != DISHTAKE_DONE) {
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
    session_revision(s, now);
    return !seen || strcmp(seen, now) != 0;
}

static bool is_known(const struct session *s, const json_t *edit)
{
    const json_t *key = json_object_get(edit, "key");
    return json_is_string(key)
           && dishtake_edit_known(s->d, json_string_value(key), json_string_length(key));
}

void session_edit(struct session *s, struct text asked, struct reply *r)
{
    json_t *request = json_loadb(asked.at, asked.length, JSON_REJECT_DUPLICATES, NULL),
           *edit = json_object_get(request, "edit");
    const char *has = json_string_value(json_object_get(request, "revision"));
    if (!json_is_object(edit))
        reply_error(r, 400, "an edit is needed");
    else if (!session_look(s, r))
        ;
    else if (is_known(s, edit)) /* the answer was lost on the way: it is not done twice */
        session_put_recipes(s, r, has);
    else if (is_stale(s, has))
        reply_error(r, 409, "another page or program was faster");
    else
        add_edit(s, edit, has, r);
    json_decref(request);
}
