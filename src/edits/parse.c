/* edits/parse.c: the file's bytes <-> struct edits.
 * SPDX-License-Identifier: MIT */
#include "edits/parse.h"

#include <stdlib.h>
#include <string.h>

#include "edits/value.h"

#define FORMAT_PREFIX "dishtake edits "
#define FORMAT_VERSION 1

struct kind_row {
    const char *name;
    enum edit_target on, to;
    enum edit_stage stage;
};

static const struct kind_row ROWS[EDIT_KINDS] = {
#define EDIT(name, on, to, stage, about) {#name, TARGET_##on, TARGET_##to, EDITS_##stage},
#include "edits/kinds.def"
#undef EDIT
};

/* The file writes "line-set" where C needs line_set. */
static bool is_name(const char *written, const char *name)
{
    for (; *name && *written; name++, written++)
        if (*written != (*name == '_' ? '-' : *name))
            return false;
    return !*name && !*written;
}

enum edit_kind edit_kind_read(const char *written)
{
    for (size_t i = 0; written && i < EDIT_KINDS; i++)
        if (is_name(written, ROWS[i].name))
            return (enum edit_kind) i;
    if (written && !strcmp(written, "undo"))
        return EDIT_UNDO;
    return written && !strcmp(written, "redo") ? EDIT_REDO : EDIT_UNKNOWN;
}

enum edit_target edit_kind_on(enum edit_kind kind)
{
    return ROWS[kind].on;
}

enum edit_target edit_kind_to(enum edit_kind kind)
{
    return ROWS[kind].to;
}

enum edit_stage edit_kind_stage(enum edit_kind kind)
{
    return ROWS[kind].stage;
}

bool json_count(const json_t *value, size_t *n)
{
    if (!json_is_integer(value) || json_integer_value(value) < 0)
        return false;
    *n = (size_t) json_integer_value(value);
    return true;
}

static bool has_words(const json_t *anchor)
{
    const json_t *words = json_object_get(anchor, "words");
    size_t first, last;
    return json_is_array(words) && json_count(json_array_get(words, 0), &first)
           && json_count(json_array_get(words, 1), &last) && first <= last && last < EDIT_ADDED_ID
           && json_is_string(json_object_get(anchor, "said"));
}

/* An anchor, or nothing where none is needed: a line may go "to" the end. */
static bool anchor_fits(const json_t *anchor, enum edit_target target, bool needed)
{
    size_t added;
    if (target == TARGET_NOTHING || (!needed && (!anchor || json_is_null(anchor))))
        return true;
    if (target != TARGET_WORDS && json_count(json_object_get(anchor, "added"), &added))
        return true;
    return has_words(anchor);
}

static bool to_is_needed(enum edit_kind kind)
{
    switch (kind) {
    case EDIT_line_add:
    case EDIT_line_move:
    case EDIT_step_add:
    case EDIT_step_move:
        return false;
    default:
        return true;
    }
}

bool edit_fits(enum edit_kind kind, const json_t *edit)
{
    if (kind >= EDIT_KINDS)
        return true;
    return anchor_fits(json_object_get(edit, "on"), ROWS[kind].on, true)
           && anchor_fits(json_object_get(edit, "to"), ROWS[kind].to, to_is_needed(kind))
           && value_fits(kind, edit);
}

/* "undo" and "redo" name an edit before them. */
static bool turn(struct edits *e, size_t i)
{
    size_t of;
    if (!json_count(json_object_get(e->at[i].json, "of"), &of) || !of || of > i
        || e->at[of - 1].kind == EDIT_UNDO || e->at[of - 1].kind == EDIT_REDO)
        return false;
    e->at[of - 1].undone = e->at[i].kind == EDIT_UNDO;
    return true;
}

