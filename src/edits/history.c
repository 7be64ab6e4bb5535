/* edits/history.c: the edits as a list that grows: what can be undone and redone, and where two of
 * them differ.
 * SPDX-License-Identifier: MIT */
#include "edits/parse.h"

/* Undo takes back the last edit that counts. What a later version added is not ours to take back.
 */
size_t edits_undoable(const struct edits *e)
{
    for (size_t i = e ? e->count : 0; i-- > 0;)
        if (e->at[i].kind < EDIT_KINDS && !e->at[i].undone)
            return i + 1;
    return 0;
}

/* Redo brings back what was undone last, as long as no other edit came after. */
size_t edits_redoable(const struct edits *e)
{
    size_t of;
    size_t redone = 0;
    for (size_t i = e ? e->count : 0; i-- > 0;) {
        if (e->at[i].kind < EDIT_KINDS)
            return 0;
        if (e->at[i].kind == EDIT_REDO)
            redone++;
        else if (e->at[i].kind == EDIT_UNDO && redone)
            redone--;
        else if (e->at[i].kind == EDIT_UNDO)
            return json_count(json_object_get(e->at[i].json, "of"), &of) ? of : 0;
    }
    return 0;
}

static bool is_same(const struct edit *a, const struct edit *b)
{
    return a->undone == b->undone && json_equal(a->json, b->json);
}

/* An edit that only one of them has counts at its own stage. Where one file does not go on from the
 * other, places may be found otherwise, so everything counts. */
static enum edit_stage differs_at(const struct edits *one, const struct edits *other, size_t i)
{
    const struct edit *a = i < one->count ? &one->at[i] : &other->at[i];
    const struct edit *b = i < other->count ? &other->at[i] : a;
    if (i < one->count && i < other->count && is_same(a, b))
        return EDIT_STAGES;
    if (a != b && !json_equal(a->json, b->json))
        return EDITS_WORDS;
    return a->kind < EDIT_KINDS ? edit_kind_stage(a->kind) : EDIT_STAGES;
}

enum edit_stage edits_differ(const struct edits *one, const struct edits *other)
{
    enum edit_stage first = EDIT_STAGES;
    size_t count = one->count > other->count ? one->count : other->count;
    for (size_t i = 0; i < count && first > EDITS_WORDS; i++) {
        enum edit_stage here = differs_at(one, other, i);
        first = here < first ? here : first;
    }
    return first;
}

bool edits_have_key(const struct edits *e, struct text key)
{
    for (size_t i = e->count; i-- > 0;)
        if (key.length && text_equal(json_text(json_object_get(e->at[i].json, "key")), key))
            return true;
    return false;
}
