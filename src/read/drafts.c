/* read/drafts.c
 * SPDX-License-Identifier: MIT */
#include "read/drafts.h"

#include <string.h>

#include "read/limits.h"

void drafts_make(struct drafts *d, struct arena *a, size_t count, size_t bytes, bool words)
{
    if (count > READ_CUES_MAX)
        count = READ_CUES_MAX;
    *d = (struct drafts){.room = count, .text_room = bytes};
    d->at = arena_alloc(a, count * sizeof *d->at);
    d->text = arena_alloc(a, bytes);
    if (words) {
        d->words_room = count;
        d->words = arena_alloc(a, count * sizeof *d->words);
        d->words_end = arena_alloc(a, count * sizeof *d->words_end);
    }
}

struct draft *drafts_add(struct drafts *d)
{
    if (d->count == d->room) {
        d->full = true;
        return NULL;
    }
    return &d->at[d->count++];
}

struct text drafts_keep(struct drafts *d, struct text t)
{
    if (t.length > d->text_room - d->length) {
        d->full = true;
        return TEXT_EMPTY;
    }
    char *at = d->text + d->length;
    if (t.length)
        memcpy(at, t.at, t.length);
    d->length += t.length;
    return (struct text){at, t.length};
}
