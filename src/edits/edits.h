/* edits/edits.h: the cook's corrections, from a file beside the transcript: an append-only list,
 * each edit tied to words. docs/review.md describes the file, docs/schema/edits.schema.json its
 * form.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_EDITS_H
#define DISHTAKE_EDITS_EDITS_H

#include <jansson.h>

#include "base/buffer.h"
#include "model/recording.h"
#include "pack/pack.h"

/* A longer file is refused. */
#define EDITS_BYTES_MAX ((size_t) 16 << 20)
#define EDITS_MAX 100000
/* One request of the page. */
#define EDIT_BYTES_MAX ((size_t) 64 << 10)

enum edit_kind {
#define EDIT(name, on, to, stage, about) EDIT_##name,
#include "edits/kinds.def"
#undef EDIT
    EDIT_KINDS,
    EDIT_UNDO = EDIT_KINDS,
    EDIT_REDO,
    EDIT_UNKNOWN /* of a later version: kept, and not applied */
};

/* What an edit's "on" or "to" points at. */
enum edit_target { TARGET_NOTHING, TARGET_WORDS, TARGET_DISH, TARGET_LINE, TARGET_STEP };

/* When an edit is applied, by its kind (edits/kinds.def). */
enum edit_stage { EDITS_WORDS, EDITS_BORDERS, EDITS_VALUES, EDITS_FINDINGS, EDIT_STAGES };

struct edit {
    enum edit_kind kind;
    json_t *json; /* borrowed from the list */
    bool undone;
};

/* A file's edits. Edit n of the file is at[n - 1]. */
struct edits {
    json_t *root; /* owns all the JSON */
    struct edit *at;
    size_t count;
    const char *file; /* for messages; borrowed */
};

/* NULL, with problems, when it is no edits file; nothing of such a file may be written over.
 * edits_free frees. */
struct edits *edits_read(struct text bytes, const char *file, struct problems *p);
void edits_free(struct edits *e);
/* The file: one edit a line, so that a change to it is one line; what this version does not know
 * stays as it is. */
bool edits_print(json_t *root, struct buffer *out);
/* The edit that "undo" takes back, or "redo" brings back: its number, 0 for none. */
size_t edits_undoable(const struct edits *e);
size_t edits_redoable(const struct edits *e);
bool edits_have_key(const struct edits *e, struct text key);
/* The first stage at which the two differ; EDIT_STAGES where they do at none. What was found before
 * that stage holds for both. */
enum edit_stage edits_differ(const struct edits *one, const struct edits *other);

/* ---- in the pipeline. `e` may be NULL. Edits that find no place are noted in `p`. Fills in
 * r->edited. */

/* Finds every edit's words in the captions, then corrects words: their letters, key, number; their
 * numbers stay. */
bool edit_words(struct recording *r, const struct edits *e, const struct pack *k,
                struct problems *p);
/* Gives `r`, a copy of a recording, what became of the edits as its own. */
void edits_own(struct recording *r);
/* Goes on with other edits, which are the same up to a stage: `r` is as it was before that stage.
 */
void edits_resume(struct recording *r, const struct edits *e);
bool edit_borders(struct recording *r, const struct edits *e, const struct pack *k,
                  struct problems *p);
bool edit_values(struct recording *r, const struct edits *e, const struct pack *k,
                 struct problems *p);
bool edit_findings(struct recording *r, const struct edits *e, const struct pack *k,
                   struct problems *p);

/* Where an edit's words are now. */
struct edit_spot {
    bool placed;
    struct span words;
    size_t reach; /* of a dish: how many words it had */
    size_t added; /* of a line or step that edit number `added` made; 0: of one that was heard */
};

/* What became of an edit in this recording. */
struct edit_outcome {
    struct edit_spot on, to;
    bool placed;     /* it was applied */
    size_t dish;     /* the id of the dish that it changed; EDIT_NOWHERE for none */
    size_t id;       /* of the line or step; EDIT_NOWHERE */
    const char *why; /* why it was not; static; NULL where it was */
};
#define EDIT_NOWHERE ((size_t) -1)

/* A word as it was captioned. */
struct captioned_word {
    struct text text;
    size_t offset; /* in its cue's text, as that was */
};

struct edit_run {
    const struct edits *edits;
    struct edit_outcome *at; /* arena */
    size_t count;            /* of them; as many as edits */
    struct text *captioned;  /* keys of all words before they were corrected; NULL where none was */
    struct captioned_word *words; /* the same words unfolded; NULL where none was corrected */
};

/* Lines and steps that the cook added have ids from here on: this, plus the edit's number. No
 * transcript has as many words. */
#define EDIT_ADDED_ID ((size_t) 1000000000)

/* ---- for the page: one more edit. `asked` names dishes, lines, steps by id, words by number, a
 * finding by its place in the list; the edit that is made of it is tied to the words around. The
 * whole new file goes to `out`. False, with one problem, when the recording has no such thing or a
 * value is none. `e` is NULL where there is no file yet. */
bool edits_append(const struct recording *r, const struct edits *e, struct text asked,
                  struct buffer *out, struct problems *p);

#endif
