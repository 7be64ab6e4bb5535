/* edits/append.c: what the page asks for -> one more edit in the file. Ids become anchors here.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "base/path.h"
#include "edits/anchor.h"
#include "edits/run.h"

/* A request being read. */
struct asking {
    const struct recording *r;
    const json_t *asked;
    json_t *edit; /* owned */
    struct problems *p;
};

static bool refuse(const struct asking *q, const char *why)
{
    return problem(q->p, (struct place){0}, "%s", why);
}

/* "i34" -> 34 for kind 'i'. */
static bool read_id(const json_t *value, char kind, size_t *id)
{
    struct text t = json_text(value);
    size_t n = 0;
    if (t.length < 2 || t.length > 16 || t.at[0] != kind)
        return false;
    for (size_t i = 1; i < t.length; i++) {
        if (t.at[i] < '0' || t.at[i] > '9')
            return false;
        n = n * 10 + (size_t) (t.at[i] - '0');
    }
    *id = n;
    return true;
}

static bool read_words(const struct recording *r, const json_t *value, struct span *words)
{
    return json_is_array(value) && json_array_size(value) == 2
           && json_count(json_array_get(value, 0), &words->first)
           && json_count(json_array_get(value, 1), &words->last) && words->first <= words->last
           && words->last < r->words.count;
}

static json_t *anchor_of_id(const struct recording *r, size_t id)
{
    if (id > EDIT_ADDED_ID)
        return json_pack("{s:I}", "added", (json_int_t) (id - EDIT_ADDED_ID));
    return id < r->words.count ? anchor_make(r, (struct span){id, id}, 0) : NULL;
}

static json_t *dish_anchor(const struct recording *r, const json_t *value)
{
    size_t id;
    if (!read_id(value, 'd', &id))
        return NULL;
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        size_t reach = d->words.last >= id ? d->words.last - id + 1 : 1;
        if (d->id == id && id < r->words.count)
            return anchor_make(r, (struct span){id, id}, reach);
    }
    return NULL;
}

static json_t *line_anchor(const struct recording *r, const json_t *value)
{
    size_t id;
    if (!read_id(value, 'i', &id))
        return NULL;
    for (size_t i = 0; i < r->dishes.count; i++)
        if (dish_ingredient(&r->dishes.at[i], id))
            return anchor_of_id(r, id);
    return NULL;
}

static json_t *step_anchor(const struct recording *r, const json_t *value)
{
    size_t id;
    if (!read_id(value, 's', &id))
        return NULL;
    for (size_t i = 0; i < r->dishes.count; i++)
        for (size_t n = 0; n < r->dishes.at[i].steps.count; n++)
            if (r->dishes.at[i].steps.at[n].id == id)
                return anchor_of_id(r, id);
    return NULL;
}

static json_t *words_anchor(const struct recording *r, const json_t *value)
{
    struct span words;
    return read_words(r, value, &words) ? anchor_make(r, words, 0) : NULL;
}

static json_t *make_anchor(const struct recording *r, enum edit_target target, const json_t *value)
{
    switch (target) {
    case TARGET_WORDS:
        return words_anchor(r, value);
    case TARGET_DISH:
        return dish_anchor(r, value);
    case TARGET_LINE:
        return line_anchor(r, value);
    case TARGET_STEP:
        return step_anchor(r, value);
    default:
        return NULL;
    }
}

static bool put_anchor(const struct asking *q, const char *key, enum edit_target target)
{
    const json_t *value = json_object_get(q->asked, key);
    if (target == TARGET_NOTHING || !value || json_is_null(value))
        return true;
    json_t *anchor = make_anchor(q->r, target, value);
    if (!anchor)
        return refuse(q, "the recording has no such words, dish, line or step (any more)");
    return json_object_set_new(q->edit, key, anchor) == 0;
}

static void copy(const struct asking *q, const char *key)
{
    json_t *value = json_object_get(q->asked, key);
    if (value)
        json_object_set(q->edit, key, value);
}

