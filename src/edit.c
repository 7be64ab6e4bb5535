/* edit.c: one more of the cook's corrections, and what became of those that there are.
 * SPDX-License-Identifier: MIT */
#include "handle.h"

const char *dishtake_edit(struct dishtake *d, const char *asked, size_t asked_length,
                          size_t *length)
{
    struct text request = {asked, asked_length};
    buffer_clear(&d->out);
    if (!d->read) {
        problem(&d->problems, (struct place){.file = d->recording.file}, "nothing was read");
        return NULL;
    }
    if (!edits_append(&d->recording, d->edits, request, &d->out, &d->problems))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

size_t dishtake_edits(const struct dishtake *d)
{
    return d->edits ? d->edits->count : 0;
}

/* Undo and redo have no place of their own; they always take effect. */
const char *dishtake_edit_unplaced(const struct dishtake *d, size_t n)
{
    if (!d->read || !n || n > dishtake_edits(d))
        return "there is no such edit";
    const struct edit_outcome *o = &d->recording.edited->at[n - 1];
    enum edit_kind kind = d->edits->at[n - 1].kind;
    if (kind == EDIT_UNDO || kind == EDIT_REDO || o->placed)
        return NULL;
    return o->why ? o->why : "it is not applied";
}

bool dishtake_edit_known(const struct dishtake *d, const char *key, size_t length)
{
    return d->edits && edits_have_key(d->edits, (struct text){key, length});
}