static bool read_edit(struct edits *e, size_t i, json_t *json, struct problems *p)
{
    struct place here = {.file = e->file};
    const char *name = json_string_value(json_object_get(json, "kind"));
    e->at[i] = (struct edit){.kind = edit_kind_read(name), .json = json};
    if (!json_is_object(json) || !name)
        return problem(p, here, "edit %zu is no object with a \"kind\"", i + 1);
    enum edit_kind kind = e->at[i].kind;
    if (kind == EDIT_UNDO || kind == EDIT_REDO)
        return turn(e, i) || problem(p, here, "edit %zu (%s) is of no edit before it", i + 1, name);
    if (edit_fits(kind, json))
        return true;
    problem_note(
        p, here,
        "edit %zu (%s) has a part that this version does not know; it is kept, not applied", i + 1,
        name);
    e->at[i].kind = EDIT_UNKNOWN;
    return true;
}

static bool read_list(struct edits *e, struct problems *p)
{
    const json_t *list = json_object_get(e->root, "edits");
    size_t count = json_array_size(list);
    if (!json_is_array(list))
        return problem(p, (struct place){.file = e->file}, "there is no list \"edits\"");
    if (count > EDITS_MAX)
        return problem(p, (struct place){.file = e->file}, "too large: more than %d edits",
                       EDITS_MAX);
    e->at = calloc(count + 1, sizeof *e->at);
    if (!e->at)
        return problem(p, (struct place){.file = e->file}, "no memory is left");
    bool done = true;
    for (e->count = 0; e->count < count; e->count++)
        done &= read_edit(e, e->count, json_array_get(list, e->count), p);
    return done;
}

/* A later version may add kinds and keys, which are kept; a later format may mean something else.
 */
static bool format_fits(const struct edits *e, struct problems *p)
{
    const char *format = json_string_value(json_object_get(e->root, "format"));
    if (format && strcmp(format, FORMAT_PREFIX "1") == 0)
        return true;
    if (format && strncmp(format, FORMAT_PREFIX, sizeof FORMAT_PREFIX - 1) == 0)
        return problem(p, (struct place){.file = e->file},
                       "is of a later version (\"%.40s\"); this one reads \"%s%d\"", format,
                       FORMAT_PREFIX, FORMAT_VERSION);
    return problem(p, (struct place){.file = e->file},
                   "is no edits file: its \"format\" should be \"%s%d\"", FORMAT_PREFIX,
                   FORMAT_VERSION);
}

static json_t *load(struct text bytes, const char *file, struct problems *p)
{
    json_error_t error;
    if (bytes.length > EDITS_BYTES_MAX) {
        problem(p, (struct place){.file = file}, "too large: more than %zu MB",
                EDITS_BYTES_MAX >> 20);
        return NULL;
    }
    if (text_starts(bytes, "\xef\xbb\xbf")) /* Jansson takes no byte order mark */
        bytes = text_slice(bytes, 3, bytes.length);
    json_t *root = json_loadb(bytes.at, bytes.length, JSON_REJECT_DUPLICATES, &error);
    if (!root)
        problem(p,
                (struct place){file, (unsigned) error.line,
                               (unsigned) (error.column > 0 ? error.column : 0)},
                "is no JSON: %s", error.text);
    return root;
}

struct edits *edits_read(struct text bytes, const char *file, struct problems *p)
{
    json_t *root = load(bytes, file, p);
    struct edits *e = root ? calloc(1, sizeof *e) : NULL;
    if (!e) {
        json_decref(root);
        return NULL;
    }
    e->root = root;
    e->file = file;
    if (format_fits(e, p) && read_list(e, p))
        return e;
    edits_free(e);
    return NULL;
}

void edits_free(struct edits *e)
{
    if (!e)
        return;
    json_decref(e->root);
    free(e->at);
    free(e);
}

json_t *edits_new_root(struct text file)
{
    return json_pack("{s:s, s:{s:s%}, s:[]}", "format", FORMAT_PREFIX "1", "recording", "file",
                     file.at, file.length, "edits");
}