static bool put_target(const struct asking *q, enum edit_kind kind)
{
    if (!put_anchor(q, "on", edit_kind_on(kind)) || !put_anchor(q, "to", edit_kind_to(kind)))
        return false;
    copy(q, "field");
    return true;
}

/* A finding is asked about by its place in the list; what is kept is what it was. */
static bool put_finding(const struct asking *q)
{
    size_t i;
    if (!json_count(json_object_get(q->asked, "finding"), &i) || i >= q->r->findings.count)
        return refuse(q, "there is no such finding (any more)");
    const struct finding *f = &q->r->findings.at[i];
    struct span words = f->words;
    if (span_is_empty(words) && f->dish < q->r->dishes.count)
        words.first = words.last = q->r->dishes.at[f->dish].words.first;
    if (span_is_empty(words) || words.last >= q->r->words.count)
        words.first = words.last = 0;
    const json_t *reason = json_object_get(q->asked, "reason");
    if (f->level == LEVEL_STOP && !text_is(json_text(json_object_get(q->asked, "value")), "open")
        && !text_trim(json_text(reason)).length)
        return refuse(q, "this is about safety: a reason is needed");
    json_object_set_new(q->edit, "on", anchor_make(q->r, words, 0));
    json_object_set_new(q->edit, "field", json_stringn(f->kind.at, f->kind.length));
    return json_object_set_new(q->edit, "about", json_stringn(f->about.at, f->about.length)) == 0;
}

static bool put_turn(const struct asking *q, const struct edits *e, enum edit_kind kind)
{
    size_t of = kind == EDIT_UNDO ? edits_undoable(e) : edits_redoable(e);
    if (!of)
        return refuse(q,
                      kind == EDIT_UNDO ? "there is nothing to undo" : "there is nothing to redo");
    return json_object_set_new(q->edit, "of", json_integer((json_int_t) of)) == 0;
}

static bool put_parts(const struct asking *q, const struct edits *e, enum edit_kind kind)
{
    if (kind == EDIT_UNKNOWN)
        return refuse(q, "there is no such kind of edit");
    if (kind >= EDIT_KINDS)
        return put_turn(q, e, kind);
    if (!(kind == EDIT_finding ? put_finding(q) : put_target(q, kind)))
        return false;
    copy(q, "value");
    if (kind == EDIT_finding)
        copy(q, "reason");
    if (kind == EDIT_word)
        copy(q, "everywhere");
    return edit_fits(kind, q->edit)
           || refuse(q, "a value is missing, or cannot be one of that kind");
}

static bool put_edit(const struct asking *q, const struct edits *e, struct buffer *out)
{
    const char *name = json_string_value(json_object_get(q->asked, "kind"));
    json_object_set_new(q->edit, "kind", json_string(name ? name : ""));
    if (!put_parts(q, e, edit_kind_read(name)))
        return false;
    if (json_is_string(json_object_get(q->asked, "key")))
        copy(q, "key");
    /* A path of one machine has no place in a file that may travel. */
    json_t *root = e ? json_copy(e->root) : edits_new_root(text_from(path_file(q->r->file)));
    json_t *list = e ? json_copy(json_object_get(e->root, "edits")) : json_array();
    bool done = root && list && json_array_append(list, q->edit) == 0
                && json_object_set(root, "edits", list) == 0 && edits_print(root, out);
    json_decref(list);
    json_decref(root);
    return done || refuse(q, "no memory is left");
}

bool edits_append(const struct recording *r, const struct edits *e, struct text asked,
                  struct buffer *out, struct problems *p)
{
    json_error_t error;
    struct asking q = {.r = r, .p = p};
    if (asked.length > EDIT_BYTES_MAX)
        return refuse(&q, "the edit is too large");
    if (e && e->count >= EDITS_MAX)
        return refuse(&q, "the file holds as many edits as it can");
    json_t *request = json_loadb(asked.at, asked.length, JSON_REJECT_DUPLICATES, &error);
    q.asked = request;
    q.edit = json_object();
    bool done = json_is_object(request) && q.edit ? put_edit(&q, e, out)
                                                  : refuse(&q, "the edit is no JSON object");
    json_decref(q.edit);
    json_decref(request);
    return done;
}
